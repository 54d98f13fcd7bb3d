// Torque and clamp force through one number: the worked example, the round trip, ratios of spans, the interval for the next bolt.
import { describe, expect, it } from 'vitest'
import { clampForTorque, nextBolt, nutFactorOf, ratioOf, torqueForClamp } from '../../src/mechanics/nut-factor.ts'
import { SEED, seeded } from '../support/random.ts'

describe('the nut factor', () => {
  it('of the worked example: K 0.3, 0.19 in, 1275 lbf: 72.7 lbf·in', () => {
    expect(torqueForClamp(0.3, 0.19, 1275)).toBeCloseTo(72.7, 1)
  })

  it('is had back from torque and clamp force, and so is the clamp force', () => {
    const torque = torqueForClamp(0.18, 0.012, 25_000)
    expect(nutFactorOf(torque, 0.012, 25_000)).toBeCloseTo(0.18, 12)
    expect(clampForTorque(0.18, 0.012, torque)).toBeCloseTo(25_000, 8)
  })
})

describe('the ratio of two spans', () => {
  it('goes from the lowest over the highest to the highest over the lowest', () => {
    expect(ratioOf({ low: 0.1, typical: 0.15, high: 0.2 }, { low: 0.2, typical: 0.3, high: 0.4 })).toEqual({
      low: 0.25,
      typical: 0.5,
      high: 1,
    })
  })

  it('of a span with itself holds 1 and is not 1', () => {
    const span = { low: 0.1, typical: 0.2, high: 0.4 }
    expect(ratioOf(span, span)).toEqual({ low: 0.25, typical: 1, high: 4 })
  })
})

describe('the next bolt', () => {
  it('lies at the mean, with no interval, from one value alone', () => {
    expect(nextBolt([0.18])).toEqual({ mean: 0.18 })
  })

  it('lies within t s √(1 + 1/n) of the mean: 0.18, 0.20, 0.22 give 0.20 ± 0.0994', () => {
    const { mean, halfWidth } = nextBolt([0.18, 0.2, 0.22])
    expect(mean).toBeCloseTo(0.2, 12)
    expect(halfWidth).toBeCloseTo(4.302_65 * 0.02 * Math.sqrt(4 / 3), 6)
  })

  it('has a wider interval than the mean has', () => {
    const values = [0.18, 0.2, 0.22, 0.19, 0.21]
    const s = Math.sqrt(0.000_25)
    expect(nextBolt(values).halfWidth ?? 0).toBeGreaterThan(2.776 * s)
  })

  it('lies inside in 95 of 100 draws', () => {
    const random = seeded(SEED)
    const gauss = (): number => 0.2 + 0.02 * Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
    const trials = 20_000
    let inside = 0
    for (let trial = 0; trial < trials; trial++) {
      const { mean, halfWidth = 0 } = nextBolt([gauss(), gauss(), gauss(), gauss(), gauss()])
      if (Math.abs(gauss() - mean) <= halfWidth) inside++
    }
    // Four standard deviations of a count of 20 000 at 95 %: 0.6 %.
    expect(inside / trials).toBeGreaterThan(0.944)
    expect(inside / trials).toBeLessThan(0.956)
  })
})
