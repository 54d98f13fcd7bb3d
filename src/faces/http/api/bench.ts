// Bench runs over HTTP: the list, a run with what it says, its readings as a sheet, and what is added to it by those with a key.
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import type { Desk } from '../../../desk/desk.ts'
import { runDocument } from '../../../desk/run-document.ts'
import { type RunRow, runRow } from '../../../desk/run-rows.ts'
import { sheetHead, sheetRow } from '../../../keeping/sheet.ts'
import { runDocumentSchema } from '../../../questions/run-document.ts'
import { problem, sendProblem } from '../problem.ts'
import { keeper } from './keeping.ts'
import { asItIs, fresh, languageOf, ofAddress, type RegisterParts, sendOtherRun, untouched } from './register-parts.ts'

const rowSchema = z
  .object({
    tag: z.string(),
    asked: z.string(),
    date: z.string(),
    state: z.object({ code: z.string(), text: z.string() }),
    readings: z.number().int(),
    due: z.string().optional(),
    href: z.string(),
  })
  .meta({ id: 'BenchRunRow' })

const PAGE = 50
const MOST_PLANNED = 200
const params = z.object({ tag: z.string() })

export const shownRun = (row: RunRow) => ({ ...row, href: `/v1/bench/${encodeURIComponent(row.tag)}` })

/** So many readings of each as are planned; undefined where nothing is said, null where it is not readable. */
export const plannedIn = (query: unknown): number | null | undefined => {
  const told = (query as Readonly<Record<string, unknown>>)['readings']
  if (told === undefined) return undefined
  if (typeof told !== 'string' || !/^\d{1,3}$/.test(told)) return null
  const n = Number(told)
  return n >= 2 && n <= MOST_PLANNED ? n : null
}

const listed = (query: unknown): string | null | undefined => {
  const { after, ...others } = query as Readonly<Record<string, unknown>>
  if (Object.keys(others).length > 0) return null
  return after === undefined || typeof after === 'string' ? after : null
}

export const benchRoutes = (app: FastifyInstance, desk: Desk, parts: RegisterParts): void => {
  const { shop } = parts
  const { write, written } = keeper(desk, parts, 'bench')
  const tags = ['bench']
  const noRun = (reply: FastifyReply): FastifyReply =>
    sendProblem(reply, problem('no-such-run', 'The bench runs are at /v1/bench.'))

  const tagIn = (request: FastifyRequest): string => (request.params as { tag: string }).tag

  app.get(
    '/v1/bench',
    {
      schema: {
        tags,
        summary: 'The bench runs by their tags, a page at a time',
        querystring: z.object({ after: z.string().optional() }),
        response: { 200: z.object({ runs: z.array(rowSchema), next: z.string().optional() }) },
      },
      validatorCompiler: untouched,
      serializerCompiler: asItIs,
    },
    async (request, reply) => {
      const after = listed(request.query)
      if (after === null)
        return sendProblem(reply as FastifyReply, problem('not-readable', 'Only after is taken here.'))
      const page = await shop.runs.page(PAGE, after)
      fresh(reply as FastifyReply)
      const { words } = languageOf(desk, request)
      return {
        runs: page.runs.map((run) => shownRun(runRow(run, words))),
        ...(page.next === undefined ? {} : { next: page.next }),
      }
    },
  )

  app.get(
    '/v1/bench/:tag',
    {
      schema: {
        tags,
        summary: 'A bench run: what its readings say, what it can see, how far it speaks',
        params,
        querystring: z.object({
          readings: z.string().optional().meta({ description: 'of each, as planned: 2 to 200' }),
        }),
        response: { 200: runDocumentSchema },
      },
      validatorCompiler: untouched,
      serializerCompiler: asItIs,
    },
    async (request, reply) => {
      const planned = plannedIn(request.query)
      if (planned === null) {
        const told = `readings is a whole number from 2 to ${MOST_PLANNED}.`
        return sendProblem(reply as FastifyReply, problem('not-readable', told))
      }
      const found = await shop.runs.one(tagIn(request))
      if (!found) return noRun(reply as FastifyReply)
      fresh(reply as FastifyReply)
      return runDocument(found.folder, languageOf(desk, request), shop.today().today, planned)
    },
  )

  app.get(
    '/v1/bench/:tag/entries.csv',
    {
      schema: {
        tags,
        summary: 'Every entry of a run as a sheet, which /v1/import reads',
        params,
        produces: ['text/csv'],
      },
      validatorCompiler: untouched,
    },
    async (request, reply) => {
      const found = await shop.runs.one(tagIn(request))
      if (!found) return noRun(reply)
      return fresh(reply)
        .header('content-type', 'text/csv; charset=utf-8; header=present')
        .header('content-disposition', 'attachment; filename="bench-run.csv"')
        .send(sheetHead() + found.entries.map(sheetRow).join(''))
    },
  )

  app.post(
    '/v1/bench',
    written('run', 'Begins a bench run, or corrects its opening (supersedes, why)'),
    (request, reply) => write('run', request.body, request, reply as FastifyReply),
  )
  for (const [word, kind, summary] of [
    ['readings', 'run-reading', 'Adds readings to a run: one, or many with one unit behind them'],
    ['finish', 'run-finish', 'Finishes a run'],
  ] as const) {
    const route = written(kind, summary, ['run'])
    app.post(`/v1/bench/:tag/${word}`, { ...route, schema: { ...route.schema, params } }, (request, reply) => {
      const whole = ofAddress('run', tagIn(request), request.body)
      if (whole === undefined) return sendOtherRun(reply as FastifyReply)
      return write(kind, whole, request, reply as FastifyReply)
    })
  }
}
