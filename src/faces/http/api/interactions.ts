// Where the chat service posts interactions to, if they come over HTTP: bytes and their signature in, bytes out. What they mean is
// the chat door's, which is handed in.
import type { FastifyInstance } from 'fastify'

export interface SignedPost {
  readonly body: Buffer
  readonly signature: string
  readonly timestamp: string
}

export interface PostReply {
  readonly status: number
  readonly type: string
  readonly body: Buffer
  readonly sent: (isWhole: boolean) => void
}

/** Undefined while the chat door is not open yet. */
export type TakePost = (posted: SignedPost) => Promise<PostReply> | undefined

// A message that somebody wants worked out comes whole, with all that is in it.
const BODY_LIMIT = 256 * 1024

const textOf = (header: string | string[] | undefined): string => (typeof header === 'string' ? header : '')

export const interactionRoutes = async (app: FastifyInstance, take: TakePost): Promise<void> => {
  await app.register(async (scope) => {
    scope.removeAllContentTypeParsers()
    // The signature is over the bytes as they came.
    scope.addContentTypeParser('*', { parseAs: 'buffer', bodyLimit: BODY_LIMIT }, (_request, bytes, done) =>
      done(null, bytes),
    )
    // All of it comes from few addresses, and who is not known by the signature is sent away at once.
    const options = { bodyLimit: BODY_LIMIT, config: { rateLimit: false }, schema: { hide: true } } as const
    scope.post('/discord/interactions', options, async (request, reply) => {
      const { headers, body } = request
      const taken = take({
        body: Buffer.isBuffer(body) ? body : Buffer.alloc(0),
        signature: textOf(headers['x-signature-ed25519']),
        timestamp: textOf(headers['x-signature-timestamp']),
      })
      if (!taken) return reply.code(503).header('retry-after', '1').send()
      const { status, type, body: bytes, sent } = await taken
      reply.raw.once('close', () => sent(reply.raw.writableFinished))
      return reply.code(status).header('content-type', type).header('cache-control', 'no-store').send(bytes)
    })
  })
}
