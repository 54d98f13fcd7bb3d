// The doubt of a torque that is pulled by hand: the worked example, and first order against the real formula drawn at random.
import { describe, expect, it } from 'vitest'
import { cosine, factor, type Lever, type Link, reachAhead, reachAside, sine } from '../../src/mechanics/lever.ts'
import { type LeverDoubt, leverContributions } from '../../src/mechanics/lever-doubt.ts'
import { band95, combined } from '../../src/mechanics/uncertainty.ts'
import { SEED, seeded } from '../support/random.ts'

const INCH = 0.0254
const inchHabits: LeverDoubt = { wrench: 0.04, length: 0.125 * INCH, hand: 0.012, angle: 3, square: 5, pivot: 0 }

const geometry = (L: number, chain: readonly Link[], H = L, p = 0): { lever: Lever; chain: readonly Link[] } => ({
  lever: { L, H, p, X: reachAhead(chain) },
  chain,
})

const straight = geometry(14 * INCH, [{ E: 2 * INCH, theta: 0 }])

describe('the worked example: 14 in with 2 in straight', () => {
  const parts = leverContributions(straight.lever, straight.chain, inchHabits, true)

  it('has u 2.37 %', () => {
    expect(combined(parts) * 100).toBeCloseTo(2.37, 2)
  })

  it('has u 2.35 % without the hand’s term', () => {
    expect(combined(parts.filter(({ name }) => name !== 'hand')) * 100).toBeCloseTo(2.35, 2)
  })

  it('has a band of ±4.0 %', () => {
    expect(band95(parts) * 100).toBeCloseTo(4.0, 1)
  })
})

describe('a contribution', () => {
  const named = (name: string, of: { lever: Lever; chain: readonly Link[] }, follows = true): number[] =>
    leverContributions(of.lever, of.chain, { ...inchHabits, pivot: 0.01 }, follows)
      .filter((part) => part.name === name)
      .map((part) => ('halfWidth' in part ? part.halfWidth : Number.NaN))

  it('of the hand is nothing without an adapter on a wrench that senses at its drive', () => {
    expect(named('hand', geometry(0.4, []))).toEqual([0])
    expect(named('lever', geometry(0.4, []))).toEqual([0])
  })

  it('of the angle and of a pull that is not square is nothing straight ahead, and most at 90°', () => {
    expect(named('angle', straight)).toEqual([0])
    expect(named('square', straight)).toEqual([0])
    const side = geometry(0.4, [{ E: 0.1, theta: 90 }])
    expect(named('adapter', side)).toEqual([0])
    expect(named('angle', side)[0]).toBeCloseTo((0.1 * 3 * Math.PI) / 180 / 0.4, 12)
    expect(named('square', side)[0]).toBeCloseTo((Math.tan((5 * Math.PI) / 180) * 0.1) / 0.4, 12)
  })

  it('of the angle and of a pull that is not square is over the whole lever, reach ahead included', () => {
    const slanted = geometry(0.4, [{ E: 0.1, theta: 60 }])
    const aside = 0.1 * Math.sqrt(0.75)
    expect(named('angle', slanted)[0]).toBeCloseTo((aside * 3 * Math.PI) / 180 / 0.45, 12)
    expect(named('square', slanted)[0]).toBeCloseTo((Math.tan((5 * Math.PI) / 180) * aside) / 0.45, 12)
    expect(named('adapter', slanted)[0]).toBeCloseTo((0.5 * inchHabits.length) / 0.45, 12)
  })

  it('of the pivot is nothing with the hand at the lever, and counts off it', () => {
    expect(named('pivot', geometry(0.4, [], 0.4, 0.03))[0]).toBe(0)
    expect(named('pivot', geometry(0.4, [], 0.3, 0.03), false)[0]).toBeGreaterThan(0)
  })

  it('is given for every link of a chain', () => {
    expect(
      named(
        'adapter',
        geometry(0.4, [
          { E: 0.05, theta: 0 },
          { E: 0.05, theta: 60 },
        ]),
      ),
    ).toHaveLength(2)
  })

  it.each<[string, (lever: Lever, by: number) => Lever, 'lever' | 'hand' | 'pivot', number]>([
    ['lever', (lever, by) => ({ ...lever, L: lever.L + by }), 'lever', inchHabits.length],
    ['hand', (lever, by) => ({ ...lever, H: lever.H + by }), 'hand', inchHabits.hand],
    ['pivot', (lever, by) => ({ ...lever, p: lever.p + by }), 'pivot', 0.01],
  ])('of the %s is the slope of the factor times its half-width', (_, moved, name, halfWidth) => {
    const off = geometry(0.4, [{ E: 0.06, theta: 40 }], 0.33, 0.02)
    const tiny = 1e-7
    const slope = (Math.log(factor(moved(off.lever, tiny))) - Math.log(factor(moved(off.lever, -tiny)))) / (2 * tiny)
    expect(named(name, off, false)[0]).toBeCloseTo(slope * halfWidth, 8)
  })
})

interface Case {
  readonly name: string
  readonly of: { lever: Lever; chain: readonly Link[] }
  readonly follows: boolean
  readonly pivot: number
  /** How far first order may be from the draws, relative to u and to the band. */
  readonly within: number
}

const cases: readonly Case[] = [
  { name: 'straight ahead', of: straight, follows: true, pivot: 0, within: 0.01 },
  { name: 'at 90°', of: geometry(0.4, [{ E: 0.06, theta: 90 }]), follows: true, pivot: 0, within: 0.01 },
  {
    name: 'a chain of three',
    of: geometry(0.4, [
      { E: 0.05, theta: 0 },
      { E: 0.04, theta: 60 },
      { E: 0.06, theta: -120 },
    ]),
    follows: true,
    pivot: 0,
    within: 0.01,
  },
  { name: 'pointing back', of: geometry(0.4, [{ E: 0.08, theta: 180 }]), follows: true, pivot: 0, within: 0.01 },
  {
    name: 'the hand off the grip and the pivot a span',
    of: geometry(0.4, [{ E: 0.05, theta: 30 }], 0.28, 0.024),
    follows: false,
    pivot: 0.016,
    within: 0.01,
  },
]

const DRAWS = 1_000_000

/** T/T₀ of the real formula with every input drawn from its rectangle, in rising order. */
const drawn = ({ of: { lever, chain }, follows, pivot }: Case): Float64Array => {
  const random = seeded(SEED)
  const off = (halfWidth: number): number => (2 * random() - 1) * halfWidth
  const exact = factor(lever)
  const ratios = new Float64Array(DRAWS)
  for (let draw = 0; draw < DRAWS; draw++) {
    const byLever = off(inchHabits.length)
    const L = lever.L + byLever
    const H = lever.H + (follows ? byLever : 0) + off(inchHabits.hand)
    const p = lever.p + off(pivot)
    let X = 0
    let Y = 0
    for (const { E, theta } of chain) {
      const length = E + off(inchHabits.length)
      const turn = theta + off(inchHabits.angle)
      X += length * cosine(turn)
      Y += length * sine(turn)
    }
    // Pulled askew by δ the hand's force has a part along the handle, which turns the fastener by its reach to the side.
    const askew = Math.tan((off(inchHabits.square) * Math.PI) / 180) * Y
    ratios[draw] = ((1 + off(inchHabits.wrench)) * (((L - p) / L) * ((H + X + askew) / (H - p)))) / exact
  }
  return ratios.sort()
}

describe(`a million draws of the real formula (seed ${SEED})`, () => {
  it.each(cases)('agree with u and with the 95 % band: $name', (one) => {
    const doubt = { ...inchHabits, pivot: one.pivot }
    const parts = leverContributions(one.of.lever, one.of.chain, doubt, one.follows)
    const ratios = drawn(one)
    const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / DRAWS
    const u = Math.sqrt(ratios.reduce((sum, ratio) => sum + (ratio - mean) ** 2, 0) / (DRAWS - 1))
    const [low, high] = [ratios[DRAWS * 0.025], ratios[DRAWS * 0.975]] as [number, number]
    expect(mean).toBeCloseTo(1, 2)
    expect(Math.abs(combined(parts) / u - 1), `u ${combined(parts)} and ${u}`).toBeLessThan(one.within)
    const half = (high - low) / 2
    expect(Math.abs(band95(parts) / half - 1), `band ${band95(parts)} and ${half}`).toBeLessThan(one.within)
  })

  it('are about the case that they name: the reach to the side of the chain is not nothing', () => {
    expect(Math.abs(reachAside((cases[2] as Case).of.chain))).toBeGreaterThan(0.01)
  })
})
