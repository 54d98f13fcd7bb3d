// Free text over HTTP: one address, by GET or POST, that gives the same document as a question does, with how the text was read.
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import { askTextKnowing, type Desk } from '../../../desk/desk.ts'
import { answerSchema } from '../../../questions/answer.ts'
import { languageFor } from '../../../words/index.ts'
import { problem, refusedProblem, refusedSchema, sendProblem } from '../problem.ts'

/** The text alone; whatever else came with it is handed on whole, and told as a fault. */
const textOf = (raw: unknown): unknown => {
  if (raw === null || typeof raw !== 'object' || Array.isArray(raw)) return raw
  const names = Object.keys(raw)
  return names.every((name) => name === 'text') ? (raw as { text?: unknown }).text : raw
}

export const askRoutes = (app: FastifyInstance, desk: Desk): void => {
  const { words } = languageFor(undefined, desk.locale)
  const { ask, measure } = words.inputs.text
  const textSchema = z.object({
    text: z.string().meta({
      description: `${ask}. ${measure}`,
      example: '75 lb-ft, 18 in wrench, 3 in crowfoot straight, what do I set?',
    }),
  })
  const untouched = () => (data: unknown) => ({ value: data })
  const asItIs = () => (answer: unknown) => JSON.stringify(answer)
  const about = {
    tags: ['questions'],
    summary: words.page.askLine,
    response: {
      200: {
        description: 'Answered, or incomplete: what is missing is asked back. `question` is null where several fit.',
        content: { 'application/json': { schema: answerSchema } },
      },
      422: {
        description: "Refused: every fault at once; also a maker's figure, and what is out of scope",
        content: { 'application/problem+json': { schema: refusedSchema } },
      },
    },
  }
  const send = async (raw: unknown, request: FastifyRequest, reply: FastifyReply): Promise<FastifyReply> => {
    const answer = await askTextKnowing(desk, textOf(raw), { door: 'http', locale: request.headers['accept-language'] })
    reply.header('cache-control', 'no-store').header('vary', 'accept-language')
    return answer.status === 'refused' ? sendProblem(reply, refusedProblem(answer)) : reply.send(answer)
  }
  const compilers = { validatorCompiler: untouched, serializerCompiler: asItIs }
  app.get('/v1/ask', { schema: { ...about, querystring: textSchema }, ...compilers }, (request, reply) =>
    send(request.query, request, reply as FastifyReply),
  )
  app.post('/v1/ask', { schema: { ...about, body: textSchema }, ...compilers }, (request, reply) =>
    send(request.body, request, reply as FastifyReply),
  )
  app.route({
    method: ['PUT', 'PATCH', 'DELETE', 'OPTIONS'],
    url: '/v1/ask',
    schema: { hide: true },
    handler: (_request, reply) => {
      reply.header('allow', 'GET, HEAD, POST')
      return sendProblem(reply, problem('wrong-method', 'It is asked by GET or POST.'))
    },
  })
}
