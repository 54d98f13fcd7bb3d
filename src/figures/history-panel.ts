// One setting of a wrench over time: limits as lines, a mark and its doubt for each check, the trend where the checks tell one.
// Above the middle the wrench gives more than it says, below it less: as ISO 6789 has it, a deviation above 0 lies below. What lies far beyond the limits stands at the edge with its number.
import { showNumber } from '../core/number-style.ts'
import type { Drift, DriftDot } from '../register/drift.ts'
import { diamond, dot } from './dots.ts'
import { say } from './drawer.ts'
import { type DriftTongue, dotText, offText, reachedText, settingText } from './drift-text.ts'
import { fit, SMALL, widthOf } from './frame.ts'
import { arrow, circle, element, line, type Point, text } from './svg.ts'

export interface PanelPlace {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly height: number
  /** Where a day of the calendar lies. */
  readonly at: (date: string) => number
  /** Where the sheet's words begin. */
  readonly margin: number
}

const MOST_R = 9
const LEAST_R = 4
/** So many limits are shown on each side at most: one wild check does not flatten all others. */
const MOST_LIMITS = 2.2
const LEAST_LIMITS = 1.3
/** What the title of a panel takes of its height. */
export const TITLE = SMALL + 26

interface Scale {
  readonly y: (deviation: number) => number
  readonly far: number
}

const scaleOf = ({ dots, limit }: Drift, { top, height }: PanelPlace): Scale => {
  const farthest = dots.reduce((far, one) => Math.max(far, Math.abs(one.deviation) + (one.doubt ?? 0)), 0)
  const far = Math.min(Math.max(farthest * 1.08, limit * LEAST_LIMITS), limit * MOST_LIMITS)
  const middle = top + TITLE + (height - TITLE) / 2
  const each = (height - TITLE) / 2 / far
  return { far, y: (deviation) => middle + Math.min(Math.max(deviation, -far), far) * each }
}

/** As large as leaves most checks apart. */
const radiusOf = ({ dots: all }: Drift, { left, right }: PanelPlace): number =>
  Math.max(Math.min((right - left) / all.length / 2.5, MOST_R), LEAST_R)

const markOf = (one: DriftDot, at: Point, r: number): string => {
  if (one.failed) return diamond(at, r + 3)
  return one.counts ? dot(at, r) : circle(at, r - 1, { class: 'hole', 'stroke-width': 3 })
}

const doubtBar = ({ deviation, doubt }: DriftDot, x: number, { y }: Scale, width: number): string =>
  doubt === undefined
    ? ''
    : line({ x, y: y(deviation - doubt) }, { x, y: y(deviation + doubt) }, { class: 'bar', 'stroke-width': width })

/** A check beyond the edge: an arrow to it, and its number. */
const beyond = (one: DriftDot, x: number, { far, y }: Scale, place: PanelPlace, tongue: DriftTongue): string => {
  const up = one.deviation < 0
  const edge = y(up ? -far : far)
  const label = say(tongue.words.beyond, { deviation: offText(one.deviation, tongue) })
  const isRight = x + 18 + widthOf(label, SMALL - 4) > place.right
  return (
    arrow({ x, y: edge + (up ? 34 : -34) }, { x, y: edge }, 20, { class: 'rule' }) +
    text(label, {
      x: x + (isRight ? -18 : 18),
      y: edge + (up ? 24 : -4),
      class: 'warn strong',
      'font-size': SMALL - 4,
      'text-anchor': isRight ? 'end' : 'start',
    })
  )
}

const dots = (drift: Drift, scale: Scale, place: PanelPlace, tongue: DriftTongue): string => {
  const r = radiusOf(drift, place)
  return drift.dots
    .map((one) => {
      const x = place.at(one.date)
      if (Math.abs(one.deviation) > scale.far) return beyond(one, x, scale, place, tongue)
      return doubtBar(one, x, scale, r / 2.2) + markOf(one, { x, y: scale.y(one.deviation) }, r)
    })
    .join('')
}

const polygonOf = (points: readonly Point[]): string =>
  points.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ')

/** The line with its band; nothing where the checks tell none. From there dashed to the limit, where a day is told. */
const trend = (drift: Drift, { y }: Scale, { at }: PanelPlace): string => {
  const { line: places = [], outlook, dots: all } = drift
  const [first, last] = [places[0], places.at(-1)]
  const counted = all.filter(({ counts }) => counts)
  const [start, end] = [counted[0], counted.at(-1)]
  if (!first || !last || !start || !end) return ''
  const scale = (at(end.date) - at(start.date)) / (last.day - first.day)
  const x = (day: number): number => at(start.date) + (day - first.day) * scale
  const band = [
    ...places.map(({ day, deviation, doubt }) => ({ x: x(day), y: y(deviation + doubt) })),
    ...[...places].reverse().map(({ day, deviation, doubt }) => ({ x: x(day), y: y(deviation - doubt) })),
  ]
  const to = { x: x(last.day), y: y(last.deviation) }
  const ahead = outlook.told
    ? { x: at(outlook.middle), y: y(Math.sign(last.deviation - first.deviation) * outlook.limit) }
    : undefined
  const style = 'stroke-width:4px'
  return (
    element('polygon', { points: polygonOf(band), class: 'hand', 'fill-opacity': 0.16 }) +
    line({ x: x(first.day), y: y(first.deviation) }, to, { class: 'pull', style }) +
    (ahead ? line(to, ahead, { class: 'pull', style: `${style};stroke-dasharray:8 8` }) : '')
  )
}

const rulers = ({ limit }: Drift, { y }: Scale, { left, right, margin }: PanelPlace, tongue: DriftTongue): string => {
  const { style } = tongue
  const level = (deviation: number, kind: 'rule' | 'axis'): string =>
    line({ x: left, y: y(deviation) }, { x: right, y: y(deviation) }, { class: kind })
  const label = (content: string, deviation: number): string =>
    text(content, {
      x: left - 12,
      y: y(deviation) + 9,
      class: 'ink',
      'font-size': fit(content, SMALL - 4, left - margin - 8),
      'text-anchor': 'end',
    })
  const shown = `${showNumber(limit, style)} %`
  return [
    element('rect', {
      x: left,
      y: y(-limit),
      width: right - left,
      height: y(limit) - y(-limit),
      class: 'nut',
      'fill-opacity': 0.1,
    }),
    level(-limit, 'rule'),
    level(limit, 'rule'),
    level(0, 'axis'),
    label(`${tongue.words.sideLow} ${shown}`, limit),
    label('0', 0),
    label(`${tongue.words.sideHigh} ${shown}`, -limit),
  ].join('')
}

/** The panel of a setting, with its title: the setting and what the last check found. */
export const panel = (drift: Drift, place: PanelPlace, tongue: DriftTongue): string => {
  const scale = scaleOf(drift, place)
  const { right, top, margin } = place
  const last = drift.dots.at(-1)
  const title = say(tongue.words.last, {
    setting: settingText(drift.setting, tongue),
    deviation: last ? dotText(last, drift.limit, tongue) : '',
  })
  const reached = reachedText(drift, tongue)
  const room = reached === undefined ? 0 : widthOf(reached, SMALL - 4) + 30
  return [
    text(title, {
      x: margin,
      y: top + SMALL,
      class: 'ink strong',
      'font-size': fit(title, SMALL, right - margin - room),
    }),
    reached === undefined
      ? ''
      : text(reached, { x: right, y: top + SMALL, class: 'hand strong', 'font-size': SMALL - 4, 'text-anchor': 'end' }),
    rulers(drift, scale, place, tongue),
    dots(drift, scale, place, tongue),
    trend(drift, scale, place),
  ].join('')
}
