// The safe side as properties: friction never raises a torque, bands hold their middle, units do not matter, refusals are approached smoothly.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fromSi, quantity } from '../../src/core/quantity.ts'
import { writeQuantity } from '../../src/core/quantity-text.ts'
import { units } from '../../src/core/unit.ts'
import type { QuestionName } from '../../src/questions/index.ts'
import { conditions, conditionTable } from '../../src/tables/conditions.ts'
import { testDesk } from '../support/doors.ts'
import { SEED as seed } from '../support/random.ts'

const desk = testDesk()
type Shown = { value: number; low?: number; high?: number; unit: string }
const results = (question: QuestionName, raw: Readonly<Record<string, string>>): Record<string, Shown> => {
  const answer = desk.ask(question, raw, { door: 'terminal' })
  if (answer.status !== 'answered') throw new Error(`${question} ${JSON.stringify(raw)} ${answer.headline}`)
  return answer.results as unknown as Record<string, Shown>
}
const condition = fc.constantFrom(...conditions)
const torque = fc.integer({ min: 5, max: 800 })
const sizes = fc.constantFrom('M6', 'M8', 'M10', 'M12', 'M16', 'M20', '1/4-20', '3/8-16', '1/2-13', '5/8-11')
const check = <T>(arbitrary: fc.Arbitrary<T>, property: (value: T) => void): void =>
  fc.assert(fc.property(arbitrary, property), { seed, numRuns: 300 })

describe('lubricant', () => {
  it('never shows a torque above the asked one for a slipperier state, whatever the place', () => {
    check(
      fc.tuple(condition, condition, torque, fc.constantFrom(undefined, 'both', 'threads', 'seat')),
      ([from, to, T, where]) => {
        const place: Record<string, string> = where ? { where, size: 'M12' } : {}
        const shown = results('lubricant', { torque: `${T} N·m`, from, to, ...place })
        const { value = 0, low = 0, high = 0 } = shown['reduced-torque'] ?? { value: 0, unit: '' }
        if (conditionTable[to].typical >= conditionTable[from].typical) return
        expect(high).toBeLessThanOrEqual(T * (1 + 1e-12))
        expect(low <= value && value <= high).toBe(true)
      },
    )
  })

  it('carries no number in its headline where the span is wider than two to one, or where friction does not fall', () => {
    check(fc.tuple(condition, condition, torque), ([from, to, T]) => {
      const answer = desk.ask('lubricant', { torque: `${T} N·m`, from, to }, { door: 'terminal' })
      const { low = 0, high = 0, value } = answer.results['reduced-torque'] as unknown as Shown
      const quiet = from !== to && (high > 2 * low * (1 + 1e-9) || value >= T)
      if (quiet) expect(answer.headline).not.toMatch(/\d/)
    })
  })
})

describe('bolts', () => {
  it('more friction never clamps more', () => {
    check(
      fc.tuple(
        sizes,
        torque,
        fc.double({ min: 0.05, max: 0.6, noNaN: true }),
        fc.double({ min: 0.001, max: 0.3, noNaN: true }),
      ),
      ([size, T, k, more]) => {
        const clamp = (K: number): number =>
          results('clamp-force', { size, torque: `${T} N·m`, k: K.toFixed(5) })['clamp-force']?.value ?? 0
        expect(clamp(k + more)).toBeLessThanOrEqual(clamp(k) * (1 + 1e-9))
      },
    )
  })

  it('the highest torque cannot pass the share, and no torque comes from high friction', () => {
    check(
      fc.tuple(
        fc.constantFrom('M8', 'M10', 'M12', 'M16'),
        fc.constantFrom('8.8', '10.9', '12.9'),
        condition,
        fc.integer({ min: 20, max: 100 }),
      ),
      ([size, cls, state, share]) => {
        const shown = results('bolt-torque', { size, class: cls, condition: state, share: `${share} % of proof` })
        const highest = shown['highest-torque']?.value ?? 0
        const clamp = results('clamp-force', {
          size,
          torque: writeQuantity(quantity(highest, units['N·m'])),
          condition: state,
          class: cls,
        })
        expect(clamp['proof-share']?.high ?? 0).toBeLessThanOrEqual(share * (1 + 1e-6))
        expect(shown.torque?.low).toBe(highest)
        expect(shown.torque?.high).toBe(shown.torque?.value)
      },
    )
  })
})

describe('levers', () => {
  const lengths = fc.tuple(fc.integer({ min: 150, max: 900 }), fc.integer({ min: 10, max: 140 }))

  it('a longer adapter in front never raises the setting', () => {
    check(fc.tuple(lengths, fc.integer({ min: 1, max: 50 }), torque), ([[L, E], more, T]) => {
      const S = (adapter: number): number =>
        results('adapter-setting', { torque: `${T} N·m`, lever: `${L} mm`, adapter: `${adapter} mm@0` }).setting
          ?.value ?? 0
      expect(S(E + more)).toBeLessThan(S(E))
    })
  })

  it('bands hold their middle, and reading undoes setting', () => {
    check(fc.tuple(lengths, fc.integer({ min: -180, max: 180 }), torque), ([[L, E], angle, T]) => {
      const adapter = `${E} mm@${angle}`
      const { setting, torque: got } = results('adapter-setting', { torque: `${T} N·m`, lever: `${L} mm`, adapter })
      expect((got?.low ?? 0) < (got?.value ?? 0) && (got?.value ?? 0) < (got?.high ?? 0)).toBe(true)
      const back = results('adapter-reading', {
        reading: writeQuantity(quantity(setting?.value ?? 0, units['N·m'])),
        lever: `${L} mm`,
        adapter,
      })
      expect(back.torque?.value).toBeCloseTo(T, 6)
    })
  })

  it('unit systems agree', () => {
    check(fc.tuple(lengths, fc.integer({ min: -180, max: 180 }), torque), ([[L, E], angle, T]) => {
      const metric = results('adapter-setting', {
        torque: `${T} N·m`,
        lever: `${L} mm`,
        adapter: `${E} mm@${angle}`,
        tolerance: '4 %',
      })
      const inch = results('adapter-setting', {
        torque: writeQuantity(fromSi(T, units['lbf·ft'])),
        lever: writeQuantity(fromSi(L / 1000, units.in)),
        adapter: `${writeQuantity(fromSi(E / 1000, units.in))}@${angle}`,
      })
      expect((inch.setting?.value ?? 0) * units['lbf·ft'].factor).toBeCloseTo(metric.setting?.value ?? 1, 6)
    })
  })

  it('the setting grows without a jump up to the refusal behind the hand', () => {
    let before = 0
    for (let E = 100; E <= 370; E += 1) {
      const S =
        results('adapter-setting', { torque: '100 N·m', lever: '400 mm', adapter: `${E} mm@180` }).setting?.value ?? 0
      expect(S).toBeGreaterThan(before)
      before = S
    }
    const close = (adapter: string) =>
      desk.ask('adapter-setting', { torque: '100 N·m', lever: '400 mm', adapter }, { door: 'terminal' })
    // Nearer to the hand than this, slips of hand and rule are more than half the torque: no number is given.
    for (const adapter of ['385 mm@180', '395 mm@180', '399.9999 mm@180'])
      expect(close(adapter)).toMatchObject({ status: 'refused', faults: [{ code: 'out-of-range', input: 'adapter' }] })
    expect(close('400 mm@180')).toMatchObject({ status: 'refused', faults: [{ code: 'behind-the-hand' }] })
  })
})
