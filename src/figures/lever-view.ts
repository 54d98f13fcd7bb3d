// The wrench from above, to scale: handle to the left, drive at the right, straight ahead to the right of it.
// Tightening turns the handle up the sheet, so + angles point up; the hand pulls up, square to the handle.

import { dimension, fit, MARGIN, SMALL, WIDTH, widthOf, witness } from './frame.ts'
import type { DrawnLink } from './reading.ts'
import { arrow, circle, element, hexagon, line, type Point, text } from './svg.ts'

export interface LeverDrawing {
  /** Lengths in metres, from the drive. */
  readonly lever: number
  readonly hand: number
  readonly pivot?: number | undefined
  readonly chain: readonly DrawnLink[]
  readonly leverLabel: string
  /** Below the drawing: the lever on which the hand pulls. */
  readonly reachLabel: string | undefined
  readonly handLabel: string
  readonly gripLabel: string | undefined
  readonly pivotLabel?: string | undefined
  readonly linkLabels: readonly string[]
}

const ARROW = 120
const HEAD = 30
const NUT = 24

const radians = (degrees: number): number => (degrees * Math.PI) / 180

/** Where each link ends, in metres from the drive; y up the sheet is positive. */
const endsOf = (chain: readonly DrawnLink[]): Point[] => {
  let x = 0
  let y = 0
  return chain.map(({ length, degrees }) => {
    x += length * Math.cos(radians(degrees))
    y += length * Math.sin(radians(degrees))
    return { x, y }
  })
}

const arc = (centre: Point, r: number, degrees: number): string => {
  const end = { x: centre.x + r * Math.cos(radians(degrees)), y: centre.y - r * Math.sin(radians(degrees)) }
  const sweep = degrees > 0 ? 0 : 1
  return element('path', {
    d: `M${centre.x + r} ${centre.y.toFixed(1)} A${r} ${r} 0 0 ${sweep} ${end.x.toFixed(1)} ${end.y.toFixed(1)}`,
    class: 'rule',
  })
}

const labelsOf = (labels: readonly string[], x: number, y: number): string =>
  labels
    .map((label, n) =>
      text(label, {
        x,
        y: y + n * (SMALL + 8),
        class: 'nut strong',
        'font-size': fit(label, SMALL, WIDTH - MARGIN - 40),
        'text-anchor': 'end',
      }),
    )
    .join('')

/** The drawing from `top` on, and where it ends. */
export const drawLever = (drawing: LeverDrawing, top: number): { svg: string; bottom: number } => {
  const { lever, hand, chain, linkLabels } = drawing
  const ends = endsOf(chain)
  const far = Math.max(lever, hand)
  const ahead = Math.max(0, ...ends.map(({ x }) => x))
  const up = Math.max(0, ...ends.map(({ y }) => y))
  const down = Math.max(0, ...ends.map(({ y }) => -y))
  const grip = far * 0.14
  const inner = WIDTH - 2 * MARGIN - HEAD - NUT
  const scale = Math.min(inner / (far + grip + ahead), 420 / Math.max(up + down, 1e-9))
  const labelHeight = linkLabels.length * (SMALL + 8)
  const above = Math.max(ARROW + 10, up * scale + NUT + 16)
  const below = Math.max(HEAD + 14, down * scale + NUT + 16, chain.length > 0 ? down * scale + labelHeight + 60 : 0)
  const axis = top + above
  const drive: Point = { x: MARGIN + (far + grip) * scale, y: axis }
  const at = (x: number, y = 0): Point => ({ x: drive.x + x * scale, y: axis - y * scale })
  const held = at(-hand)
  const points = ends.map(({ x, y }) => at(x, y))
  const nut = points.at(-1) ?? drive
  const first = chain[0]

  const parts: string[] = []
  // The grip spans its centre; the handle runs from there to the drive.
  parts.push(line(at(-lever), drive, { class: 'bar', 'stroke-width': 16 }))
  parts.push(
    element('rect', {
      x: at(-lever).x - grip * scale,
      y: axis - 17,
      width: 2 * grip * scale,
      height: 34,
      rx: 15,
      class: 'steel',
    }),
  )
  if (hand > lever)
    parts.push(
      line(at(-hand - grip * 0.4), at(-lever), { class: 'bar', 'stroke-width': 8, 'stroke-dasharray': '14 8' }),
    )
  parts.push(
    circle(drive, HEAD, { class: 'steel' }),
    element('rect', { x: drive.x - 11, y: axis - 11, width: 22, height: 22, class: 'paper' }),
  )
  if (chain.length > 0) {
    const end = Math.min(drive.x + Math.max(ahead * scale + 40, 120), WIDTH - 12)
    parts.push(line(drive, { x: end, y: axis }, { class: 'axis' }))
  }
  let from = drive
  points.forEach((point, n) => {
    parts.push(line(from, point, { class: 'link', 'stroke-width': 14 }))
    if (n < points.length - 1) parts.push(circle(point, 12, { class: 'nut' }))
    from = point
  })
  parts.push(hexagon(nut, NUT, { class: 'nut' }), hexagon(nut, NUT * 0.45, { class: 'paper' }))
  if (chain.length === 1 && first && Math.abs(first.degrees) >= 5 && Math.abs(first.degrees) <= 175) {
    parts.push(arc(drive, 52, first.degrees))
  }
  // The hand: a ring on the handle and the pull, square to it.
  parts.push(arrow({ x: held.x, y: axis - 20 }, { x: held.x, y: axis - ARROW }, 34, { class: 'pull' }))
  parts.push(circle(held, 23, { class: 'ring', 'stroke-width': 8 }))
  const handRight = held.x + 30 + widthOf(drawing.handLabel, SMALL) < WIDTH - MARGIN
  parts.push(
    text(drawing.handLabel, {
      x: handRight ? held.x + 28 : held.x - 28,
      y: axis - ARROW + 34,
      class: 'hand strong',
      'font-size': SMALL,
      'text-anchor': handRight ? 'start' : 'end',
    }),
  )

  let y = axis + below + 26
  if (drawing.gripLabel && Math.abs(hand - lever) * scale > 6) {
    parts.push(circle(at(-lever), 7, { class: 'paper' }))
  }
  if (drawing.pivot !== undefined && drawing.pivotLabel) parts.push(circle(at(-drawing.pivot), 8, { class: 'ink' }))
  const measures: string[] = []
  const measure = (a: Point, b: Point, label: string): void => {
    parts.push(witness({ x: a.x, y: a.y + 26 }, y), witness({ x: b.x, y: b.y + 30 }, y))
    measures.push(dimension(a.x, b.x, y, label))
    y += SMALL + 48
  }
  if (drawing.reachLabel !== undefined) measure(held, nut, drawing.reachLabel)
  measure(at(-lever), drive, drawing.leverLabel)
  if (drawing.pivotLabel !== undefined && drawing.pivot !== undefined && drawing.pivot > 0)
    measure(at(-drawing.pivot), drive, drawing.pivotLabel)
  // Labels last, so that no line of the drawing runs through them.
  const labelsAt = axis + down * scale + 66
  parts.push(...measures, labelsOf(linkLabels, WIDTH - MARGIN, labelsAt))
  return { svg: parts.join(''), bottom: y - 10 }
}
