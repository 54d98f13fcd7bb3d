// Interactions over HTTP: signed as Discord signs them, posted to the application's address; the reply is taken as the callback.
import { generateKeyPairSync, sign } from 'node:crypto'
import { type Body, parseBody } from './body.ts'
import type { Json } from './limits.ts'

export interface Posting {
  /** What is sent as the signature, the timestamp or the body in place of the true ones. */
  readonly signature?: string | null
  readonly timestamp?: string | null
  readonly body?: string
}

export interface Posted extends Body {
  readonly status: number
  readonly ms: number
}

/** A pair of keys, and a way to post with them. */
export const newSender = () => {
  const { publicKey, privateKey } = generateKeyPairSync('ed25519')
  const spki = publicKey.export({ type: 'spki', format: 'der' })
  return {
    /** The last 32 bytes are the key itself, which is what the application is told. */
    publicKey: spki.subarray(-32).toString('hex'),
    async post(url: string, raw: Json, posting: Posting = {}): Promise<Posted> {
      const body = JSON.stringify(raw)
      const timestamp = String(Math.floor(Date.now() / 1000))
      const told = posting.timestamp === undefined ? timestamp : posting.timestamp
      const signature =
        posting.signature === undefined
          ? sign(null, Buffer.from((told ?? '') + body, 'utf8'), privateKey).toString('hex')
          : posting.signature
      const start = performance.now()
      const reply = await fetch(`${url}/discord/interactions`, {
        method: 'POST',
        headers: {
          'content-type': 'application/json',
          ...(signature === null ? {} : { 'x-signature-ed25519': signature }),
          ...(told === null ? {} : { 'x-signature-timestamp': told }),
        },
        body: posting.body ?? body,
      })
      const bytes = Buffer.from(await reply.arrayBuffer())
      const ms = performance.now() - start
      return { status: reply.status, ms, ...(await parseBody(bytes, reply.headers.get('content-type') ?? '')) }
    },
  }
}
