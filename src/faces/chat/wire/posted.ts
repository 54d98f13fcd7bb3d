// Interactions that come over HTTP: who posts is known by the signature alone; the first response is the reply to the request itself.
import { type APIInteraction, InteractionResponseType, InteractionType } from 'discord.js'
import type { ChatEvent } from '../../../counters.ts'
import type { Delivery, FirstResponse, Respond } from './first-response.ts'
import { isGenuine, readPublicKey, type Signed } from './signature.ts'
import type { Taking } from './taking.ts'

export interface PostedReply {
  readonly status: number
  readonly type: string
  readonly body: Buffer
  /** To be told whether it went out whole. */
  readonly sent: (isWhole: boolean) => void
}

export type TakePosted = (posted: Signed) => Promise<PostedReply>

export interface PostedParts {
  readonly taking: Taking
  /** Discord's public key for the application, in hex. */
  readonly key: string
  readonly now: () => number
  readonly reference: () => string
}

const JSON_TYPE = 'application/json; charset=utf-8'
const nobody = (): void => {}

const told = (status: number, body: object, sent: PostedReply['sent'] = nobody): PostedReply => ({
  ...{ status, type: JSON_TYPE, sent },
  body: Buffer.from(JSON.stringify(body), 'utf8'),
})

const partOf = (boundary: string, name: string, more: string, content: Buffer): Buffer =>
  Buffer.concat([
    Buffer.from(`--${boundary}\r\nContent-Disposition: form-data; name="${name}"${more}\r\n\r\n`, 'utf8'),
    content,
    Buffer.from('\r\n', 'utf8'),
  ])

const typeOfFile = (name: string): string => (name.endsWith('.png') ? 'image/png' : 'text/plain; charset=utf-8')

/** With files it is a form of parts (RFC 7578), as a callback over REST would be. */
const replyOf = ({ body, files }: FirstResponse, boundary: string, sent: PostedReply['sent']): PostedReply => {
  if (files.length === 0) return told(200, body, sent)
  const json = Buffer.from(JSON.stringify(body), 'utf8')
  const parts = [
    partOf(boundary, 'payload_json', '\r\nContent-Type: application/json', json),
    ...files.map(({ name, data }, n) =>
      partOf(boundary, `files[${n}]`, `; filename="${name}"\r\nContent-Type: ${typeOfFile(name)}`, data),
    ),
    Buffer.from(`--${boundary}--\r\n`, 'utf8'),
  ]
  return { status: 200, type: `multipart/form-data; boundary=${boundary}`, body: Buffer.concat(parts), sent }
}

/** Where nothing is said to an interaction: one that a desk which ends did not take may be asked of another. */
const silenceAfter = (event: ChatEvent): PostedReply =>
  event === 'dropped' ? told(503, { message: 'closing' }) : told(404, { message: event })

const readInteraction = (body: Buffer): APIInteraction | undefined => {
  try {
    const read: unknown = JSON.parse(body.toString('utf8'))
    return typeof read === 'object' && read !== null && 'type' in read ? (read as APIInteraction) : undefined
  } catch {
    return undefined
  }
}

export const createPosted = ({ taking, key, now, reference }: PostedParts): TakePosted => {
  const publicKey = readPublicKey(key)
  return async (posted) => {
    if (!isGenuine(posted, publicKey, now())) return told(401, { message: 'invalid request signature' })
    const interaction = readInteraction(posted.body)
    if (!interaction) return told(400, { message: 'not an interaction' })
    if (interaction.type === InteractionType.Ping) return told(200, { type: InteractionResponseType.Pong })
    return new Promise((resolve) => {
      const respond: Respond = (response) =>
        new Promise<Delivery>((settle) => {
          const sent = (isWhole: boolean): void => settle(isWhole ? 'answered' : 'failed')
          resolve(replyOf(response, `armlength-${reference()}`, sent))
        })
      taking.take(interaction, respond).then((event) => resolve(silenceAfter(event)))
    })
  }
}
