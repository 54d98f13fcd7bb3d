// What every page's route needs: the reply as a page, the language of its reader, what was filled in, and its address.
import type { FastifyReply, FastifyRequest } from 'fastify'
import { renderToString } from 'preact-render-to-string'
import { unturned } from '../../../core/turning.ts'
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
    .header('vary', 'accept-language, cookie')
    .headers(languageCookie(reply.request))
    .send(unturned(`<!doctype html>${renderToString(page)}`))

const chosenIn = (request: FastifyRequest): string | undefined => {
  const { lang } = request.query as Query
  return typeof lang === 'string' ? lang : undefined
}

/** A page of somebody else led here: what its address sets is not kept on this screen. */
export const isLedHere = ({ headers }: FastifyRequest): boolean =>
  headers['sec-fetch-site'] === 'cross-site' || headers['sec-fetch-site'] === 'same-site'

// What was chosen stays chosen on this screen until it starts over; an address with an empty choice forgets it.
const languageCookie = (request: FastifyRequest): Record<string, string> => {
  const lang = chosenIn(request)
  if (isLedHere(request)) return {}
  if (lang === undefined || (lang !== '' && !localeNames.some((name) => name === lang))) return {}
  return { 'set-cookie': `lang=${lang}; Path=/; SameSite=Strict${lang === '' ? '; Max-Age=0' : ''}` }
}

/** The language that was chosen on this screen, else the browser's, else the shop's. */
export const languageOf = (desk: Desk, request: FastifyRequest): Language => {
  const [, kept] = /(?:^|;\s*)lang=([a-zA-Z0-9-]{2,8})(?:;|$)/.exec(request.headers.cookie ?? '') ?? []
  const lang = chosenIn(request) ?? kept
  const browsers = languageFor(request.headers['accept-language'], desk.locale)
  if (!localeNames.some((name) => name === lang)) return browsers
  // The browser knows the region, and with it the decimal mark.
  return browsers.locale.startsWith((lang as string).slice(0, 2)) ? browsers : languageFor(lang, desk.locale)
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
