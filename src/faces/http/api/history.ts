// The checks of a wrench over time: as a picture, and what its drift says as JSON. Nobody keeps it: the next check changes it.
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import type { Desk } from '../../../desk/desk.ts'
import type { Shop } from '../../../desk/shop.ts'
import { type DriftTongue, driftSentences } from '../../../figures/drift-text.ts'
import { drawHistory, type Shape, shapes } from '../../../figures/history-view.ts'
import { type Theme, themes } from '../../../figures/theme.ts'
import type { Book, WrenchFolder } from '../../../register/book.ts'
import { driftOf } from '../../../register/drift.ts'
import { type Language, languageFor } from '../../../words/index.ts'
import type { Pictures } from '../../pictures.ts'
import { problem, sendProblem } from '../problem.ts'

export const driftSchema = z
  .array(
    z.object({
      setting: z.number().meta({ description: 'N·m' }),
      limit: z.number().meta({ description: '± %' }),
      text: z.string(),
      slope: z.object({ perYear: z.number(), doubt: z.number(), isTold: z.boolean() }).optional(),
      since: z.string().optional(),
      gaugeChanged: z.boolean(),
      reaches: z
        .object({ first: z.string(), middle: z.string(), last: z.string().optional() })
        .optional()
        .meta({ description: 'When the trend reaches the limit; only where the checks bear it' }),
      why: z.string().optional().meta({ description: 'Why no day is told' }),
    }),
  )
  .meta({ id: 'Drift' })

const tongueOf = (folder: WrenchFolder, { words, style }: Pick<Language, 'words' | 'style'>): DriftTongue => ({
  words: words.history,
  deviation: words.deviation,
  style,
  unit: folder.card.entry.body.unit,
})

/** A paragraph for each setting that was ever checked. */
export const driftTexts = (book: Book, folder: WrenchFolder, language: Pick<Language, 'words' | 'style'>): string[] =>
  driftOf(book, folder).map((drift) => driftSentences(drift, tongueOf(folder, language)).join(' '))

export const shownDrift = (
  book: Book,
  folder: WrenchFolder,
  language: Pick<Language, 'words' | 'style'>,
): z.infer<typeof driftSchema> =>
  driftOf(book, folder).map((drift) => {
    const { setting, limit, slope, since, gaugeChanged, outlook } = drift
    return {
      setting,
      limit,
      text: driftSentences(drift, tongueOf(folder, language)).join(' '),
      ...(slope ? { slope } : {}),
      ...(since === undefined ? {} : { since }),
      gaugeChanged,
      ...(outlook.told
        ? { reaches: { first: outlook.first, middle: outlook.middle, ...(outlook.last ? { last: outlook.last } : {}) } }
        : { why: outlook.why }),
    }
  })

const isOneOf = <T extends string>(all: readonly T[], text: unknown): text is T =>
  (all as readonly unknown[]).includes(text)

export const historyRoutes = (app: FastifyInstance, desk: Desk, shop: Shop, pictures: Pictures): void => {
  const about = (kind: string) => ({
    schema: {
      tags: ['register'],
      summary: `The checks of a wrench over time as ${kind}`,
      params: z.object({ tag: z.string() }),
      querystring: z.object({ theme: z.enum(themes).optional(), shape: z.enum(shapes).optional() }),
    },
    validatorCompiler: () => (data: unknown) => ({ value: data }),
  })

  /** The picture's SVG, or undefined where a problem was sent in its place. */
  const drawn = async (request: FastifyRequest, reply: FastifyReply, fallback: Theme): Promise<string | undefined> => {
    const query = request.query as Readonly<Record<string, unknown>>
    const { theme = fallback, shape = 'wide' satisfies Shape, ...other } = query
    const locale = request.headers['accept-language']
    reply.header('cache-control', 'no-store').header('vary', 'accept-language')
    if (!isOneOf(themes, theme) || !isOneOf(shapes, shape) || Object.keys(other).length > 0) {
      const told = `Only theme (${themes.join(', ')}) and shape (${shapes.join(', ')}) are taken here.`
      sendProblem(reply, problem('not-readable', told))
      return undefined
    }
    const found = await shop.wrench((request.params as { tag: string }).tag)
    if (!found) {
      sendProblem(reply, problem('no-such-wrench', 'The board is at /v1/wrenches.'))
      return undefined
    }
    const { words, style } = languageFor(locale, desk.locale)
    const { book, row } = found
    const history = { folder: row.folder, drifts: driftOf(book, row.folder) }
    const figure = drawHistory(history, { words, style, theme, shape })
    if (!figure) sendProblem(reply, problem('no-figure', 'No check of this wrench is recorded yet.'))
    return figure?.svg
  }

  app.get('/v1/wrenches/:tag/history.svg', about('SVG'), async (request, reply) => {
    const svg = await drawn(request, reply, 'auto')
    if (svg === undefined) return reply
    return reply
      .header('content-type', 'image/svg+xml; charset=utf-8')
      .header('content-security-policy', "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'")
      .send(svg)
  })

  app.get('/v1/wrenches/:tag/history.png', about('PNG'), async (request, reply) => {
    const svg = await drawn(request, reply, 'light')
    if (svg === undefined) return reply
    return reply.header('content-type', 'image/png').send(await pictures.png(svg))
  })
}
