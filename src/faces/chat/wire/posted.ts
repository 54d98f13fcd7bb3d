// Interactions that come over HTTP: who posts is known by the signature alone; the first response is the reply to the request itself.
import { type APIInteraction, InteractionResponseType, InteractionType } from 'discord.js'
import type { ChatEvent } from '../../../counters.ts'
import type { Delivery, FirstResponse, Respond } from './first-response.ts'
import { formOf } from './form.ts'
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
}

const JSON_TYPE = 'application/json; charset=utf-8'
const nobody = (): void => {}

const told = (status: number, body: object, sent: PostedReply['sent'] = nobody): PostedReply => ({
  ...{ status, type: JSON_TYPE, sent },
  body: Buffer.from(JSON.stringify(body), 'utf8'),
})

const replyOf = (response: FirstResponse, sent: PostedReply['sent']): PostedReply =>
  response.files.length === 0 ? told(200, response.body, sent) : { status: 200, ...formOf(response), sent }

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

export const createPosted = ({ taking, key, now }: PostedParts): TakePosted => {
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
          resolve(replyOf(response, sent))
        })
      taking.take(interaction, respond).then((event) => resolve(silenceAfter(event)))
    })
  }
}
