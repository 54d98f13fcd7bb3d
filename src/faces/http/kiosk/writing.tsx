// Writing at the kiosk: signing in with the PIN, the forms, and what came of them. Every write needs a session, the token of its
// form, and a page of our own that sent it; the PIN makes a keeper.
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { checkingOf, slipsIn } from '../../../desk/checking.ts'
import { sayerFor } from '../../../desk/say.ts'
import type { Keeping } from '../../../desk/shop.ts'
import { keepables } from '../../../keeping/index.ts'
import { textsOf } from '../../../keeping/texts.ts'
import { type Kind, kindNames } from '../../../register/records.ts'
import { problem, sendProblem } from '../problem.ts'
import { benchPages } from './bench-routes.tsx'
import { type CarriedForm, carriedForm, carriedIn } from './carried-form.ts'
import { GuidedPage } from './guided.tsx'
import type { GuidedParts } from './guided-setup.tsx'
import { KeepPage, type KeepParts } from './keep-form.tsx'
import { leaveFor, pageOf } from './kept-pages.ts'
import { createLockOut } from './lock-out.ts'
import { isOwnHost } from './own-host.ts'
import { ownPath } from './own-path.ts'
import { languageOf, type Query, send } from './page.ts'
import { fitsPin, type PinHash } from './pin.ts'
import type { KioskParts } from './routes.tsx'
import { type Form, formOf, LONGEST_FORM } from './sent-form.ts'
import { createSessions, type Session, sessionCookie } from './sessions.ts'
import { SignInPage, type Trouble } from './sign-in.tsx'
import { tagsToPick } from './tags-to-pick.ts'

export interface WritingParts extends KioskParts {
  /** Absent: nobody writes here. */
  readonly pin: PinHash | undefined
  readonly now: () => Date
  /** Unguessable. */
  readonly id: () => string
}

/** A sign-in may carry a form along, under longer names. */
const LONGEST_SIGN_IN = LONGEST_FORM + 4096

/** An address of the web, whether or not a proxy speaks TLS before this desk. */
const isWeb = ({ protocol }: URL): boolean => protocol === 'http:' || protocol === 'https:'

/** Sent by one of our own pages: what browsers tell of it is not otherwise. */
const isFromHere = (request: FastifyRequest): boolean => {
  const { 'sec-fetch-site': site, origin } = request.headers
  if (site !== undefined && site !== 'same-origin') return false
  if (origin === undefined) return true
  return URL.canParse(origin) && isWeb(new URL(origin)) && new URL(origin).host === request.host
}

export const writingRoutes = (app: FastifyInstance, parts: WritingParts): void => {
  const { desk, shop, register, pin, now, id } = parts
  const sessions = createSessions(() => now().getTime(), id)
  const lockOut = createLockOut(() => now().getTime())
  const hidden = { schema: { hide: true }, bodyLimit: LONGEST_FORM }
  benchPages(app, parts, sessions, id)
  const isOwn = (request: FastifyRequest): boolean => isFromHere(request) && isOwnHost(request.host, parts.publicUrl)
  const isSecure = (request: FastifyRequest): boolean => request.protocol === 'https'

  const signInPage = (
    request: FastifyRequest,
    reply: FastifyReply,
    then: string,
    trouble?: Trouble,
    carried?: CarriedForm,
  ): FastifyReply => {
    const here = `/sign-in?onward=${encodeURIComponent(then)}`
    const about = pin ? trouble : ({ kind: 'noPin' } as const)
    const page = { language: languageOf(desk, request), shop, here, then, trouble: about, carried }
    return send(reply, <SignInPage {...page} />, 'no-store')
  }

  /** The session that may write with this form; else the reply is made, and nothing is written. */
  const writer = (request: FastifyRequest, reply: FastifyReply, kind: Kind, form: Form): Session | undefined => {
    const session = sessions.of(request.headers.cookie)
    if (session && isOwn(request) && form['token'] === session.token) return session
    // What a page of somebody else's typed is not carried on.
    const carried = isOwn(request) ? carriedForm(kind, form) : undefined
    signInPage(request, reply.code(403), ownPath(form['onward']), { kind: 'stale' }, carried)
    return undefined
  }

  const formPage = async (
    request: FastifyRequest,
    reply: FastifyReply,
    told: Omit<KeepParts, 'tags' | 'leave'>,
  ): Promise<FastifyReply> => {
    const leave = leaveFor(told.kind, told.values)
    const page = { language: languageOf(desk, request), shop, here: `/keep/${told.kind}` }
    const tags = await tagsToPick(register, told.values['run'])
    return send(reply, <KeepPage {...page} parts={{ ...told, tags, leave }} />, 'no-store')
  }

  const answerKept = (
    request: FastifyRequest,
    reply: FastifyReply,
    kind: Kind,
    form: Form,
    session: Session,
    kept: Keeping,
  ): FastifyReply | Promise<FastifyReply> => {
    if (kept.kind === 'kept') {
      const { condition } = kept.entry.body as { readonly condition?: string }
      const query = new URLSearchParams({ kept: kept.entry.id, ...(condition === undefined ? {} : { condition }) })
      return reply.header('cache-control', 'no-store').redirect(`${pageOf(kept.entry)}?${query}`, 303)
    }
    if (kept.kind === 'forbidden') return sendProblem(reply, problem('forbidden', 'A keeper writes this.'))
    const { faults, missing } = kept
    const say = sayerFor(languageOf(desk, request))
    const { token: _, key = id(), ...values } = form
    // Under the form's own name something else is kept already: only under a new one can this be kept as well.
    const isTaken = faults.some(({ tell }) => tell === 'key-taken')
    const rest = faults.filter(({ tell }) => tell !== 'key-taken').map(say.fault)
    const told = { kind, values, faults: rest, missing, session, formKey: isTaken ? id() : key, isTaken }
    return formPage(request, reply.code(422), told)
  }

  /** Readings that look like a slip are asked back, but for those of which somebody said that they stand. */
  const slipsOf = async (request: FastifyRequest, kind: Kind, raw: Form, sure: string | undefined) => {
    if (kind !== 'check') return []
    const told = sure === undefined || sure.trim() === '' ? raw : { ...raw, sure }
    return slipsIn(await checkingOf(register).grow(told, languageOf(desk, request)))
  }

  app.get('/wrench/:tag/check', hidden, async (request, reply) => {
    const { tag } = request.params as { tag: string }
    const found = await register.wrench(tag)
    if (!found) return sendProblem(reply, problem('no-such-wrench', 'The board is at /board.'))
    const language = languageOf(desk, request)
    const asked = Object.fromEntries(
      Object.entries(textsIn(request.query as Query)).filter(([, text]) => text.trim() !== ''),
    )
    const own = found.row.folder.tag
    const { today } = register.today()
    const known = { date: today, state: 'as-found', ...asked, wrench: own }
    const document = await checkingOf(register).grow(known, language)
    const gauges = (await register.gauges()).map(({ body }) => body)
    const session = sessions.of(request.headers.cookie)
    const told: GuidedParts = { tag: own, row: found.row, document, asked, gauges, session, formKey: id(), today }
    const page = { language, shop, here: ownPath(request.url) }
    return send(reply, <GuidedPage {...page} parts={told} />, 'no-store')
  })

  app.get('/sign-in', hidden, (request, reply) => {
    const { onward } = request.query as Query
    return signInPage(request, reply, ownPath(typeof onward === 'string' ? onward : undefined))
  })

  app.post('/sign-in', { ...hidden, bodyLimit: LONGEST_SIGN_IN }, async (request, reply) => {
    const form = formOf(request)
    const then = ownPath(form['onward'])
    if (!pin) return signInPage(request, reply.code(403), then)
    if (!isOwnHost(request.host, parts.publicUrl))
      return signInPage(request, reply.code(421), then, { kind: 'foreign' })
    if (!isOwn(request)) return signInPage(request, reply.code(403), then, { kind: 'stale' })
    const carried = carriedIn(form)
    const wait = lockOut.waitOf(request.ip)
    if (wait > 0) {
      const seconds = Math.ceil(wait / 1000)
      reply.header('retry-after', String(seconds))
      return signInPage(request, reply.code(429), then, { kind: 'wait', seconds }, carried)
    }
    const typed = form['pin'] ?? ''
    const fits = /^\d{1,12}$/.test(typed) ? await lockOut.few(() => fitsPin(pin, typed)) : false
    if (fits === undefined) return signInPage(request, reply.code(429), then, { kind: 'busy' }, carried)
    if (!fits) {
      lockOut.failed(request.ip)
      return signInPage(request, reply.code(403), then, { kind: 'wrongPin' }, carried)
    }
    lockOut.succeeded(request.ip)
    // Whoever signs in anew is a new session: one that this browser had, or was given, ends.
    const before = sessions.of(request.headers.cookie)
    if (before) sessions.close(before)
    const session = sessions.open()
    reply.header('set-cookie', sessionCookie(session, isSecure(request)))
    if (!carried) return reply.redirect(then, 303)
    // As it was typed, to be looked at and sent: signing in writes nothing.
    const { key = id(), ...values } = carried.fields
    return formPage(request, reply, { kind: carried.kind, values, faults: [], missing: [], session, formKey: key })
  })

  app.post('/sign-out', hidden, (request, reply) => {
    // A page of somebody else signs nobody out.
    if (!isOwn(request)) return signInPage(request, reply.code(403), '/', { kind: 'stale' })
    const session = sessions.of(request.headers.cookie)
    if (session) sessions.close(session)
    return reply.header('set-cookie', sessionCookie(undefined, isSecure(request))).redirect('/', 303)
  })

  app.get('/keep/:kind', hidden, async (request, reply) => {
    const { kind } = request.params as { kind: string }
    if (!isKind(kind)) return sendProblem(reply, problem('not-found', 'What can be kept stands on the board.'))
    const session = sessions.of(request.headers.cookie)
    if (!session) return reply.redirect(`/sign-in?onward=${encodeURIComponent(ownPath(request.url))}`, 303)
    const asked = textsIn(request.query as Query)
    const replaced = asked['supersedes'] === undefined ? undefined : await register.entry(asked['supersedes'])
    const known = replaced && replaced.kind === kind ? textsOf(replaced) : {}
    const day = 'date' in keepables[kind].inputs ? { date: register.today().today } : {}
    const values = { ...day, ...known, ...asked }
    return formPage(request, reply, { kind, values, faults: [], missing: [], session, formKey: id() })
  })

  app.post('/keep/:kind', hidden, async (request, reply) => {
    const { kind } = request.params as { kind: string }
    if (!isKind(kind)) return sendProblem(reply, problem('not-found', 'What can be kept stands on the board.'))
    const form = formOf(request)
    const session = writer(request, reply, kind, form)
    if (!session) return reply
    const { token: _, key, sure, ...typed } = form
    // Blank fields of a form say nothing; every other door refuses them.
    const raw = Object.fromEntries(Object.entries(typed).filter(([, text]) => text.trim() !== ''))
    const isKey = key !== undefined && /^[\x21-\x7e]{1,128}$/.test(key)
    const slips = await slipsOf(request, kind, raw, sure)
    if (slips.length > 0) {
      const told = { kind, values: typed, faults: slips, missing: [], session, formKey: key ?? id() }
      const stands = [sure, ...slips.map(({ got }) => got)].filter((one) => one !== undefined && one !== '').join('; ')
      return formPage(request, reply.code(422), { ...told, stands })
    }
    const kept = await register.keep(kind, raw, { role: 'keeper', door: 'kiosk', ...(isKey ? { key } : {}) })
    return answerKept(request, reply, kind, form, session, kept)
  })
}

const isKind = (text: string): text is Kind => (kindNames as readonly string[]).includes(text)

const textsIn = (query: Query): Record<string, string> =>
  Object.fromEntries(
    Object.entries(query).filter((one): one is [string, string] => typeof one[1] === 'string' && one[0] !== 'lang'),
  )
