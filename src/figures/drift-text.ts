// The drift of a wrench in sentences, one paragraph a setting: the same in a picture's alternative text, on a page and in JSON.
import { type NumberStyle, showNumber } from '../core/number-style.ts'
import { fromSi } from '../core/quantity.ts'
import { showQuantity } from '../core/quantity-text.ts'
import { type UnitSymbol, units } from '../core/unit.ts'
import type { Drift, DriftDot } from '../register/drift.ts'
import type { Words } from '../words/index.ts'
import { say } from './drawer.ts'

export interface DriftTongue {
  readonly words: Words['history']
  readonly style: NumberStyle
  /** What the wrench shows. */
  readonly unit: UnitSymbol
}

export const settingText = (setting: number, { style, unit }: DriftTongue): string =>
  showQuantity(fromSi(setting, units[unit]), style)

const MINUS = '−'
/** With its sign, as 2.5 and −2.5 are two wrenches. */
export const signed = (value: number, style: NumberStyle): string => {
  // Shown to the hundredth: a reference that is good to 0.1 % is a fine one.
  const shown = Math.round(value * 100) / 100
  const text = showNumber(Math.abs(shown), style)
  return shown === 0 ? text : `${shown > 0 ? '+' : MINUS}${text}`
}

export const dotText = ({ deviation, doubt }: DriftDot, { words, style }: DriftTongue): string => {
  const shown = signed(deviation, style)
  return doubt === undefined
    ? say(words.bare, { deviation: shown })
    : say(words.within, { deviation: shown, doubt: showNumber(upward(doubt), style) })
}

/** The month of a day: nobody knows it better. */
const month = (date: string): string => date.slice(0, 7)

const outlookText = ({ outlook }: Drift, { words }: DriftTongue): string => {
  if (!outlook.told) return words.gaps[outlook.why]
  const { first, middle, last } = outlook
  const days = { first: month(first), middle: month(middle) }
  return last === undefined ? say(words.reachesOpen, days) : say(words.reaches, { ...days, last: month(last) })
}

/** "limit about 2026-12", only where a day is told. */
export const reachedText = ({ outlook }: Drift, { words }: DriftTongue): string | undefined =>
  outlook.told ? say(words.reached, { middle: month(outlook.middle) }) : undefined

/** Neither low nor high where the doubt is as large, as the verdicts have it. */
const sideText = ({ deviation, doubt = 0 }: DriftDot, { words }: DriftTongue): string => {
  if (Math.abs(deviation) <= doubt) return words.unclear
  return deviation > 0 ? words.low : words.high
}

/** Never told as smaller than it is. */
const upward = (doubt: number): number => Math.ceil(doubt * 100 - 1e-9) / 100

/** All sentences of a setting; the first says where it is now. */
export const driftSentences = (drift: Drift, tongue: DriftTongue): readonly string[] => {
  const { words, style } = tongue
  const last = drift.dots.at(-1)
  if (!last) return []
  const { slope } = drift
  return [
    say(words.now, {
      setting: settingText(drift.setting, tongue),
      date: last.date,
      deviation: dotText(last, tongue),
      side: sideText(last, tongue),
      limit: showNumber(drift.limit, style),
    }),
    ...(slope?.isTold
      ? [say(words.moves, { slope: signed(slope.perYear, style), doubt: showNumber(upward(slope.doubt), style) })]
      : []),
    outlookText(drift, tongue),
    ...(drift.since !== undefined && drift.dots.some(({ counts }) => !counts)
      ? [say(words.since, { date: drift.since })]
      : []),
    ...(drift.gaugeChanged ? [words.gauge] : []),
  ]
}
