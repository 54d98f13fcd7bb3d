// The sheet around every figure: what to act on, large, on top; warnings; the drawing; a caption. Width is fixed, height follows.
import { element, escapeXml, type Point, text } from './svg.ts'
import { styleOf, type Theme } from './theme.ts'

export const WIDTH = 800
export const MARGIN = 40
/** Everything that is read is at least this high, so that it can be read at the width of a phone. */
export const SMALL = 30
const LARGE = 76
const MIDDLE = 36

/** Inter's figures and letters are about this wide, as a share of the size; a little on the wide side. */
const GLYPH = 0.54
const CAPITAL = 0.72
export const widthOf = (content: string, size: number): number =>
  size * (content.length * GLYPH + (content.match(/[A-Z]/g)?.length ?? 0) * (CAPITAL - GLYPH))

/** The size at which a text fits a width. */
export const fit = (content: string, size: number, width: number): number =>
  Math.max(Math.min(size, (size * width) / widthOf(content, size)), 18)

export interface Heading {
  /** A word above the number: SET. */
  readonly lead: string
  readonly number: string
  /** Lines below, the first the most important. */
  readonly lines: readonly string[]
  readonly warnings: readonly string[]
}

/** Where the drawing may begin below a heading. */
export const headingHeight = ({ lines, warnings }: Heading): number =>
  MARGIN + LARGE + 24 + lines.length * (MIDDLE + 10) + warnings.length * (SMALL + 14)

const heading = ({ lead, number, lines, warnings }: Heading, width: number): string => {
  const inner = width - 2 * MARGIN
  const leadSize = 40
  const leadWidth = widthOf(lead, leadSize) + 22
  let y = MARGIN + LARGE * 0.8
  const parts = [
    text(lead, { x: MARGIN, y, class: 'faint strong', 'font-size': leadSize }),
    text(number, { x: MARGIN + leadWidth, y, class: 'ink big', 'font-size': fit(number, LARGE, inner - leadWidth) }),
  ]
  y += 20
  for (const content of lines) {
    y += MIDDLE + 10
    parts.push(text(content, { x: MARGIN, y, class: 'ink', 'font-size': fit(content, MIDDLE, inner) }))
  }
  for (const content of warnings) {
    y += SMALL + 14
    parts.push(
      text(`▲ ${content}`, { x: MARGIN, y, class: 'warn strong', 'font-size': fit(`▲ ${content}`, SMALL, inner) }),
    )
  }
  return parts.join('')
}

/** A dimension line between two x, with its label centred below and ticks at both ends. */
export const dimension = (from: number, to: number, y: number, label: string): string => {
  const [left, right] = from < to ? [from, to] : [to, from]
  const half = widthOf(label, SMALL) / 2
  const middle = Math.min(Math.max((left + right) / 2, MARGIN + half), WIDTH - MARGIN - half)
  const tick = (x: number): string => element('line', { x1: x, y1: y - 12, x2: x, y2: y + 12, class: 'rule' })
  return (
    element('line', { x1: left, y1: y, x2: right, y2: y, class: 'rule' }) +
    tick(left) +
    tick(right) +
    text(label, { x: middle, y: y + SMALL + 8, class: 'ink', 'font-size': SMALL, 'text-anchor': 'middle' })
  )
}

/** Thin lines that carry points of the drawing down to a dimension. */
export const witness = (at: Point, to: number): string =>
  element('line', { x1: at.x, y1: at.y, x2: at.x, y2: to, class: 'axis' })

const CAPTION = 26
const LEAST = 18
const WRAPPED = 22

/** Words as lines that are no wider than that. */
export const wrapped = (content: string, size: number, width: number): string[] => {
  const lines: string[] = []
  for (const word of content.split(' ')) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`
    if (lines.length > 0 && widthOf(longer, size) <= width) lines[lines.length - 1] = longer
    else lines.push(word)
  }
  return lines
}

/** In one line where it can be read so, else in several. */
const captionLines = (caption: string, width: number): { lines: string[]; size: number } =>
  // Small letters are narrower than they are taken for: so much past the width still ends on the sheet.
  widthOf(caption, LEAST) <= 1.14 * width
    ? { lines: [caption], size: fit(caption, CAPTION, width) }
    : { lines: wrapped(caption, WRAPPED, width), size: WRAPPED }

/** The whole sheet as SVG; `alt` says the same in words. */
export const sheet = (
  theme: Theme,
  head: Heading,
  drawing: string,
  height: number,
  caption: string,
  alt: string,
  width = WIDTH,
): string => {
  const { lines, size } = captionLines(caption, width - 2 * MARGIN)
  const whole = Math.round(height + SMALL + 34 + (lines.length - 1) * (WRAPPED + 8))
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width} ${whole}`,
      width,
      height: whole,
      role: 'img',
    },
    `<title>${escapeXml(alt)}</title>`,
    `<style>${styleOf(theme)}</style>`,
    element('rect', { x: 0, y: 0, width, height: whole, class: 'paper' }),
    heading(head, width),
    drawing,
    lines
      .map((one, n) =>
        text(one, { x: MARGIN, y: height + SMALL + 6 + n * (WRAPPED + 8), class: 'faint', 'font-size': size }),
      )
      .join(''),
  )
}
