// Sheets as PNG: made by a thread of its own, kept by their content. The same sheet is drawn once, however often it is asked for.
import { createHash } from 'node:crypto'
import { Worker } from 'node:worker_threads'
import pLimit from 'p-limit'
import type { Made, Wanted } from './painter.ts'

export interface Pictures {
  /** The sheet as a PNG. Throws BusyDrawing where too many are waited for, and what the drawing throws. */
  readonly png: (svg: string) => Promise<Buffer>
}

/** Nothing is wrong with the sheet: there is no room for it among those that wait. */
export class BusyDrawing extends Error {
  constructor() {
    super('too many pictures are waited for')
    this.name = 'BusyDrawing'
  }
}

const KEPT = 200
/** One is packed while the next is painted. */
const AT_ONCE = 2
const MOST_WAITING = 200
const HEAP_MIB = 64
/** A thread reads no TypeScript: run from its source, as tests do it, the program takes the built one. */
const PAINTER = new URL(
  import.meta.url.endsWith('.ts') ? '../../dist/src/faces/painter.js' : './painter.js',
  import.meta.url,
)

type Draw = (svg: string) => Promise<Buffer>

/** A painter that is there until it fails: `gone` is told, and what it was asked for fails with it. */
const startPainter = (gone: () => void): Draw => {
  const thread = new Worker(PAINTER, { resourceLimits: { maxOldGenerationSizeMb: HEAP_MIB } })
  const waiting = new Map<number, { resolve: (png: Buffer) => void; reject: (error: Error) => void }>()
  const fail = (error: Error): void => {
    gone()
    for (const { reject } of waiting.values()) reject(error)
    waiting.clear()
  }
  thread.on('error', fail).on('exit', (code) => fail(new Error(`the painter ended with ${code}`)))
  thread.on('message', (made: Made) => {
    const one = waiting.get(made.id)
    waiting.delete(made.id)
    // It keeps the program alive only while something is waited for.
    if (waiting.size === 0) thread.unref()
    if ('png' in made) one?.resolve(Buffer.from(made.png.buffer, made.png.byteOffset, made.png.byteLength))
    else one?.reject(Object.assign(new Error(made.error.message), { name: made.error.name }))
  })
  let last = 0
  return (svg) =>
    new Promise((resolve, reject) => {
      const wanted: Wanted = { id: ++last, svg }
      waiting.set(wanted.id, { resolve, reject })
      thread.ref()
      thread.postMessage(wanted)
    })
}

/** Draws nothing until it is first asked to, so that a start does not wait for it. */
export const createPictures = (): Pictures => {
  let draw: Draw | undefined
  const kept = new Map<string, Promise<Buffer>>()
  const inTurn = pLimit(AT_ONCE)
  const started = (): Draw => {
    const mine = startPainter(() => {
      if (draw === mine) draw = undefined
    })
    return mine
  }
  return {
    png: (svg) => {
      const key = createHash('sha256').update(svg).digest('base64')
      const known = kept.get(key)
      if (known) {
        kept.delete(key)
        kept.set(key, known)
        return known
      }
      const drawn = (async () => {
        if (inTurn.pendingCount >= MOST_WAITING) throw new BusyDrawing()
        return inTurn(() => {
          // One that could not start (no handle was free) is started again for the next asker.
          draw ??= started()
          return draw(svg)
        })
      })()
      kept.set(key, drawn)
      // A picture that failed is not kept; the next asker may have more luck.
      drawn.catch(() => kept.delete(key))
      for (const oldest of kept.keys()) {
        if (kept.size <= KEPT) break
        kept.delete(oldest)
      }
      return drawn
    },
  }
}
