// The figure of an answer as SVG or PNG, at the question's own address with the question's own inputs, and a theme.
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import { askKnowing, type Desk } from '../../../desk/desk.ts'
import type { RawInputs } from '../../../desk/read.ts'
import { figureOf, figureQuestions } from '../../../figures/index.ts'
import { type Theme, themes } from '../../../figures/theme.ts'
import { isQuestionName, type QuestionName } from '../../../questions/index.ts'
import { languageFor } from '../../../words/index.ts'
import type { Pictures } from '../../pictures.ts'
import { problem, refusedProblem, sendProblem } from '../problem.ts'
import { tagOf, wantsOther } from './tag.ts'

const isTheme = (text: unknown): text is Theme => (themes as readonly unknown[]).includes(text)

interface Sheet {
  readonly svg: string
}

/** The sheet of a request, or undefined where a problem was sent in its place. */
const sheetFor = async (
  desk: Desk,
  request: FastifyRequest,
  reply: FastifyReply,
  fallback: Theme,
): Promise<Sheet | undefined> => {
  const { name } = request.params as { name: string }
  const { theme = fallback, ...raw } = request.query as RawInputs
  const locale = request.headers['accept-language']
  if (!isQuestionName(name) || !figureQuestions.includes(name)) {
    sendProblem(reply, problem('no-figure', `There are figures for: ${figureQuestions.join(', ')}.`))
    return undefined
  }
  if (!isTheme(theme)) {
    sendProblem(reply, problem('not-readable', `theme is one of ${themes.join(', ')}.`))
    return undefined
  }
  const answer = await askKnowing(desk, name satisfies QuestionName, raw, { door: 'http', locale })
  const figure = figureOf(answer, languageFor(locale, desk.locale).words, theme)
  if (figure) return figure
  if (answer.status === 'refused') sendProblem(reply, refusedProblem(answer))
  else if (answer.status === 'answered')
    sendProblem(reply, problem('no-figure', 'This answer holds nothing that a figure could show.'))
  else sendProblem(reply, { ...problem('not-answered', answer.headline), missing: answer.missing })
  return undefined
}

export const figureRoutes = (app: FastifyInstance, desk: Desk, pictures: Pictures): void => {
  const about = (kind: string) => ({
    schema: {
      tags: ['figures'],
      summary: `The figure of an answer as ${kind}; the inputs are those of the question`,
      params: z.object({ name: z.enum(figureQuestions as [string, ...string[]]) }),
      querystring: z.object({ theme: z.enum(themes).optional() }),
    },
    validatorCompiler: () => (data: unknown) => ({ value: data }),
  })

  // False where the client has the figure already and 304 was sent.
  const fresh = (request: FastifyRequest, reply: FastifyReply): boolean => {
    const asked = request.query as RawInputs
    if (Object.hasOwn(asked, 'wrench') || Object.hasOwn(asked, 'bench')) {
      reply.header('cache-control', 'no-store')
      return true
    }
    const tag = tagOf(desk, request.url, {}, request.headers['accept-language'])
    reply.header('vary', 'accept-language')
    if (wantsOther(request.headers['if-none-match'], tag)) {
      reply.header('etag', tag).header('cache-control', 'public, max-age=60')
      return true
    }
    reply.header('etag', tag).code(304).send()
    return false
  }

  app.get('/v1/questions/:name/figure.svg', about('SVG'), async (request, reply) => {
    if (!fresh(request, reply)) return reply
    const sheet = await sheetFor(desk, request, reply, 'auto')
    if (!sheet) return reply
    return reply
      .header('content-type', 'image/svg+xml; charset=utf-8')
      .header('content-security-policy', "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'")
      .send(sheet.svg)
  })

  app.get('/v1/questions/:name/figure.png', about('PNG'), async (request, reply) => {
    if (!fresh(request, reply)) return reply
    const sheet = await sheetFor(desk, request, reply, 'light')
    if (!sheet) return reply
    return reply.header('content-type', 'image/png').send(await pictures.png(sheet.svg))
  })
}
