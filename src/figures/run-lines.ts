// A run as lines: a condition over its re-runs, and torque against clamp force with the line of K.
import type { UnitSymbol } from '../core/unit.ts'
import { units } from '../core/unit.ts'
import type { RunDocument, RunSubject } from '../questions/run-document.ts'
import { dot } from './dots.ts'
import { type Figure, say, sentences } from './drawer.ts'
import { headingHeight, MARGIN, SMALL, sheet, WIDTH } from './frame.ts'
import { plot, roomy } from './plot.ts'
import type { RunLook } from './run-view.ts'
import { circle, element, line, lozenge, type Point, text } from './svg.ts'

const LEFT = MARGIN + 110
const RIGHT = WIDTH - MARGIN
const HEIGHT = 420
const R = 8

/** A shape for each condition, for those who do not see its colour. */
const marks: ReadonlyArray<(at: Point) => string> = [
  (at) => dot(at, R),
  (at) => lozenge(at, R + 2, { class: 'hand' }),
  (at) => circle(at, R, { class: 'ring', 'stroke-width': 4 }),
  (at) => element('rect', { x: at.x - R, y: at.y - R, width: 2 * R, height: 2 * R, class: 'steel' }),
  (at) => lozenge(at, R + 2, { class: 'steel' }),
  (at) => element('rect', { x: at.x - R, y: at.y - R, width: 2 * R, height: 2 * R, class: 'hand' }),
]
const markAt = (n: number, at: Point): string => (marks[n % marks.length] as (at: Point) => string)(at)

/** Which mark is which condition, in a row below the heading. */
const legend = (names: readonly string[], y: number): string => {
  let x = LEFT
  return names
    .map((name, n) => {
      const part = markAt(n, { x, y: y - 8 }) + text(name, { x: x + 18, y, class: 'ink', 'font-size': SMALL - 4 })
      x += 50 + name.length * 16
      return part
    })
    .join('')
}

const unitText = (name: string, unit: string): string => (unit === '1' ? name : `${name} [${unit}]`)

export const drawSeries = (
  run: RunDocument,
  subject: RunSubject,
  { words, style, theme }: RunLook,
): Figure | undefined => {
  const [first] = subject.series
  if (!first) return undefined
  const { say: told } = words.bench
  const m = run.margin.value / 100
  const heading = {
    lead: told.lead,
    number: run.tag,
    lines: [run.asked, `${first.condition}: ${first.verdict.text}`],
    warnings: [],
  }
  const top = headingHeight(heading) + 90
  const box = { left: LEFT, right: RIGHT, top, bottom: top + HEIGHT }
  const dots = subject.series.flatMap((one) => one.dots)
  const [low, high] = [first.line.first * (1 - m), first.line.first * (1 + m)]
  const x = roomy(dots.map(({ month }) => month))
  const y = roomy([...dots.map(({ value }) => value), low, high])
  const { at, axes } = plot(box, x, y, { x: told.months, y: unitText(subject.subject.text, subject.unit) }, style)
  const [upper, lower] = [at(x.low, high), at(x.high, low)]
  const months = subject.series.map((one) => one.dots.map(({ month }) => month))
  const drawing = [
    element('rect', {
      x: upper.x,
      y: upper.y,
      width: lower.x - upper.x,
      height: lower.y - upper.y,
      class: 'nut',
      'fill-opacity': 0.1,
    }),
    axes,
    ...subject.series.map((one, n) =>
      line(
        at(Math.min(...(months[n] as number[])), one.line.first),
        at(Math.max(...(months[n] as number[])), one.line.last),
        {
          class: n === 0 ? 'rule' : 'axis',
        },
      ),
    ),
    ...subject.series.flatMap((one, n) => one.dots.map(({ month, value }) => markAt(n, at(month, value)))),
    legend(
      subject.series.map(({ condition }) => condition),
      top - 50,
    ),
  ].join('')
  const alt = sentences([`${run.tag}: ${run.asked}`, ...subject.series.map(({ text: one }) => one)])
  return {
    svg: sheet(
      theme,
      heading,
      drawing,
      box.bottom + 2 * SMALL + 24,
      say(told.captionSeries, { margin: run.margin.text }),
      alt,
    ),
    alt,
  }
}

/** Clamp force against torque; through 0 the line of the mean K of the first condition, dashed where its next bolt will lie. */
export const drawFactor = (run: RunDocument, { words, style, theme }: RunLook): Figure | undefined => {
  const [first] = run.factors
  if (!first) return undefined
  const { say: told, subjects } = words.bench
  const span =
    first.k.low && first.k.high ? [`${first.condition}: ${first.k.low.text} … ${first.k.high.text} (95 %)`] : []
  const heading = { lead: 'K', number: first.k.text, lines: [run.asked, ...span], warnings: [] }
  const top = headingHeight(heading) + 90
  const box = { left: LEFT, right: RIGHT, top, bottom: top + HEIGHT }
  const all = run.factors.flatMap(({ readings }) => readings)
  const most = Math.max(...all.map(({ torque }) => torque))
  const { torque: inTorque, clamp: inClamp } = first.units
  const clampAt = (torque: number, k: number): number =>
    (torque * units[inTorque as UnitSymbol].factor) / (k * first.diameter) / units[inClamp as UnitSymbol].factor
  const x = { low: 0, high: most * 1.1 }
  const highest = Math.max(...all.map(({ clamp }) => clamp), clampAt(x.high, first.k.value))
  const y = { low: 0, high: highest * 1.1 }
  const names = { x: unitText(told.axisTorque, inTorque), y: unitText(subjects.clamp, inClamp) }
  const { at, axes } = plot(box, x, y, names, style)
  const ray = (k: number | undefined, cls: string): string => {
    if (k === undefined || !(k > 0)) return ''
    const reach = Math.min(x.high, (y.high / clampAt(x.high, k)) * x.high)
    return line(at(0, 0), at(reach, clampAt(reach, k)), { class: cls })
  }
  const drawing = [
    axes,
    ray(first.k.value, 'rule'),
    ray(first.k.low?.value, 'axis'),
    ray(first.k.high?.value, 'axis'),
    ...run.factors.flatMap(({ readings }, n) => readings.map(({ torque, clamp }) => markAt(n, at(torque, clamp)))),
    legend(
      run.factors.map(({ condition }) => condition),
      top - 50,
    ),
  ].join('')
  const alt = sentences([`${run.tag}: ${run.asked}`, ...run.factors.map(({ text: one }) => one)])
  const caption = say(told.captionFactor, { a: first.condition })
  return { svg: sheet(theme, heading, drawing, box.bottom + 2 * SMALL + 24, caption, alt), alt }
}
