// What a check consists of by ISO 6789 (:2003, 6.5 and -1:2017, both from memory), kind by kind and class by class.
import { describe, expect, it } from 'vitest'
import { checkSample } from '../../src/mechanics/check-sample.ts'
import { classesOf, type IsoClass, type IsoType } from '../../src/mechanics/check-verdict.ts'

describe('the sample of a check', () => {
  const rows: ReadonlyArray<readonly [IsoType, IsoClass | undefined, readonly number[], number, number]> = [
    ['indicating', undefined, [0.2, 0.6, 1], 1, 5],
    ['indicating', 'A', [0.2, 0.6, 1], 1, 5],
    ['indicating', 'B', [0.2, 0.6, 1], 1, 5],
    ['indicating', 'C', [0.2, 0.6, 1], 1, 5],
    ['indicating', 'D', [0.2, 0.6, 1], 1, 5],
    ['indicating', 'E', [0.2, 0.6, 1], 1, 5],
    ['setting', undefined, [0.2, 0.6, 1], 5, 5],
    ['setting', 'A', [0.2, 0.6, 1], 5, 5],
    ['setting', 'B', [1], 5, 5],
    ['setting', 'C', [0.2, 0.6, 1], 5, 10],
    ['setting', 'D', [0.2, 0.6, 1], 5, 5],
    ['setting', 'E', [1], 5, 5],
    ['setting', 'F', [0.2, 0.6, 1], 5, 10],
    ['setting', 'G', [0.2, 0.6, 1], 5, 5],
  ]

  it.each(rows)('%s, class %s', (type, isoClass, shares, prePulls, readings) => {
    expect(checkSample(type, isoClass)).toEqual({ shares, prePulls, readings })
  })

  it('names every class', () => {
    const named = rows.flatMap(([type, isoClass]) => (isoClass ? [`${type} ${isoClass}`] : []))
    const all = Object.entries(classesOf).flatMap(([type, classes]) => classes.map((one) => `${type} ${one}`))
    expect(named).toEqual(all)
  })
})
