// A bolted joint in bars: how much of its strength the clamp force uses, and where the torque goes.
import type { Answer, ShownQuantity } from '../questions/answer.ts'
import { type Drawer, type FigureWords, say, sentences } from './drawer.ts'
import { type Heading, headingHeight, sheet } from './frame.ts'
import { givenOf, hasCaution, resultOf } from './reading.ts'
import { drawSpans, type SpanMark, type SpanRow } from './span-bar.ts'
import { drawSplit, type SplitPart } from './split-bar.ts'
import type { Theme } from './theme.ts'

const quantityOf = (answer: Answer, name: string): ShownQuantity | undefined =>
  answer.results[name] as ShownQuantity | undefined

const rowOf = (answer: Answer, name: string, title: string, words: FigureWords): SpanRow[] => {
  const found = quantityOf(answer, name)
  if (!found) return []
  const { value, text, span, low = value, high = value } = found
  return [
    { title, told: span === undefined ? [text] : [say(words.typically, { value: text }), span], low, value, high },
  ]
}

type Split = Readonly<Record<'stretch' | 'thread' | 'seat', { readonly value: number; readonly text: string }>>

const splitOf = (answer: Answer, name: string): Split | undefined => answer.results[name] as Split | undefined

const partsOf = ({ stretch, thread, seat }: Split, words: FigureWords): SplitPart[] => [
  { ...stretch, name: words.stretch },
  { ...thread, name: words.threadFriction },
  { ...seat, name: words.seatFriction },
]

const splitTold = ({ stretch, thread, seat }: Split, words: FigureWords): string =>
  say(words.altSplit, { stretch: stretch.text, thread: thread.text, seat: seat.text })

/** Bars, below them the split where the answer has one, and the whole in words. */
const jointSheet = (
  answer: Answer,
  words: FigureWords,
  theme: Theme,
  heading: Heading,
  rows: readonly SpanRow[],
  marks: readonly SpanMark[],
  more: readonly string[],
) => {
  const bars = drawSpans(rows, marks, headingHeight(heading) + 14)
  const split = splitOf(answer, 'torque-split')
  const shares = split
    ? drawSplit(words.torqueGoes, partsOf(split, words), bars.bottom + 14)
    : { svg: '', bottom: bars.bottom }
  const alt = sentences([
    `${heading.lead} ${heading.number}`,
    ...heading.lines,
    ...heading.warnings,
    ...rows.map(({ title, told }) => say(words.altBar, { title, value: told.join(', ') })),
    ...more,
    ...(split ? [splitTold(split, words)] : []),
  ])
  const caption = rows.some(({ low, high }) => high > low) ? words.barCaption : words.barKnownCaption
  return { svg: sheet(theme, heading, bars.svg + shares.svg, shares.bottom + 6, caption, alt), alt }
}

export const clampForce: Drawer = (answer, words, theme) => {
  const clamp = resultOf(answer, 'clamp-force')
  const torque = givenOf(answer, 'torque')?.text ?? ''
  const over = hasCaution(answer, 'past-strength')
  const heading = {
    lead: words.clamps,
    number: clamp.span ?? clamp.text,
    lines: [
      clamp.span === undefined
        ? say(words.withKnown, { torque })
        : say(words.withTypical, { torque, clamp: clamp.text }),
    ],
    warnings: over ? [say(words.warnings['past-strength'], { torque })] : [],
  }
  const shares = [
    ...rowOf(answer, 'proof-share', words.ofProof, words),
    ...rowOf(answer, 'yield-share', words.ofYield, words),
  ]
  if (shares.length > 0) {
    const marks = [{ at: 100, label: words.allOfIt, place: 'above' as const }]
    return jointSheet(answer, words, theme, heading, shares, marks, [words.altWhole])
  }
  // Without a class there is nothing to hold it against: a span shows how wide it is, one value shows nothing.
  const rows = clamp.span === undefined ? [] : rowOf(answer, 'clamp-force', words.clampForce, words)
  return rows.length > 0 || splitOf(answer, 'torque-split')
    ? jointSheet(answer, words, theme, heading, rows, [], [])
    : undefined
}

export const boltTorque: Drawer = (answer, words, theme) => {
  const clamp = quantityOf(answer, 'clamp-force')
  const share = givenOf(answer, 'share')
  if (!clamp || !share) return undefined
  const told = { share: share.text }
  const heading = {
    lead: words.atMost,
    number: resultOf(answer, 'highest-torque').text,
    lines: [
      say(words.clampsBy, { clamp: clamp.span ?? clamp.text }),
      say(share.from === 'assumed' ? words.notPastTaken : words.notPast, told),
    ],
    warnings: [],
  }
  // Where friction is lowest the clamp force is the share, so the whole lies that much farther out.
  const end = clamp.high ?? clamp.value
  const marks = [
    { at: (end * 100) / Number(share.value), label: words.allOfIt, place: 'above' as const },
    { at: end, label: share.text, place: 'below' as const },
  ]
  const more = [words.altWhole, say(words.altShare, told)]
  return jointSheet(answer, words, theme, heading, rowOf(answer, 'clamp-force', words.clampForce, words), marks, more)
}

/** Only where thread and seat are told apart: one nut factor says nothing of where the torque goes. */
export const lubricant: Drawer = (answer, words, theme) => {
  const [before, after] = [splitOf(answer, 'split-before'), splitOf(answer, 'split-after')]
  if (!before || !after) return undefined
  const change = resultOf(answer, 'clamp-change')
  const told = (input: string): string => givenOf(answer, input)?.text ?? ''
  const [from, to] = [told('from'), told('to')]
  // No torque but the asked one: what may be dialled is for the headline to say, with its condition.
  const heading = {
    lead: words.changes,
    number: change.span ?? change.text,
    lines: [
      change.span === undefined
        ? say(words.changeRange, { torque: told('torque') })
        : say(words.changeAt, { torque: told('torque'), change: change.text }),
      say(words.changeFrom, { from, to, where: told('where') }),
    ],
    warnings: [],
  }
  const titles = [say(words.goesBefore, { state: from }), say(words.goesAfter, { state: to })] as const
  const first = drawSplit(titles[0], partsOf(before, words), headingHeight(heading) + 14)
  const second = drawSplit(titles[1], partsOf(after, words), first.bottom + 14)
  const alt = sentences([
    `${heading.lead} ${heading.number}`,
    ...heading.lines,
    titles[0],
    splitTold(before, words),
    titles[1],
    splitTold(after, words),
  ])
  return {
    svg: sheet(theme, heading, first.svg + second.svg, second.bottom + 6, words.splitCaption, alt),
    alt,
  }
}
