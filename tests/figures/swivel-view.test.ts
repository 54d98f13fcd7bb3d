// The bent swivel: its bend to scale, and the span at the fastener against what the wrench says.
import { describe, expect, it } from 'vitest'
import { themes } from '../../src/figures/theme.ts'
import { languages } from '../../src/words/index.ts'
import { clashesOf, cornersOf, numberAt, type Shape, shapesOf, sheetOf, unseenClasses } from '../support/sheet.ts'

const words = languages.en.words.figures
const draw = (angle: string, torque = '25 N·m', theme: (typeof themes)[number] = 'light') =>
  sheetOf('swivel', { torque, angle }, theme)
const ofClass = (svg: string, name: string, cls: string): Shape[] =>
  shapesOf(svg).filter((one) => one.name === name && one.at.class === cls)

describe('the picture of a swivel', () => {
  it.each([0, 2.5, 5, 15, 30, 45, 60, 80])('bends by the %d° that were asked', (bend) => {
    const { svg } = draw(`${bend}°`)
    const pieces = ofClass(svg, 'polygon', 'nut')
    expect(pieces).toHaveLength(3)
    for (const piece of pieces) {
      const [from, to] = cornersOf(piece)
      const angle = Math.atan2((to?.x ?? 0) - (from?.x ?? 0), (to?.y ?? 0) - (from?.y ?? 0))
      expect(Math.abs((angle * 180) / Math.PI - bend)).toBeLessThan(0.3)
    }
  })

  it.each(['5°', '15°', '45°', '80°'])('at %s: the bar is full to the low end, pale to the high one', (angle) => {
    const { svg, answer } = draw(angle)
    const { low, high, value } = answer.results.torque as { low: number; high: number; value: number }
    const [full, pale] = [ofClass(svg, 'rect', 'nut')[0], ofClass(svg, 'rect', 'nut link')[0]] as [Shape, Shape]
    const scale = numberAt(full, 'width') / low
    expect(numberAt(pale, 'x')).toBeCloseTo(numberAt(full, 'x') + numberAt(full, 'width'), 0)
    expect(Math.abs(numberAt(pale, 'width') - (high - low) * scale)).toBeLessThan(4)
    // What the wrench says has a line of its own across the bar.
    const marks = ofClass(svg, 'line', 'rule').map((one) => numberAt(one, 'x1'))
    for (const x of marks) expect(Math.abs((x - numberAt(full, 'x')) / scale / value - 1)).toBeLessThan(0.02)
    expect(marks.length).toBeGreaterThan(0)
  })

  it('says that the low end is no floor and no setting makes up for it; unbent it says neither', () => {
    const bent = draw('20°')
    expect(bent.alt).toBe(
      'GETS 23.5 to 26.6 N·m. or lower still: friction takes more. at the fastener: set to 25 N·m, bent by 20°. ' +
        'No setting can make up for a bend. A swivel from the side: the part below the joint leans by 20° from the drive. ' +
        'A bar shows the torque at the fastener, 23.5 to 26.6 N·m, against 25 N·m on the wrench.',
    )
    expect(bent.svg).toContain(`>${words.lowerStill}</text>`)
    const straight = draw('0°')
    expect(straight.alt).toMatch(/^GETS 25 N·m\. at the fastener: set to 25 N·m, not bent\./)
    expect(straight.svg).not.toContain('▲')
    expect(straight.svg).not.toContain(words.lowerStill)
  })

  it.each(
    ['0°', '0.5°', '5°', '10°', '15°', '29.9°', '30°', '45°', '60°', '80°', '44.4444°'].flatMap((angle) =>
      ['25 N·m', '123.456789 lbf·in', '0.5 N·m', '2000 lbf·ft'].map((torque) => [angle, torque] as const),
    ),
  )('at %s and %s nothing overlaps or runs off', (angle, torque) => {
    expect(clashesOf(draw(angle, torque).svg)).toEqual([])
  })

  it.each(themes)('%s has every colour that is used', (theme) => {
    expect(unseenClasses(draw('30°', '25 N·m', theme).svg)).toEqual([])
  })
})
