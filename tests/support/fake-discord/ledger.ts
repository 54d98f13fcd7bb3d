// Who may still answer what: every interaction that was sent, whether its callback came, in time and once, and the
// messages that came of it. Gives Discord's answers to callbacks and to the webhook of an interaction's token.

import { type Books, violate } from './books.ts'
import type { Answer } from './faults.ts'
import type { Complaint, Upload } from './limits.ts'
import {
  beforeOf,
  callbackTypes,
  checkCallback,
  checkWebhookMessage,
  isRecord,
  type Json,
  refusalOf,
} from './limits.ts'
import { callbackResponse, editedMessage, isLoading, newMessage } from './messages.ts'
import { snowflakeTime } from './snowflake.ts'

const firstResponseMs = 3000
const tokenMs = 15 * 60_000

export interface Issued {
  raw: Json
  id: string
  token: string
  createdAt: number
  sentAt: number
  /** Unconfirmed: taken, but a fault kept the answer back, so that a second try is nobody's mistake. */
  answered: 'no' | 'unconfirmed' | 'yes'
  messages: Map<string, Json>
}

export interface Sent {
  body: unknown
  files: readonly Upload[]
}

const refuse = (status: number, code: number, message: string): Answer => ({ status, body: { message, code } })

export function ledger(books: Books, about: { applicationId: string; botUser: Json }) {
  const issued = new Map<string, Issued>()

  function complain(where: string, found: readonly Complaint[]): Answer | undefined {
    for (const one of found) violate(books, where, one)
    return refusalOf(found)
  }

  function gone(where: string, status: number, code: number, message: string, why: string): Answer {
    violate(books, where, { code, message: why })
    return refuse(status, code, message)
  }

  /** The interaction of a webhook's token, or why it has none to speak for. */
  function spokenFor(where: string, token: string): Issued | Answer {
    const one = [...issued.values()].find((entry) => entry.token === token)
    if (!one) return gone(where, 404, 10015, 'Unknown Webhook', 'Token of no interaction')
    if (one.answered === 'no') return gone(where, 404, 10015, 'Unknown Webhook', 'Before any callback')
    if (Date.now() - one.createdAt > tokenMs)
      return gone(where, 401, 50027, 'Invalid Webhook Token', 'Later than 15 minutes')
    return one
  }

  return {
    /** Writes an interaction down before it is sent; one with the same id and token is the same interaction. */
    issue(raw: Json, age: number | undefined): Issued {
      const id = String(raw['id'])
      const known = issued.get(id)
      if (known && known.token === raw['token']) return known
      const createdAt = age === undefined ? snowflakeTime(id) : Date.now() - age
      const entry: Issued = {
        raw,
        id,
        token: String(raw['token']),
        createdAt,
        sentAt: performance.now(),
        answered: 'no',
        messages: new Map(),
      }
      issued.set(id, entry)
      return entry
    },
    find: (id: string): Issued | undefined => issued.get(id),
    /** Nothing more is expected of what was sent before. */
    forget(before: number): void {
      for (const [id, one] of issued) {
        if (one.sentAt >= before) break
        issued.delete(id)
      }
    },

    /** What is wrong with a callback's payload, whoever answers it. */
    lookAtCallback(id: string, sent: Sent): Answer | undefined {
      return complain('callback', checkCallback(sent.body, sent.files, issued.get(id)?.raw ?? { type: 2 }))
    },

    callback(id: string, token: string, sent: Sent, withResponse: boolean, confirmed: boolean): Answer {
      const one = issued.get(id)
      const unknown = (why: string) => gone('callback', 404, 10062, 'Unknown interaction', why)
      if (!one || one.token !== token) return unknown('No such interaction, or not its token')
      if (Date.now() - one.createdAt > firstResponseMs) return unknown('Later than 3 s after the interaction was made')
      const refused = this.lookAtCallback(id, sent)
      if (refused) return refused
      if (one.answered !== 'no') {
        const [status, code, message] = [400, 40060, 'Interaction has already been acknowledged.'] as const
        return one.answered === 'yes'
          ? gone('callback', status, code, message, `Interaction ${id} was answered before`)
          : refuse(status, code, message)
      }
      one.answered = confirmed ? 'yes' : 'unconfirmed'
      const body = isRecord(sent.body) ? sent.body : {}
      const type = Number(body['type'])
      const data = isRecord(body['data']) ? body['data'] : {}
      const pressed = isRecord(one.raw['message']) ? one.raw['message'] : undefined
      if (type === callbackTypes.message || type === callbackTypes.deferMessage)
        one.messages.set('@original', newMessage(data, sent.files, one.raw, about, type === callbackTypes.deferMessage))
      if (type === callbackTypes.update && pressed)
        one.messages.set('@original', editedMessage(pressed, data, sent.files))
      if (type === callbackTypes.deferUpdate && pressed) one.messages.set('@original', pressed)
      const message = one.messages.get('@original')
      return withResponse ? { status: 200, body: callbackResponse(one.raw, type, message) } : { status: 204 }
    },

    followUp(token: string, sent: Sent): Answer {
      const one = spokenFor('follow-up', token)
      if ('status' in one) return one
      const refused = complain('follow-up', checkWebhookMessage(sent.body, sent.files))
      if (refused) return refused
      const body = isRecord(sent.body) ? sent.body : {}
      const original = one.messages.get('@original')
      // The first follow-up after a deferral fills the message that was promised.
      const promised = original && isLoading(original) ? original : undefined
      const message = promised
        ? editedMessage(promised, body, sent.files)
        : newMessage(body, sent.files, one.raw, about, false)
      one.messages.set(promised ? '@original' : String(message['id']), message)
      return { status: 200, body: message }
    },

    message(token: string, key: string, method: string, sent: Sent): Answer {
      const where = `message-${method.toLowerCase()}`
      const one = spokenFor(where, token)
      if ('status' in one) return one
      const message = one.messages.get(key)
      if (!message) return gone(where, 404, 10008, 'Unknown Message', `No message ${key}`)
      if (method === 'GET') return { status: 200, body: message }
      if (method === 'DELETE') {
        one.messages.delete(key)
        return { status: 204 }
      }
      const refused = complain(where, checkWebhookMessage(sent.body, sent.files, beforeOf(message)))
      if (refused) return refused
      const next = editedMessage(message, isRecord(sent.body) ? sent.body : {}, sent.files)
      one.messages.set(key, next)
      return { status: 200, body: next }
    },
  }
}

export type Ledger = ReturnType<typeof ledger>
