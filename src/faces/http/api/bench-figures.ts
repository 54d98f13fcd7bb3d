// The pictures of a bench run as SVG or PNG: its readings by condition, over its re-runs, torque against clamp force.
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import type { Desk } from '../../../desk/desk.ts'
import { runDocument } from '../../../desk/run-document.ts'
import type { Shop } from '../../../desk/shop.ts'
import { CARD, drawRunCard } from '../../../figures/run-card.ts'
import { drawRun, runViews, viewsOf } from '../../../figures/run-view.ts'
import { type Theme, themes } from '../../../figures/theme.ts'
import type { Pictures } from '../../pictures.ts'
import { problem, sendProblem } from '../problem.ts'
import { languageOf, untouched } from './register-parts.ts'

const isOneOf = <T extends string>(all: readonly T[], text: unknown): text is T =>
  (all as readonly unknown[]).includes(text)

export const benchFigureRoutes = (app: FastifyInstance, desk: Desk, shop: Shop, pictures: Pictures): void => {
  const about = (kind: string) => ({
    schema: {
      tags: ['bench'],
      summary: `A picture of a bench run as ${kind}; without show the one that answers it first`,
      params: z.object({ tag: z.string() }),
      querystring: z.object({ theme: z.enum(themes).optional(), show: z.enum(runViews).optional() }),
    },
    validatorCompiler: untouched,
  })

  /** The picture's SVG, or undefined where a problem was sent in its place. */
  const drawn = async (
    request: FastifyRequest,
    reply: FastifyReply,
    fallback: Theme,
    isCard = false,
  ): Promise<string | undefined> => {
    const { theme = fallback, show, ...other } = request.query as Readonly<Record<string, unknown>>
    reply.header('cache-control', 'no-store').header('vary', 'accept-language')
    if (
      !isOneOf(themes, theme) ||
      (show !== undefined && (isCard || !isOneOf(runViews, show))) ||
      Object.keys(other).length > 0
    ) {
      const told = isCard
        ? `Only theme (${themes.join(', ')}) is taken here.`
        : `Only theme (${themes.join(', ')}) and show (${runViews.join(', ')}) are taken here.`
      sendProblem(reply, problem('not-readable', told))
      return undefined
    }
    const found = await shop.runs.one((request.params as { tag: string }).tag)
    if (!found) {
      sendProblem(reply, problem('no-such-run', 'The bench runs are at /v1/bench.'))
      return undefined
    }
    const language = languageOf(desk, request)
    const run = runDocument(found.folder, language, shop.today().today)
    const look = { words: language.words, style: language.style, theme }
    const view = show ?? viewsOf(run)[0]
    const figure = isCard ? drawRunCard(run, look) : view && drawRun(run, view, look)
    if (!figure) sendProblem(reply, problem('no-figure', 'The readings of this run do not bear this picture yet.'))
    return figure?.svg
  }

  app.get(
    '/v1/bench/:tag/card.png',
    {
      schema: {
        tags: ['bench'],
        summary: `A bench run as a card to be shared, PNG of ${CARD.width} by ${CARD.height}`,
        params: z.object({ tag: z.string() }),
        querystring: z.object({ theme: z.enum(themes).optional() }),
      },
      validatorCompiler: untouched,
    },
    async (request, reply) => {
      const svg = await drawn(request, reply, 'dark', true)
      if (svg === undefined) return reply
      return reply.header('content-type', 'image/png').send(await pictures.png(svg))
    },
  )

  app.get('/v1/bench/:tag/figure.svg', about('SVG'), async (request, reply) => {
    const svg = await drawn(request, reply, 'auto')
    if (svg === undefined) return reply
    return reply
      .header('content-type', 'image/svg+xml; charset=utf-8')
      .header('content-security-policy', "default-src 'none'; style-src 'unsafe-inline'")
      .send(svg)
  })

  app.get('/v1/bench/:tag/figure.png', about('PNG'), async (request, reply) => {
    const svg = await drawn(request, reply, 'light')
    if (svg === undefined) return reply
    return reply.header('content-type', 'image/png').send(await pictures.png(svg))
  })
}
