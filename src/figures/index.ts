// Which question has which figure: an answer in, a sheet and the same in words out. The numbers are the document's own texts.
import type { Answer } from '../questions/answer.ts'
import { foremostCodes } from '../questions/foremost.ts'
import type { Words } from '../words/index.ts'
import { wrenchCheck } from './check-view.ts'
import { type Drawer, type Figure, type FigureWords, say } from './drawer.ts'
import { flexHead } from './flex-view.ts'
import { type Heading, headingHeight, sheet } from './frame.ts'
import { boltTorque, clampForce, lubricant } from './joint-view.ts'
import { drawLever, type LeverDrawing } from './lever-view.ts'
import { chainOf, type DrawnLink, givenOf, hasCaution, metres, resultOf } from './reading.ts'
import { compare } from './samples-view.ts'
import { drawScale } from './scale-view.ts'
import { swivel } from './swivel-view.ts'
import type { Theme } from './theme.ts'

export type { Figure } from './drawer.ts'

const warningsOf = (answer: Answer, words: FigureWords): string[] =>
  ([...foremostCodes, 'beyond-range', 'points-back', 'no-pipe'] as const)
    .filter((code) => hasCaution(answer, code))
    .filter((code, _, all) => !(code === 'points-back' && all.includes('beyond-range')))
    .map((code) => words.warnings[code])

const linkLabel = (
  words: FigureWords,
  { degrees, lengthText, angleText, isAssumed }: DrawnLink,
  n: number,
  many: boolean,
): string => {
  const behind = Math.abs(degrees) > 90
  const sided = degrees > 0 ? (behind ? words.backToward : words.toward) : behind ? words.backAway : words.away
  const which = degrees === 0 ? words.ahead : Math.abs(degrees) === 180 ? words.back : sided
  const place = many ? `${n + 1}: ` : ''
  return `${place}${lengthText}, ${angleText} ${which}${isAssumed ? ` (${words.assumed})` : ''}`
}

const leverFigure = (
  answer: Answer,
  words: FigureWords,
  theme: Theme,
  heading: Heading,
  more: Partial<LeverDrawing> = {},
): Figure | undefined => {
  const lever = givenOf(answer, 'lever')
  const hand = givenOf(answer, 'hand') ?? lever
  const L = metres(lever ?? hand)
  const H = metres(hand)
  if (L === undefined || H === undefined || !hand) return undefined
  const chain = chainOf(answer)
  const off = Math.abs(H - L) > L * 1e-9
  const linkLabels = chain.map((link, n) => linkLabel(words, link, n, chain.length > 1))
  const reach = resultOf(answer, 'effective-lever').text
  const drawing: LeverDrawing = {
    lever: L,
    hand: H,
    chain,
    linkLabels,
    leverLabel: say(off ? words.grip : words.lever, { length: (lever ?? hand).text }),
    reachLabel:
      reach === '' ? (off ? say(words.hand, { length: hand.text }) : undefined) : say(words.reach, { length: reach }),
    handLabel: off ? say(words.pullAt, { length: hand.text }) : words.pullHere,
    gripLabel: off ? words.gripCentre : undefined,
    ...more,
  }
  const { svg, bottom } = drawLever(drawing, headingHeight(heading))
  const told = [
    `${heading.lead} ${heading.number}`,
    ...heading.lines,
    ...heading.warnings,
    say(off ? words.altOff : words.alt, { lever: (lever ?? hand).text, hand: hand.text }),
    ...linkLabels.map((label) => say(words.altLink, { link: label })),
    ...(drawing.reachLabel === undefined ? [] : [drawing.reachLabel]),
  ]
  const alt = told.map((one) => (/[.!]$/.test(one) ? one : `${one}.`)).join(' ')
  return { svg: sheet(theme, heading, svg, bottom, words.fromAbove, alt), alt }
}

const adapterSetting: Drawer = (answer, words, theme) => {
  const setting = resultOf(answer, 'setting')
  const beyond = hasCaution(answer, 'beyond-range')
  const torque = resultOf(answer, 'torque')
  const lines = [say(beyond ? words.needsFor : words.gets, { torque: torque.text })]
  // Out of range nothing may be dialled, so no band is promised; a span with one torque asked is a pivot nobody knows.
  if (!beyond) lines.push(say(words.band, { span: torque.span ?? '' }))
  const asked = givenOf(answer, 'torque')
  if (setting.span) lines.unshift(say(asked?.low === undefined ? words.open : words.between, { span: setting.span }))
  const heading = {
    lead: beyond ? words.needs : words.set,
    number: setting.text,
    lines,
    warnings: warningsOf(answer, words),
  }
  return leverFigure(answer, words, theme, heading)
}

const adapterReading: Drawer = (answer, words, theme) => {
  const torque = resultOf(answer, 'torque')
  const lines = [
    say(words.got, { span: torque.span ?? torque.text }),
    say(words.shows, { reading: givenOf(answer, 'reading')?.text ?? '' }),
  ]
  return leverFigure(answer, words, theme, {
    lead: words.fastener,
    number: torque.text,
    lines,
    warnings: warningsOf(answer, words),
  })
}

const handPosition: Drawer = (answer, words, theme) => {
  const torque = resultOf(answer, 'torque')
  const lines = [
    say(words.got, { span: torque.span ?? torque.text }),
    say(words.setTo, { setting: givenOf(answer, 'setting')?.text ?? '', change: resultOf(answer, 'change').text }),
  ]
  const pivot = givenOf(answer, 'pivot')
  const p = metres(pivot)
  const more =
    pivot && p !== undefined && p > 0 ? { pivot: p, pivotLabel: say(words.pivot, { length: pivot.text }) } : {}
  return leverFigure(
    answer,
    words,
    theme,
    { lead: words.fastener, number: torque.text, lines, warnings: warningsOf(answer, words) },
    more,
  )
}

const pull: Drawer = (answer, words, theme) => {
  const heading = {
    lead: words.pull,
    number: resultOf(answer, 'pull').text,
    lines: [say(words.forTorque, { torque: givenOf(answer, 'torque')?.text ?? '' })],
    warnings: [],
  }
  return leverFigure(answer, words, theme, heading)
}

type PlanRow = { setting: { text: string }; force: { span?: string; text: string } }

const wayOf = (answer: Answer): 'down' | 'up' | 'square' => {
  const direction = givenOf(answer, 'pull-direction')?.value
  return direction === 'down' || direction === 'up' ? direction : 'square'
}

const scaleFigure = (
  answer: Answer,
  words: FigureWords,
  theme: Theme,
  heading: Heading,
  force: readonly string[],
): Figure | undefined => {
  const distance = givenOf(answer, 'distance')
  if (!distance) return undefined
  const way = wayOf(answer)
  const lean = givenOf(answer, 'pull-angle')?.value
  const distanceLabel = say(words.hook, { length: distance.text })
  const drawing = {
    way,
    lean: typeof lean === 'number' ? lean : 0,
    distanceLabel,
    force,
    wayLabel: words.ways[way],
    holdLabel: words.hold,
  }
  const { svg, bottom } = drawScale(drawing, headingHeight(heading))
  const alt = [
    `${heading.lead} ${heading.number}`,
    ...heading.lines,
    words.hold,
    words.ways[way],
    distanceLabel,
    ...force,
  ]
    .map((one) => `${one}.`)
    .join(' ')
  return { svg: sheet(theme, heading, svg, bottom, words.scaleCaption, alt), alt }
}

/** High or low only where the whole band of the deviation lies on one side. */
const deviatesBy = (answer: Answer): 'deviates' | 'deviatesHigh' | 'deviatesLow' => {
  const { low = 0, high = 0 } = (answer.results.deviation ?? {}) as { low?: number; high?: number }
  return Math.min(low, high) > 0 ? 'deviatesLow' : Math.max(low, high) < 0 ? 'deviatesHigh' : 'deviates'
}

const scaleCheck: Drawer = (answer, words, theme) => {
  const torque = resultOf(answer, 'torque')
  const deviation = resultOf(answer, 'deviation')
  const setting = givenOf(answer, 'setting')
  const weighed = givenOf(answer, 'wrench-mass') !== undefined && givenOf(answer, 'lie')?.value === 'level'
  const lines = [
    say(words.gotDrive, { span: torque.span ?? torque.text }),
    ...(setting ? [say(words[deviatesBy(answer)], { setting: setting.text, deviation: deviation.text })] : []),
    ...(weighed ? [words.ownWeight] : []),
  ]
  const forces = answer.given.filter(({ input }) => input === 'force').map(({ text }) => text)
  const shown =
    forces.length > 3 ? [...forces.slice(0, 2), say(words.andMore, { count: String(forces.length - 2) })] : forces
  return scaleFigure(answer, words, theme, { lead: words.torque, number: torque.text, lines, warnings: [] }, shown)
}

const scalePlan: Drawer = (answer, words, theme) => {
  const rows = (answer.results.points as unknown as readonly PlanRow[] | undefined) ?? []
  const last = rows.at(-1)
  if (!last) return undefined
  const heading = {
    lead: words.show,
    number: last.force.span ?? last.force.text,
    lines: [say(words.atSetting, { setting: last.setting.text })],
    warnings: [],
  }
  return scaleFigure(
    answer,
    words,
    theme,
    heading,
    rows.map(({ setting, force }) => say(words.point, { setting: setting.text, force: force.span ?? force.text })),
  )
}

const drawers: Readonly<Record<string, Drawer>> = {
  'adapter-setting': adapterSetting,
  'adapter-reading': adapterReading,
  'hand-position': handPosition,
  pull,
  'scale-check': scaleCheck,
  'scale-plan': scalePlan,
  'wrench-check': wrenchCheck,
  compare,
  'flex-head': flexHead,
  swivel,
  'clamp-force': clampForce,
  'bolt-torque': boltTorque,
  lubricant,
}

/** The questions that have a figure. */
export const figureQuestions = Object.keys(drawers)

/** The figure of an answer; undefined where its question has none, or nothing was answered. */
export const figureOf = (answer: Answer, words: Words, theme: Theme): Figure | undefined =>
  answer.status === 'answered' && answer.question !== null && Object.hasOwn(drawers, answer.question)
    ? drawers[answer.question]?.(answer, words.figures, theme)
    : undefined
