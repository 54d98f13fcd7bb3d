// Facts to words: the Answer document in the asker's language. The only place where phrases meet the words.
import type { FactValue, Fault } from '../core/fault.ts'
import { showNumber, type Toward } from '../core/number-style.ts'
import { inUnit, type Quantity, quantity, tidy } from '../core/quantity.ts'
import { echoQuantity, showQuantity, workQuantity } from '../core/quantity-text.ts'
import { echoReadings } from '../core/readings-text.ts'
import { type Unit, units } from '../core/unit.ts'
import type { Answer, ShownFault, ShownGiven, ShownQuantity, ShownResult } from '../questions/answer.ts'
import type {
  BoundKind,
  Caution,
  Cell,
  Given,
  Numbers,
  Outcome,
  QuantityResult,
  Related,
  Result,
  Step,
} from '../questions/outcome.ts'
import type { Param, Phrase } from '../questions/phrase.ts'
import { choiceIn, type Language, type Words } from '../words/index.ts'
import { render } from '../words/render.ts'

const others = new Map<Unit, readonly Unit[]>([
  [units['N·m'], [units['lbf·ft'], units['lbf·in'], units['kgf·m']]],
  [units['lbf·ft'], [units['N·m'], units['lbf·in']]],
  [units['lbf·in'], [units['N·m'], units['lbf·ft']]],
  [units['ozf·in'], [units['N·m'], units['lbf·in']]],
  [units['kgf·m'], [units['N·m'], units['lbf·ft']]],
  [units['kgf·cm'], [units['N·m'], units['lbf·in']]],
  [units.mm, [units.in]],
  [units.cm, [units.in]],
  [units.m, [units.ft, units.in]],
  [units.in, [units.mm]],
  [units.ft, [units.m, units.in]],
  [units.N, [units.lbf, units.kgf]],
  [units.kN, [units.lbf]],
  [units.lbf, [units.N, units.kgf]],
  [units.kgf, [units.N, units.lbf]],
  [units.MPa, [units.ksi]],
  [units.psi, [units.MPa]],
  [units.ksi, [units.MPa]],
  [units.kg, [units.lb]],
  [units.g, [units.oz]],
  [units.lb, [units.kg]],
  [units.oz, [units.g]],
])

const MOST_TYPED_DIGITS = 6

/** Which way the ends of a span are rounded: a value that is a bound is its own end, a window has two. */
const ends: Readonly<Record<BoundKind | 'none', readonly [Toward | undefined, Toward | undefined]>> = {
  none: [undefined, undefined],
  down: ['down', undefined],
  up: [undefined, 'up'],
  window: ['up', 'down'],
  low: ['down', undefined],
}

export interface Sayer {
  readonly phrase: (phrase: Phrase) => string
  readonly results: (results: Outcome['results']) => Answer['results']
  readonly given: (given: Given) => ShownGiven
  readonly step: (step: Step) => Answer['steps'][number]
  readonly caution: (caution: Caution) => Answer['cautions'][number]
  readonly related: (related: Related) => Answer['related'][number]
  readonly fault: (fault: Fault) => ShownFault
  readonly list: (texts: readonly string[]) => string
  readonly words: Words
}

export const sayerFor = ({ words, style, locale }: Language): Sayer => {
  const days = new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' })
  const showDay = (iso: string): string => days.format(new Date(`${iso}T00:00:00Z`))
  const show = (q: Quantity, toward?: Toward): string => showQuantity(q, style, toward)

  const shown = (q: Quantity, toward?: Toward): { value: number; unit: string; text: string } => ({
    value: q.value,
    unit: q.unit.symbol,
    text: show(q, toward),
  })
  const also = (q: Quantity, toward?: Toward) =>
    (others.get(q.unit) ?? []).map((unit) => shown(inUnit(q, unit), toward))

  const list = (texts: readonly string[]): string => {
    if (texts.length < 2) return texts[0] ?? ''
    return `${texts.slice(0, -1).join(', ')} ${words.faces.or} ${texts.at(-1)}`
  }

  const param = (value: Param): string => {
    if (typeof value === 'string') return value
    if ('echo' in value) return echoQuantity(value.echo, style)
    if ('date' in value) return showDay(value.date)
    if ('bound' in value) return show(value.bound, value.toward)
    return 'key' in value ? phrase(value) : show(value)
  }

  const phrase = ({ key, with: params }: Phrase): string =>
    render(words.say[key], (place) => (params[place] === undefined ? undefined : param(params[place])))

  // Ends that are shown alike are one value, not a span.
  const span = (unit: Unit, low: number, high: number, bound?: BoundKind): string => {
    const [atLow, atHigh] = ends[bound ?? 'none']
    const highest = show(quantity(high, unit), atHigh)
    const lowest = showNumber(low, style, atLow)
    return show(quantity(low, unit), atLow) === highest ? highest : `${lowest} ${words.faces.to} ${highest}`
  }

  const quantityResult = ({ quantity: q, low, high, bound, rangeOnly }: QuantityResult): ShownQuantity => {
    const toward = bound === 'up' || bound === 'down' ? bound : undefined
    if (low === undefined || high === undefined) return { ...shown(q, toward), also: also(q, toward) }
    const told = low === high ? undefined : span(q.unit, low, high, bound)
    // Where no one value may be acted on, the range is what is read: its middle is not there to be dialled.
    if (rangeOnly && told !== undefined) return { ...shown(q), text: told, low, high, also: [] }
    return { ...shown(q, toward), low, high, ...(told === undefined ? {} : { span: told }), also: also(q, toward) }
  }

  const cell = (one: Cell) => {
    if ('word' in one) return { code: one.word, text: words.codes[one.word] }
    if ('words' in one) return { code: one.words[0], text: one.words.map((code) => words.codes[code]).join('; ') }
    if ('named' in one) return { code: one.named, text: one.text }
    if ('date' in one) return { date: one.date, text: one.passed ? words.faces.now : showDay(one.date) }
    return quantityResult(one)
  }

  const result = (one: Result): ShownResult => {
    if ('rows' in one) {
      return one.rows.map((row) => Object.fromEntries(Object.entries(row).map(([name, value]) => [name, cell(value)])))
    }
    if ('row' in one) {
      const { row, exact = [] } = one
      const told = (name: string, q: Quantity) =>
        exact.includes(name) ? { ...shown(q), text: echoQuantity(tidy(q), style) } : shown(q)
      return Object.fromEntries(Object.entries(row).map(([name, q]) => [name, told(name, q)]))
    }
    if ('say' in one) {
      const standings = one.standings.map((standing) => words.standings[standing]).join(', ')
      return { code: one.code, text: `${phrase(one.say)} (${standings})` }
    }
    return cell(one)
  }

  // Readings beside a value: `100 N·m: 99.5; 101 N·m`, or alone; all in the unit of the value or of the first.
  const givenList = ({ input, value, index, from }: Given, readings: readonly Quantity[]): ShownGiven => {
    const unit = (typeof value === 'string' ? readings[0] : value)?.unit ?? units['1']
    const list = echoReadings(readings, style)
    return {
      input,
      text: typeof value === 'string' ? list : `${echoQuantity(value, style)}: ${list}`,
      value: typeof value === 'string' ? value : value.value,
      unit: unit.symbol,
      also: [],
      ...(index === undefined ? {} : { index }),
      values: readings.map((reading) => inUnit(reading, unit).value),
      from,
    }
  }

  const given = (one: Given): ShownGiven => {
    const { input, value, name, low, high, index, angle, values, from } = one
    if (values) return givenList(one, values)
    const place = { ...(index === undefined ? {} : { index }), ...(angle === undefined ? {} : { angle }) }
    if (typeof value === 'string') {
      return { input, text: choiceIn(words, value), value, also: [], ...place, from }
    }
    const ends = low === undefined || high === undefined ? {} : { low, high }
    const whole = low === undefined || high === undefined ? echoQuantity(value, style) : span(value.unit, low, high)
    const text = angle === undefined ? whole : `${whole}@${echoQuantity(quantity(angle, units['°']), style)}`
    return {
      input,
      text: name ?? text,
      value: value.value,
      unit: value.unit.symbol,
      ...ends,
      // A name (M12, a seat, a point) says more than one number in another unit could.
      also: name === undefined ? also(value) : [],
      ...place,
      from,
    }
  }

  const numbers = (pieces: Numbers): string =>
    pieces.map((piece) => (typeof piece === 'string' ? piece : workQuantity(piece, style))).join('')

  const fact = (value: FactValue): string => {
    if (typeof value === 'string') return value
    if (!('unit' in value)) return list(value as readonly string[])
    // What was typed is echoed; a limit that was worked out has more digits than anybody typed, and is rounded.
    const echoed = echoQuantity(value, style)
    return (echoed.match(/\d/g)?.length ?? 0) > MOST_TYPED_DIGITS ? show(value) : echoed
  }

  const fault = ({ code, tell, input, got, facts }: Fault): ShownFault => {
    const texts = words.faults[tell]
    const place = (name: string): string | undefined => {
      if (name === 'kind') return words.kinds[(facts.kind ?? 'number') as keyof Words['kinds']]
      const told = facts[name] === undefined ? undefined : fact(facts[name])
      // Kinds and ways are read; what stands in a text to be typed is not turned into words.
      return told !== undefined && (name === 'type' || name === 'way') ? choiceIn(words, told) : told
    }
    return { code, input, got, allowed: render(texts.allowed, place), hint: render(texts.hint, place) }
  }

  return {
    words,
    phrase,
    list,
    given,
    fault,
    results: (all) => Object.fromEntries(Object.entries(all).map(([name, one]) => [name, result(one)])),
    step: (one) => ({
      say: phrase(one.say),
      formula: one.formula,
      numbers: numbers(one.numbers),
      value: one.value.value,
      unit: one.value.unit.symbol,
      shown: one.ends ? span(one.value.unit, one.ends.low, one.ends.high) : show(one.value),
    }),
    caution: ({ code, with: params }) => ({
      code,
      text: render(words.cautions[code], (place) => (params?.[place] === undefined ? undefined : param(params[place]))),
    }),
    related: ({ question, inputs, label }) => ({
      question,
      inputs: Object.fromEntries(
        Object.entries(inputs).map(([name, value]) => [name, typeof value === 'string' ? value : [...value]]),
      ),
      label: phrase(label),
    }),
  }
}
