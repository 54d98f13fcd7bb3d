// A wrench held at its drive, with a scale or a weight at a distance: where to hook on, which way to pull, what the scale shows.
import { dimension, fit, MARGIN, SMALL, WIDTH, witness } from './frame.ts'
import { arrow, circle, element, line, type Point, text } from './svg.ts'

export interface ScaleDrawing {
  /** `down` a weight hangs on the handle, `up` a scale pulls it up, `square` seen from above. */
  readonly way: 'down' | 'up' | 'square'
  /** How far the pull leans from square to the handle [°]. */
  readonly lean: number
  readonly distanceLabel: string
  /** In the box of the scale: what it shows or must show. */
  readonly force: readonly string[]
  readonly wayLabel: string
  readonly holdLabel: string
}

const CORD = 70
const BOX_WIDTH = 330

export const drawScale = (
  { way, lean, distanceLabel, force, wayLabel, holdLabel }: ScaleDrawing,
  top: number,
): { svg: string; bottom: number } => {
  const drive: Point = { x: WIDTH - MARGIN - 90, y: 0 }
  const hook: Point = { x: MARGIN + 190, y: 0 }
  const boxHeight = force.length * (SMALL + 10) + 26
  const downward = way === 'down'
  const cord = CORD + boxHeight
  const axis = top + (downward ? 130 : cord + 56)
  const at = (point: Point): Point => ({ x: point.x, y: axis })
  const sign = downward ? 1 : -1
  const shift = Math.tan((lean * Math.PI) / 180) * CORD
  const box: Point = { x: hook.x + shift, y: axis + sign * CORD }
  const boxLeft = Math.max(MARGIN, box.x - BOX_WIDTH / 2)
  const boxTop = downward ? box.y : box.y - boxHeight
  const parts = [
    // What holds the drive: a block with its hatching.
    element('rect', { x: drive.x - 20, y: axis - 58, width: 110, height: 116, class: 'hole', 'stroke-width': 4 }),
    ...[0, 1, 2, 3].map((n) =>
      line(
        { x: drive.x - 10 + n * 24, y: axis + 56 },
        { x: drive.x + 14 + n * 24, y: axis - 56 },
        { class: 'bar', 'stroke-width': 2 },
      ),
    ),
    line({ x: MARGIN + 60, y: axis }, at(drive), { class: 'bar', 'stroke-width': 16 }),
    element('rect', { x: MARGIN + 40, y: axis - 18, width: 230, height: 36, rx: 16, class: 'steel' }),
    circle(at(drive), 30, { class: 'steel' }),
    element('rect', { x: drive.x - 11, y: axis - 11, width: 22, height: 22, class: 'paper' }),
    arrow({ x: hook.x, y: axis + sign * 14 }, { x: box.x, y: box.y }, 26, { class: 'pull' }),
    circle(at(hook), 20, { class: 'ring', 'stroke-width': 8 }),
    element('rect', {
      x: boxLeft,
      y: boxTop,
      width: BOX_WIDTH,
      height: boxHeight,
      rx: 12,
      class: 'hole',
      'stroke-width': 5,
    }),
    ...force.map((label, n) =>
      text(label, {
        x: boxLeft + BOX_WIDTH / 2,
        y: boxTop + (n + 1) * (SMALL + 10) - 2,
        class: 'hand strong',
        'font-size': fit(label, SMALL, BOX_WIDTH - 24),
        'text-anchor': 'middle',
      }),
    ),
  ]
  const y = axis + (downward ? cord + 40 : 130)
  parts.push(
    witness({ x: hook.x, y: downward ? boxTop + boxHeight : axis + 26 }, y),
    witness({ x: drive.x, y: axis + 62 }, y),
    dimension(hook.x, drive.x, y, distanceLabel),
  )
  // Beside the box where there is room, else above the handle. Texts last, so that no line runs through them.
  const wayAt = downward
    ? { x: MARGIN, y: axis - 44, room: 400 }
    : { x: boxLeft + BOX_WIDTH + 18, y: boxTop + boxHeight / 2 + 10, room: WIDTH - MARGIN - boxLeft - BOX_WIDTH - 18 }
  parts.push(
    text(wayLabel, { x: wayAt.x, y: wayAt.y, class: 'ink', 'font-size': fit(wayLabel, SMALL, wayAt.room) }),
    text(holdLabel, {
      x: WIDTH - MARGIN,
      y: downward ? axis - 74 : axis + 94,
      class: 'ink',
      'font-size': fit(holdLabel, SMALL, 380),
      'text-anchor': 'end',
    }),
  )
  return { svg: parts.join(''), bottom: y + SMALL + 30 }
}
