// Bars from nothing to a value with its span: full as far as the lower end, pale to the upper one, a line at the value.
// Names and numbers stand to the left, so that no length of bar runs into them.
import { fit, MARGIN, SMALL, WIDTH, widthOf } from './frame.ts'
import { element, line, text } from './svg.ts'

const LEFT = 330
const RIGHT = WIDTH - MARGIN
const BAR = 44
const ROW = 34

export interface SpanRow {
  readonly title: string
  /** Below the title: the value, the span. */
  readonly told: readonly string[]
  readonly low: number
  readonly value: number
  readonly high: number
}

/** A line across all bars. Its label stands above them, or below. */
export interface SpanMark {
  readonly at: number
  readonly label: string
  readonly place: 'above' | 'below'
}

const markOf = (mark: SpanMark, x: number, top: number, bottom: number): string => {
  // Away from the nearer end of the bars, but to the side with more room where it is too long.
  const [before, after] = [x - MARGIN, RIGHT - x]
  const end = widthOf(mark.label, SMALL) > after ? before > after : x > (LEFT + RIGHT) / 2
  return (
    line({ x, y: top }, { x, y: bottom }, { class: mark.place === 'above' ? 'rule' : 'axis' }) +
    text(mark.label, {
      x,
      y: mark.place === 'above' ? top - 10 : bottom + SMALL,
      class: 'ink',
      'font-size': fit(mark.label, SMALL, end ? before : after),
      'text-anchor': end ? 'end' : 'start',
    })
  )
}

/** The bars from `top` on, all to one scale, and where they end. */
export const drawSpans = (
  rows: readonly SpanRow[],
  marks: readonly SpanMark[],
  top: number,
): { svg: string; bottom: number } => {
  const far = Math.max(...rows.map(({ high }) => high), ...marks.map(({ at }) => at))
  const at = (value: number): number => LEFT + (value / far) * (RIGHT - LEFT - 8)
  const above = marks.some(({ place }) => place === 'above') ? SMALL + 14 : 0
  const parts: string[] = []
  let y = top + above
  const first = y
  for (const { title, told, low, value, high } of rows) {
    const height = Math.max((told.length + 1) * ROW + 14, BAR + 28)
    const middle = y + height / 2
    const piece = (from: number, to: number, pale: boolean): string =>
      element('rect', {
        x: at(from),
        y: middle - BAR / 2,
        width: at(to) - at(from),
        height: BAR,
        class: pale ? 'nut link' : 'nut',
        'fill-opacity': pale ? 0.3 : undefined,
        'stroke-width': pale ? 2 : undefined,
      })
    parts.push(
      piece(0, low, false),
      ...(high > low
        ? [
            piece(low, high, true),
            line(
              { x: at(value), y: middle - BAR / 2 - 8 },
              { x: at(value), y: middle + BAR / 2 + 8 },
              { class: 'rule' },
            ),
          ]
        : []),
      ...[title, ...told].map((content, n) =>
        text(content, {
          x: MARGIN,
          y: middle + (n - told.length / 2) * ROW + 10,
          class: n === 0 ? 'ink strong' : 'ink',
          'font-size': fit(content, SMALL, LEFT - MARGIN - 24),
        }),
      ),
    )
    y += height
  }
  const below = marks.some(({ place }) => place === 'below') ? SMALL + 12 : 0
  parts.push(...marks.map((mark) => markOf(mark, at(mark.at), first, y)))
  return { svg: parts.join(''), bottom: y + below }
}
