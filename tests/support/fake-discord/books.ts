// What the fake writes down for tests to read: requests, identifies, resumes, callbacks and violations. A violation is
// anything that Discord (or the house) would not take; a test ends by finding none.

import type { Json, Upload } from './limits.ts'

export interface RequestRecord {
  at: number
  method: string
  path: string
  route: string
  /** 0 where no answer was given. */
  status: number
  /** Discord's error code where one was answered. */
  code: number | undefined
  /** Whether an Authorization header came along; its text is not kept. */
  authorized: boolean
  body: unknown
  files: readonly Upload[]
}

export interface CallbackRecord {
  at: number
  /** The interaction's. */
  id: string
  status: number
  code: number | undefined
  /** The callback type, and what came as its data. */
  type: number
  data: Json
  /** The whole payload. */
  body: unknown
  files: readonly Upload[]
  /** From the sending of the interaction to the arrival of its callback. */
  ms: number
  /** The message it made or changed, as Discord gives it back. */
  message: Json | undefined
}

export interface IdentifyRecord {
  at: number
  shard: readonly [number, number]
  intents: number
  accepted: boolean
  sessionId: string | undefined
}

export interface ResumeRecord {
  at: number
  sessionId: string
  seq: number
  accepted: boolean
  replayed: number
}

export interface Violation {
  at: number
  /** The route's name, or 'gateway'. */
  where: string
  path: string
  code: string
  message: string
}

export interface Books {
  requests: RequestRecord[]
  callbacks: CallbackRecord[]
  identifies: IdentifyRecord[]
  resumes: ResumeRecord[]
  heartbeats: number
  violations: Violation[]
}

export const newBooks = (): Books => ({
  requests: [],
  callbacks: [],
  identifies: [],
  resumes: [],
  heartbeats: 0,
  violations: [],
})

export function violate(books: Books, where: string, found: { path?: string; code: string | number; message: string }) {
  books.violations.push({
    at: Date.now(),
    where,
    path: found.path ?? '',
    code: String(found.code),
    message: found.message,
  })
}
