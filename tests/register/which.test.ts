// Which wrench can do a torque: what it must be set to, what speaks for and against it, and which is the best.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Entry } from '../../src/register/records.ts'
import { type Candidate, type FitReason, fitReasons, fits, type Wanted, whichWrench } from '../../src/register/which.ts'
import { SEED } from '../support/random.ts'
import { bookOf, card, event, m, nm, tested } from './shop.ts'

const today = '2026-06-01'
const wrench = (tag: string, least: number, most: number, more: object = {}): Entry =>
  card(tag, { least: nm(least), most: nm(most), mark: nm(1), lever: m(380, 'mm'), unit: 'N·m', ...more })
const checked = (tag: string, date = '2026-02-01'): Entry => tested(`c-${tag}`, date, [[60, [60]]], { tag })
const which = (wanted: Wanted, ...entries: readonly Entry[]): readonly Candidate[] =>
  whichWrench(bookOf(...entries), wanted, { today })
const tags = (all: readonly Candidate[]): string[] => all.map(({ folder }) => folder.tag)

describe('one wrench', () => {
  const rows: ReadonlyArray<readonly [FitReason, Wanted, readonly Entry[]]> = [
    ['above-most', { torque: 201 }, [wrench('A', 40, 200), checked('A')]],
    ['below-least', { torque: 41 }, [wrench('A', 42, 200), checked('A')]],
    [
      'lever-unknown',
      { torque: 100, chain: [{ E: 0.05, theta: 0 }] },
      [wrench('A', 40, 200, { lever: undefined }), checked('A')],
    ],
    ['behind-the-hand', { torque: 100, chain: [{ E: 0.4, theta: 180 }] }, [wrench('A', 40, 200), checked('A')]],
    [
      'not-to-be-used',
      { torque: 100 },
      [wrench('A', 40, 200), checked('A'), event('e', 'dropped', '2026-03-01', { tag: 'A' })],
    ],
    ['below-a-fifth', { torque: 39 }, [wrench('A', 10, 200), checked('A')]],
    ['check-due', { torque: 100 }, [wrench('A', 40, 200), checked('A', '2025-02-01')]],
    ['in-range', { torque: 100 }, [wrench('A', 40, 200), checked('A')]],
  ]
  it.each(rows)('%s', (reason, wanted, entries) => {
    const [found] = which(wanted, ...entries)
    expect(found?.why).toEqual([reason])
    expect(found?.fit).toBe(fitReasons[reason])
  })

  it('every reason has a row', () => {
    expect(rows.map(([reason]) => reason)).toEqual(Object.keys(fitReasons))
  })

  it('is set by the lever: 120 N·m with 45 mm ahead of 380 mm is 107.3 N·m, square it is 120', () => {
    const setting = (theta: number) =>
      which({ torque: 120, chain: [{ E: 0.045, theta }] }, wrench('A', 40, 200), checked('A'))[0]?.setting
    expect(setting(0)).toBeCloseTo(107.294, 3)
    expect(setting(90)).toBe(120)
    expect(setting(180)).toBeCloseTo((120 * 380) / 335, 9)
  })

  it('the ends of its range are in it', () => {
    for (const torque of [40, 200]) {
      expect(which({ torque }, wrench('A', 40, 200), checked('A'))[0]?.why).toEqual(['in-range'])
    }
  })

  it('an adapter can bring a torque above its range into it', () => {
    const chain = [{ E: 0.1, theta: 0 }]
    expect(which({ torque: 230, chain }, wrench('A', 40, 200), checked('A'))[0]?.fit).toBe('good')
    expect(which({ torque: 230 }, wrench('A', 40, 200), checked('A'))[0]?.fit).toBe('no')
  })
})

describe('the best first', () => {
  it('what may be used before what is due before what may not; the retired not at all', () => {
    const found = which(
      { torque: 100 },
      wrench('LOST', 40, 200),
      wrench('DUE', 40, 200),
      wrench('GOOD', 40, 200),
      wrench('SMALL', 5, 25),
      wrench('GONE', 40, 200),
      checked('LOST'),
      checked('GOOD'),
      checked('SMALL'),
      event('l', 'lost', '2026-03-01', { tag: 'LOST' }),
      event('r', 'retired', '2026-03-01', { tag: 'GONE' }),
    )
    expect(tags(found).slice(0, 2)).toEqual(['GOOD', 'DUE'])
    expect(found.map(({ fit }) => fit)).toEqual(['good', 'care', 'no', 'no'])
  })

  it('the one with the smaller doubt, then the one nearer the middle of its scale, then as they hang', () => {
    const by = (...made: readonly Entry[]) =>
      tags(which({ torque: 100 }, ...made, ...made.map(({ body }) => checked((body as { tag: string }).tag))))
    expect(by(wrench('A', 40, 200), wrench('B', 40, 200, { tolerance: { share: m(3, '%'), of: 'reading' } }))).toEqual([
      'B',
      'A',
    ])
    expect(by(wrench('A', 40, 200, { mark: nm(5) }), wrench('B', 40, 200))).toEqual(['B', 'A'])
    expect(by(wrench('A', 20, 105), wrench('B', 40, 170))).toEqual(['B', 'A'])
    expect(by(wrench('B-10', 40, 200), wrench('B-9', 40, 200))).toEqual(['B-9', 'B-10'])
  })

  it('of full scale the doubt grows toward the low end', () => {
    const [found] = which(
      { torque: 50 },
      wrench('A', 20, 200, { mark: undefined, tolerance: { share: m(4, '%'), of: 'full-scale' } }),
      checked('A'),
    )
    expect(found?.doubt).toBeCloseTo(0.16, 12)
  })

  it('what fits is never behind what does not, whatever is asked', () => {
    const sizes = fc.array(fc.tuple(fc.integer({ min: 1, max: 100 }), fc.integer({ min: 1, max: 300 })), {
      minLength: 1,
      maxLength: 6,
    })
    fc.assert(
      fc.property(
        sizes,
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: -180, max: 180 }),
        (all, torque, theta) => {
          const made = all.map(([least, more], place) => wrench(`T${place}`, least, least + more))
          const found = which(
            { torque, chain: [{ E: 0.05, theta }] },
            ...made,
            ...made.map((_, place) => checked(`T${place}`)),
          )
          const ranks = found.map(({ fit }) => fits.indexOf(fit))
          expect(ranks).toEqual([...ranks].sort((one, other) => one - other))
          for (const { fit, setting = 0, folder } of found) {
            const { least, most } = folder.card.entry.body
            const inside = setting >= (least?.value ?? 0) - 1e-6 && setting <= most.value + 1e-6
            expect(fit === 'no').toBe(!inside)
          }
        },
      ),
      { seed: SEED, numRuns: 200 },
    )
  })
})
