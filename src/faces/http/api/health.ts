// How the service is: /healthz touches nothing; /readyz says whether answers can be given and which doors are ill; /metrics counts.
import type { FastifyInstance } from 'fastify'
import { z } from 'zod'

export interface Readiness {
  readonly status: 'ok' | 'degraded' | 'down'
  readonly reasons: readonly string[]
}

const healthSchema = z
  .object({ status: z.enum(['ok', 'degraded', 'down']), reasons: z.array(z.string()) })
  .meta({ id: 'Health' })

export interface HealthParts {
  /** What is ill; questions are answered all the same. */
  readonly readiness: () => Promise<readonly string[]>
  readonly metrics: () => Promise<{ type: string; text: string }>
}

export const healthRoutes = (app: FastifyInstance, { readiness, metrics }: HealthParts): void => {
  const tags = ['health']
  const unlimited = { config: { rateLimit: false } } as const

  app.get(
    '/healthz',
    { ...unlimited, schema: { tags, summary: 'The process answers', response: { 200: healthSchema } } },
    (_request, reply) => {
      reply.header('cache-control', 'no-store')
      return { status: 'ok' as const, reasons: [] }
    },
  )

  app.get(
    '/readyz',
    {
      ...unlimited,
      schema: {
        tags,
        summary: 'Answers can be given; which doors are ill',
        response: { 200: healthSchema, 503: healthSchema },
      },
    },
    async (_request, reply) => {
      const reasons = await readiness()
      reply.header('cache-control', 'no-store')
      return { status: reasons.length === 0 ? ('ok' as const) : ('degraded' as const), reasons: [...reasons] }
    },
  )

  app.get(
    '/metrics',
    { ...unlimited, schema: { tags, summary: 'Counters for Prometheus', produces: ['text/plain'] } },
    async (_request, reply) => {
      const { type, text } = await metrics()
      return reply.header('content-type', type).header('cache-control', 'no-store').send(text)
    },
  )
}
