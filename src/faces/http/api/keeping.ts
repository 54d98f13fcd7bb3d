// How something is kept over HTTP, whatever it is: who may, what came of it, what is only tried, and how OpenAPI tells it.
import type { FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import type { Desk } from '../../../desk/desk.ts'
import type { Judging, Keeping } from '../../../desk/shop.ts'
import { keepables } from '../../../keeping/index.ts'
import { entrySchema, type Kind } from '../../../register/records.ts'
import { problem, sendProblem } from '../problem.ts'
import { judgeOnly } from './checks.ts'
import {
  asItIs,
  dryRunIn,
  fresh,
  type RegisterParts,
  sayerOf,
  sendDryRunUnread,
  sendOthersWrite,
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

/** `tag`: under which heading OpenAPI tells it. */
export const keeper = (desk: Desk, parts: RegisterParts, tag: 'register' | 'bench') => {
  const { shop } = parts
  const tags = [tag]

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

  return { write, written }
}
