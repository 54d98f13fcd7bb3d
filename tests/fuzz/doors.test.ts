// Anything may be asked through any door; it fails only as declared: no crash, no 500, no number that is none, no document out of shape.
// FUZZ_SECONDS says how long (10 at a desk, 60 in CI), FUZZ_SEED repeats a run; the seed is printed.
import fc from 'fast-check'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { faultTells } from '../../src/core/fault.ts'
import { fromSi, quantity } from '../../src/core/quantity.ts'
import { writeQuantity } from '../../src/core/quantity-text.ts'
import { type UnitSymbol, units, unitsOf } from '../../src/core/unit.ts'
import { figureOf } from '../../src/figures/index.ts'
import { type Answer, answerSchema } from '../../src/questions/answer.ts'
import { languages } from '../../src/words/index.ts'
import { fuzzAsk, fuzzBody } from '../support/asks.ts'
import { type Doors, openDoors, testDesk, testHttp } from '../support/doors.ts'

const seconds = Number(process.env.FUZZ_SECONDS ?? '10')
const seed = Number(process.env.FUZZ_SEED ?? Date.now() % 2 ** 31)
const share = (part: number) => ({
  seed,
  numRuns: 1_000_000,
  interruptAfterTimeLimit: seconds * 1000 * part,
  markInterruptAsFailure: false,
})
const timeout = seconds * 1000 + 20_000

const codes: ReadonlySet<string> = new Set(Object.values(faultTells))
const desk = testDesk()
let doors: Doors
let http: FastifyInstance
let close: () => Promise<void>
beforeAll(async () => {
  process.stdout.write(`fuzz seed ${seed}, ${seconds} s\n`)
  const opened = await openDoors()
  doors = opened.doors
  close = opened.close
  http = await testHttp(testDesk())
})
afterAll(async () => {
  await close()
  await http.close()
})

/** Every number in a document, wherever it stands. */
const numbersOf = (value: unknown): number[] => {
  if (typeof value === 'number') return [value]
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(numbersOf) : []
}

const judge = (answer: Answer): void => {
  expect(answerSchema.safeParse(answer).error).toBeUndefined()
  expect(numbersOf(answer).every(Number.isFinite)).toBe(true)
  const { results, steps, ladder } = answer
  expect(JSON.stringify({ results, steps, ladder })).not.toMatch(/NaN|Infinity|undefined|\[object/)
  for (const { code, hint, allowed } of answer.faults) {
    expect(codes.has(code), code).toBe(true)
    expect(hint !== '' && allowed !== '').toBe(true)
  }
  expect(answer.status).toBe(
    answer.faults.length > 0 ? 'refused' : answer.missing.length > 0 ? 'incomplete' : 'answered',
  )
  for (const result of Object.values(answer.results)) {
    const { value, low, high } = result as { value?: number; low?: number; high?: number }
    if (value === undefined || low === undefined || high === undefined) continue
    const slack = Math.abs(value) * 1e-9
    expect(low <= value + slack && value <= high + slack, JSON.stringify(result)).toBe(true)
  }
}

// A turn, a share or a condition has no other unit; torques, lengths and forces have.
const otherUnit = (text: string, pick: number): string => {
  const match = /^(-?[\d.]+) (N·m|lbf·ft|lbf·in|ozf·in|kgf·m|kgf·cm|mm|cm|m|in|ft|N|kN|lbf|kgf|kg|lb|g|oz)$/.exec(text)
  if (!match) return text
  const unit = units[match[2] as UnitSymbol]
  const others = unitsOf(unit.dimension)
  const other = others[pick % others.length] as (typeof others)[number]
  return writeQuantity(fromSi(Number(match[1]) * unit.factor, other))
}

const inSi = (answer: Answer): number[] =>
  Object.values(answer.results).flatMap((result) => {
    const { value, unit } = result as { value?: number; unit?: string }
    return value === undefined || unit === undefined ? [] : [value * units[unit as UnitSymbol].factor]
  })

describe('whatever is asked', () => {
  it(
    'the desk answers as declared, and a figure never fails',
    () => {
      fc.assert(
        fc.property(fuzzAsk, ({ question, raw }) => {
          const answer = desk.ask(question, raw, { door: 'terminal' })
          judge(answer)
          const figure = figureOf(answer, languages.en.words, 'light')
          if (figure) expect(figure.svg).not.toMatch(/NaN|Infinity|undefined/)
        }),
        share(0.4),
      )
    },
    timeout,
  )

  it(
    'every door says the same',
    async () => {
      await fc.assert(
        fc.asyncProperty(fuzzAsk, async ({ question, raw }) => {
          const truth = desk.ask(question, raw, { door: 'terminal' })
          const safe = Object.keys(raw).every((name) => name !== '' && !name.includes('=') && !name.startsWith('-'))
          for (const name of ['http post', 'terminal --json'] as const) {
            if (name === 'terminal --json' && !safe) continue
            const shown = await doors[name](question, raw)
            expect(JSON.parse(JSON.stringify(shown.document)), name).toEqual(JSON.parse(JSON.stringify(truth)))
          }
          expect((await doors.chat(question, raw)).status).toBe(truth.status)
        }),
        share(0.2),
      )
    },
    timeout,
  )

  it(
    'a body of anything at all gets 200, 400 or 422, never more',
    async () => {
      await fc.assert(
        fc.asyncProperty(fuzzBody, async ([question, body]) => {
          const reply = await http.inject({
            method: 'POST',
            url: `/v1/questions/${question}`,
            payload: body,
            headers: { 'content-type': 'application/json' },
          })
          expect([200, 400, 422], body).toContain(reply.statusCode)
          if (reply.statusCode !== 400) judge(reply.json<Answer & { answer?: Answer }>().answer ?? reply.json<Answer>())
        }),
        share(0.2),
      )
    },
    timeout,
  )

  it(
    'writing the same lengths, torques and forces in other units does not change an answer',
    () => {
      fc.assert(
        fc.property(fuzzAsk, fc.array(fc.nat(20), { minLength: 20, maxLength: 20 }), ({ question, raw }, picks) => {
          const answer = desk.ask(question, raw, { door: 'terminal' })
          // What is assumed of lengths differs between the systems, so bands may; the values may not.
          if (answer.status !== 'answered' || question === 'convert') return
          const scaled = Object.fromEntries(
            Object.entries(raw).map(([name, text], n) => [name, otherUnit(text, picks[n % picks.length] as number)]),
          )
          const again = desk.ask(question, scaled, { door: 'terminal' })
          if (again.status !== 'answered') return
          const [before, after] = [inSi(answer), inSi(again)]
          expect(after).toHaveLength(before.length)
          before.forEach((value, n) => {
            expect(
              Math.abs((after[n] as number) - value) <= 1e-9 * Math.max(1, Math.abs(value)) ||
                Math.abs((after[n] as number) / value - 1) < 1e-6,
              `${question} ${JSON.stringify(raw)}`,
            ).toBe(true)
          })
        }),
        share(0.2),
      )
    },
    timeout,
  )
})

describe('what a text says', () => {
  it('a quantity that was written is read as that quantity', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
        fc.constantFrom('lbf·ft', 'N·m', 'kgf·cm', 'mm', 'in', 'kN', 'lb'),
        (value, symbol) => {
          const answer = desk.ask(
            'convert',
            { quantity: writeQuantity(quantity(value, units[symbol as UnitSymbol])) },
            { door: 'terminal' },
          )
          expect(answer.given[0]).toMatchObject({ value, unit: symbol })
        },
      ),
      { seed, numRuns: 2000 },
    )
  })
})
