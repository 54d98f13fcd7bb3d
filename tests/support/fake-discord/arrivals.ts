// Waiting for the callback of one interaction: the first that comes, or the first that is taken, or none in time.

import { EventEmitter } from 'node:events'
import type { CallbackRecord } from './books.ts'

export interface Waiting {
  /** Milliseconds to wait for the callback; 3500 if not given, a little past Discord's own 3 s. */
  within?: number
  /** Wait for a callback that Discord took (2xx), not for the first try. */
  taken?: boolean
}

export function arrivals() {
  const bell = new EventEmitter().setMaxListeners(0)
  return {
    arrived: (record: CallbackRecord): boolean => bell.emit(record.id, record),
    awaitCallback(id: string, { within = 3500, taken = false }: Waiting = {}): Promise<CallbackRecord> {
      const come = new Promise<CallbackRecord>((resolve, reject) => {
        const settle = (record: CallbackRecord) => {
          if (taken && !(record.status >= 200 && record.status < 300)) return
          clearTimeout(timer)
          bell.off(id, settle)
          resolve(record)
        }
        const timer = setTimeout(() => {
          bell.off(id, settle)
          reject(new Error(`no callback: interaction ${id} had none within ${within} ms`))
        }, within)
        bell.on(id, settle)
      })
      // A test that does not wait for the callback is not told that none came.
      come.catch(() => {})
      return come
    },
  }
}
