// A bar of three shares that make up the whole torque. Each share has its own fill and is led to its name and number below.
import { fit, MARGIN, SMALL, WIDTH } from './frame.ts'
import { element, line, text } from './svg.ts'

const BAR = 44
const LED = 34

export interface SplitPart {
  readonly value: number
  readonly text: string
  readonly name: string
}

// Hollow between full ones: neighbours differ in print as well.
const fills = [{ class: 'nut' }, { class: 'hole', 'stroke-width': 3 }, { class: 'steel' }] as const

/** The bar from `top` on, its title above it, and where it ends. */
export const drawSplit = (title: string, parts: readonly SplitPart[], top: number): { svg: string; bottom: number } => {
  const whole = parts.reduce((sum, { value }) => sum + value, 0)
  const width = WIDTH - 2 * MARGIN
  const bar = top + SMALL + 14
  const column = width / parts.length
  let from = MARGIN
  const drawn = parts.map(({ value, text: told, name }, n) => {
    const share = (value / whole) * width
    const foot = { x: from + share / 2, y: bar + BAR }
    const label = { x: MARGIN + (n + 0.5) * column, y: bar + BAR + LED }
    const svg = [
      element('rect', { x: from, y: bar, width: share, height: BAR, ...fills[n % fills.length] }),
      line(foot, label, { class: 'rule' }),
      ...[told, name].map((content, below) =>
        text(content, {
          x: label.x,
          y: label.y + (below + 1) * (SMALL + 4),
          class: below === 0 ? 'ink strong' : 'ink',
          'font-size': fit(content, SMALL, column - 16),
          'text-anchor': 'middle',
        }),
      ),
    ].join('')
    from += share
    return svg
  })
  const head = text(title, { x: MARGIN, y: top + SMALL - 4, class: 'ink strong', 'font-size': SMALL })
  return { svg: head + drawn.join(''), bottom: bar + BAR + LED + 2 * (SMALL + 4) + 12 }
}
