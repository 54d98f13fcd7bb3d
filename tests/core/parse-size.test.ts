// Thread sizes as people write them: diameter, pitch and the name they are shown under.
import { describe, expect, it } from 'vitest'
import { parseSize } from '../../src/core/parse-size.ts'
import { units } from '../../src/core/unit.ts'

describe('a metric size is read', () => {
  it.each<[string, string, number, number | undefined]>([
    ['M12', 'M12', 12, undefined],
    ['m12', 'M12', 12, undefined],
    ['M 12', 'M12', 12, undefined],
    [' M12 ', 'M12', 12, undefined],
    ['M12x1.5', 'M12x1.5', 12, 1.5],
    ['M12 x 1.5', 'M12x1.5', 12, 1.5],
    ['M12 × 1,5', 'M12x1.5', 12, 1.5],
    ['M12-1.25', 'M12x1.25', 12, 1.25],
    ['M12*1.75', 'M12x1.75', 12, 1.75],
    ['M2.5', 'M2.5', 2.5, undefined],
    ['M2,5x0.45', 'M2.5x0.45', 2.5, 0.45],
  ])('%j as %s', (text, name, diameter, pitch) => {
    const size = parseSize(text, 'size')
    expect(size).toEqual({
      ok: true,
      value: {
        name,
        diameter: { value: diameter, unit: units.mm },
        ...(pitch === undefined ? {} : { pitch: { value: pitch, unit: units.mm } }),
      },
    })
  })
})

describe('an inch size is read', () => {
  it.each<[string, string, number, number]>([
    ['3/8-16', '3/8-16', 0.375, 16],
    ['3/8-16 UNC', '3/8-16', 0.375, 16],
    ['3/8 - 24 unf', '3/8-24', 0.375, 24],
    ['1-8', '1-8', 1, 8],
    ['1 1/4-7', '1 1/4-7', 1.25, 7],
    ['1-1/4-7', '1-1/4-7', 1.25, 7],
    ['1/2"-13', '1/2-13', 0.5, 13],
    ['1/4 in-20', '1/4-20', 0.25, 20],
    ['#10-32', '#10-32', 0.19, 32],
    ['No. 10-24', '#10-24', 0.19, 24],
    ['#6-32 UNC', '#6-32', 0.138, 32],
    ['#0-80', '#0-80', 0.06, 80],
  ])('%j as %s, %d in with %d threads', (text, name, diameter, threads) => {
    const size = parseSize(text, 'size')
    expect(size).toMatchObject({ ok: true, value: { name } })
    if (!size.ok) return
    expect(size.value.diameter.value).toBeCloseTo(diameter, 12)
    expect(size.value.pitch?.value).toBeCloseTo(1 / threads, 12)
    expect(size.value.diameter.unit).toBe(units.in)
  })
})

describe('a size is refused', () => {
  it.each([
    ['', 'empty', 'nothing was typed'],
    ['12', 'not-a-size', 'a bare number may be a head'],
    ['12 mm', 'not-a-size', 'a length may be a head'],
    ['M0', 'not-a-size', 'no diameter'],
    ['M12x12', 'not-a-size', 'a pitch as large as the thread'],
    ['M12x0', 'not-a-size', 'no pitch'],
    ['M12x1.5x30', 'not-a-size', 'a length behind the pitch'],
    ['3/8', 'not-a-size', 'no threads'],
    ['3/0-16', 'not-a-size', 'a part of nothing'],
    ['3/8-0', 'not-a-size', 'no threads to the inch'],
    ['#10', 'not-a-size', 'no threads'],
    ['1/8-6', 'not-a-size', 'a pitch larger than the thread'],
    ['17 mm head', 'not-a-size', 'the head, not the thread'],
    ['M12                        x1.5', 'not-a-size', 'longer than any size'],
  ])('%j as %s: %s', (text, tell) => {
    expect(parseSize(text, 'size')).toMatchObject({ ok: false, faults: [{ tell, input: 'size' }] })
  })
})
