// What the routes of the register have in common: who may write, how an answer leaves.
import type { FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import type { Desk } from '../../../desk/desk.ts'
import { type Sayer, sayerFor } from '../../../desk/say.ts'
import type { Shop, Writer } from '../../../desk/shop.ts'
import type { Inputs } from '../../../questions/question.ts'
import { foldTag } from '../../../register/parts.ts'
import { type Language, languageFor } from '../../../words/index.ts'
import type { PinHash } from '../kiosk/pin.ts'
import { problem, sendProblem } from '../problem.ts'
import { roleOf, type WriterKey } from '../writers.ts'

export interface RegisterParts {
  readonly shop: Shop
  readonly keys: readonly WriterKey[]
  readonly now: () => Date
  /** Who may write at the kiosk, and unguessable ids for that; absent: nobody. */
  readonly writing?: { readonly pin: PinHash | undefined; readonly id: () => string } | undefined
}

export const languageOf = (desk: Desk, request: FastifyRequest): Language =>
  languageFor(request.headers['accept-language'], desk.locale)
export const sayerOf = (desk: Desk, request: FastifyRequest): Sayer => sayerFor(languageOf(desk, request))

export const asItIs = () => (body: unknown) => JSON.stringify(body)
export const untouched = () => (data: unknown) => ({ value: data })
/** The register changes: nothing of it is kept by whoever stands between. */
export const fresh = (reply: FastifyReply): FastifyReply => reply.header('cache-control', 'no-store')

/** The texts that an input list takes, for OpenAPI; nothing is coerced or refused by it. */
export const textsSchema = (inputs: Inputs, without: readonly string[] = []) =>
  z.object(
    Object.fromEntries(
      Object.entries(inputs).flatMap(([name, { most, example, choices }]) => {
        if (without.includes(name)) return []
        const text = z.string().meta({ example: example.metric, ...(choices ? { examples: [...choices] } : {}) })
        return [[name, (most > 1 ? z.union([text, z.array(text)]) : text).optional()]]
      }),
    ),
  )

/** Whether a request is only to be tried: `dry-run` without a value. Anything else said with it is not readable, and undefined. */
export const dryRunIn = (query: unknown): boolean | undefined => {
  const told = (query as Record<string, unknown>)['dry-run']
  if (told === undefined) return false
  return told === '' ? true : undefined
}

export const sendDryRunUnread = (reply: FastifyReply): FastifyReply =>
  sendProblem(reply, problem('not-readable', 'Say dry-run without a value to try it, or leave it out to keep it.'))

/** What was sent to the address of a wrench or a run, of that one; undefined where it names another one itself. */
export const ofAddress = (name: 'wrench' | 'run', tag: string, sent: unknown): unknown => {
  if (typeof sent !== 'object' || sent === null || Array.isArray(sent)) return sent
  if (!(name in sent)) return { ...sent, [name]: tag }
  const names = [(sent as Readonly<Record<string, unknown>>)[name]].flat().filter((one) => typeof one === 'string')
  return names.every((one) => foldTag(one.trim()) === foldTag(tag)) ? sent : undefined
}

export const ofWrench = (tag: string, sent: unknown): unknown => ofAddress('wrench', tag, sent)

export const sendOtherRun = (reply: FastifyReply): FastifyReply =>
  sendProblem(
    reply,
    problem('not-readable', 'What was sent names another run than its address: leave run out. Nothing was kept.'),
  )

export const sendOtherWrench = (reply: FastifyReply): FastifyReply =>
  sendProblem(
    reply,
    problem('not-readable', 'What was sent names another wrench than its address: leave wrench out. Nothing was kept.'),
  )

/** Nothing is wrong with what was sent: it is the moment. */
export const sendOthersWrite = (reply: FastifyReply): FastifyReply =>
  sendProblem(
    reply.header('retry-after', '1'),
    problem('others-write', 'Nothing was kept, as others were quicker each time: send the same again in a moment.'),
  )

/** Who writes with this request; where nobody may, the reply is made. */
export const writerOf = (
  { keys }: RegisterParts,
  request: FastifyRequest,
  reply: FastifyReply,
): (Writer & { readonly door: 'http' }) | undefined => {
  if (keys.length === 0) {
    sendProblem(reply, problem('forbidden', 'Nobody may write over HTTP here: API_KEYS_FILE is not set.'))
    return undefined
  }
  const role = roleOf(keys, request.headers.authorization)
  if (role === undefined) {
    reply.header('www-authenticate', 'Bearer')
    sendProblem(reply, problem('no-key', 'Send a key of this shop: Authorization: Bearer …'))
    return undefined
  }
  const key = request.headers['idempotency-key']
  if (typeof key === 'string' && !/^[\x21-\x7e]{1,128}$/.test(key)) {
    sendProblem(reply, problem('not-readable', 'An Idempotency-Key has 1 to 128 visible characters.'))
    return undefined
  }
  return { role, door: 'http', ...(typeof key === 'string' ? { key } : {}) }
}
