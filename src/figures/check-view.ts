// A check of a wrench: a row a point, a dot a reading, against the limit. Left it delivers high, right it delivers low.
import type { Answer, ShownGiven } from '../questions/answer.ts'
import { diamond, dot, lanesOf } from './dots.ts'
import { type Drawer, say, sentences } from './drawer.ts'
import { fit, headingHeight, MARGIN, SMALL, sheet, WIDTH } from './frame.ts'
import { givenOf } from './reading.ts'
import { element, line, text } from './svg.ts'

const LEFT = 250
const RIGHT = WIDTH - MARGIN
const ROW = 96
const R = 8
const DIAMOND = 10
const LANE = 18
const LANES = 5

interface Row {
  readonly setting: { readonly text: string }
  readonly deviation: { readonly value: number; readonly text: string }
  readonly verdict: { readonly code: string; readonly text: string }
}

/** Deviations [%] of a point's readings, for the drawing: where they lie against what the wrench said. */
const deviationsOf = ({ value, values }: ShownGiven): number[] =>
  (values ?? []).map((reference) => ((Number(value) - reference) / reference) * 100)

interface Bounds {
  readonly limit: number
  readonly guard: number
}

const boundsOf = (answer: Answer): Bounds => {
  const numberOf = (input: string): number => Number(givenOf(answer, input)?.value ?? 0)
  const guarded = givenOf(answer, 'rule')?.value === 'guarded'
  return { limit: numberOf('tolerance'), guard: guarded ? numberOf('gauge-uncertainty') : 0 }
}

const rowOf = (
  row: Row,
  deviations: readonly number[],
  bounds: Bounds,
  at: (a: number) => number,
  y: number,
): string => {
  const xs = deviations.map(at)
  const lanes = lanesOf(xs, 2 * DIAMOND, LANES)
  const mean = at(row.deviation.value)
  const bad = row.verdict.code.startsWith('fail')
  return [
    text(row.setting.text, {
      x: MARGIN,
      y: y - 4,
      class: 'ink strong',
      'font-size': fit(row.setting.text, SMALL, LEFT - MARGIN - 24),
    }),
    text(row.verdict.text, {
      x: MARGIN,
      y: y + SMALL,
      class: bad ? 'warn strong' : 'nut strong',
      'font-size': fit(row.verdict.text, SMALL - 2, LEFT - MARGIN - 24),
    }),
    line({ x: mean, y: y - 40 }, { x: mean, y: y + 40 }, { class: 'rule' }),
    ...deviations.map((a, n) => {
      const point = { x: xs[n] as number, y: y + (lanes[n] as number) * LANE }
      // A last bit of rounding does not make a reading at the limit one beyond it.
      return Math.abs(a) > bounds.limit + 1e-7 ? diamond(point, DIAMOND) : dot(point, R)
    }),
  ].join('')
}

const band = (from: number, to: number, top: number, height: number): string =>
  element('rect', { x: from, y: top, width: to - from, height, class: 'nut', 'fill-opacity': 0.1 })

export const wrenchCheck: Drawer = (answer, words, theme) => {
  const rows = answer.results.points as unknown as readonly Row[]
  const points = answer.given.filter(({ input }) => input === 'points').map(deviationsOf)
  const verdict = (answer.results.verdict as { code: keyof typeof words.verdicts }).code
  const limitText = givenOf(answer, 'tolerance')?.text ?? ''
  const bounds = boundsOf(answer)
  const all = points.flat()
  const worst = all.reduce((far, one) => (Math.abs(one) > Math.abs(far) ? one : far), 0)
  const worstRow = rows[points.findIndex((one) => one.includes(worst))]
  const heading = {
    lead: words.verdicts[verdict],
    // The last step of the working is the reading that decided.
    number: answer.steps.at(-1)?.shown ?? '',
    lines: [
      say(worst > 0 ? words.worstLow : worst < 0 ? words.worstHigh : words.worstRight, {
        setting: worstRow?.setting.text ?? '',
      }),
    ],
    warnings: [],
  }

  const far = Math.max(Math.abs(worst), (bounds.limit + bounds.guard) * 1.2)
  const middle = (LEFT + RIGHT) / 2
  const scale = (RIGHT - LEFT - 2 * DIAMOND) / 2 / far
  const at = (a: number): number => middle + a * scale
  const top = headingHeight(heading) + 2 * SMALL + 48
  const height = rows.length * ROW
  const end = (a: number, dashed: boolean): string =>
    line({ x: at(a), y: top }, { x: at(a), y: top + height }, { class: dashed ? 'axis' : 'rule' })
  // Beside its line on the side where there is room.
  const inward = bounds.limit * scale > 120
  const label = (sign: 1 | -1): string =>
    text(`${sign === 1 ? '+' : '−'}${limitText}`, {
      x: at(sign * bounds.limit),
      y: top - 12,
      class: 'ink',
      'font-size': SMALL,
      'text-anchor': (sign === 1) === inward ? 'end' : 'start',
    })
  const side = (content: string, x: number, anchor: 'start' | 'end'): string =>
    text(content, {
      x,
      y: top - SMALL - 20,
      class: 'faint',
      'font-size': fit(content, SMALL - 2, 250),
      'text-anchor': anchor,
    })
  const drawing = [
    band(at(-bounds.limit), at(bounds.limit), top, height),
    ...(bounds.guard > 0 && bounds.guard < bounds.limit
      ? [band(at(bounds.guard - bounds.limit), at(bounds.limit - bounds.guard), top, height)]
      : []),
    ...(bounds.guard > 0 ? [-1, 1].map((sign) => end(sign * (bounds.limit + bounds.guard), true)) : []),
    end(-bounds.limit, false),
    end(bounds.limit, false),
    end(0, true),
    label(-1),
    label(1),
    side(words.sideHigh, LEFT, 'start'),
    side(words.sideLow, RIGHT, 'end'),
    ...rows.map((row, n) => rowOf(row, points[n] ?? [], bounds, at, top + n * ROW + ROW / 2)),
  ]
  const caption = bounds.guard > 0 ? words.guardCaption : words.checkCaption
  const alt = sentences([
    `${heading.lead} ${heading.number}`,
    ...heading.lines,
    say(words.altLimit, { limit: limitText }),
    ...rows.map(({ setting, deviation, verdict: { text: told } }) =>
      say(words.altPoint, { setting: setting.text, deviation: deviation.text, verdict: told }),
    ),
  ])
  return { svg: sheet(theme, heading, drawing.join(''), top + height + 12, caption, alt), alt }
}
