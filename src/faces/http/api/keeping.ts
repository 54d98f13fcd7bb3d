// How something is kept over HTTP, whatever it is: who may, what came of it, and how OpenAPI tells it.
import type { FastifyReply, FastifyRequest } from 'fastify'
import type { Desk } from '../../../desk/desk.ts'
import type { Keeping } from '../../../desk/shop.ts'
import { keepables } from '../../../keeping/index.ts'
import { entrySchema, type Kind } from '../../../register/records.ts'
import { problem, sendProblem } from '../problem.ts'
import { asItIs, fresh, type RegisterParts, sayerOf, textsSchema, untouched, writerOf } from './register-parts.ts'

export const keeper = (desk: Desk, parts: RegisterParts) => {
  const answerKept = (request: FastifyRequest, reply: FastifyReply, kept: Keeping): FastifyReply => {
    if (kept.kind === 'forbidden') return sendProblem(reply, problem('forbidden', 'This key may not write this.'))
    if (kept.kind === 'kept') return fresh(reply.code(kept.again ? 200 : 201)).send(kept.entry)
    const say = sayerOf(desk, request)
    const words = say.words.register.inputs
    const missing = kept.missing.map((input) => ({ input, ...words[input as keyof typeof words] }))
    return sendProblem(reply, {
      ...problem('not-kept', 'Nothing was written. Mend what is listed and send it again.'),
      faults: kept.faults.map(say.fault),
      missing,
    })
  }

  return {
    write: async (kind: Kind, raw: unknown, request: FastifyRequest, reply: FastifyReply): Promise<FastifyReply> => {
      const who = writerOf(parts, request, reply)
      return who ? answerKept(request, reply, await parts.shop.keep(kind, raw, who)) : reply
    },
    written: (kind: Kind, summary: string, without: readonly string[] = []) => ({
      schema: {
        tags: ['register'],
        summary,
        body: textsSchema(keepables[kind].inputs, without),
        response: { 201: entrySchema },
      },
      validatorCompiler: untouched,
      serializerCompiler: asItIs,
    }),
  }
}

/** A body with what its address tells; what the body itself tells goes before. */
export const withTag = (body: unknown, name: string, tag: string): unknown => {
  const named = typeof body === 'object' && body !== null && !Array.isArray(body) && !(name in body)
  return named ? { ...body, [name]: tag } : body
}
