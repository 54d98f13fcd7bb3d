// The gateway: version 10, JSON, no compression. HELLO, IDENTIFY, READY, heartbeats, RESUME with replay, and the ways in
// which a gateway goes away. Closes with the code Discord documents for what a client does wrong.

import { createServer } from 'node:http'
import { type RawData, type WebSocket, WebSocketServer } from 'ws'
import { type Books, violate } from './books.ts'
import { openDoor } from './door.ts'
import { isRecord, type Json } from './limits.ts'
import { asTold, isHeardWith, privileged } from './said.ts'
import { endsSession, Session } from './session.ts'

export interface GatewayOptions {
  token: string
  applicationId: string
  botUser: Json
  books: Books
  heartbeatMs: number
  /** Two identifies with the same key (shard modulo concurrency) must lie so far apart. */
  spacingMs: number
  maxConcurrency: number
  guilds: readonly Json[]
}

const mostBytes = 4096

export async function openGateway(options: GatewayOptions) {
  const { books } = options
  const sessions: Session[] = []
  const sockets = new Map<WebSocket, Session | undefined>()
  const server = createServer((_, response) => response.writeHead(426).end())
  const wss = new WebSocketServer({ noServer: true, perMessageDeflate: false })
  const door = await openDoor(server)
  const url = `ws://127.0.0.1:${door.port}`
  let deaf = false
  const identified = new Map<number, number>()

  const send = (socket: WebSocket, op: number, d: unknown = null) =>
    socket.send(JSON.stringify({ op, d, s: null, t: null }))

  function shut(socket: WebSocket, code: number): void {
    const session = sockets.get(socket)
    if (session && endsSession(code)) session.ended = true
    socket.close(code)
  }

  function wrong(socket: WebSocket, code: number, message: string): void {
    violate(books, 'gateway', { code, message })
    shut(socket, code)
  }

  function identify(socket: WebSocket, d: Json) {
    const shard = Array.isArray(d['shard']) ? d['shard'].map(Number) : [0, 1]
    const [id = Number.NaN, count = Number.NaN] = shard
    const intents = Number(d['intents'])
    const accepted = d['token'] === options.token
    const record = { at: Date.now(), shard: [id, count] as const, intents, accepted, sessionId: undefined }
    if (!accepted) {
      books.identifies.push(record)
      return shut(socket, 4004)
    }
    if (!(Number.isInteger(id) && Number.isInteger(count) && id >= 0 && id < count))
      return wrong(socket, 4010, 'Bad shard')
    if (!Number.isInteger(intents) || intents < 0) return wrong(socket, 4013, 'Bad intents')
    if ((intents & privileged) !== 0) return wrong(socket, 4014, 'Disallowed intents')
    const key = id % options.maxConcurrency
    const tooSoon = Date.now() - (identified.get(key) ?? 0) < options.spacingMs
    if (tooSoon) {
      books.identifies.push({ ...record, accepted: false })
      return send(socket, 9, false)
    }
    identified.set(key, Date.now())
    if (!isRecord(d['properties'])) return wrong(socket, 4002, 'No properties')
    const session = new Session([id, count], intents, socket)
    books.identifies.push({ ...record, sessionId: session.id })
    sessions.push(session)
    sockets.set(socket, session)
    session.give('READY', {
      v: 10,
      user: { ...options.botUser, verified: true, email: null, mfa_enabled: true },
      guilds: options.guilds.filter((guild) => session.serves(String(guild['id']))),
      session_id: session.id,
      session_type: 'normal',
      // Without this the client would resume at the real Discord.
      resume_gateway_url: url,
      shard: [id, count],
      application: { id: options.applicationId, flags: 0 },
      private_channels: [],
      relationships: [],
      _trace: [],
    })
  }

  function resume(socket: WebSocket, d: Json) {
    const seq = Number(d['seq'])
    const session = sessions.find((one) => one.id === d['session_id'] && !one.ended)
    const record = { at: Date.now(), sessionId: String(d['session_id']), seq, accepted: false, replayed: 0 }
    books.resumes.push(record)
    if (d['token'] !== options.token) return shut(socket, 4004)
    if (!session) return send(socket, 9, false)
    if (!Number.isInteger(seq) || seq > session.seq) return wrong(socket, 4007, `seq ${d['seq']} was never given`)
    session.socket?.terminate()
    session.socket = socket
    sockets.set(socket, session)
    record.replayed = session.replay(seq)
    record.accepted = true
    session.give('RESUMED', { _trace: [] })
  }

  function hear(socket: WebSocket, data: RawData, isBinary: boolean) {
    const text = data.toString()
    let payload: unknown
    try {
      payload = JSON.parse(text)
    } catch {}
    if (isBinary || text.length > mostBytes || !isRecord(payload)) return wrong(socket, 4002, 'Unreadable payload')
    const d = isRecord(payload['d']) ? payload['d'] : {}
    const known = sockets.get(socket) !== undefined
    if (payload['op'] === 1) {
      books.heartbeats += 1
      return deaf ? undefined : send(socket, 11)
    }
    if (payload['op'] === 2) return known ? wrong(socket, 4005, 'Identified twice') : identify(socket, d)
    if (payload['op'] === 6) return known ? wrong(socket, 4005, 'Resumed when identified') : resume(socket, d)
    if (!known) return wrong(socket, 4003, 'Spoke before identifying')
    // Presence, voice state and member requests are taken and lead to nothing.
    if (![3, 4, 8, 31].includes(Number(payload['op']))) wrong(socket, 4001, `Unknown opcode ${payload['op']}`)
  }

  server.on('upgrade', (request, stream, head) =>
    wss.handleUpgrade(request, stream, head, (socket) => {
      sockets.set(socket, undefined)
      socket.on('message', (data, isBinary) => hear(socket, data, isBinary))
      socket.on('error', () => {})
      socket.on('close', (code) => {
        const session = sockets.get(socket)
        // A client that says goodbye with 1000 or 1001 gives its session up.
        if (session?.socket === socket && endsSession(code)) session.ended = true
        sockets.delete(socket)
      })
      const query = new URL(request.url ?? '/', url).searchParams
      if (query.get('v') !== '10' || query.get('encoding') !== 'json' || query.has('compress'))
        return wrong(socket, 4012, `Only v=10&encoding=json is spoken here: ${request.url}`)
      send(socket, 10, { heartbeat_interval: options.heartbeatMs, _trace: [] })
    }),
  )

  return {
    url,
    sessions,
    /** How many sessions it was given to, connected or not. */
    dispatch(t: string, d: unknown, guild: string | null): number {
      const reached = sessions.filter((session) => !session.ended && session.serves(guild))
      for (const session of reached) session.give(t, d)
      return reached.length
    },
    /** A message, to those who asked for such, with what they may know of it; to how many. */
    tell(message: Json, guild: string | null): number {
      const reached = sessions.filter(
        (session) => !session.ended && session.serves(guild) && isHeardWith(session.intents, message),
      )
      for (const session of reached)
        session.give('MESSAGE_CREATE', asTold(message, session.intents, options.botUser['id']))
      return reached.length
    },
    /** All of them, or those of one shard. */
    drop(shard?: number): void {
      for (const [socket, session] of sockets)
        if (shard === undefined || session?.shard[0] === shard) socket.terminate()
    },
    shutAll(code: number): void {
      for (const socket of sockets.keys()) shut(socket, code)
    },
    /** Any text at all, as if it were a payload. */
    babble(text: string): void {
      for (const socket of sockets.keys()) socket.send(text)
    },
    sendAll(op: number, d: unknown): void {
      for (const socket of sockets.keys()) send(socket, op, d)
    },
    endSessions(): void {
      for (const session of sessions) session.ended = true
    },
    deafen(on: boolean): void {
      deaf = on
    },
    refuse: door.refuse,
    async close() {
      for (const socket of sockets.keys()) socket.terminate()
      await door.close()
    },
  }
}
