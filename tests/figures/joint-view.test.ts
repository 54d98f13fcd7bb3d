// Bolts in bars: shares of strength against all of it, the asked share, and where the torque goes, all to scale.
import { describe, expect, it } from 'vitest'
import { figureOf } from '../../src/figures/index.ts'
import { themes } from '../../src/figures/theme.ts'
import type { Answer } from '../../src/questions/answer.ts'
import type { QuestionName } from '../../src/questions/index.ts'
import { languages } from '../../src/words/index.ts'
import { answered, ask } from '../support/desk.ts'
import { clashesOf, numberAt, type Shape, shapesOf, sheetOf, unseenClasses } from '../support/sheet.ts'

const words = languages.en.words
type Raw = Readonly<Record<string, string>>
const ofClass = (svg: string, name: string, cls: string): Shape[] =>
  shapesOf(svg).filter((one) => one.name === name && one.at.class === cls)
const widths = (shapes: readonly Shape[]): number[] => shapes.map((one) => numberAt(one, 'width'))
/** Lines that are upright, by where they stand. */
const uprights = (svg: string, cls: string): number[] =>
  ofClass(svg, 'line', cls)
    .filter((one) => one.at.x1 === one.at.x2)
    .map((one) => numberAt(one, 'x1'))
const spanIn = (answer: Answer, name: string) =>
  answer.results[name] as { low: number; value: number; high: number; text: string }
const bolt: Raw = { size: 'M10', torque: '45 N·m', class: '8.8' }
const frictions: Raw = { 'mu-threads': '0.12', 'mu-seat': '0.12' }

describe('clamp force against strength', () => {
  it.each<[string, Raw]>([
    ['within', { ...bolt, condition: 'dry' }],
    ['far past', { ...bolt, torque: '200 N·m', condition: 'anti-seize' }],
    ['hardly any', { ...bolt, torque: '1 N·m', condition: 'stainless-dry' }],
  ])('%s: both bars and the line of all of it are to one scale', (_, raw) => {
    const { svg, answer } = sheetOf('clamp-force', raw)
    const [full, pale] = [ofClass(svg, 'rect', 'nut'), ofClass(svg, 'rect', 'nut link')]
    const whole = uprights(svg, 'rule').at(-1) as number
    const left = numberAt(full[0] as Shape, 'x')
    const scale = (whole - left) / 100
    for (const [n, name] of ['proof-share', 'yield-share'].entries()) {
      const { low, value, high } = spanIn(answer, name)
      expect(Math.abs(numberAt(full[n] as Shape, 'width') - low * scale)).toBeLessThan(0.5)
      expect(Math.abs(numberAt(pale[n] as Shape, 'width') - (high - low) * scale)).toBeLessThan(0.5)
      expect(uprights(svg, 'rule').some((x) => Math.abs(x - left - value * scale) < 0.5)).toBe(true)
    }
  })

  it('warns where it can pass the strength of the bolt, on the sheet and in words, and only there', () => {
    const over = sheetOf('clamp-force', { ...bolt, torque: '200 N·m', condition: 'dry' })
    expect(over.svg).toContain('▲ Can pass the strength of the bolt: do not use 200 N·m')
    expect(over.alt).toContain('do not use 200 N·m')
    expect(sheetOf('clamp-force', { ...bolt, condition: 'dry' }).svg).not.toContain('▲')
  })

  it('without a class shows how wide the span is, and no strength', () => {
    const { svg, alt } = sheetOf('clamp-force', { size: 'M10', torque: '45 N·m', condition: 'dry' })
    expect(alt).toBe('CLAMPS 15 to 30 kN. with 45 N·m, typically 22.5 kN. clamp force: typically 22.5 kN, 15 to 30 kN.')
    expect(svg).not.toContain(words.figures.allOfIt)
  })

  it('one value that is held against nothing has no figure', () => {
    const answer = answered('clamp-force', { size: 'M10', torque: '45 N·m', k: '0.2' })
    expect(figureOf(answer, words, 'light')).toBeUndefined()
  })

  it('stainless has no proof load, and no bar for it', () => {
    const { svg } = sheetOf('clamp-force', { ...bolt, class: 'A2-70', condition: 'dry' })
    expect(svg).not.toContain(words.figures.ofProof)
    expect(svg).toContain(words.figures.ofYield)
  })
})

describe('the highest torque of a bolt', () => {
  it.each<[string, Raw]>([
    ['75 % of proof', { condition: 'oiled' }],
    ['90 % of yield', { condition: 'dry' }],
    ['100 % of yield', { ...frictions }],
    ['1 % of proof', { k: '0.2' }],
  ])('for %s: the bar ends at the share, and all of it lies farther out by as much', (share, raw) => {
    const { svg, answer } = sheetOf('bolt-torque', { size: 'M12', class: '8.8', share, ...raw })
    const full = ofClass(svg, 'rect', 'nut')[0] as Shape
    const pale = ofClass(svg, 'rect', 'nut link')
    const left = numberAt(full, 'x')
    const end = numberAt(full, 'width') + (widths(pale)[0] ?? 0)
    expect(Math.abs((uprights(svg, 'axis')[0] as number) - left - end)).toBeLessThan(0.5)
    const whole = (uprights(svg, 'rule').at(-1) as number) - left
    expect(Math.abs(end - (whole * Number.parseFloat(share)) / 100)).toBeLessThan(0.5)
    const { low, high } = spanIn(answer, 'clamp-force')
    expect(numberAt(full, 'width') / end).toBeCloseTo(low / high, 1)
    expect(svg).toContain(`>${share}</text>`)
  })

  it('says all of it in words, and that a share was taken where nobody told one', () => {
    expect(sheetOf('bolt-torque', { size: 'M12', class: '8.8', condition: 'oiled' }).alt).toBe(
      'AT MOST 43.9 N·m. clamps by 14.1 to 36.7 kN. not past 75 % of proof (taken, not told). ' +
        'clamp force: typically 20.4 kN, 14.1 to 36.7 kN. A line marks where all of it is used. The bar ends at 75 % of proof.',
    )
    const told = sheetOf('bolt-torque', { size: 'M12', class: '8.8', condition: 'oiled', share: '75 % of proof' })
    expect(told.alt).not.toContain('taken')
  })

  it('never shows the torque of typical friction, which can pass the share', () => {
    const { svg, answer } = sheetOf('bolt-torque', { size: 'M12', class: '8.8', condition: 'oiled' })
    expect(svg).not.toContain(spanIn(answer, 'torque').text)
  })
})

describe('where the torque goes', () => {
  /** The last three bars of a height are the three shares. */
  const sharesIn = (svg: string): number[] => {
    const bars = shapesOf(svg).filter(
      ({ name, at }) => name === 'rect' && at.height === '44' && at.class !== 'nut link',
    )
    return widths(bars.slice(-3))
  }
  it.each<[QuestionName, string, Raw]>([
    ['clamp-force', 'torque-split', { ...bolt, ...frictions }],
    ['clamp-force', 'torque-split', { size: 'M12', torque: '84 N·m', 'mu-threads': '0.02', 'mu-seat': '1' }],
    ['bolt-torque', 'torque-split', { size: '1/2-13', class: 'SAE 5', 'mu-threads': '1', 'mu-seat': '0.02' }],
    ['lubricant', 'split-after', { torque: '100 N·m', from: 'dry', to: 'moly', size: 'M12', where: 'threads' }],
  ])('%s %s: three shares as wide as they are, all three told', (question, name, raw) => {
    const { svg, alt, answer } = sheetOf(question, raw)
    const split = answer.results[name] as Record<string, { value: number; text: string }>
    const drawn = sharesIn(svg)
    const whole = drawn.reduce((sum, one) => sum + one, 0)
    for (const [n, { value, text }] of Object.values(split).entries()) {
      expect(Math.abs(((drawn[n] as number) / whole) * 100 - value)).toBeLessThan(0.1)
      expect(svg).toContain(`>${text}</text>`)
      expect(alt).toContain(text)
    }
  })

  it('is not drawn by a nut factor, which does not tell thread from seat', () => {
    expect(sheetOf('clamp-force', { ...bolt, k: '0.2' }).svg).not.toContain(words.figures.torqueGoes)
    const oiled = answered('lubricant', { torque: '100 N·m', from: 'dry', to: 'oiled', size: 'M12' })
    expect(figureOf(oiled, words, 'light')).toBeUndefined()
  })

  it('of a lubricant shows no torque but the asked one', () => {
    const raw = { torque: '100 N·m', from: 'dry', to: 'oiled', size: 'M12x1.5', where: 'threads' }
    const { svg, alt } = sheetOf('lubricant', { ...raw, seat: 'cone 60° 18 mm x 13 mm' })
    expect([...new Set(svg.match(/[\d.]+ N·m/g))]).toEqual(['100 N·m'])
    expect(alt).toMatch(/^CLAMP FORCE -21\.4 to 42\.2 %\. changes so at the same 100 N·m; typically 10\.86 %\./)
  })

  it('nothing refused or open has a figure', () => {
    for (const raw of [{ ...bolt }, { ...bolt, size: 'M13', k: '0.2' }])
      expect(figureOf(ask('clamp-force', raw), words, 'light')).toBeUndefined()
  })
})

describe('the sheets of bolts', () => {
  it.each<[QuestionName, Raw]>([
    ['clamp-force', { ...bolt, condition: 'dry' }],
    ['clamp-force', { ...bolt, ...frictions }],
    ['clamp-force', { ...bolt, torque: '20000 N·m', condition: 'wax' }],
    ['clamp-force', { ...bolt, torque: '0.5 N·m', condition: 'zinc' }],
    ['clamp-force', { size: '5/8-11', torque: '150.123456 lbf·ft', class: 'SAE 5', condition: 'cadmium' }],
    [
      'clamp-force',
      { size: '#10-32', torque: '32.5 lbf·in', seat: 'flat 0.3 in x 0.2 in', 'mu-threads': '0.02', 'mu-seat': '1' },
    ],
    ['clamp-force', { size: 'M10', torque: '45 N·m', condition: 'dry' }],
    ['bolt-torque', { size: 'M12', class: '8.8', condition: 'oiled' }],
    ['bolt-torque', { size: 'M12', class: '12.9', condition: 'dry', share: '99.5 % of yield' }],
    ['bolt-torque', { size: 'M12', class: '12.9', condition: 'dry', share: '1 % of proof' }],
    ['bolt-torque', { size: 'M36', class: '10.9', ...frictions, share: '66.666667 % of proof' }],
    ['bolt-torque', { size: '1-8', class: 'SAE 8', k: '0.02' }],
    ['lubricant', { torque: '100.123456 lbf·ft', from: 'stainless-dry', to: 'moly', size: '1/2-13', where: 'both' }],
    ['lubricant', { torque: '100 N·m', from: 'phosphate-oiled', to: 'thread-locker', size: 'M12', where: 'threads' }],
    ['lubricant', { torque: '100 N·m', from: 'dry', to: 'dry', size: 'M12', where: 'seat' }],
  ])('%s %j: nothing overlaps or runs off', (question, raw) => {
    expect(clashesOf(sheetOf(question, raw).svg)).toEqual([])
  })

  it.each(themes)('%s has every colour that is used', (theme) => {
    expect(unseenClasses(sheetOf('clamp-force', { ...bolt, ...frictions }, theme).svg)).toEqual([])
    expect(unseenClasses(sheetOf('bolt-torque', { size: 'M12', class: '8.8', condition: 'dry' }, theme).svg)).toEqual(
      [],
    )
  })
})
