// A run as a card to be shared: what is asked and what is found on the left, its readings on the right, as wide as links are shown.
import type { RunDocument } from '../questions/run-document.ts'
import type { Figure } from './drawer.ts'
import { WIDTH, widthOf, wrapped } from './frame.ts'
import { setsDrawn } from './run-sets.ts'
import type { RunLook } from './run-view.ts'
import { element, escapeXml, text } from './svg.ts'
import { styleOf } from './theme.ts'

export const CARD = { width: 1200, height: 675 } as const
const EDGE = 48
const COLUMN = 500
const MIDDLE = EDGE + COLUMN + 40
const SMALLEST = 20

interface Block {
  readonly content: string
  readonly size: number
  readonly kind: string
}

/** Lines below each other from a height on; smaller, all alike, until they end above another. */
const column = (blocks: readonly Block[], from: number, to: number): string => {
  for (let share = 1; ; share -= 0.05) {
    const lines = blocks.flatMap(({ content, size, kind }) => {
      const scaled = Math.max(size * share, SMALLEST)
      return wrapped(content, scaled, COLUMN).map((told, n) => ({
        told,
        kind,
        size: Math.min(scaled, (scaled * COLUMN) / widthOf(told, scaled)),
        step: scaled * (n === 0 ? 1.6 : 1.2),
      }))
    })
    const height = lines.reduce((sum, { step }) => sum + step, 0)
    if (from + height > to && share > 0.4) continue
    let y = from
    const shown = lines.flatMap(({ told, size, kind, step }) => {
      y += step
      // What does not go onto the card stands in its words, and in the document.
      return y > to ? [] : [text(told, { x: EDGE, y, class: kind, 'font-size': size })]
    })
    return shown.join('')
  }
}

/** 1200 by 675; nothing where no reading is there. */
export const drawRunCard = (run: RunDocument, look: RunLook): Figure | undefined => {
  const [subject] = run.subjects
  const drawn = subject && setsDrawn(run, subject, look)
  if (!drawn) return undefined
  const { heading, drawing, top, bottom, caption, alt } = drawn
  const [asked = '', ...found] = heading.lines
  const { width, height } = CARD
  const left = [
    text(heading.lead, { x: EDGE, y: EDGE + 26, class: 'faint strong', 'font-size': 28 }),
    text(heading.number, {
      x: EDGE,
      y: EDGE + 96,
      class: 'ink big',
      'font-size': Math.min(64, (64 * COLUMN) / widthOf(heading.number, 64)),
    }),
    column(
      [
        { content: asked, size: 34, kind: 'ink strong' },
        ...found.map((content) => ({ content, size: 30, kind: 'ink' })),
      ],
      EDGE + 104,
      height - 130,
    ),
    column([{ content: caption, size: SMALLEST, kind: 'faint' }], height - 130, height - 20),
  ].join('')
  const right = element(
    'svg',
    {
      x: MIDDLE,
      y: EDGE,
      width: width - MIDDLE - EDGE / 2,
      height: height - 2 * EDGE,
      viewBox: `0 ${top} ${WIDTH} ${bottom - top}`,
    },
    drawing,
  )
  const svg = element(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', viewBox: `0 0 ${width} ${height}`, width, height, role: 'img' },
    `<title>${escapeXml(alt)}</title>`,
    `<style>${styleOf(look.theme)}</style>`,
    element('rect', { x: 0, y: 0, width, height, class: 'paper' }),
    left,
    right,
  )
  return { svg, alt }
}
