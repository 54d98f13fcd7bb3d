// A hinged head from the side, to scale: the head square to the fastener, the handle tilted up at its hinge.
// Handle to the left, as from above: tightening, the hand pulls away from who looks.
import { armStep } from '../questions/flex-head.ts'
import { foremostCodes } from '../questions/foremost.ts'
import { type Drawer, say, sentences } from './drawer.ts'
import { dimension, fit, headingHeight, MARGIN, SMALL, sheet, WIDTH, widthOf, witness } from './frame.ts'
import { givenOf, hasCaution, metres, resultOf } from './reading.ts'
import { beam, circle, element, line, lozenge, type Point, text } from './svg.ts'

const HIGHEST = 300
const SOCKET = 60
const MARK = 15
const LEGEND = SMALL + 14

interface FlexDrawing {
  /** Lengths in metres, from the drive along the straight wrench. */
  readonly lever: number
  readonly hinge: number
  readonly tilt: number
  readonly sensing: string | undefined
  readonly leverLabel: string
  readonly armLabel: string
  readonly tiltLabel: string
  readonly handLabel: string
  readonly hingeLabel: string
  readonly sensingLabel: string
}

type Gap = readonly [from: number, to: number]

/** The middle of a label of a width in the first gap that holds it, as near as may be to where it is wanted. */
export const placeIn = (gaps: readonly Gap[], wanted: number, width: number): number | undefined => {
  const found = gaps.find(([from, to]) => to - from >= width)
  return found && Math.min(Math.max(wanted, found[0] + width / 2), found[1] - width / 2)
}

const hinge = (at: Point): string => circle(at, 17, { class: 'steel' }) + circle(at, 8, { class: 'paper rule' })
const mark = (at: Point): string => lozenge(at, MARK, { class: 'paper rule' })

const legend = (y: number, label: string, sign: (at: Point) => string): string =>
  sign({ x: MARGIN + 18, y: y - 10 }) +
  text(label, { x: MARGIN + 50, y, class: 'ink', 'font-size': fit(label, SMALL, WIDTH - 2 * MARGIN - 50) })

/** Socket, fastener and what it holds, under the head. */
const below = ({ x, y }: Point): string =>
  [
    element('rect', { x: x - SOCKET / 2, y, width: SOCKET, height: 72, class: 'steel' }),
    element('rect', { x: x - 38, y: y + 72, width: 76, height: 28, class: 'nut' }),
    element('rect', { x: x - 56, y: y + 102, width: 112, height: 12, class: 'hole', 'stroke-width': 3 }),
  ].join('')

/** The drawing from `top` on, and where it ends. */
const drawFlex = (drawing: FlexDrawing, top: number): { svg: string; bottom: number } => {
  const { lever, tilt, sensing } = drawing
  const [cos, sin] = [Math.cos((tilt * Math.PI) / 180), Math.sin((tilt * Math.PI) / 180)]
  const behind = lever - drawing.hinge
  const grip = Math.min(lever * 0.12, behind * 0.6)
  const scale = Math.min((WIDTH - 2 * MARGIN - 84) / (lever + grip), HIGHEST / Math.max((behind + grip) * sin, 1e-9))
  const handle = behind * scale
  const axis = top + Math.max(handle * sin + 74, (behind + grip) * scale * sin + 36)
  const drive: Point = { x: MARGIN + (lever + grip) * scale + 24, y: axis }
  const pin: Point = { x: drive.x - drawing.hinge * scale, y: axis }
  const along = (distance: number): Point => ({ x: pin.x - distance * cos, y: axis - distance * sin })
  const hand = along(handle)
  const straight: Point = { x: pin.x - handle, y: axis }
  const arm = drive.x - hand.x
  const parts = [
    ...(tilt > 0 ? [line(straight, pin, { class: 'axis' })] : []),
    below(drive),
    line(along(handle), pin, { class: 'bar', 'stroke-width': 16 }),
    line(along(handle - grip * scale), along(handle + grip * scale), { class: 'bar', 'stroke-width': 34 }),
    beam(pin, { x: drive.x + SOCKET / 2 + 6, y: axis }, 36, { class: 'steel' }),
    hinge(pin),
  ]
  // Nobody knows at which of two places: both are marked.
  if (sensing !== 'behind') parts.push(mark({ x: drive.x, y: axis + 44 }))
  if (sensing !== 'ahead') parts.push(mark(along(Math.min(62, handle / 2))))
  if (tilt > 0) {
    const r = Math.min(handle * 0.6, 3600 / tilt)
    const end = { x: pin.x - r * cos, y: axis - r * sin }
    parts.push(
      element('path', {
        d: `M${(pin.x - r).toFixed(1)} ${axis.toFixed(1)} A${r.toFixed(1)} ${r.toFixed(1)} 0 0 1 ${end.x.toFixed(1)} ${end.y.toFixed(1)}`,
        class: 'rule',
      }),
    )
    const foot = pin.x - hand.x
    const gaps: readonly Gap[] = [
      [Math.max(22, SOCKET / 2 + 16 - (drive.x - pin.x)), foot - 12],
      [foot + 12, handle - 12],
      [handle + 12, pin.x - MARGIN],
    ]
    const middle = placeIn(gaps, r, widthOf(drawing.tiltLabel, SMALL))
    // Where there is no room for it beside the lines, the heading alone says it.
    if (middle !== undefined)
      parts.push(
        text(drawing.tiltLabel, {
          x: pin.x - middle,
          y: axis + 44,
          class: 'ink strong',
          'font-size': SMALL,
          'text-anchor': 'middle',
        }),
      )
  }
  // The hand: a ring, crossed since it pulls away from who looks.
  parts.push(
    circle(hand, 23, { class: 'hole', 'stroke-width': 0 }),
    circle(hand, 23, { class: 'ring', 'stroke-width': 8 }),
    ...[-1, 1].map((way) =>
      line(
        { x: hand.x - 13, y: hand.y - way * 13 },
        { x: hand.x + 13, y: hand.y + way * 13 },
        { class: 'pull', 'stroke-width': 6 },
      ),
    ),
    text(drawing.handLabel, {
      x: hand.x + 36,
      y: hand.y - 34,
      class: 'hand strong',
      'font-size': fit(drawing.handLabel, SMALL, WIDTH - MARGIN - hand.x - 36),
    }),
  )
  let y = axis + 142
  if (tilt > 0) {
    parts.push(witness({ x: hand.x, y: hand.y + 30 }, y), witness({ x: drive.x, y: axis + 116 }, y))
    // An arm shorter than its label has it beside it.
    const wide = widthOf(drawing.armLabel, SMALL) + 24 < arm
    parts.push(dimension(hand.x, drive.x, y, wide ? drawing.armLabel : ''))
    if (!wide) parts.push(text(drawing.armLabel, { x: drive.x + 18, y: y + 10, class: 'ink', 'font-size': SMALL }))
    y += SMALL + 40
  }
  parts.push(
    witness({ x: straight.x, y: axis + (tilt > 0 ? 8 : 26) }, y),
    witness({ x: drive.x, y: tilt > 0 ? y - SMALL - 28 : axis + 116 }, y),
    dimension(straight.x, drive.x, y, drawing.leverLabel),
  )
  y += SMALL + 50
  parts.push(legend(y, drawing.hingeLabel, hinge), legend(y + LEGEND, drawing.sensingLabel, mark))
  return { svg: parts.join(''), bottom: y + LEGEND + 6 }
}

export const flexHead: Drawer = (answer, words, theme) => {
  const [lever, pin, tilt] = [givenOf(answer, 'lever'), givenOf(answer, 'hinge'), givenOf(answer, 'tilt')]
  const [L, h] = [metres(lever), metres(pin)]
  if (!lever || !pin || !tilt || L === undefined || h === undefined) return undefined
  const torque = resultOf(answer, 'torque')
  const pull = resultOf(answer, 'pull')
  const sensing = givenOf(answer, 'sensing')?.value
  const heading = {
    lead: words.getsSoon,
    number: torque.span ?? torque.text,
    lines: [
      say(words.tilted, { setting: givenOf(answer, 'torque')?.text ?? '', tilt: tilt.text }),
      say(words.tiltedPull, { pull: pull.span ?? pull.text, straight: resultOf(answer, 'pull-straight').text }),
    ],
    warnings: foremostCodes.filter((code) => hasCaution(answer, code)).map((code) => words.warnings[code]),
  }
  const labels = {
    leverLabel: say(words.lever, { length: lever.text }),
    armLabel: say(words.arm, { length: answer.steps[armStep]?.shown ?? '' }),
    hingeLabel: pin.from === 'assumed' ? words.hingeTaken : say(words.hingeAt, { length: pin.text }),
    sensingLabel:
      sensing === 'ahead' ? words.sensesAhead : sensing === 'behind' ? words.sensesBehind : words.sensesUnknown,
  }
  const { svg, bottom } = drawFlex(
    {
      ...labels,
      lever: L,
      hinge: h,
      tilt: Number(tilt.value),
      sensing: sensing === undefined ? undefined : String(sensing),
      tiltLabel: tilt.text,
      handLabel: words.pullAway,
    },
    headingHeight(heading),
  )
  const alt = sentences([
    `${heading.lead} ${heading.number}`,
    ...heading.lines,
    say(words.altTilt, { tilt: tilt.text }),
    say(words.altTiltPull, { lever: lever.text }),
    labels.armLabel,
    labels.hingeLabel,
    labels.sensingLabel,
  ])
  return { svg: sheet(theme, heading, svg, bottom, words.fromSide, alt), alt }
}
