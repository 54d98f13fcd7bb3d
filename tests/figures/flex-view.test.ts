// The hinged head from the side: tilt, hinge and arm to scale, and the places where the wrench may sense.
import { describe, expect, it } from 'vitest'
import { placeIn } from '../../src/figures/flex-view.ts'
import { themes } from '../../src/figures/theme.ts'
import { languages } from '../../src/words/index.ts'
import { clashesOf, cornersOf, numberAt, type Shape, shapesOf, sheetOf, unseenClasses } from '../support/sheet.ts'

const words = languages.en.words.figures
const draw = (raw: Readonly<Record<string, string>>, theme: (typeof themes)[number] = 'light') =>
  sheetOf('flex-head', { torque: '60 N·m', lever: '400 mm', ...raw }, theme)

const ofClass = (svg: string, name: string, cls: string): Shape[] =>
  shapesOf(svg).filter((one) => one.name === name && one.at.class === cls)
/** The handle runs from the hand to the hinge: the thin bar. */
const handleOf = (svg: string) => {
  const found = ofClass(svg, 'line', 'bar').find((one) => one.at['stroke-width'] === '16') as Shape
  return { x1: numberAt(found, 'x1'), y1: numberAt(found, 'y1'), x2: numberAt(found, 'x2'), y2: numberAt(found, 'y2') }
}
const driveOf = (svg: string): number => {
  const nut = ofClass(svg, 'rect', 'nut')[0] as Shape
  return numberAt(nut, 'x') + numberAt(nut, 'width') / 2
}
/** Lozenges of the sensing, that of the legend left out. */
const marksOf = (svg: string) =>
  ofClass(svg, 'polygon', 'paper rule')
    .map((one) => cornersOf(one))
    .filter((corners) => (corners[0]?.x ?? 0) > 60)

describe('the geometry of a tilted head', () => {
  const tilts = [0, 2.5, 5, 10, 15, 20, 30, 37.5, 45, 60, 70, 80]

  it.each(tilts)('%d°: the handle rises by the tilt that was asked', (tilt) => {
    const { x1, y1, x2, y2 } = handleOf(draw({ tilt: `${tilt}°`, hinge: '30 mm' }).svg)
    expect((Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI).toBeCloseTo(tilt, 0)
  })

  it.each([
    ['0 mm', 15],
    ['30 mm', 45],
    ['200 mm', 60],
    ['390 mm', 30],
  ])('hinge %s, tilt %d°: hinge and arm lie where they do, to one scale', (hinge, tilt) => {
    const { svg, answer } = draw({ tilt: `${tilt}°`, hinge })
    const { x1, y1, x2, y2 } = handleOf(svg)
    const behind = 400 - Number.parseFloat(hinge)
    const scale = Math.hypot(x2 - x1, y2 - y1) / behind
    expect(Math.abs((driveOf(svg) - x2) / scale - Number.parseFloat(hinge))).toBeLessThan(3)
    expect(Math.abs((driveOf(svg) - x1) / scale - (answer.steps[0]?.value ?? 0))).toBeLessThan(3)
  })

  it('the hand is a ring with a cross at the end of the lever', () => {
    const { svg } = draw({ tilt: '30°' })
    const ring = ofClass(svg, 'circle', 'ring')[0] as Shape
    const { x1, y1 } = handleOf(svg)
    expect(numberAt(ring, 'cx')).toBe(x1)
    expect(numberAt(ring, 'cy')).toBe(y1)
    expect(ofClass(svg, 'line', 'pull')).toHaveLength(2)
  })
})

describe('where it senses', () => {
  it.each([
    ['ahead', 1, words.sensesAhead],
    ['behind', 1, words.sensesBehind],
    [undefined, 2, words.sensesUnknown],
  ])('%s: %d places marked, and said', (sensing, count, told) => {
    const { svg, alt } = draw({ tilt: '20°', hinge: '60 mm', ...(sensing ? { sensing } : {}) })
    const marks = marksOf(svg)
    expect(marks).toHaveLength(count)
    expect(svg).toContain(`>${told}</text>`)
    expect(alt).toContain(told)
    const pin = handleOf(svg).x2
    const ahead = marks.map((corners) => (corners[0]?.x ?? 0) > pin)
    expect(ahead).toEqual(sensing === undefined ? [true, false] : [sensing === 'ahead'])
  })
})

describe('what the sheet of a tilted head says', () => {
  it('the span where the place is not known, the torque where it is', () => {
    expect(draw({ tilt: '15°' }).svg).toContain('>58 to 60 N·m</text>')
    expect(draw({ tilt: '15°', sensing: 'behind' }).svg).toContain('>58 N·m</text>')
  })

  it('all of it in words for those who do not see it', () => {
    expect(draw({ tilt: '45°', hinge: '40 mm', sensing: 'behind' }).alt).toBe(
      'GETS 44.2 N·m. at the fastener: set to 60 N·m, tilted by 45°. pull 150 N; with the handle straight 150 N. ' +
        'The wrench from the side: the head square to the fastener, the handle tilted up by 45° at its hinge. ' +
        'The hand pulls into the picture, square to the handle, 400 mm out along the wrench. ' +
        '295 mm arm. hinge 40 mm from the drive. senses behind the hinge.',
    )
  })

  it('a hinge that nobody gave is said to be taken', () => {
    expect(draw({ tilt: '15°' }).alt).toContain(words.hingeTaken)
    expect(draw({ tilt: '15°', hinge: '0 mm' }).alt).toContain('hinge 0 mm from the drive')
  })
})

describe('the sheet of a tilted head', () => {
  const tilts = ['0°', '1°', '5°', '15°', '30°', '45°', '60°', '72.25°', '80°']
  const hinges = [undefined, '0 mm', '30 mm', '150 mm', '399 mm']
  const all = tilts.flatMap((tilt) => hinges.map((hinge) => [tilt, hinge] as const))
  it.each(all)('tilt %s, hinge %s: nothing overlaps or runs off', (tilt, hinge) => {
    expect(clashesOf(draw({ tilt, ...(hinge ? { hinge } : {}) }).svg)).toEqual([])
  })

  it.each([
    { torque: '123.4567 lbf·in', lever: '16.0625 in', tilt: '33.3333°', hinge: '1.0625 in' },
    { torque: '2000 N·m', lever: '3 m', tilt: '80°', hinge: '123.4567 mm' },
    { torque: '0.5 N·m', lever: '20 mm', tilt: '79.99°', hinge: '19 mm' },
    { torque: '60 lbf·ft', lever: `1' 4 1/2"`, tilt: '12.5°' },
  ])('%j: long or small, it stays on the sheet', (raw) => {
    expect(clashesOf(draw(raw).svg)).toEqual([])
  })

  it.each(themes)('%s has every colour that is used', (theme) => {
    expect(unseenClasses(draw({ tilt: '30°' }, theme).svg)).toEqual([])
  })
})

describe('a label between lines', () => {
  it.each<[string, readonly (readonly [number, number])[], number, number, number | undefined]>([
    ['stands where it is wanted', [[0, 100]], 50, 20, 50],
    ['keeps inside its gap', [[0, 100]], 95, 20, 90],
    [
      'takes the next gap where the first is too narrow',
      [
        [0, 10],
        [20, 60],
      ],
      5,
      20,
      30,
    ],
    ['is left out where none holds it', [[0, 10]], 5, 20, undefined],
  ])('%s', (_, gaps, wanted, width, middle) => {
    expect(placeIn(gaps, wanted, width)).toBe(middle)
  })
})
