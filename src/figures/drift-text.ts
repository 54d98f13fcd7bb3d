// The drift of a wrench in sentences, one paragraph a setting: the same in a picture's alternative text, on a page and in JSON.
import { type NumberStyle, showNumber } from '../core/number-style.ts'
import { fromSi } from '../core/quantity.ts'
import { showQuantity } from '../core/quantity-text.ts'
import { type UnitSymbol, units } from '../core/unit.ts'
import type { Drift, DriftDot } from '../register/drift.ts'
import { deviationText } from '../words/deviation-text.ts'
import type { Words } from '../words/index.ts'
import { say } from './drawer.ts'

export interface DriftTongue {
  readonly words: Words['history']
  readonly deviation: Words['deviation']
  readonly style: NumberStyle
  /** What the wrench shows. */
  readonly unit: UnitSymbol
}

export const settingText = (setting: number, { style, unit }: DriftTongue): string =>
  showQuantity(fromSi(setting, units[unit]), style)

/** Which way it is off, in words: 2.5 and −2.5 are two wrenches. */
export const offText = (percent: number, { deviation, style }: DriftTongue, limit?: number): string =>
  deviationText(percent, deviation, style, limit)

export const dotText = ({ deviation, doubt }: DriftDot, limit: number, tongue: DriftTongue): string => {
  const { words, style } = tongue
  const shown = offText(deviation, tongue, limit)
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

/** Where the doubt is as large, which way it is off is not known, as the verdicts have it. */
const lastText = (dot: DriftDot, limit: number, tongue: DriftTongue): string => {
  const told = dotText(dot, limit, tongue)
  return Math.abs(dot.deviation) <= (dot.doubt ?? 0) ? `${told}, ${tongue.words.unclear}` : told
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
      deviation: lastText(last, drift.limit, tongue),
      limit: showNumber(drift.limit, style),
    }),
    ...(slope?.isTold
      ? [
          say(slope.perYear > 0 ? words.movesLess : words.movesMore, {
            slope: showNumber(Math.round(Math.abs(slope.perYear) * 100) / 100, style),
            doubt: showNumber(upward(slope.doubt), style),
          }),
        ]
      : []),
    outlookText(drift, tongue),
    ...(drift.since !== undefined && drift.dots.some(({ counts }) => !counts)
      ? [say(words.since, { date: drift.since })]
      : []),
    ...(drift.gaugeChanged ? [words.gauge] : []),
  ]
}
