// The register over HTTP, to be read: the board, a wrench with all that is known of it, the gauges.
import type { FastifyInstance, FastifyReply } from 'fastify'
import { z } from 'zod'
import type { Desk } from '../../../desk/desk.ts'
import { entrySchema } from '../../../register/records.ts'
import { problem, sendProblem } from '../problem.ts'
import { asItIs, fresh, languageOf, type RegisterParts, sayerOf, untouched } from './register-parts.ts'
import { boardSchema, shownRow, shownWrench, wrenchSchema } from './register-shown.ts'
import { listQuery, pageOf, readList } from './wrench-lists.ts'

export const registerRoutes = (app: FastifyInstance, desk: Desk, { shop }: RegisterParts): void => {
  const tags = ['register']

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
      const say = sayerOf(desk, request)
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
      return shownWrench(found, sayerOf(desk, request), languageOf(desk, request)) as never
    },
  )

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
}
