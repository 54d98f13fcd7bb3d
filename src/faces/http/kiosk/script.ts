// The script of the pages as the build left it beside this file; read once, sent with a tag so that a browser asks only whether it changed.
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import type { FastifyInstance } from 'fastify'

// From the sources (tests, dev) the built script is still the one of the build.
const folder = import.meta.url.includes('/dist/')
  ? new URL('./client/', import.meta.url)
  : new URL('../../../../dist/src/faces/http/kiosk/client/', import.meta.url)

interface Part {
  readonly text: string
  readonly tag: string
}

const load = (): ReadonlyMap<string, Part> =>
  new Map(
    readdirSync(folder)
      .filter((name) => name.endsWith('.js'))
      .map((name): [string, Part] => {
        const text = readFileSync(new URL(name, folder), 'utf8')
        return [name, { text, tag: `"${createHash('sha256').update(text).digest('base64url').slice(0, 16)}"` }]
      }),
  )

export const scriptRoutes = (app: FastifyInstance): void => {
  const parts = load()
  app.get('/script/:name', { schema: { hide: true } }, (request, reply) => {
    const part = parts.get((request.params as { name: string }).name)
    if (!part) return reply.callNotFound()
    reply.header('etag', part.tag).header('cache-control', 'no-cache')
    if (request.headers['if-none-match'] === part.tag) return reply.code(304).send()
    return reply.header('content-type', 'text/javascript; charset=utf-8').send(part.text)
  })
}
