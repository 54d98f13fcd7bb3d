// The register over HTTP: the board, a wrench with all that is known of it, and what may be written by those who have a key.
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import type { Desk } from '../../../desk/desk.ts'
import { type Sayer, sayerFor } from '../../../desk/say.ts'
import type { Keeping, Shop } from '../../../desk/shop.ts'
import { keepables } from '../../../keeping/index.ts'
import { gaugeOf } from '../../../register/book.ts'
import type { ListedRow } from '../../../register/fleet.ts'
import { type Entry, entrySchema, type Kind } from '../../../register/records.ts'
import { judge } from '../../../register/verdict.ts'
import { type Language, languageFor } from '../../../words/index.ts'
import { problem, sendProblem } from '../problem.ts'
import { roleOf, type WriterKey } from '../writers.ts'
import { driftSchema, shownDrift } from './history.ts'
import { listQuery, pageOf, readList } from './wrench-lists.ts'

const statusSchema = z.object({
  code: z.string(),
  text: z.string(),
  reasons: z.array(z.object({ code: z.string(), text: z.string(), date: z.string() })),
  due: z.string().optional(),
})
const rowSchema = z
  .object({ tag: z.string(), name: z.string(), place: z.string().optional(), status: statusSchema, href: z.string() })
  .meta({ id: 'WrenchRow' })
const boardSchema = z.object({ wrenches: z.array(rowSchema), next: z.string().optional() }).meta({ id: 'Board' })
const checkSchema = z.object({
  entry: entrySchema,
  earlier: z.array(entrySchema),
  verdict: z.string(),
  limit: z.number(),
  points: z.array(z.object({ setting: z.number(), mean: z.number(), deviation: z.number(), verdict: z.string() })),
})
const keptSchema = z.object({ entry: entrySchema, earlier: z.array(entrySchema) })
const wrenchSchema = rowSchema
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

const shownRow = (row: ListedRow, say: Sayer) => {
  const { tag, name, place } = row.folder.card.entry.body
  const href = `/v1/wrenches/${encodeURIComponent(tag)}`
  return { tag, name, ...(place === undefined ? {} : { place }), status: shownStatus(row, say), href }
}

const shownWrench = (
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

export interface RegisterParts {
  readonly shop: Shop
  readonly keys: readonly WriterKey[]
  readonly now: () => Date
}

export const registerRoutes = (app: FastifyInstance, desk: Desk, { shop, keys }: RegisterParts): void => {
  const tags = ['register']
  const sayerOf = (request: FastifyRequest): Sayer =>
    sayerFor(languageFor(request.headers['accept-language'], desk.locale))
  const asItIs = () => (body: unknown) => JSON.stringify(body)
  const untouched = () => (data: unknown) => ({ value: data })
  const fresh = (reply: FastifyReply): FastifyReply => reply.header('cache-control', 'no-store')

  const answerKept = (request: FastifyRequest, reply: FastifyReply, kept: Keeping): FastifyReply => {
    if (kept.kind === 'forbidden') return sendProblem(reply, problem('forbidden', 'This key may not write this.'))
    if (kept.kind === 'kept') return fresh(reply.code(kept.again ? 200 : 201)).send(kept.entry)
    const say = sayerOf(request)
    const words = say.words.register.inputs
    const missing = kept.missing.map((input) => ({ input, ...words[input as keyof typeof words] }))
    return sendProblem(reply, {
      ...problem('not-kept', 'Nothing was written. Mend what is listed and send it again.'),
      faults: kept.faults.map(say.fault),
      missing,
    })
  }

  const write = async (
    kind: Kind,
    raw: unknown,
    request: FastifyRequest,
    reply: FastifyReply,
  ): Promise<FastifyReply> => {
    if (keys.length === 0) {
      return sendProblem(reply, problem('forbidden', 'Nobody may write over HTTP here: API_KEYS_FILE is not set.'))
    }
    const role = roleOf(keys, request.headers.authorization)
    if (role === undefined) {
      reply.header('www-authenticate', 'Bearer')
      return sendProblem(reply, problem('no-key', 'Send a key of this shop: Authorization: Bearer …'))
    }
    const key = request.headers['idempotency-key']
    const who = { role, door: 'http' as const, ...(typeof key === 'string' ? { key } : {}) }
    if (typeof key === 'string' && !/^[\x21-\x7e]{1,128}$/.test(key)) {
      return sendProblem(reply, problem('not-readable', 'An Idempotency-Key has 1 to 128 visible characters.'))
    }
    return answerKept(request, reply, await shop.keep(kind, raw, who))
  }

  const bodySchema = (kind: Kind, without: readonly string[] = []) =>
    z.object(
      Object.fromEntries(
        Object.entries(keepables[kind].inputs).flatMap(([name, { most, example, choices }]) => {
          if (without.includes(name)) return []
          const text = z.string().meta({ example: example.metric, ...(choices ? { examples: [...choices] } : {}) })
          return [[name, (most > 1 ? z.union([text, z.array(text)]) : text).optional()]]
        }),
      ),
    )
  const written = (kind: Kind, summary: string, without: readonly string[] = []) => ({
    schema: { tags, summary, body: bodySchema(kind, without), response: { 201: entrySchema } },
    validatorCompiler: untouched,
    serializerCompiler: asItIs,
  })

  app.get(
    '/v1/wrenches',
    {
      schema: {
        tags,
        summary: 'The board: wrenches as they hang, with their status today',
        querystring: listQuery,
        response: { 200: boardSchema },
      },
      validatorCompiler: untouched,
      serializerCompiler: asItIs,
    },
    async (request, reply) => {
      const wanted = readList(request.query as Record<string, unknown>)
      if (typeof wanted === 'string') return sendProblem(reply as FastifyReply, problem('not-readable', wanted))
      const page = await pageOf(shop, wanted)
      const say = sayerOf(request)
      fresh(reply as FastifyReply)
      return {
        wrenches: page.rows.map((row) => shownRow(row, say)),
        ...(page.next === undefined ? {} : { next: page.next }),
      }
    },
  )

  app.get(
    '/v1/wrenches/:tag',
    {
      schema: {
        tags,
        summary: 'A wrench: its card, its status and why, its checks with their verdicts, what happened to it',
        params: z.object({ tag: z.string() }),
        response: { 200: wrenchSchema },
      },
      validatorCompiler: untouched,
      serializerCompiler: asItIs,
    },
    async (request, reply) => {
      const found = await shop.wrench((request.params as { tag: string }).tag)
      if (!found) return sendProblem(reply as FastifyReply, problem('no-such-wrench', 'The board is at /v1/wrenches.'))
      fresh(reply as FastifyReply)
      const language = languageFor(request.headers['accept-language'], desk.locale)
      return shownWrench(found, sayerFor(language), language) as never
    },
  )

  app.post(
    '/v1/wrenches',
    written('wrench', 'Adds a wrench, or replaces its card (supersedes, why)'),
    (request, reply) => write('wrench', request.body, request, reply as FastifyReply),
  )
  for (const [word, kind, summary] of [
    ['checks', 'check', 'Adds a check of this wrench'],
    ['events', 'event', 'Adds what happened to this wrench'],
    ['uses', 'uses', 'Adds a count of uses'],
  ] as const) {
    app.post(
      `/v1/wrenches/:tag/${word}`,
      {
        ...written(kind, summary, ['wrench']),
        schema: { ...written(kind, summary, ['wrench']).schema, params: z.object({ tag: z.string() }) },
      },
      (request, reply) => {
        const { tag } = request.params as { tag: string }
        const body = request.body
        const named = typeof body === 'object' && body !== null && !Array.isArray(body) && !('wrench' in body)
        return write(kind, named ? { ...body, wrench: tag } : body, request, reply as FastifyReply)
      },
    )
  }
  app.get(
    '/v1/gauges',
    {
      schema: {
        tags,
        summary: 'What wrenches are checked with',
        response: { 200: z.object({ gauges: z.array(entrySchema) }) },
      },
      serializerCompiler: asItIs,
    },
    async (_request, reply) => {
      fresh(reply as FastifyReply)
      return { gauges: [...(await shop.gauges())] as never }
    },
  )
  app.post('/v1/gauges', written('gauge', 'Adds a gauge, or replaces its card'), (request, reply) =>
    write('gauge', request.body, request, reply as FastifyReply),
  )
  app.post('/v1/withdrawals', written('withdrawal', 'Takes an entry back, and says why'), (request, reply) =>
    write('withdrawal', request.body, request, reply as FastifyReply),
  )
}
