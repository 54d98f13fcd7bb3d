// A plan or a growing check in words: the check document, from what the register worked out. Numbers are shown as everywhere.
import type { Toward } from '../core/number-style.ts'
import { fromSi, type Quantity, quantity } from '../core/quantity.ts'
import { echoQuantity, showQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import type { ShownFault } from '../questions/answer.ts'
import type { CheckDocument, CheckPoint } from '../questions/check-document.ts'
import type { GrowingCheck, GrowingPoint, NextReading } from '../register/check-growing.ts'
import type { Showing } from '../register/check-plan.ts'
import { limitAt, windowAt } from '../register/limit.ts'
import { quantityOf } from '../register/parts.ts'
import type { Language } from '../words/index.ts'
import { render } from '../words/render.ts'
import { checkLines } from './check-lines.ts'
import type { CheckAsked } from './check-reading.ts'

export interface CheckSayer {
  readonly incomplete: (missing: CheckDocument['missing']) => CheckDocument
  readonly refused: (faults: readonly ShownFault[], missing: CheckDocument['missing']) => CheckDocument
  readonly check: (
    asked: CheckAsked,
    grown: GrowingCheck,
    inputs: CheckDocument['inputs'],
    faults: readonly ShownFault[],
  ) => CheckDocument
}

export const sayCheck = (language: Language): CheckSayer => {
  const { words, style } = language
  const { say, notes, by, rules, means } = words.checking
  const fill = (template: string, places: Readonly<Record<string, string>>): string =>
    render(template, (place) => places[place])
  const shown = (q: Quantity, toward?: Toward) => ({
    value: q.value,
    unit: q.unit.symbol,
    text: showQuantity(q, style, toward),
  })
  const share = (fraction: number) => shown(quantity(fraction * 100, units['%']))
  const echoed = (q: Quantity) => ({ value: q.value, unit: q.unit.symbol, text: echoQuantity(q, style) })

  // The ends of a window are rounded inward: what is read within them is within the limit.
  const showing = ({ low, middle, high }: Showing, { plan }: CheckAsked) => ({
    low: shown(fromSi(low, plan.unit), 'up'),
    middle: shown(fromSi(middle, plan.unit)),
    high: shown(fromSi(high, plan.unit), 'down'),
  })

  const doubtOf = ({ judged, setting }: GrowingPoint, { plan }: CheckAsked): number | undefined => {
    const read = (judged?.readings ?? []).flatMap(({ uncertainty: U }) => (U === undefined ? [] : [U]))
    const foreseen = plan.points.find((point) => point.setting.value === setting.value)?.uncertainty
    return read.length > 0 ? Math.max(...read) : foreseen
  }

  const judgedOf = ({ judged }: GrowingPoint, asked: CheckAsked) => {
    if (!judged) return {}
    const unit = units[asked.card.unit]
    return {
      mean: shown(fromSi(judged.mean, unit)),
      deviation: share(judged.deviation),
      spread: shown(fromSi(judged.spread, unit)),
      verdict: { code: judged.verdict, text: words.codes[judged.verdict] },
    }
  }

  const point = (grown: GrowingPoint, asked: CheckAsked): CheckPoint => {
    const { plan, card } = asked
    const unit = units[card.unit]
    const S = grown.setting.value
    const { low, high } = windowAt(plan.limit, S)
    const uncertainty = doubtOf(grown, asked)
    const planned = plan.points.find(({ setting }) => setting.value === S)
    return {
      setting: echoed(quantityOf({ ...grown.setting, unit: card.unit })),
      share: share(S / card.most.value),
      planned: grown.planned,
      window: { low: shown(fromSi(low, unit), 'up'), high: shown(fromSi(high, unit), 'down') },
      shows: showing(grown.shows, asked),
      allowed: share(limitAt(plan.limit, S)),
      ...(uncertainty === undefined ? {} : { uncertainty: share(uncertainty) }),
      ...(planned?.fineEnough === undefined ? {} : { fineEnough: planned.fineEnough }),
      ...(planned?.reaches === undefined ? {} : { reaches: planned.reaches }),
      taken: grown.readings.map((reading) => echoed(quantityOf(reading))),
      open: grown.missing,
      ...judgedOf(grown, asked),
    }
  }

  const farEnough = ({ head, plan }: CheckAsked) =>
    plan.farEnough === undefined ? undefined : shown(fromSi(plan.farEnough, units[head.distance?.unit ?? 'm']), 'up')

  const heldBy = (setting: number, high: string, asked: CheckAsked): string | undefined => {
    const planned = asked.plan.points.find((one) => one.setting.value === setting)
    const most = asked.gauge?.most
    if (planned?.reaches !== false || !most) return undefined
    const distance = farEnough(asked)?.text
    const places = { most: echoQuantity(quantityOf(most), style), high }
    return distance === undefined ? fill(say.gaugeEnds, places) : fill(say.gaugeEndsAt, { ...places, distance })
  }

  const nextOf = ({ setting, nth, of, shows }: NextReading, asked: CheckAsked): NonNullable<CheckDocument['next']> => {
    const at = echoed(quantityOf({ ...setting, unit: asked.card.unit }))
    const window = showing(shows, asked)
    const places = { setting: at.text, nth: String(nth), of: String(of), low: window.low.text, high: window.high.text }
    const held = heldBy(setting.value, window.high.text, asked)
    return { setting: at, nth, of, shows: window, ask: fill(say.next, places), ...(held === undefined ? {} : { held }) }
  }

  const headlineOf = ({ card, plan }: CheckAsked, { taken, missing, verdict }: GrowingCheck): string => {
    if (verdict === undefined) {
      const settings = plan.points.map(({ setting }) => echoQuantity(quantityOf(setting), style)).join(', ')
      return fill(say.planned, { wrench: card.tag, settings, readings: String(plan.readings) })
    }
    const told = words.codes[verdict]
    return missing === 0
      ? fill(say.whole, { verdict: told })
      : fill(say.asking, { taken: String(taken), all: String(taken + missing), verdict: told })
  }

  const none = { points: [], taken: 0, open: 0, notes: [], inputs: {}, lines: [] }
  return {
    incomplete: (missing) => ({
      status: 'incomplete',
      headline: fill(say.incomplete, { inputs: missing.map(({ ask }) => ask).join('; ') }),
      ...none,
      faults: [],
      missing,
    }),
    refused: (faults, missing) => ({
      status: 'refused',
      headline: say.refused,
      ...none,
      faults: [...faults],
      missing,
    }),
    check: (asked, grown, inputs, faults) => {
      const { card, gauge, plan } = asked
      const { judged, verdict, next } = grown
      const codes = judged ? [...new Set([...plan.notes, ...judged.notes])] : plan.notes
      // While readings are still to come, that they are few is no news.
      const few = grown.missing > 0 ? ['few-points', 'few-readings'] : []
      const document: Omit<CheckDocument, 'lines'> = {
        status: faults.length > 0 ? 'refused' : next === undefined ? 'whole' : grown.taken > 0 ? 'asking' : 'planned',
        headline: faults.length > 0 ? say.refused : headlineOf(asked, grown),
        wrench: { tag: card.tag, name: card.name },
        ...(gauge ? { gauge: { tag: gauge.tag, name: gauge.name } } : {}),
        limit: {
          share: share(plan.limit.share),
          of: plan.limit.of,
          by: { code: plan.limit.by, text: by[plan.limit.by] },
        },
        ...(judged ? { rule: { code: judged.rule, text: rules[judged.rule] } } : {}),
        prePulls: plan.prePulls,
        readings: plan.readings,
        ...(plan.farEnough === undefined ? {} : { farEnough: farEnough(asked) }),
        points: grown.points.map((one) => point(one, asked)),
        taken: grown.taken,
        open: grown.missing,
        ...(verdict === undefined ? {} : { verdict: { code: verdict, text: words.codes[verdict] } }),
        ...(verdict === undefined || next ? {} : { means: means[verdict] }),
        ...(next ? { next: nextOf(next, asked) } : {}),
        notes: codes.filter((code) => !few.includes(code)).map((code) => ({ code, text: notes[code] })),
        inputs,
        faults: [...faults],
        missing: [],
      }
      return { ...document, lines: checkLines(document, language, echoQuantity(quantityOf(card.most), style)) }
    },
  }
}
