// A server in a process of its own: `ours` is the HTTP door as it is served; `bare` is Fastify with zod that sends the very same answer.
import { readFileSync } from 'node:fs'
import Fastify from 'fastify'
import { serializerCompiler, validatorCompiler } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { createDesk } from '../../src/desk/desk.ts'
import { buildHttp } from '../../src/faces/http/server.ts'
import { answerSchema } from '../../src/questions/answer.ts'
import { testShop } from '../support/doors.ts'

const [, , kind, answerFile = ''] = process.argv

const bare = async () => {
  const app = Fastify({ logger: false })
  app.setSerializerCompiler(serializerCompiler)
  app.setValidatorCompiler(validatorCompiler)
  const answer = JSON.parse(readFileSync(answerFile, 'utf8'))
  const querystring = z.object({ torque: z.string(), lever: z.string(), adapter: z.string() })
  app.get('/v1/questions/adapter-setting', { schema: { querystring, response: { 200: answerSchema } } }, () => answer)
  return app
}

const ours = () =>
  buildHttp({
    desk: createDesk({ system: 'metric', locale: 'en' }),
    pictures: { png: () => Promise.reject(new Error('not here')) },
    shop: 'bench',
    trustProxy: false,
    mostASecond: 10_000_000,
    failed: (_reference: string, error: unknown) => {
      throw error
    },
    register: { shop: testShop(), keys: [], now: () => new Date('2026-06-01T10:00:00Z') },
    readiness: async () => [],
    metrics: async () => ({ type: 'text/plain', text: '' }),
  })

const app = kind === 'bare' ? await bare() : await ours()
process.stdout.write(`${await app.listen({ host: '127.0.0.1', port: 0 })}\n`)
