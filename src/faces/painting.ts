// What is on a sheet onto a canvas, with the bundled font: pixels, four bytes each. A sheet is covered by its paper: none is clear.
import { createRequire } from 'node:module'
import { createCanvas, GlobalFonts, Path2D, type SKRSContext2D } from '@napi-rs/canvas'
import type { Painted, Painting } from '../figures/painted.ts'
import type { Pixels } from './png.ts'

const FONT = 'Sheet'
const WEIGHTS = ['400Regular', '600SemiBold', '700Bold']
/** What SVG takes where nothing is said. */
const MITER = 4

for (const weight of WEIGHTS) {
  const file = createRequire(import.meta.url).resolve(`@expo-google-fonts/inter/${weight}/Inter_${weight}.ttf`)
  if (!GlobalFonts.registerFromPath(file, FONT)) throw new Error(`the font ${weight} could not be read`)
}

const outline = (part: Exclude<Painted, { kind: 'text' }>): Path2D => {
  if (part.kind === 'path') return new Path2D(part.d)
  const path = new Path2D()
  if (part.kind === 'circle') path.arc(part.x, part.y, part.r, 0, 2 * Math.PI)
  else if (part.r > 0) path.roundRect(part.x, part.y, part.w, part.h, Math.min(part.r, part.w / 2, part.h / 2))
  else path.rect(part.x, part.y, part.w, part.h)
  return path
}

const anchors = { start: 'left', middle: 'center', end: 'right' } as const

const paintPart = (context: SKRSContext2D, part: Painted): void => {
  const { fill, stroke, width, cap, join: corner, dashes, opacity } = part.style
  context.lineWidth = width
  context.lineCap = cap
  context.lineJoin = corner
  context.miterLimit = MITER
  context.setLineDash([...dashes])
  const filled = (paint: () => void): void => {
    if (fill === undefined) return
    context.fillStyle = fill
    context.globalAlpha = opacity
    paint()
    context.globalAlpha = 1
  }
  const stroked = (paint: () => void): void => {
    if (stroke === undefined || width === 0) return
    context.strokeStyle = stroke
    paint()
  }
  if (part.kind !== 'text') {
    const path = outline(part)
    filled(() => context.fill(path))
    stroked(() => context.stroke(path))
    return
  }
  // Around letters first: they stand clear of what they cross.
  context.font = `${part.weight} ${part.size}px ${FONT}`
  context.textAlign = anchors[part.anchor]
  stroked(() => context.strokeText(part.content, part.x, part.y))
  filled(() => context.fillText(part.content, part.x, part.y))
}

/** What paints one sheet after the other. */
export const createPaint = (): ((painting: Painting) => Pixels) => {
  // One for all: a painting is done before the next begins, and what was painted is copied out.
  const canvas = createCanvas(1, 1)
  return ({ width, height, parts }) => {
    if (canvas.width !== width) canvas.width = width
    if (canvas.height !== height) canvas.height = height
    const context = canvas.getContext('2d')
    // Whatever a painting that failed has left.
    context.reset()
    for (const part of parts) {
      if (!part.frame) {
        paintPart(context, part)
        continue
      }
      const { scale, move, edges } = part.frame
      context.save()
      context.beginPath()
      context.rect(edges.x, edges.y, edges.w, edges.h)
      context.clip()
      context.translate(move.x, move.y)
      context.scale(scale, scale)
      paintPart(context, part)
      context.restore()
    }
    return { data: canvas.data(), width, height }
  }
}
