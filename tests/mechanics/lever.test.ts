// The lever with its adapters: the worked example, what must hold whatever the numbers, and the edges of the formula.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  cosine,
  effectiveLever,
  factor,
  type Lever,
  pivotFrom,
  pullFor,
  reachAhead,
  reachAside,
  settingFor,
  settingForHead,
  sine,
  torqueAt,
} from '../../src/mechanics/lever.ts'
import { SEED } from '../support/random.ts'

const lever = (L: number, X: number, H = L, p = 0): Lever => ({ L, H, p, X })
const runs = { seed: SEED, numRuns: 1000 }
const metres = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('the lever', () => {
  it('gives the worked example: 40 lbf·ft through 4 in straight on 12 in is set as 30', () => {
    expect(settingFor(40, lever(12, reachAhead([{ E: 4, theta: 0 }])))).toBe(30)
  })

  it('with an adapter square to the wrench changes nothing at all, whatever its length', () => {
    for (const E of [0.01, 0.05, 1, 10]) {
      for (const theta of [90, -90]) {
        expect(reachAhead([{ E, theta }])).toBe(0)
        expect(settingFor(77, lever(0.4, reachAhead([{ E, theta }])))).toBe(77)
      }
    }
  })

  it('points back with a setting above the torque, and a torque below the reading', () => {
    const back = lever(14, reachAhead([{ E: 2, theta: 180 }]))
    expect(settingFor(100, back)).toBeCloseTo(116.6667, 4)
    expect(torqueAt(100, back)).toBeCloseTo(85.7143, 4)
  })

  it('with the hand at its own mark does not care where it trips', () => {
    for (const p of [0, 0.01, 0.1, 0.39]) expect(factor(lever(0.4, 0.05, 0.4, p))).toBeCloseTo(0.45 / 0.4, 12)
  })

  it('adds up a chain along the wrench and to the side, every angle from straight ahead of the wrench', () => {
    const chain = [
      { E: 0.05, theta: 0 },
      { E: 0.04, theta: 90 },
      { E: 0.03, theta: 180 },
      { E: 0.02, theta: -60 },
    ]
    expect(reachAhead(chain)).toBeCloseTo(0.05 - 0.03 + 0.01, 12)
    expect(reachAside(chain)).toBeCloseTo(0.04 - 0.02 * Math.sqrt(0.75), 12)
    expect(reachAhead([])).toBe(0)
  })

  it('gives the torque back that a setting was made for', () => {
    fc.assert(
      fc.property(
        metres(1, 500),
        metres(0.1, 1),
        metres(-0.09, 0.5),
        metres(0.08, 1.5),
        metres(0, 0.07),
        (T, L, X, H, p) => {
          fc.pre(H + X > 0.001)
          expect(torqueAt(settingFor(T, lever(L, X, H, p)), lever(L, X, H, p)) / T).toBeCloseTo(1, 12)
        },
      ),
      runs,
    )
  })

  it('does not care for the unit of length', () => {
    fc.assert(
      fc.property(metres(0.1, 1), metres(0, 0.5), metres(0.1, 1.5), metres(0, 0.05), (L, X, H, p) => {
        const inches = lever(L / 0.0254, X / 0.0254, H / 0.0254, p / 0.0254)
        expect(factor(inches) / factor(lever(L, X, H, p))).toBeCloseTo(1, 12)
      }),
      runs,
    )
  })

  it('asks for a lower setting the farther ahead an adapter reaches, at every angle on both sides alike', () => {
    let last = 0
    for (let theta = 0; theta <= 180; theta += 5) {
      const setting = settingFor(100, lever(0.4, reachAhead([{ E: 0.1, theta }])))
      expect(setting).toBeGreaterThan(last)
      expect(settingFor(100, lever(0.4, reachAhead([{ E: 0.1, theta: -theta }])))).toBeCloseTo(setting, 12)
      last = setting
    }
  })

  it('shows why the quoted T (1 − E/L) is low by exactly (E/L)²', () => {
    const exact = settingFor(100, lever(16, 2))
    expect((100 * (1 - 2 / 16)) / exact).toBeCloseTo(1 - (2 / 16) ** 2, 12)
  })

  it('shows why the quoted T/(1 + E in feet) holds for a 12 in lever only', () => {
    expect(settingFor(100, lever(12, 3))).toBeCloseTo(100 / 1.25, 12)
    expect(settingFor(100, lever(15, 3))).not.toBeCloseTo(100 / 1.25, 1)
  })

  it('undoes a special-tool figure and does it again for another lever', () => {
    const torque = torqueAt(76, lever(0.345, 0.08))
    expect(settingFor(torque, lever(0.345, 0.08))).toBeCloseTo(76, 12)
    expect(settingFor(torque, lever(0.5, 0.08))).toBeGreaterThan(76)
  })

  it('is pulled at hand plus reach, with a force that falls as the hand goes out', () => {
    expect(effectiveLever({ H: 10, X: 2 })).toBe(12)
    expect(pullFor(50, 1)).toBe(50)
    expect(pullFor(50, 0.5)).toBe(100)
  })
})

describe('the hand off the grip centre', () => {
  it.each([
    [-0.05, 1.1719],
    [-0.01, 0.2083],
    [0.01, -0.1974],
    [0.05, -0.8929],
  ])('400 mm, pivot 30 mm, moved by %d m: %d %%', (shift, percent) => {
    expect((factor(lever(0.4, 0, 0.4 + shift, 0.03)) - 1) * 100).toBeCloseTo(percent, 4)
  })

  it('means nothing to a wrench that senses at its drive', () => {
    for (const H of [0.1, 0.3, 0.4, 1, 10]) expect(factor(lever(0.4, 0, H, 0))).toBeCloseTo(1, 12)
  })

  it('rises without limit toward the pivot, and never falls below (L − p)/L farther out', () => {
    expect(factor(lever(0.4, 0, 0.030_001, 0.03))).toBeGreaterThan(1000)
    expect(factor(lever(0.4, 0, 1e9, 0.03))).toBeCloseTo(0.37 / 0.4, 6)
    expect(factor(lever(0.4, 0, 1e9, 0.03))).toBeGreaterThanOrEqual(0.37 / 0.4)
  })

  it('tells the pivot that made two pulls differ', () => {
    fc.assert(
      fc.property(metres(0.2, 1), metres(0.3, 0.9), metres(0, 0.2), (L, share, offset) => {
        const [H, p] = [L * share, L * offset]
        expect(pivotFrom(L, H, factor(lever(L, 0, H, p)))).toBeCloseTo(p, 9)
      }),
      runs,
    )
  })

  it('tells no pivot from two equal pulls', () => {
    expect(pivotFrom(0.4, 0.2, 1)).toBeCloseTo(0, 12)
  })
})

describe('an interchangeable head', () => {
  it('that is longer lowers the setting, one that is shorter raises it, the same one leaves it', () => {
    expect(settingForHead(108, 14, 1.12)).toBeCloseTo(100, 12)
    expect(settingForHead(100, 14, -1)).toBeCloseTo(107.6923, 4)
    expect(settingForHead(100, 14, 0)).toBe(100)
  })

  it('is an adapter by its change', () => {
    expect(settingForHead(100, 14, 2)).toBeCloseTo(settingFor(100, lever(14, 2)), 12)
  })
})

describe('cosine and sine of degrees', () => {
  it('are exact where a wrench is square, and the platform’s own elsewhere', () => {
    expect([cosine(90), cosine(-90), sine(180), sine(-180)]).toEqual([0, 0, 0, 0])
    expect(cosine(60)).toBeCloseTo(0.5, 12)
    expect(sine(30)).toBeCloseTo(0.5, 12)
    expect([cosine(0), cosine(180), sine(90)]).toEqual([1, -1, 1])
  })
})
