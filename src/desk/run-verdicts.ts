// What each kind of a run's readings says, in words: the sets, each condition against the first, the same pieces, the series.
import type { SeriesJudged, SubjectFound } from '../bench/findings.ts'
import type { Judged } from '../bench/judge.ts'
import { fromSi, type Quantity, quantity, tidy } from '../core/quantity.ts'
import { echoQuantity, showQuantity } from '../core/quantity-text.ts'
import { type Unit, units } from '../core/unit.ts'
import type { Margin, SampleVerdict } from '../mechanics/two-samples.ts'
import { summaryOf } from '../mechanics/welch.ts'
import type { RunSubject } from '../questions/run-document.ts'
import type { Language } from '../words/index.ts'
import { render } from '../words/render.ts'

export type Fill = (template: string, places: Readonly<Record<string, string>>) => string
export const fill: Fill = (template, places) => render(template, (place) => places[place])

export const verdictCodes = {
  'seen-too-small-to-matter': 'seen-too-small-to-matter',
  'no-difference-that-matters': 'no-difference-that-matters',
  'a-difference-that-matters': 'a-difference-that-matters',
  'seen-not-decided': 'seen-not-decided-whether-it-matters',
  'not-decided': 'not-decided',
} as const satisfies Record<SampleVerdict, string>

export const unitOf = ({ unit }: Pick<SubjectFound, 'unit'>): Unit => units[unit ?? '1']

interface Ends {
  readonly value: number
  readonly low?: number
  readonly high?: number
}

/** How numbers are told in a language. */
export const teller = ({ words, style }: Pick<Language, 'words' | 'style'>, margin: Margin) => {
  const { say } = words.bench
  const shown = (q: Quantity) => ({ value: q.value, unit: q.unit.symbol, text: showQuantity(q, style) })
  const inUnit = (value: number, unit: Unit) => shown(fromSi(value, unit))
  const share = (fraction: number) => shown(quantity(fraction * 100, units['%']))
  const signed = (fraction: number): string => `${fraction > 0 ? '+' : ''}${share(fraction).text}`
  const spanned = ({ value, low, high }: Ends, as: (value: number) => ReturnType<typeof shown>) => ({
    ...as(value),
    ...(low === undefined || high === undefined ? {} : { low: as(low), high: as(high) }),
  })
  const verdict = (code: SampleVerdict) => ({ code: verdictCodes[code], text: words.codes[verdictCodes[code]] })
  const echoed = (fraction: number) => {
    const q = tidy(quantity(fraction * 100, units['%']))
    return { value: q.value, unit: q.unit.symbol, text: echoQuantity(q, style) }
  }
  const marginText = echoed(margin.m).text

  /** Which way, how far, between which ends, against what margin. */
  const difference = (a: string, b: string, { value, low, high }: Ends): string => {
    const size = share(Math.abs(value)).text
    const open = low === undefined || high === undefined
    const ends = open ? { low: '', high: '' } : { low: signed(low), high: signed(high) }
    const template = open ? say.noEnds : value === 0 ? say.same : value > 0 ? say.higher : say.lower
    return fill(say.what, { what: fill(template, { a, b, size, ...ends }), margin: marginText })
  }
  return { say, shown, inUnit, share, echoed, signed, spanned, verdict, marginText, difference, words, style }
}

export type Teller = ReturnType<typeof teller>

/** Why nothing can be told, of which condition. */
export const gapText = (
  { words }: Pick<Teller, 'words'>,
  { why }: Extract<Judged<unknown>, { told: false }>,
  condition: string,
): string => fill(words.bench.gaps[why], { condition })

const setsOf = ({ inUnit }: Teller, found: SubjectFound): RunSubject['sets'] => {
  const unit = unitOf(found)
  return found.sets.map(({ condition, values }) => ({
    condition,
    values: values.map((value) => fromSi(value, unit).value),
    ...(values.length === 0 ? {} : { mean: inUnit(summaryOf(values).mean, unit) }),
    ...(values.length < 2 ? {} : { spread: inUnit(summaryOf(values).s, unit) }),
  }))
}

const seriesOf = (
  tell: Teller,
  found: SubjectFound,
  condition: string,
  value: SeriesJudged,
): RunSubject['series'][number] => {
  const { say, spanned, share, signed, verdict, words } = tell
  const unit = unitOf(found)
  const here = (y: number): number => fromSi(y, unit).value
  const { relative, first, last, line, dots } = value
  const months = tell.shown(quantity(last - first, units['1'])).text
  const ends =
    relative.low === undefined || relative.high === undefined
      ? ''
      : fill(say.ends, { low: signed(relative.low), high: signed(relative.high) })
  return {
    condition,
    verdict: verdict(value.verdict),
    change: spanned(relative, share),
    dots: dots.map(({ x, y }) => ({ month: x, value: here(y) })),
    line: { first: here(line.at(first)), last: here(line.at(last)) },
    text: fill(say.series, {
      condition,
      subject: words.bench.subjects[found.subject],
      months,
      n: String(dots.length),
      verdict: verdict(value.verdict).text,
      change: signed(relative.value),
      ends,
    }),
  }
}

/** One kind of reading with all that is said of it. */
export const subjectTold = (tell: Teller, found: SubjectFound): RunSubject => {
  const { say, spanned, share, verdict, difference, words } = tell
  const name = words.bench.subjects[found.subject]
  const baseline = found.sets[0]?.condition ?? ''
  const verdicts = !found.judged.told
    ? []
    : found.judged.value.each.flatMap(({ condition, comparison }) => {
        if (!comparison.told) return []
        const { difference: relative, readingsNeeded, verdict: code } = comparison.value
        const text = [
          fill(say.verdict, { subject: name, b: condition, a: baseline, verdict: verdict(code).text }),
          difference(baseline, condition, relative),
          ...(readingsNeeded === undefined ? [] : [fill(say.more, { n: String(readingsNeeded) })]),
        ].join(' ')
        return [
          {
            condition,
            against: baseline,
            verdict: verdict(code),
            difference: spanned(relative, share),
            ...(readingsNeeded === undefined ? {} : { more: readingsNeeded }),
            text,
          },
        ]
      })
  const short = found.sets.find(({ values }) => values.length < 2)?.condition ?? baseline
  const open = found.judged.told
    ? verdicts.length === 0
      ? gapText(tell, { told: false, why: 'too-few' }, short)
      : undefined
    : gapText(tell, found.judged, found.judged.why === 'too-few' ? short : baseline)
  return {
    subject: { code: found.subject, text: name },
    unit: found.unit ?? '1',
    sets: setsOf(tell, found),
    verdicts,
    ...(open === undefined ? {} : { open }),
    pairs: found.pairs.map(({ condition, value }) => ({
      condition,
      n: value.n,
      verdict: verdict(value.verdict),
      difference: spanned(value.relative, share),
      unpaired: [...value.unpaired],
      text: [
        fill(say.pairs, {
          n: String(value.n),
          a: baseline,
          b: condition,
          subject: name,
          verdict: verdict(value.verdict).text,
          what: difference(baseline, condition, value.relative),
        }),
        ...(value.unpaired.length === 0 ? [] : [fill(say.unpaired, { pieces: value.unpaired.join(', ') })]),
      ].join(' '),
    })),
    series: found.series.map(({ condition, value }) => seriesOf(tell, found, condition, value)),
  }
}

/** Of each condition, how many readings, where and how far apart. */
export const setLines = ({ say }: Teller, { sets }: RunSubject, whats: ReadonlyMap<string, string>): string[] =>
  sets.map(({ condition, values, mean, spread }) => {
    const what = whats.get(condition) ?? condition
    const places = {
      name: what === condition ? condition : `${condition} (${what})`,
      n: String(values.length),
      mean: mean?.text ?? '',
    }
    if (!mean) return fill(say.unread, places)
    return spread ? fill(say.set, { ...places, spread: spread.text }) : fill(say.single, places)
  })
