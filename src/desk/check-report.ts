// The report of a kept check in words: what it was made with and how, every reading, the verdict and the rule it follows.
import type { Toward } from '../core/number-style.ts'
import { fromSi, type Quantity, quantity } from '../core/quantity.ts'
import { echoQuantity, showQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import type { ReportDocument } from '../questions/check-document.ts'
import { quantityOf } from '../register/parts.ts'
import type { Check } from '../register/records.ts'
import type { CheckReport } from '../register/report.ts'
import type { JudgedPoint } from '../register/verdict.ts'
import type { Language } from '../words/index.ts'
import { render } from '../words/render.ts'

const present = <T extends object>(fields: T): T =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as T

export const reportOf = (report: CheckReport, { words, style }: Language): ReportDocument => {
  const { check, wrench, gauge, judged, companion } = report
  const { body, id, at } = check.entry
  const { say, by, scale, rules, notes, states, ways, weights, kinds, standing } = words.checking
  const unit = units[wrench.unit]
  const fill = (template: string, places: Readonly<Record<string, string>>): string =>
    render(template, (place) => places[place])
  const shown = (q: Quantity, toward?: Toward) => ({
    value: q.value,
    unit: q.unit.symbol,
    text: showQuantity(q, style, toward),
  })
  const echoed = (q: Quantity) => ({ value: q.value, unit: q.unit.symbol, text: echoQuantity(q, style) })
  const torque = (value: number) => shown(fromSi(value, unit))
  const share = (fraction: number) => shown(quantity(fraction * 100, units['%']))
  const verdict = (code: JudgedPoint['verdict']) => ({ code, text: words.codes[code] })
  const { limit } = judged

  const weightOf = ({ distance, 'own-weight': own }: Check): ReportDocument['weight'] => {
    if (!distance) return undefined
    if (own?.lie === 'upright') return { code: 'upright', text: weights.upright }
    const { mass, 'balance-point': balance, 'pull-direction': direction } = own ?? {}
    if (!mass || !balance || !direction) return { code: 'open', text: weights.open }
    const places = { mass: mass.text, balance: balance.text, direction: weights[direction] }
    return { code: 'level', text: fill(weights.level, places) }
  }

  const points = judged.points.map((point, place) => {
    const entered = (body.points[place] as Check['points'][number]).readings
    const { low, high } = report.windows[place] as CheckReport['windows'][number]
    const doubts = point.readings.flatMap(({ uncertainty }) => (uncertainty === undefined ? [] : [uncertainty]))
    return {
      setting: echoed(quantityOf((body.points[place] as Check['points'][number]).setting)),
      window: { low: shown(fromSi(low, unit), 'up'), high: shown(fromSi(high, unit), 'down') },
      readings: point.readings.map((reading, nth) => ({
        read: echoed(quantityOf(entered[nth] as (typeof entered)[number])),
        torque: torque(reading.torque),
        deviation: share(reading.deviation),
        verdict: verdict(reading.verdict),
      })),
      mean: torque(point.mean),
      deviation: share(point.deviation),
      spread: torque(point.spread),
      allowed: share(Math.min(...point.readings.map((reading) => reading.limit))),
      ...(doubts.length > 0 ? { uncertainty: share(Math.max(...doubts)) } : {}),
      verdict: verdict(point.verdict),
    }
  })
  const allowed = share(limit.share)
  const limitWords = { limit: allowed.text, of: scale[limit.of], by: by[limit.by] }
  const celsius = body.conditions?.['temperature-c']
  return present({
    id,
    date: body.date,
    kept: at,
    headline: fill(say.report, { wrench: wrench.tag, state: states[body.state], verdict: words.codes[judged.verdict] }),
    state: { code: body.state, text: states[body.state] },
    way: { code: body.way, text: ways[body.way] },
    wrench: present({
      tag: wrench.tag,
      name: wrench.name,
      serial: wrench.serial,
      range: wrench.least ? `${wrench.least.text} … ${wrench.most.text}` : wrench.most.text,
      lever: wrench.lever?.text,
      kind: kinds[wrench['wrench-type']],
    }),
    gauge:
      gauge &&
      present({
        tag: gauge.tag,
        name: gauge.name,
        serial: gauge.serial,
        checked: gauge.checked,
        tolerance:
          gauge.tolerance && `±${echoQuantity(quantityOf(gauge.tolerance.share), style)} ${scale[gauge.tolerance.of]}`,
      }),
    uncertainty: body['gauge-uncertainty']?.text,
    distance: body.distance?.text,
    weight: weightOf(body),
    temperature: celsius === undefined ? undefined : `${echoQuantity(quantity(celsius, units['1']), style)} °C`,
    remarks: body.conditions?.notes,
    limit: {
      share: allowed,
      of: limit.of,
      by: { code: limit.by, text: by[limit.by] },
      text: fill(say.limit, limitWords),
    },
    rule: { code: judged.rule, text: rules[judged.rule] },
    points,
    verdict: verdict(judged.verdict),
    notes: judged.notes.map((code) => ({ code, text: notes[code] })),
    companion: companion && {
      id: companion.check.entry.id,
      state: { code: companion.check.entry.body.state, text: states[companion.check.entry.body.state] },
      verdict: verdict(companion.judged.verdict),
    },
    isLatest: report.isLatest,
    standing,
  })
}
