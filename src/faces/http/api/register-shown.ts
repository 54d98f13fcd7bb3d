// Wrenches as HTTP shows them: rows of the board, and a wrench with all that is known of it. Shapes and what fills them.
import { z } from 'zod'
import type { Sayer } from '../../../desk/say.ts'
import type { Shop } from '../../../desk/shop.ts'
import { gaugeOf } from '../../../register/book.ts'
import type { ListedRow } from '../../../register/fleet.ts'
import { type Entry, entrySchema } from '../../../register/records.ts'
import { judge } from '../../../register/verdict.ts'
import type { Language } from '../../../words/index.ts'
import { driftSchema, shownDrift } from './history.ts'

const statusSchema = z.object({
  code: z.string(),
  text: z.string(),
  reasons: z.array(z.object({ code: z.string(), text: z.string(), date: z.string() })),
  due: z.string().optional(),
})
const rowSchema = z
  .object({ tag: z.string(), name: z.string(), place: z.string().optional(), status: statusSchema, href: z.string() })
  .meta({ id: 'WrenchRow' })
export const boardSchema = z.object({ wrenches: z.array(rowSchema), next: z.string().optional() }).meta({ id: 'Board' })
const checkSchema = z.object({
  entry: entrySchema,
  earlier: z.array(entrySchema),
  verdict: z.string(),
  limit: z.number(),
  href: z.string(),
  points: z.array(z.object({ setting: z.number(), mean: z.number(), deviation: z.number(), verdict: z.string() })),
})
const keptSchema = z.object({ entry: entrySchema, earlier: z.array(entrySchema) })
export const wrenchSchema = rowSchema
  .extend({
    card: keptSchema,
    checks: z.array(checkSchema),
    events: z.array(keptSchema),
    uses: z.array(keptSchema),
    drift: driftSchema,
  })
  .meta({ id: 'Wrench' })

const shownStatus = ({ status }: ListedRow, say: Sayer) => ({
  code: status.status,
  text: say.words.register.statuses[status.status],
  reasons: status.reasons.map(({ code, date }) => ({ code, date, text: say.words.register.reasons[code] })),
  ...(status.due ? { due: status.due.on } : {}),
})

export const shownRow = (row: ListedRow, say: Sayer) => {
  const { tag, name, place } = row.folder.card.entry.body
  const href = `/v1/wrenches/${encodeURIComponent(tag)}`
  return { tag, name, ...(place === undefined ? {} : { place }), status: shownStatus(row, say), href }
}

export const shownWrench = (
  { book, row }: NonNullable<Awaited<ReturnType<Shop['wrench']>>>,
  say: Sayer,
  language: Language,
) => {
  const { folder } = row
  const card = folder.card.entry.body
  const kept = ({ entry, earlier }: { entry: Entry; earlier: readonly Entry[] }) => ({ entry, earlier })
  return {
    ...shownRow(row, say),
    card: kept(folder.card),
    checks: folder.checks.map((check) => {
      const gauge = check.entry.body.gauge
      const judged = judge(check.entry.body, card, gauge === undefined ? undefined : gaugeNamed(book, gauge))
      return {
        ...kept(check),
        href: `/v1/wrenches/${encodeURIComponent(card.tag)}/checks/${encodeURIComponent(check.entry.id)}`,
        verdict: judged.verdict,
        limit: judged.limit.share * 100,
        points: judged.points.map(({ setting, mean, deviation, verdict }) => ({
          setting,
          mean,
          deviation: deviation * 100,
          verdict,
        })),
      }
    }),
    events: folder.events.map(kept),
    uses: folder.uses.map(kept),
    drift: shownDrift(book, folder, language),
  }
}

const gaugeNamed = (book: Parameters<typeof gaugeOf>[0], tag: string) => gaugeOf(book, tag)?.entry.body
