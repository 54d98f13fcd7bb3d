// What the HTTP door really offers, read from the server's own table of routes: a route that is added is seen here by itself.
import type { FastifyInstance } from 'fastify'

export interface Offered {
  readonly url: string
  readonly methods: readonly string[]
}

const line = /^([│ ]*)[├└]── (\S*)(?: \(([A-Z, -]+)\))?$/

/** Every route with its methods. The table is a tree: what stands deeper continues the address above it. */
export const routesOf = (app: FastifyInstance): readonly Offered[] => {
  const above: string[] = []
  const found: Offered[] = []
  for (const text of app.printRoutes({ commonPrefix: false }).split('\n')) {
    if (text.trim() === '') continue
    const [, indent, part, methods] = line.exec(text) ?? []
    if (indent === undefined || part === undefined) throw new Error(`a route that cannot be read: ${text}`)
    const depth = indent.length / 4
    above.length = depth
    above[depth] = part
    if (methods !== undefined) found.push({ url: above.join(''), methods: methods.split(', ') })
  }
  return found
}

/** What a writing route is called in the tests: `POST /sign-in`. */
export const writingRoutesOf = (app: FastifyInstance): readonly string[] =>
  routesOf(app).flatMap(({ url, methods }) =>
    methods.filter((method) => method !== 'GET' && method !== 'HEAD').map((method) => `${method} ${url}`),
  )
