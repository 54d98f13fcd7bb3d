// What may be written over HTTP by those who have a key: cards, checks, events, counts, withdrawals.
import type { FastifyInstance, FastifyReply } from 'fastify'
import { z } from 'zod'
import type { Desk } from '../../../desk/desk.ts'
import { growing } from './checks.ts'
import { keeper } from './keeping.ts'
import { ofWrench, type RegisterParts, sendOtherWrench } from './register-parts.ts'

export const registerWritingRoutes = (app: FastifyInstance, desk: Desk, parts: RegisterParts): void => {
  const { write, written } = keeper(desk, parts, 'register')

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
