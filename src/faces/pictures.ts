// Sheets as PNG: sharp with the bundled font, kept by their content. The same sheet is drawn once, however often it is asked for.
import { createHash } from 'node:crypto'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import pLimit from 'p-limit'

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
// Each takes some MiB and one of the few threads that the store and the network need as well.
const AT_ONCE = 2
/** They are drawn within about three seconds. */
const MOST_WAITING = 200
const WEIGHTS = ['400Regular', '600SemiBold', '700Bold']

// sharp takes a font from npm only through fontconfig, and fontconfig reads its file once, before the first text is drawn.
const pointToFont = (): void => {
  const fonts = dirname(createRequire(import.meta.url).resolve('@expo-google-fonts/inter/package.json'))
  const folder = mkdtempSync(join(tmpdir(), 'armlength-fonts-'))
  const places = WEIGHTS.map((weight) => `<dir>${join(fonts, weight)}</dir>`).join('')
  const file = join(folder, 'fonts.conf')
  writeFileSync(
    file,
    `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig>${places}<cachedir>${folder}</cachedir></fontconfig>`,
  )
  process.env.FONTCONFIG_FILE = file
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }))
}

type Render = (svg: string) => Promise<Buffer>

const loadRender = async (): Promise<Render> => {
  pointToFont()
  // Not by import: Node keeps a failed one, and there would be no picture until the next start.
  const sharp = createRequire(import.meta.url)('sharp') as typeof import('sharp').default
  sharp.cache(false)
  sharp.concurrency(1)
  return (svg) => sharp(Buffer.from(svg)).png({ compressionLevel: 6 }).toBuffer()
}

/** Draws nothing until it is first asked to, so that a start does not wait for it. */
export const createPictures = (): Pictures => {
  let render: Promise<Render> | undefined
  const kept = new Map<string, Promise<Buffer>>()
  const inTurn = pLimit(AT_ONCE)
  return {
    png: (svg) => {
      const key = createHash('sha256').update(svg).digest('base64')
      const known = kept.get(key)
      if (known) {
        kept.delete(key)
        kept.set(key, known)
        return known
      }
      // What could not be loaded (no handle was free) is loaded again for the next asker.
      render ??= loadRender().catch((error: unknown) => {
        render = undefined
        throw error
      })
      const drawn = render.then((draw) => {
        if (inTurn.pendingCount >= MOST_WAITING) throw new BusyDrawing()
        return inTurn(draw, svg)
      })
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
