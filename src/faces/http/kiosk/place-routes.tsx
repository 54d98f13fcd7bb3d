// Pages and parts that belong to no question: the script and the sheets, this one screen, how far to trust it, codes for phones.
import type { FastifyInstance } from 'fastify'
import { problem, sendProblem } from '../problem.ts'
import { AboutPage } from './about.tsx'
import { isLedHere, languageOf, type Query, send } from './page.ts'
import type { KioskParts } from './routes.tsx'
import { ScreenPage } from './screen.tsx'
import { cookieOf, readScreen, screenOf, screenSheet } from './screen-setting.ts'
import { scriptRoutes } from './script.ts'
import { stylesheet } from './stylesheet.ts'
import { baseOf, codeOf } from './ways-out.tsx'

// A handle, a drive and a nut: the desk's own sign.
const icon =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64"><rect width="64" height="64" rx="12" fill="#0a5548"/><rect x="6" y="38" width="34" height="10" rx="5" fill="#fbfaf7"/><circle cx="40" cy="43" r="9" fill="#fbfaf7"/><path d="M40 43 54 18" stroke="#ffab66" stroke-width="8" stroke-linecap="round"/></svg>'

const CODES_A_SECOND = 20

export const placeRoutes = (app: FastifyInstance, { desk, shop, publicUrl }: KioskParts): void => {
  const hidden = { schema: { hide: true } }
  scriptRoutes(app)

  app.get('/icon.svg', hidden, (_request, reply) =>
    reply
      .header('content-type', 'image/svg+xml; charset=utf-8')
      .header('cache-control', 'public, max-age=86400')
      .send(icon),
  )

  app.get('/about', hidden, (request, reply) =>
    send(reply, <AboutPage language={languageOf(desk, request)} shop={shop} here="/about" />),
  )

  // The form is sent by GET: what it keeps is the look of this one screen, in this one browser.
  app.get('/screen', hidden, (request, reply) => {
    const told = new URLSearchParams(new URL(request.url, 'http://here').search)
    const isKept = told.has('mm') && !isLedHere(request)
    const setting = isKept ? readScreen(told) : screenOf(request.headers.cookie)
    if (isKept) reply.header('set-cookie', cookieOf(setting))
    const parts = { language: languageOf(desk, request), shop, here: '/screen' }
    return send(reply, <ScreenPage {...parts} setting={setting} isKept={isKept} />, 'no-store')
  })

  app.get('/screen.css', hidden, (request, reply) =>
    reply
      .header('content-type', 'text/css; charset=utf-8')
      .header('cache-control', 'no-cache')
      .header('vary', 'cookie')
      .send(screenSheet(screenOf(request.headers.cookie))),
  )

  // A code is dear to draw, and a page shows one.
  const few = { ...hidden, config: { rateLimit: { max: CODES_A_SECOND, timeWindow: 1000 } } }
  app.get('/qr.svg', few, (request, reply) => {
    const { to } = request.query as Query
    const code = typeof to === 'string' && /^\/(?!\/)/.test(to) ? codeOf(baseOf(request, publicUrl), to) : undefined
    if (code === undefined) return sendProblem(reply, problem('not-found', 'Only a page of this desk has a code.'))
    return reply.header('content-type', 'image/svg+xml; charset=utf-8').header('cache-control', 'no-cache').send(code)
  })

  app.get('/kiosk.css', hidden, (_request, reply) =>
    reply
      .header('content-type', 'text/css; charset=utf-8')
      .header('cache-control', 'public, max-age=300')
      .send(stylesheet),
  )
}
