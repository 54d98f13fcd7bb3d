// Friction, clamp force and strength against what books, standards and tables print. Tolerance: half of the last printed digit.
import { describe, expect, it } from 'vitest'
import { agrees, told } from './agreement.ts'
import rows from './friction-and-preload.json' with { type: 'json' }
import { type Cell, type Cells, checks } from './friction-checks.ts'
import { knownGaps } from './friction-gaps.ts'

interface Row {
  readonly id: string
  readonly topic: string
  readonly inputs: Readonly<Record<string, unknown>>
  readonly expected: Readonly<Record<string, Cell>>
  readonly rounding: string
  /** Step of the last printed digit, of the row or of each cell; 0 where the print is exact. */
  readonly digit: number | Readonly<Record<string, number>>
  readonly note?: string
  readonly source: { readonly title: string; readonly standing: string }
}

const published = rows as unknown as readonly Row[]
const STANDINGS = ['published', 'from memory', 'worked out']

const digitOf = ({ digit }: Row, cell: string): number =>
  typeof digit === 'number' ? digit : (digit[cell] ?? Number.NaN)

const workedOut = (row: Row): Cells => {
  const check = checks[row.topic]
  if (!check) throw new Error(`nobody works out ${row.topic}`)
  return check(row.inputs, row.expected as Record<string, number>, row.id)
}

const isGap = (id: string, cell: string): boolean => knownGaps.some((gap) => gap.id === id && gap.cell === cell)

describe('friction and preload as published', () => {
  it('has 234 rows, each once, with a topic that is worked out and a standing', () => {
    expect(published).toHaveLength(234)
    expect(new Set(published.map(({ id }) => id)).size).toBe(234)
    expect(new Set(published.map(({ topic }) => topic))).toEqual(new Set(Object.keys(checks)))
    for (const { source } of published) expect(STANDINGS).toContain(source.standing)
    expect(published.filter(({ source }) => source.standing === 'published')).toHaveLength(188)
  })

  for (const row of published) {
    const cells = Object.keys(row.expected).filter((cell) => !isGap(row.id, cell))
    if (cells.length === 0) continue
    it(`${row.id} comes out as printed (${row.source.standing}: ${row.source.title})`, () => {
      const worked = workedOut(row)
      const misses = cells
        .filter((cell) => !agrees(worked[cell], row.expected[cell] as Cell, digitOf(row, cell)))
        .map((cell) => `${cell}: worked out ${told(worked[cell])}, printed ${told(row.expected[cell])}`)
      expect(misses).toEqual([])
    })
  }
})

describe('known gaps against print', () => {
  it('each name a printed cell once, with a reason', () => {
    expect(new Set(knownGaps.map(({ id, cell }) => `${id} ${cell}`)).size).toBe(knownGaps.length)
    for (const { id, cell, reason } of knownGaps) {
      expect(published.find((row) => row.id === id)?.expected, id).toHaveProperty([cell])
      expect(reason.length, `${id} ${cell}`).toBeGreaterThan(20)
    }
  })

  for (const gap of knownGaps) {
    it(`${gap.id}, ${gap.cell} still disagrees: ${gap.reason}`, () => {
      const row = published.find(({ id }) => id === gap.id) as Row
      const value = workedOut(row)[gap.cell]
      expect(value, 'a gap is worked out all the same').toBeTypeOf('number')
      expect(agrees(value, row.expected[gap.cell] as Cell, digitOf(row, gap.cell)), 'it agrees now: take it off').toBe(
        false,
      )
    })
  }
})
