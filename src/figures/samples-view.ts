// Two sets of readings on one line: dots and means, the margin around A shaded, and where B lies against A with its doubt.
import type { UnitSymbol } from '../core/unit.ts'
import { units } from '../core/unit.ts'
import type { Answer, ShownQuantity } from '../questions/answer.ts'
import { meanSteps } from '../questions/compare.ts'
import { dot, lanesOf } from './dots.ts'
import { type Drawer, say, sentences } from './drawer.ts'
import { fit, headingHeight, MARGIN, SMALL, sheet, WIDTH, widthOf } from './frame.ts'
import { givenOf } from './reading.ts'
import { arrow, circle, element, line, text } from './svg.ts'

const LEFT = 240
const RIGHT = WIDTH - MARGIN
const ROW = 124
const R = 6
const LANES = 9

const factorOf = (symbol: string | undefined): number => units[symbol as UnitSymbol].factor

/** Readings of a set in the unit of A. */
const valuesOf = (answer: Answer, set: 'a' | 'b'): number[] => {
  const given = givenOf(answer, set)
  const ratio =
    given?.unit === givenOf(answer, 'a')?.unit ? 1 : factorOf(given?.unit) / factorOf(givenOf(answer, 'a')?.unit)
  return (given?.values ?? []).map((value) => value * ratio)
}

interface Ends {
  readonly low: number
  readonly high: number
}

/** What is shown of the line: all dots and the margin, and of the interval no more than keeps the dots apart. */
const viewOf = (all: readonly number[], margin: Ends, interval: Ends | undefined): Ends => {
  const low = all.reduce((least, x) => Math.min(least, x), margin.low)
  const high = all.reduce((most, x) => Math.max(most, x), margin.high)
  const span = high - low
  return {
    low: Math.max(Math.min(low, interval?.low ?? low), low - span / 2),
    high: Math.min(Math.max(high, interval?.high ?? high), high + span / 2),
  }
}

const label = (name: string, below: string, y: number): string =>
  text(name, { x: MARGIN, y: y - 4, class: 'ink strong', 'font-size': SMALL + 4 }) +
  text(below, { x: MARGIN, y: y + SMALL, class: 'ink', 'font-size': fit(below, SMALL, LEFT - MARGIN - 20) })

const set = (values: readonly number[], mean: number, at: (x: number) => number, y: number): string => {
  const xs = values.map(at)
  const lanes = lanesOf(xs, 2 * R + 1, LANES)
  const middle = at(mean)
  return [
    ...xs.map((x, n) => dot({ x, y: y + (lanes[n] as number) * (2 * R) }, R)),
    line({ x: middle, y: y - ROW / 2 + 6 }, { x: middle, y: y + ROW / 2 - 6 }, { class: 'rule' }),
  ].join('')
}

/** The interval of B against A; an arrow where it goes on beyond the sheet. */
const intervalOf = (
  interval: Ends | undefined,
  value: number,
  view: Ends,
  at: (x: number) => number,
  y: number,
): string => {
  const parts: string[] = []
  if (interval) {
    const middle = { x: at(value), y }
    for (const [x, end] of [
      [interval.low, view.low],
      [interval.high, view.high],
    ] as const) {
      const beyond = x < view.low || x > view.high
      const to = { x: at(beyond ? end : x), y }
      parts.push(
        beyond ? arrow(middle, to, 24, { class: 'pull' }) : line(middle, to, { class: 'pull' }),
        beyond ? '' : line({ x: to.x, y: y - 18 }, { x: to.x, y: y + 18 }, { class: 'pull' }),
      )
    }
  }
  return [...parts, circle({ x: at(value), y }, 13, { class: 'hand' })].join('')
}

export const compare: Drawer = (answer, words, theme) => {
  const [a, b] = [valuesOf(answer, 'a'), valuesOf(answer, 'b')]
  const [meanA, meanB] = [answer.steps[meanSteps.a], answer.steps[meanSteps.b]]
  if (!meanA || !meanB) return undefined
  const difference = answer.results.difference as ShownQuantity
  const verdict = (answer.results.verdict as { text: string }).text
  const margin = givenOf(answer, 'margin')
  const confidence = givenOf(answer, 'confidence')?.text ?? ''
  const m = Number(margin?.value) / 100
  const against = (percent: number): number => meanA.value * (1 + percent / 100)
  const { low, high, span } = difference
  const interval = low === undefined || high === undefined ? undefined : { low: against(low), high: against(high) }
  const around = { low: meanA.value * (1 - m), high: meanA.value * (1 + m) }
  const heading = {
    lead: words.against,
    number: difference.text,
    lines: [verdict, ...(span === undefined ? [] : [say(words.interval, { confidence, span })])],
    warnings: [],
  }

  const view = viewOf([...a, ...b], around, interval)
  const scale = (RIGHT - LEFT - 2 * R) / (view.high - view.low)
  const at = (x: number): number => LEFT + R + (x - view.low) * scale
  const top = headingHeight(heading) + SMALL + 30
  const height = 2 * ROW + 90
  const rows = { a: top + ROW / 2, b: top + ROW * 1.5, difference: top + 2 * ROW + 40 }
  const marginLabel = say(words.around, { margin: margin?.text ?? '' })
  const half = widthOf(marginLabel, SMALL) / 2
  const drawing = [
    element('rect', {
      x: at(around.low),
      y: top,
      width: at(around.high) - at(around.low),
      height,
      class: 'nut',
      'fill-opacity': 0.1,
    }),
    line({ x: at(meanA.value), y: top }, { x: at(meanA.value), y: top + height }, { class: 'axis' }),
    set(a, meanA.value, at, rows.a),
    set(b, meanB.value, at, rows.b),
    intervalOf(interval, meanB.value, view, at, rows.difference),
    text(marginLabel, {
      x: Math.min(at(meanA.value), WIDTH - MARGIN - half),
      y: top - 14,
      class: 'ink',
      'font-size': SMALL,
      'text-anchor': 'middle',
    }),
    label('A', meanA.shown, rows.a),
    label('B', meanB.shown, rows.b),
    label(words.against, difference.text, rows.difference),
  ]
  const alt = sentences([
    `${words.against} ${difference.text}`,
    ...heading.lines,
    say(words.altMeans, { a: meanA.shown, b: meanB.shown }),
    say(words.altMargin, { margin: margin?.text ?? '' }),
  ])
  return { svg: sheet(theme, heading, drawing.join(''), top + height + 16, words.samplesCaption, alt), alt }
}
