// What every page's route needs: the reply as a page, the language of its reader, what was filled in, and its address.
import type { FastifyReply, FastifyRequest } from 'fastify'
import { renderToString } from 'preact-render-to-string'
import type { Desk } from '../../../desk/desk.ts'
import { type Language, languageFor, localeNames } from '../../../words/index.ts'

export type Query = Readonly<Record<string, string | readonly string[]>>

export const send = (
  reply: FastifyReply,
  page: Parameters<typeof renderToString>[0],
  keep = 'no-cache',
): FastifyReply =>
  reply
    .header('content-type', 'text/html; charset=utf-8')
    .header('cache-control', keep)
    .header('vary', 'accept-language')
    .send(`<!doctype html>${renderToString(page)}`)

/** The language that the key chose, else the browser's, else the shop's. */
export const languageOf = (desk: Desk, request: FastifyRequest): Language => {
  const { lang } = request.query as Query
  const chosen = typeof lang === 'string' && (localeNames as readonly string[]).includes(lang) ? lang : undefined
  return languageFor(chosen ?? request.headers['accept-language'], desk.locale)
}

/** What was filled in: blank fields and the language key left out. */
export const filledIn = (query: Query): Record<string, string | readonly string[]> =>
  Object.fromEntries(
    Object.entries(query).flatMap(([name, value]) => {
      const texts = [value].flat().filter((text) => text.trim() !== '')
      if (name === 'lang' || texts.length === 0) return []
      return [[name, texts.length === 1 ? (texts[0] as string) : texts]]
    }),
  )

export const addressOf = (raw: Readonly<Record<string, string | readonly string[]>>): string =>
  new URLSearchParams(
    Object.entries(raw).flatMap(([name, value]) => [value].flat().map((text): [string, string] => [name, text])),
  ).toString()
