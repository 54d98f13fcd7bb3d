// A thread of its own that makes sheets into PNG: some milliseconds each, and some MiB that come and go, beside the thread that
// answers. Takes `{ id, svg }`, gives `{ id, png }` or `{ id, error }`.
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { parentPort } from 'node:worker_threads'
import { paintingOf } from '../figures/painted.ts'
import { createPaint } from './painting.ts'
import { pngOf } from './png.ts'

export interface Wanted {
  readonly id: number
  readonly svg: string
}

export type Made =
  | { readonly id: number; readonly png: Uint8Array }
  | { readonly id: number; readonly error: { readonly name: string; readonly message: string } }

// The pixels of a picture are 2 MiB that live for some milliseconds. Left to the next collection they are new pages for each picture,
// and one in thirty waits for a whole collection; swept at once, for a quarter of a millisecond, they are used again.
setFlagsFromString('--expose-gc')
const sweep = runInNewContext('gc') as (how: { readonly type: 'minor' }) => void

const paint = createPaint()

const draw = (svg: string): Promise<Buffer> => {
  const painting = paintingOf(svg)
  const colours = painting.parts.flatMap(({ style: { fill, stroke } }) => [fill ?? '', stroke ?? ''])
  const flat = [...new Set(colours)].filter((one) => /^#[0-9a-f]{6}$/.test(one))
  return pngOf(paint(painting), flat)
}

const make = async ({ id, svg }: Wanted): Promise<Made> => {
  try {
    return { id, png: await draw(svg) }
  } catch (error) {
    const { name, message } = error as Error
    return { id, error: { name, message } }
  }
}

const takeOne = async (wanted: Wanted): Promise<void> => {
  parentPort?.postMessage(await make(wanted))
  sweep({ type: 'minor' })
}

parentPort?.on('message', (wanted: Wanted) => void takeOne(wanted))
