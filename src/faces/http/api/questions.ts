// The question routes: the catalogue, and one address for each question, by GET or POST, that gives the Answer document.
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import { topics } from '../../../../commands/index.ts'
import { offersOf } from '../../../../commands/topic.ts'
import { askedOf, askKnowing, type Desk } from '../../../desk/desk.ts'
import type { RawInputs } from '../../../desk/read.ts'
import { answerSchema } from '../../../questions/answer.ts'
import { isQuestionName, type QuestionName, questionNames, questions } from '../../../questions/index.ts'
import { dataVersion, engineVersion } from '../../../tables/version.ts'
import { languageFor, type Words } from '../../../words/index.ts'
import { createAnswerCache, type KeptAnswer } from '../answer-cache.ts'
import { problem, refusedProblem, refusedSchema, sendProblem } from '../problem.ts'
import { tagOf, wantsOther } from './tag.ts'

const inputSchema = z.object({
  name: z.string(),
  kind: z.string(),
  needed: z.boolean(),
  most: z.number().int(),
  choices: z.array(z.string()).optional(),
  suggestions: z.array(z.string()).optional().describe('offered beside free text'),
  example: z.string(),
  label: z.string(),
  ask: z.string(),
  measure: z.string(),
})
const catalogueSchema = z
  .object({
    questions: z.array(
      z.object({
        name: z.string(),
        topic: z.string(),
        title: z.string(),
        href: z.string(),
        inputs: z.array(inputSchema),
        oneOf: z.array(z.array(z.string())),
        results: z.array(z.string()),
      }),
    ),
    versions: z.object({ engine: z.string(), data: z.string() }),
  })
  .meta({ id: 'Catalogue' })

const catalogue = (words: Words, system: 'metric' | 'inch'): z.infer<typeof catalogueSchema> => ({
  questions: topics.flatMap((topic) =>
    offersOf(topic).map((name) => ({
      name,
      topic: topic.name,
      title: words.questions[name],
      href: `/v1/questions/${name}`,
      inputs: Object.entries(questions[name].inputs).map(
        ([input, { kind, needed, most, choices, suggestions, example }]) => ({
          name: input,
          kind,
          needed,
          most,
          ...(choices ? { choices: [...choices] } : {}),
          ...(suggestions ? { suggestions: [...suggestions] } : {}),
          example: example[system],
          ...words.inputs[input as keyof Words['inputs']],
        }),
      ),
      oneOf: questions[name].oneOf.map((group) => [...group]),
      results: [...questions[name].results],
    })),
  ),
  versions: { engine: engineVersion, data: dataVersion },
})

// Documents a question's inputs for OpenAPI. Nothing is validated or changed by it: the desk reads every text itself.
const inputsSchema = (name: QuestionName, words: Words, body: boolean) => {
  const { inputs } = questions[name]
  const shape = Object.entries(inputs).map(([input, { most, choices, suggestions, example }]) => {
    const { ask, measure } = words.inputs[input as keyof Words['inputs']]
    const text = z.string().meta({
      description: `${ask}. ${measure}`,
      example: example.metric,
      ...((choices ?? suggestions) ? { examples: [...(choices ?? suggestions ?? [])] } : {}),
    })
    const value = most > 1 ? (body ? z.union([text, z.array(text)]) : z.array(text)) : text
    return [input, value.optional()]
  })
  return z.object(Object.fromEntries(shape))
}

/** An answer that nothing keeps: it was posted, or it follows from the register as it stands now. */
const send = async (
  desk: Desk,
  name: QuestionName,
  raw: unknown,
  request: FastifyRequest,
  reply: FastifyReply,
): Promise<FastifyReply> => {
  const answer = await askKnowing(desk, name, raw, { door: 'http', locale: request.headers['accept-language'] })
  reply.header('cache-control', 'no-store')
  if (answer.status !== 'refused') return reply.send(answer)
  return sendProblem(reply, refusedProblem(answer))
}

const JSON_TYPE = 'application/json; charset=utf-8'
const LONGEST_KEPT = 1000

export const questionRoutes = (app: FastifyInstance, desk: Desk): void => {
  const cache = createAnswerCache()
  // The shop's own pointers stand in an answer too.
  const underOf = (locale: string): string => `${locale} ${desk.pointersVersion()}`
  const made = new WeakMap<FastifyRequest, Omit<KeptAnswer, 'text'>>()
  // What is kept is the very text that the schema wrote for the first asker; refusals are not kept.
  const keepSent = async (request: FastifyRequest, _reply: FastifyReply, text: unknown): Promise<unknown> => {
    const about = made.get(request)
    const { locale } = languageFor(request.headers['accept-language'], desk.locale)
    if (about && typeof text === 'string') cache.keep(request.url, underOf(locale), { ...about, text })
    return text
  }
  const { words } = languageFor(undefined, desk.locale)
  const untouched = () => (data: unknown) => ({ value: data })
  // The desk's own document needs no second reading on its way out: the tests hold it against the schema, at every door.
  const asItIs = () => (answer: unknown) => JSON.stringify(answer)

  app.get(
    '/v1/questions',
    { schema: { summary: 'Every question with its inputs', tags: ['questions'], response: { 200: catalogueSchema } } },
    (request, reply) => {
      const { words: spoken } = languageFor(request.headers['accept-language'], desk.locale)
      reply.header('cache-control', 'public, max-age=60').header('vary', 'accept-language')
      return catalogue(spoken, desk.system)
    },
  )

  for (const name of questionNames) {
    const url = `/v1/questions/${name}`
    const about = {
      tags: ['questions'],
      summary: words.questions[name],
      response: {
        200: {
          description: 'Answered, or incomplete: what is missing is asked back',
          content: { 'application/json': { schema: answerSchema } },
        },
        422: {
          description: 'Refused: every fault at once',
          content: { 'application/problem+json': { schema: refusedSchema } },
        },
      },
    }
    app.get(
      url,
      {
        schema: { ...about, querystring: inputsSchema(name, words, false) },
        validatorCompiler: untouched,
        serializerCompiler: asItIs,
        onSend: keepSent,
      },
      (request, reply) => {
        const accepted = request.headers['accept-language']
        const { locale } = languageFor(accepted, desk.locale)
        const known = cache.get(request.url, underOf(locale))
        const raw = request.query as RawInputs
        // What the register says today is kept nowhere.
        if (Object.hasOwn(raw, 'wrench') || Object.hasOwn(raw, 'bench') || questions[name].needsFleet)
          return send(desk, name, raw, request, reply as FastifyReply)
        const tag = known?.tag ?? tagOf(desk, name, raw, accepted)
        reply.header('etag', tag).header('cache-control', 'public, max-age=60').header('vary', 'accept-language')
        const unchanged = !wantsOther(request.headers['if-none-match'], tag)
        if (known) {
          desk.again(known.asked)
          if (unchanged) return (reply as FastifyReply).code(304).send()
          return (reply as FastifyReply).type(JSON_TYPE).send(known.text)
        }
        const answer = desk.ask(name, raw, { door: 'http', locale: accepted })
        if (answer.status === 'refused') return sendProblem(reply as FastifyReply, refusedProblem(answer))
        if (unchanged) return (reply as FastifyReply).code(304).send()
        if (request.url.length <= LONGEST_KEPT) made.set(request, { tag, asked: askedOf(name, answer, 'http') })
        return reply.send(answer)
      },
    )
    app.post(
      url,
      {
        schema: { ...about, body: inputsSchema(name, words, true) },
        validatorCompiler: untouched,
        serializerCompiler: asItIs,
      },
      (request, reply) => send(desk, name, request.body, request, reply),
    )
  }

  app.all('/v1/questions/:name', { schema: { hide: true } }, (request, reply) => {
    const { name } = request.params as { name: string }
    if (!isQuestionName(name)) {
      return sendProblem(reply, problem('unknown-question', `There are: ${questionNames.join(', ')}.`))
    }
    reply.header('allow', 'GET, HEAD, POST')
    return sendProblem(reply, problem('wrong-method', 'It is asked by GET or POST.'))
  })
}
