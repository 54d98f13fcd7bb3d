// What may be written over HTTP by those who have a key: cards, checks, events, counts, withdrawals.
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import type { Desk } from '../../../desk/desk.ts'
import type { Judging, Keeping } from '../../../desk/shop.ts'
import { keepables } from '../../../keeping/index.ts'
import { entrySchema, type Kind } from '../../../register/records.ts'
import { problem, sendProblem } from '../problem.ts'
import { growing, judgeOnly } from './checks.ts'
import {
  asItIs,
  dryRunIn,
  fresh,
  ofWrench,
  type RegisterParts,
  sayerOf,
  sendDryRunUnread,
  sendOthersWrite,
  sendOtherWrench,
  textsSchema,
  untouched,
  writerOf,
} from './register-parts.ts'

const dryRunQuery = z.object({
  'dry-run': z.string().optional().meta({ description: 'judges it as it would be kept, and keeps nothing' }),
})
const judgedSchema = z
  .object({ kept: z.literal(false), again: z.boolean() })
  .meta({ id: 'Judged', description: 'It would be kept as it is; again: it is there already.' })

export const registerWritingRoutes = (app: FastifyInstance, desk: Desk, parts: RegisterParts): void => {
  const { shop } = parts
  const tags = ['register']

  const answerKept = (request: FastifyRequest, reply: FastifyReply, kept: Keeping | Judging): FastifyReply => {
    if (kept.kind === 'forbidden') return sendProblem(reply, problem('forbidden', 'This key may not write this.'))
    if (kept.kind === 'kept') return fresh(reply.code(kept.again ? 200 : 201)).send(kept.entry)
    if (kept.kind === 'judged') return fresh(reply.code(200)).send({ kept: false, again: kept.again })
    if (kept.faults.some(({ tell }) => tell === 'others-write')) return sendOthersWrite(reply)
    const say = sayerOf(desk, request)
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
    const dryRun = dryRunIn(request.query)
    if (dryRun === undefined) return sendDryRunUnread(reply)
    if (kind === 'check' && dryRun) return judgeOnly(desk, shop, raw, request, reply)
    const who = writerOf(parts, request, reply)
    if (!who) return reply
    return answerKept(request, reply, await (dryRun ? shop.judge(kind, raw, who) : shop.keep(kind, raw, who)))
  }

  const written = (kind: Kind, summary: string, without: readonly string[] = []) => ({
    schema: {
      tags,
      summary,
      querystring: dryRunQuery,
      body: textsSchema(keepables[kind].inputs, without),
      response: { 200: z.union([judgedSchema, entrySchema]), 201: entrySchema },
    },
    validatorCompiler: untouched,
    serializerCompiler: asItIs,
  })

  app.post(
    '/v1/wrenches',
    written('wrench', 'Adds a wrench, or replaces its card (supersedes, why)'),
    (request, reply) => write('wrench', request.body, request, reply as FastifyReply),
  )
  for (const [word, kind, summary] of [
    ['checks', 'check', 'Adds a check of this wrench; with dry-run judges it as far as it goes, and keeps nothing'],
    ['events', 'event', 'Adds what happened to this wrench'],
    ['uses', 'uses', 'Adds a count of uses'],
  ] as const) {
    app.post(
      `/v1/wrenches/:tag/${word}`,
      {
        ...written(kind, summary, ['wrench']),
        schema: {
          ...written(kind, summary, ['wrench']).schema,
          params: z.object({ tag: z.string() }),
          ...(kind === 'check' ? growing : {}),
        },
      },
      (request, reply) => {
        const { tag } = request.params as { tag: string }
        const whole = ofWrench(tag, request.body)
        if (whole === undefined) return sendOtherWrench(reply as FastifyReply)
        return write(kind, whole, request, reply as FastifyReply)
      },
    )
  }
  app.post('/v1/gauges', written('gauge', 'Adds a gauge, or replaces its card'), (request, reply) =>
    write('gauge', request.body, request, reply as FastifyReply),
  )
  app.post('/v1/withdrawals', written('withdrawal', 'Takes an entry back, and says why'), (request, reply) =>
    write('withdrawal', request.body, request, reply as FastifyReply),
  )
}
