// The checks of a wrench over time: a panel for each setting, and above them what was done to it and what it went through.
// Wide for a screen by the tools, narrow for a phone. Numbers are those of the register; the same is told in words.
import type { NumberStyle } from '../core/number-style.ts'
import type { UnitSymbol } from '../core/unit.ts'
import type { WrenchFolder } from '../register/book.ts'
import type { Drift } from '../register/drift.ts'
import type { Words } from '../words/index.ts'
import { type Figure, say, sentences } from './drawer.ts'
import { type DriftTongue, dotText, driftSentences, settingText } from './drift-text.ts'
import { headingHeight, MARGIN, SMALL, sheet, WIDTH, widthOf } from './frame.ts'
import { panel } from './history-panel.ts'
import { line, lozenge, text } from './svg.ts'
import type { Theme } from './theme.ts'
import { dayNumber, type TimeAxis, timeAxis } from './time-axis.ts'

export const shapes = ['wide', 'narrow'] as const
export type Shape = (typeof shapes)[number]

const sizes: Readonly<Record<Shape, { readonly width: number; readonly height: number; readonly ticks: number }>> = {
  wide: { width: 1200, height: 250, ticks: 7 },
  narrow: { width: WIDTH, height: 270, ticks: 4 },
}
const LEFT = MARGIN + 156
const LANE = SMALL + 8
const LANES = 3

/** What changes a wrench or may have: the rest is in the list beside the picture. */
const told = ['adjusted', 'repaired', 'dropped', 'overloaded', 'wound-up'] as const
type Told = (typeof told)[number]
const isTold = (what: string): what is Told => (told as readonly string[]).includes(what)

interface Mark {
  readonly date: string
  readonly what: Told
}

const marksOf = (folder: WrenchFolder, first: string): Mark[] =>
  [...folder.events].reverse().flatMap(({ entry: { body } }) => {
    const { what, date } = body
    return isTold(what) && date >= first ? [{ date, what }] : []
  })

interface Placed {
  readonly mark: Mark
  readonly x: number
  readonly label: string
  /** Which row of words it stands in; none where all are full. */
  readonly lane: number | undefined
  readonly end: boolean
}

/** Words beside their marks, in the first row that is free there. */
const placed = (marks: readonly Mark[], axis: TimeAxis, right: number, nameOf: (what: Told) => string): Placed[] => {
  const free = new Array<number>(LANES).fill(Number.NEGATIVE_INFINITY)
  return marks.map((mark) => {
    const x = axis.at(mark.date)
    const label = nameOf(mark.what)
    const width = widthOf(label, SMALL - 4) + 30
    const end = x + width > right
    const [from, to] = end ? [x - width, x + 14] : [x - 14, x + width]
    const lane = free.findIndex((taken) => from >= taken)
    if (lane !== -1) free[lane] = to
    return { mark, x, label, lane: lane === -1 ? undefined : lane, end }
  })
}

const markText = ({ x, label, lane, end }: Placed, top: number, bottom: number): string => {
  const y = top + (lane ?? LANES - 1) * LANE
  return (
    line({ x, y: y + 12 }, { x, y: bottom }, { class: 'axis' }) +
    lozenge({ x, y }, 9, { class: 'hand' }) +
    (lane === undefined
      ? ''
      : text(label, {
          x: x + (end ? -18 : 18),
          y: y + 10,
          class: 'ink',
          'font-size': SMALL - 4,
          'text-anchor': end ? 'end' : 'start',
        }))
  )
}

const ticks = (axis: TimeAxis, bottom: number, width: number): string =>
  axis.ticks
    .map(({ x, text: content }) => {
      const half = widthOf(content, SMALL - 4) / 2
      const middle = Math.min(Math.max(x, MARGIN + half), width - MARGIN - half)
      return (
        line({ x, y: bottom - 8 }, { x, y: bottom + 6 }, { class: 'rule' }) +
        text(content, {
          x: middle,
          y: bottom + SMALL + 4,
          class: 'ink',
          'font-size': SMALL - 4,
          'text-anchor': 'middle',
        })
      )
    })
    .join('')

export interface HistoryTold {
  readonly folder: WrenchFolder
  readonly drifts: readonly Drift[]
}

export interface HistoryLook {
  readonly words: Words
  readonly style: NumberStyle
  readonly theme: Theme
  readonly shape: Shape
}

const earliest = (dates: readonly string[]): string =>
  dates.reduce((one, other) => (dayNumber(other) < dayNumber(one) ? other : one))
const latest = (dates: readonly string[]): string =>
  dates.reduce((one, other) => (dayNumber(other) > dayNumber(one) ? other : one))

const altOf = (drifts: readonly Drift[], marks: readonly Mark[], tongue: DriftTongue, words: Words): string => {
  const { words: own } = tongue
  return sentences(
    [
      ...drifts.map((drift) => {
        const points = drift.dots.map((one) =>
          say(own.altPoint, {
            date: one.date,
            deviation: dotText(one, drift.limit, tongue),
            verdict: one.failed ? own.failed : own.passed,
          }),
        )
        return [`${settingText(drift.setting, tongue)}: ${points.join('; ')}`, ...driftSentences(drift, tongue)]
      }),
      marks.map(({ date, what }) => say(own.altMark, { date, what: words.register.events[what] })),
    ].flat(),
  )
}

/** The picture of a wrench's checks; nothing where it has none. */
export const drawHistory = ({ folder, drifts }: HistoryTold, look: HistoryLook): Figure | undefined => {
  const { words, style, theme, shape } = look
  const dates = drifts.flatMap(({ dots }) => dots.map(({ date }) => date))
  if (dates.length === 0) return undefined
  const { tag, name, unit } = folder.card.entry.body
  const tongue: DriftTongue = { words: words.history, deviation: words.deviation, style, unit: unit as UnitSymbol }
  const { width, height, ticks: most } = sizes[shape]
  const right = width - MARGIN
  const first = earliest(dates)
  const marks = marksOf(folder, first)
  const ahead = drifts.flatMap(({ outlook }) => (outlook.told ? [outlook.middle] : []))
  const last = latest([...dates, ...marks.map(({ date }) => date), ...ahead])
  const axis = timeAxis(first, last, LEFT, right, most)
  const heading = { lead: words.history.lead, number: tag, lines: [name], warnings: [] }
  const labels = placed(marks, axis, right, (what) => words.register.events[what])
  const lanes = labels.reduce((rows, { lane }) => Math.max(rows, (lane ?? LANES - 1) + 1), 0)
  const strip = headingHeight(heading) + 26
  const top = strip + lanes * LANE
  const bottom = top + drifts.length * (height + 16) + 8
  const drawing = [
    ...labels.map((one) => markText(one, strip, bottom)),
    ...drifts.map((drift, n) =>
      panel(drift, { left: LEFT, right, top: top + n * (height + 16), height, at: axis.at, margin: MARGIN }, tongue),
    ),
    line({ x: LEFT, y: bottom }, { x: right, y: bottom }, { class: 'rule' }),
    ticks(axis, bottom, width),
  ].join('')
  const alt = `${tag}, ${name}. ${altOf(drifts, marks, tongue, words)}`
  return { svg: sheet(theme, heading, drawing, bottom + SMALL + 16, words.history.caption, alt, width), alt }
}
