// The readings of a run, condition by condition: every reading a dot, its mean a line, the margin around the first condition
// shaded, and below each other condition where its mean lies against the first, with its interval.
import type { RunDocument, RunSubject } from '../questions/run-document.ts'
import { dot, lanesOf } from './dots.ts'
import { type Figure, say, sentences } from './drawer.ts'
import { fit, type Heading, headingHeight, MARGIN, SMALL, sheet, WIDTH } from './frame.ts'
import { type Range, roomy } from './plot.ts'
import type { RunLook } from './run-view.ts'
import { arrow, circle, element, line, text } from './svg.ts'

const LEFT = 240
const RIGHT = WIDTH - MARGIN
const ROW = 150
const R = 6
const LANES = 7
/** How far below its dots the interval of a condition lies. */
const BELOW = 52

type Verdict = RunSubject['verdicts'][number]

const intervalOf = ({ difference }: Verdict, mean: number): { low?: number; high?: number; value: number } => ({
  value: mean * (1 + difference.value / 100),
  ...(difference.low && difference.high
    ? { low: mean * (1 + difference.low.value / 100), high: mean * (1 + difference.high.value / 100) }
    : {}),
})

const drawInterval = (verdict: Verdict, mean: number, view: Range, at: (x: number) => number, y: number): string => {
  const { value, low, high } = intervalOf(verdict, mean)
  const middle = { x: at(value), y }
  const end = (x: number, edge: number): string => {
    const beyond = x < view.low || x > view.high
    const to = { x: at(beyond ? edge : x), y }
    return beyond
      ? arrow(middle, to, 22, { class: 'pull' })
      : line(middle, to, { class: 'pull' }) + line({ x: to.x, y: y - 14 }, { x: to.x, y: y + 14 }, { class: 'pull' })
  }
  return (
    (low === undefined || high === undefined ? '' : end(low, view.low) + end(high, view.high)) +
    circle(middle, 11, { class: 'hand' })
  )
}

const row = (
  set: RunSubject['sets'][number],
  verdict: Verdict | undefined,
  mean: number | undefined,
  view: Range,
  at: (x: number) => number,
  y: number,
): string => {
  const xs = set.values.map(at)
  const lanes = lanesOf(xs, 2 * R + 1, LANES)
  const below = set.mean?.text ?? ''
  const middle = set.mean ? at(set.mean.value) : undefined
  return [
    text(set.condition, {
      x: MARGIN,
      y: y - 4,
      class: 'ink strong',
      'font-size': fit(set.condition, SMALL + 4, LEFT - 60),
    }),
    text(below, { x: MARGIN, y: y + SMALL, class: 'ink', 'font-size': fit(below, SMALL, LEFT - MARGIN - 20) }),
    ...xs.map((x, n) => dot({ x, y: y + (lanes[n] as number) * (2 * R) }, R)),
    middle === undefined ? '' : line({ x: middle, y: y - 46 }, { x: middle, y: y + 40 }, { class: 'rule' }),
    verdict && mean !== undefined ? drawInterval(verdict, mean, view, at, y + BELOW) : '',
  ].join('')
}

/** In words what the picture shows, reading by reading. */
const altOf = (run: RunDocument, subject: RunSubject): string =>
  sentences([
    `${run.tag}: ${run.asked}`,
    ...subject.sets.map(({ condition, values, mean }) =>
      mean ? `${condition}: ${values.length} × ${subject.subject.text}, ${mean.text}` : condition,
    ),
    ...subject.verdicts.map(({ text: told }) => told),
    ...(subject.open === undefined ? [] : [subject.open]),
  ])

/** How far from the first condition, the way it goes always told. */
const signed = ({ value, text: told }: Verdict['difference']): string =>
  value > 0 && !told.startsWith('+') ? `+${told}` : told

export interface SetsDrawn {
  readonly heading: Heading
  readonly drawing: string
  /** Between which heights of the sheet the drawing lies. */
  readonly top: number
  readonly bottom: number
  readonly caption: string
  readonly alt: string
}

/** What the sheet, and the card, are put together from; nothing without a reading. */
export const setsDrawn = (
  run: RunDocument,
  subject: RunSubject,
  { words }: Pick<RunLook, 'words'>,
): SetsDrawn | undefined => {
  const all = subject.sets.flatMap(({ values }) => values)
  if (all.length === 0) return undefined
  const [first] = subject.sets
  const mean = first?.mean?.value
  const m = run.margin.value / 100
  const around = mean === undefined ? undefined : { low: mean * (1 - m), high: mean * (1 + m) }
  const view = roomy([...all, ...(around ? [around.low, around.high] : [])], 0.12)
  const at = (x: number): number => LEFT + ((x - view.low) / (view.high - view.low)) * (RIGHT - LEFT)
  const heading = {
    lead: words.bench.say.lead,
    number: run.tag,
    lines: [
      run.asked,
      subject.subject.text,
      ...subject.verdicts.map(
        ({ condition, verdict, difference }) => `${condition}: ${signed(difference)}, ${verdict.text}`,
      ),
      ...(subject.open === undefined ? [] : [subject.open]),
    ],
    warnings: [],
  }
  const top = headingHeight(heading) + 20
  const bottom = top + subject.sets.length * ROW
  const drawing = [
    around
      ? element('rect', {
          x: at(around.low),
          y: top,
          width: at(around.high) - at(around.low),
          height: bottom - top,
          class: 'nut',
          'fill-opacity': 0.1,
        })
      : '',
    mean === undefined ? '' : line({ x: at(mean), y: top }, { x: at(mean), y: bottom }, { class: 'axis' }),
    ...subject.sets.map((set, n) =>
      row(
        set,
        subject.verdicts.find(({ condition }) => condition === set.condition),
        mean,
        view,
        at,
        top + n * ROW + 62,
      ),
    ),
  ].join('')
  const caption = say(words.bench.say.caption, {
    a: first?.condition ?? '',
    margin: run.margin.text,
    confidence: run.confidence.text,
  })
  return { heading, drawing, top, bottom, caption, alt: altOf(run, subject) }
}

export const drawSets = (run: RunDocument, subject: RunSubject, look: RunLook): Figure | undefined => {
  const drawn = setsDrawn(run, subject, look)
  if (!drawn) return undefined
  const { heading, drawing, bottom, caption, alt } = drawn
  return { svg: sheet(look.theme, heading, drawing, bottom + 10, caption, alt), alt }
}
