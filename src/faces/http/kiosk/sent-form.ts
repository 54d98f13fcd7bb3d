// Forms of our own pages, as browsers send them.
import type { FastifyInstance, FastifyRequest } from 'fastify'
import { fieldsOf } from '../utf8.ts'

export type Form = Readonly<Record<string, string>>

export const LONGEST_FORM = 16 * 1024

/** The fields of a form that was sent; none where it was no form. */
export const formOf = (request: FastifyRequest): Form => {
  const { body } = request
  if (typeof body !== 'object' || body === null || Array.isArray(body)) return {}
  return Object.fromEntries(Object.entries(body).filter((one): one is [string, string] => typeof one[1] === 'string'))
}

/** Forms as browsers send them. A field that comes twice is none of our forms: it is not read at all. */
export const readForms = (app: FastifyInstance): void => {
  app.addContentTypeParser(
    'application/x-www-form-urlencoded',
    { parseAs: 'buffer', bodyLimit: LONGEST_FORM },
    (_request: FastifyRequest, bytes: string | Buffer, done: (error: Error | null, body?: unknown) => void) => {
      let fields: ReturnType<typeof fieldsOf>
      try {
        fields = fieldsOf(bytes)
      } catch (error) {
        return done(error as Error)
      }
      if (new Set(fields.map(([name]) => name)).size < fields.length)
        return done(Object.assign(new Error('a field came twice'), { statusCode: 400 }))
      done(null, Object.fromEntries(fields))
    },
  )
}
