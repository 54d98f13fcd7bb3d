// What the keys of an answer carry: it comes back as it went in, fits, belongs to somebody, and nonsense in its place is none.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { carriedBy, idsFor, verbOf } from '../../../src/faces/chat/answer/carried.ts'
import { cases } from '../../contract/cases.ts'

const verbs = ['next', 'share', 'work', 'pic', 'units', 'edit', 'wrong', 'gone']
const rows = (ids: readonly string[]) => [
  { type: 1, components: [{ type: 3, custom_id: ids[0] }] },
  { type: 1, components: ids.slice(1).map((custom_id) => ({ type: 2, custom_id })) },
]

describe('what is carried', () => {
  it('of every question of the table fits under its answer and comes back whole', () => {
    const left: string[] = []
    for (const { question, raw } of cases) {
      const carried = { asker: '300000000000000001', question, raw, shown: 'inch' as const }
      const ids = idsFor(carried, verbs)
      if (!ids) {
        left.push(question)
        continue
      }
      expect(Math.max(...ids.map(({ length }) => length))).toBeLessThanOrEqual(100)
      expect(new Set(ids).size).toBe(ids.length)
      expect(ids.map(verbOf)).toEqual(verbs)
      expect(carriedBy(rows(ids))).toEqual(carried)
    }
    expect(left).toEqual([])
  })

  it('is any text and any asker, or it is said not to fit', () => {
    fc.assert(
      fc.property(
        fc.dictionary(fc.string({ minLength: 1, maxLength: 12 }), fc.string({ unit: 'binary', maxLength: 60 }), {
          maxKeys: 6,
        }),
        fc.bigInt({ min: 0n, max: (1n << 64n) - 1n }),
        (texts, id) => {
          // What JSON cannot tell from a prototype is no input of anybody's.
          const raw = Object.fromEntries(Object.entries(texts).filter(([name]) => name !== '__proto__'))
          const carried = { asker: String(id), question: 'pull', raw }
          const ids = idsFor(carried, verbs)
          if (ids) expect(carriedBy(rows(ids))).toEqual(JSON.parse(JSON.stringify(carried)))
        },
      ),
      { numRuns: 300 },
    )
  })

  it('that is too long has no keys', () => {
    const a = Array.from({ length: 500 }, (_, n) => String(Math.sin(n + 1).toFixed(6))).join('; ')
    expect(idsFor({ asker: '1', question: 'compare', raw: { a } }, verbs)).toBeUndefined()
  })

  it.each([
    [[]],
    ['x'],
    [null],
    [rows(['next~', 'share~1AAAA'])],
    [rows(['next~1', 'x'])],
    [[{ custom_id: 'check:W-07' }]],
  ])('in %j is nothing', (components) => {
    expect(carriedBy(components)).toBeUndefined()
  })
})
