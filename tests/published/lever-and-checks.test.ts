// Adapters, hands, units, deviation, decision rules and uncertainty against what manuals, standards and guides print.
// Tolerance: half of the last printed digit. Rows from memory say so and are never the only check of a formula.
import { describe, expect, it } from 'vitest'
import { agrees, type Cell, told } from './agreement.ts'
import rows from './lever-and-checks.json' with { type: 'json' }
import { checks } from './lever-checks.ts'
import { knownGaps, notAsked } from './lever-gaps.ts'

interface Row {
  readonly id: string
  readonly topic: string
  readonly inputs: Readonly<Record<string, unknown>>
  readonly expected: Readonly<Record<string, Cell>>
  readonly source: { readonly title: string; readonly standing: string }
}

const published = rows as unknown as readonly Row[]

// Where the print rounds to something else than its last digit shows.
const otherDigits: Readonly<Record<string, number>> = {
  'adp-13 printed_effective_adapter_length_in': 1 / 8,
  'adp-12 printed_quotient': 0.1,
  'gum-01 printed_contrib_nm': 0.1,
  'gum-01 recomputed_contrib_nm': 0.02,
  'gum-01 second_order_nm': 0.02,
}

const text = (value: unknown): string => String(value)
const lastDigit = (value: unknown): number => {
  const [, decimals = ''] = /\.(\d+)/.exec(text(value)) ?? []
  return 10 ** -decimals.length
}
const digitOf = (id: string, cell: string, printed: Cell): number => {
  const other = otherDigits[`${id} ${cell}`]
  if (other !== undefined) return other
  return Array.isArray(printed) ? Math.min(...printed.map(lastDigit)) : lastDigit(printed)
}
// Long decimals stand as texts, so that no digit is lost on the way here; seven-figure prints carry an exponent.
const numeric = (printed: Cell): Cell => (typeof printed === 'string' ? Number(printed) : printed)
const stepOf = (id: string, cell: string, printed: Cell): number => {
  if (typeof printed !== 'string') return digitOf(id, cell, printed)
  const exponent = /E([+-]\d+)$/.exec(printed)?.[1]
  return exponent === undefined ? 0 : 10 ** (Number(exponent) - (/\.(\d+)/.exec(printed)?.[1] ?? '').length)
}

const listed = (list: ReadonlyArray<{ id: string; cell: string }>, id: string, cell: string): boolean =>
  list.some((one) => one.id === id && one.cell === cell)
const workedOut = (row: Row) => checks[row.topic]?.(row.inputs) ?? {}

describe('levers, checks and units as published', () => {
  it('has 42 rows, each once, with a topic that is worked out or a reason', () => {
    expect(published).toHaveLength(42)
    expect(new Set(published.map(({ id }) => id)).size).toBe(42)
    for (const row of published) {
      const open = Object.keys(row.expected).filter((cell) => !listed(notAsked, row.id, cell))
      expect(open.length === 0 || checks[row.topic] !== undefined, row.topic).toBe(true)
      expect(['published', 'from memory', 'worked out']).toContain(row.source.standing)
    }
  })

  for (const row of published) {
    const cells = Object.keys(row.expected).filter(
      (cell) => !listed(knownGaps, row.id, cell) && !listed(notAsked, row.id, cell),
    )
    if (cells.length === 0) continue
    it(`${row.id} comes out as printed (${row.source.standing}: ${row.source.title})`, () => {
      const worked = workedOut(row)
      const misses = cells
        .filter(
          (cell) =>
            !agrees(
              worked[cell],
              numeric(row.expected[cell] as Cell),
              stepOf(row.id, cell, row.expected[cell] as Cell),
            ),
        )
        .map((cell) => `${cell}: worked out ${told(worked[cell])}, printed ${told(row.expected[cell])}`)
      expect(misses).toEqual([])
    })
  }
})

describe('known gaps against print, and what is not asked here', () => {
  it('each name a printed cell once, with a reason', () => {
    const all = [...knownGaps, ...notAsked]
    expect(new Set(all.map(({ id, cell }) => `${id} ${cell}`)).size).toBe(all.length)
    for (const { id, cell, reason } of all) {
      expect(published.find((row) => row.id === id)?.expected, `${id} ${cell}`).toHaveProperty([cell])
      expect(reason.length).toBeGreaterThan(20)
    }
  })

  for (const gap of knownGaps) {
    it(`${gap.id}, ${gap.cell} still disagrees: ${gap.reason}`, () => {
      const row = published.find(({ id }) => id === gap.id) as Row
      const printed = row.expected[gap.cell] as Cell
      const value = workedOut(row)[gap.cell]
      expect(value, 'a gap is worked out all the same').toBeDefined()
      expect(agrees(value, numeric(printed), stepOf(gap.id, gap.cell, printed)), 'it agrees now: take it off').toBe(
        false,
      )
    })
  }
})
