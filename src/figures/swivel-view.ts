// A universal joint from the side, bent as asked, and under it what the fastener gets against what the wrench says.
import type { ShownQuantity } from '../questions/answer.ts'
import { type Drawer, say, sentences } from './drawer.ts'
import { headingHeight, SMALL, sheet, WIDTH } from './frame.ts'
import { givenOf, resultOf } from './reading.ts'
import { drawSpans } from './span-bar.ts'
import { beam, circle, element, line, type Point, text } from './svg.ts'

const FORK = 64
const SHAFT = 140
const ARC = 62

/** The joint from `top` on, and where it ends; the lower part leans to the right. */
const drawSwivel = (bend: number, angleLabel: string, top: number) => {
  const [cos, sin] = [Math.cos((bend * Math.PI) / 180), Math.sin((bend * Math.PI) / 180)]
  const joint: Point = { x: WIDTH / 2 - 40, y: top + 134 }
  const along = (distance: number): Point => ({ x: joint.x + distance * sin, y: joint.y + distance * cos })
  const up = (distance: number): Point => ({ x: joint.x, y: joint.y - distance })
  const end = (SHAFT + 26) * cos + 39 * sin
  const axis = bend < 30 ? SHAFT + 56 : ARC + 48
  const bottom = joint.y + Math.max(end, bend > 0 ? axis : 0)
  const parts = [
    // The wrench's head, its handle going off to the left; then its half of the joint.
    beam({ x: joint.x - 250, y: top + 36 }, { x: joint.x, y: top + 36 }, 18, { class: 'steel' }),
    element('rect', { x: joint.x - 46, y: top + 10, width: 92, height: 52, rx: 14, class: 'steel' }),
    beam(up(76), up(26), 22, { class: 'steel' }),
    beam(up(44), up(-8), 48, { class: 'steel' }),
    beam(along(-8), along(44), 48, { class: 'nut' }),
    beam(along(40), along(84), 24, { class: 'nut' }),
    beam(along(80), along(SHAFT), FORK, { class: 'nut' }),
    beam(along(SHAFT), along(SHAFT + 26), 78, { class: 'hole', 'stroke-width': 4 }),
    ...(bend > 0 ? [line(joint, up(-axis), { class: 'axis' })] : []),
    circle(joint, 14, { class: 'paper rule' }),
  ]
  if (bend > 0) {
    const tip = along(ARC)
    parts.push(
      element('path', {
        d: `M${joint.x} ${(joint.y + ARC).toFixed(1)} A${ARC} ${ARC} 0 0 0 ${tip.x.toFixed(1)} ${tip.y.toFixed(1)}`,
        class: 'rule',
      }),
      text(angleLabel, {
        x: joint.x - 40,
        y: joint.y + ARC + 10,
        class: 'ink strong',
        'font-size': SMALL,
        'text-anchor': 'end',
      }),
    )
  }
  return { svg: parts.join(''), bottom }
}

export const swivel: Drawer = (answer, words, theme) => {
  const [setting, angle] = [givenOf(answer, 'torque'), givenOf(answer, 'angle')]
  const torque = answer.results.torque as ShownQuantity
  if (!setting || !angle) return undefined
  const bend = Number(angle.value)
  const { text: told, span } = resultOf(answer, 'torque')
  const values = { setting: setting.text, angle: angle.text }
  const heading = {
    lead: words.getsSoon,
    number: span ?? told,
    lines: bend > 0 ? [words.lowerStill, say(words.bent, values)] : [say(words.unbent, values)],
    warnings: bend > 0 ? [words.warnings['no-setting']] : [],
  }
  const onWrench = say(words.onWrench, values)
  const joint = drawSwivel(bend, angle.text, headingHeight(heading))
  const bar = drawSpans(
    [
      {
        title: words.atFastener,
        told: [span ?? told],
        low: torque.low ?? torque.value,
        value: torque.value,
        high: torque.high ?? torque.value,
      },
    ],
    [{ at: torque.value, label: onWrench, place: 'above' }],
    joint.bottom + 16,
  )
  const alt = sentences([
    `${heading.lead} ${heading.number}`,
    ...heading.lines,
    ...heading.warnings,
    say(words.altBend, values),
    say(words.altSpan, { ...values, span: span ?? told }),
  ])
  return { svg: sheet(theme, heading, joint.svg + bar.svg, bar.bottom + 10, words.swivelCaption, alt), alt }
}
