// What goes wrong on the way, as problem documents: requests that cannot be read, outages, bugs, addresses where nothing is.
import { randomUUID } from 'node:crypto'
import type { Socket } from 'node:net'
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { Outage } from '../../core/outage.ts'
import { BusyDrawing } from '../pictures.ts'
import { SHEETS } from './api/sheets.ts'
import { guarded, problem, sendProblem } from './problem.ts'
import { NotUtf8 } from './utf8.ts'

export const BODY_LIMIT = 16 * 1024
export const NOT_FOUND = 'The questions are listed at /v1/questions.'

/** What the asker can mend: a request that is too large, too early or unreadable. */
export const clientProblem = (
  error: FastifyError,
  request: FastifyRequest | undefined,
  reply: FastifyReply,
): FastifyReply => {
  const route = request?.routeOptions
  if (error.statusCode === 413)
    return sendProblem(reply, problem('too-large', `At most ${route?.bodyLimit ?? BODY_LIMIT} bytes are read here.`))
  if (error.statusCode === 415)
    return sendProblem(
      reply,
      route?.url === SHEETS
        ? problem('not-csv', 'Send the sheet as text/csv.')
        : problem('not-json', 'Send the inputs as application/json.'),
    )
  if (error.statusCode === 429) return sendProblem(reply, problem('too-many', 'Wait a second and ask again.'))
  if (error instanceof NotUtf8) return sendProblem(reply, problem('not-readable', error.message))
  return sendProblem(
    reply,
    problem('not-readable', 'The request is not what HTTP and JSON allow; look at its address and its body.'),
  )
}

const UNREADABLE: Readonly<Record<string, string>> = {
  ERR_HTTP_REQUEST_TIMEOUT: '408 Request Timeout',
  HPE_HEADER_OVERFLOW: '431 Request Header Fields Too Large',
}

/** What Node itself cannot read, or waited for too long: there is no request, so the problem is written to the socket. */
export const unreadable = (error: NodeJS.ErrnoException, socket: Socket): void => {
  if (error.code === 'ECONNRESET' || !socket.writable) return void socket.destroy()
  const line = UNREADABLE[error.code ?? ''] ?? '400 Bad Request'
  const status = Number.parseInt(line, 10)
  const told = status === 408 ? 'The request did not end in time.' : 'The request is not what HTTP allows.'
  const body = JSON.stringify({ ...problem('not-readable', told), status })
  const head = [
    `HTTP/1.1 ${line}`,
    'content-type: application/problem+json',
    `content-length: ${Buffer.byteLength(body)}`,
    ...Object.entries(guarded).map(([name, value]) => `${name}: ${value}`),
    'connection: close',
  ]
  socket.end(`${head.join('\r\n')}\r\n\r\n${body}`)
}

/** A problem document for whatever a route throws; `failed` is told of outages and bugs, with the reference that the asker gets. */
export const handleErrors = (app: FastifyInstance, failed: (reference: string, error: unknown) => void): void => {
  app.setErrorHandler((error: FastifyError, request, reply) => {
    const status = error.statusCode ?? (error instanceof SyntaxError ? 400 : 500)
    if (status >= 400 && status < 500) return clientProblem(error, request, reply)
    if (error instanceof BusyDrawing) {
      const told = 'The same figure is there as SVG at once; for the PNG, try again in a moment.'
      return sendProblem(reply.header('retry-after', '2'), problem('busy-drawing', told))
    }
    const reference = randomUUID()
    failed(reference, error)
    if (error instanceof Outage) {
      reply.header('retry-after', '5')
      if (error.isWriting) {
        const kept = error.isSurelyUnkept
          ? 'Nothing was kept: send it again in a moment'
          : 'Whether it was kept is not known: send it again in a moment, under the same Idempotency-Key it is kept once'
        return sendProblem(reply, problem('not-written', `${kept}; reference ${reference}.`, `urn:uuid:${reference}`))
      }
      const told = `Leave the wrench out and give its lever yourself, or try again in a moment; reference ${reference}.`
      return sendProblem(reply, problem('register-away', told, `urn:uuid:${reference}`))
    }
    return sendProblem(
      reply,
      problem('outage', `Try again in a moment; reference ${reference}.`, `urn:uuid:${reference}`),
    )
  })
  app.setNotFoundHandler((_request, reply) => sendProblem(reply, problem('not-found', NOT_FOUND)))
}
