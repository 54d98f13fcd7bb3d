// The REST side on plain http: finds the route, wants the token where Discord does, puts faults before answers, and
// writes every request down. What a route answers is told by the table it is given.

import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import { setTimeout as pause } from 'node:timers/promises'
import { type Body, readBody } from './body.ts'
import { type Books, type RequestRecord, violate } from './books.ts'
import { type Answer, type Fault, faultAnswer, type faultQueues } from './faults.ts'
import { isRecord } from './limits.ts'

export interface Asked extends Body {
  parts: readonly string[]
  query: URLSearchParams
  /** False where a fault will keep the answer from the client. */
  confirmed: boolean
}

export interface Route {
  name: string
  method: string
  /** Against the path after /api/v10; its groups become `parts`. */
  path: RegExp
  needsToken: boolean
  answer(asked: Asked): Answer
  /** Checks the payload only, where a fault answers instead. */
  look?(asked: Asked): void
  /** Called once it is settled what the client gets. */
  note?(asked: Asked, record: RequestRecord): void
}

/** What befalls a request of this route; `parts` are the ids in its path. */
export type FaultFor = (route: string, parts: readonly string[]) => Fault | undefined

export function restServer(about: {
  token: string
  books: Books
  routes: readonly Route[]
  faults: ReturnType<typeof faultQueues>
  /** Asked first; undefined leaves it to the queues. */
  faultFor?: FaultFor | undefined
}) {
  const { books } = about

  function decide(
    request: IncomingMessage,
    url: URL,
    body: Body,
  ): { answer: Answer | undefined; fault: Fault; name: string; after: (record: RequestRecord) => void } {
    const nothing = { fault: {}, name: 'unknown', after: () => {} }
    const version = /^\/api\/v(\d+)(\/.*)$/.exec(url.pathname)
    if (version?.[1] !== '10') {
      violate(books, 'unknown', { code: 50041, message: `Not under /api/v10: ${url.pathname}` })
      return { ...nothing, answer: { status: 400, body: { message: 'Invalid API version specified', code: 50041 } } }
    }
    const path = version[2] ?? ''
    const route = about.routes.find((one) => one.method === request.method && one.path.test(path))
    if (!route) {
      violate(books, 'unknown', { code: 0, message: `This fake has no ${request.method} ${path}` })
      return { ...nothing, answer: { status: 404, body: { message: '404: Not Found', code: 0 } } }
    }
    const named = { ...nothing, name: route.name }
    if (route.needsToken && request.headers.authorization !== `Bot ${about.token}`)
      return { ...named, answer: { status: 401, body: { message: '401: Unauthorized', code: 0 } } }
    const parts = (route.path.exec(path) ?? []).slice(1).map(decodeURIComponent)
    const fault = about.faultFor?.(route.name, parts) ?? about.faults.next(route.name) ?? {}
    const spoils = fault.status !== undefined || fault.hang === true || fault.reset === true
    const asked: Asked = { ...body, parts, query: url.searchParams, confirmed: !spoils }
    const after = (record: RequestRecord) => route.note?.(asked, record)
    if (body.unreadable !== undefined) {
      violate(books, route.name, { code: 50109, message: body.unreadable })
      return { ...named, after, answer: { status: 400, body: { message: body.unreadable, code: 50109 } } }
    }
    if (!spoils) return { ...named, fault, after, answer: route.answer(asked) }
    if (fault.took) route.answer(asked)
    else route.look?.(asked)
    return { ...named, fault, after, answer: faultAnswer(fault) }
  }

  async function serve(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const url = new URL(request.url ?? '/', 'http://127.0.0.1')
    const body = await readBody(request)
    const { answer, fault, name, after } = decide(request, url, body)
    const said = isRecord(answer?.body) ? answer.body['code'] : undefined
    const record: RequestRecord = {
      at: Date.now(),
      method: request.method ?? '',
      path: url.pathname + url.search,
      route: name,
      status: answer?.status ?? 0,
      code: typeof said === 'number' ? said : undefined,
      authorized: request.headers.authorization !== undefined,
      body: body.body,
      files: body.files,
    }
    books.requests.push(record)
    after(record)
    if (fault.slowMs) await pause(fault.slowMs, undefined, { ref: false })
    if (fault.reset) request.socket.destroy()
    if (!answer) return
    const json = answer.body === undefined ? '' : JSON.stringify(answer.body)
    response.writeHead(answer.status, { ...(json !== '' && { 'Content-Type': 'application/json' }), ...answer.headers })
    response.end(json)
  }

  return createServer((request, response) => {
    // A client that goes away while it is read is no fault of the fake.
    serve(request, response).catch(() => request.socket.destroy())
  })
}
