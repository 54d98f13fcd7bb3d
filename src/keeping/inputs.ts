// Kinds of input that only what is kept has: tags, names and notes, a tolerance with what it is of, a temperature.
import { type Fault, fault, type Read, read, refuse } from '../core/fault.ts'
import { readNumber } from '../core/number-text.ts'
import { LONGEST_QUANTITY, parseQuantity } from '../core/parse-quantity.ts'
import { type Quantity, quantity } from '../core/quantity.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { units } from '../core/unit.ts'
import { asked, common, type Input, type Options, one, same, within } from '../questions/input.ts'
import { LONGEST_TAG, tagPattern, type tolerancesOf, unseenLetter } from '../register/parts.ts'

const emptyOrLong = (text: string, input: string, most: number): Fault | undefined => {
  if (text.trim() === '') return fault('empty', input, text)
  return text.trim().length > most ? fault('too-long', input, text, { most: String(most) }) : undefined
}

// Nobody types these, nobody sees them, and pictures, sheets and screens break on them: control characters, halves of characters,
// and marks that turn the writing round, also that of the numbers which stand behind: 120 N·m would be seen as m·N 021.
const hidden = /[\p{Cc}\p{Cs}\u200B\u200E\u200F\u202A-\u202E\u2060-\u2069\uFEFF\uFFFE\uFFFF]/u
const lineEnds = /[\n\r\t\u2028\u2029]+/g

const unseen = (text: string, input: string, lines: boolean): Fault | undefined => {
  if (hidden.test(text.replace(lineEnds, ' '))) return fault('text-hidden', input, text)
  return !lines && text.search(lineEnds) >= 0 ? fault('text-one-line', input, text) : undefined
}

const worded =
  (kind: 'text' | 'tag', most: number, lines: boolean, check: (text: string, input: string) => Fault | undefined) =>
  <N extends boolean>(options: Options<N>, example: string): Input<string, N> => ({
    kind,
    most: 1,
    ...common(options, same(example)),
    read: (texts, input) => {
      const text = one(texts, input)
      if (!text.ok) return text
      const typed = text.value.trim()
      const wrong = emptyOrLong(typed, input, most) ?? unseen(typed, input, lines) ?? check(typed, input)
      return wrong ? refuse(wrong) : read(typed)
    },
    given: (value, input) => [asked(input, value)],
  })

/** Free text, so long at most; in several lines where that is said. */
export const text = <N extends boolean = false>(
  options: Options<N> & { readonly longest: number; readonly sample: string; readonly lines?: true },
): Input<string, N> => worded('text', options.longest, options.lines ?? false, () => undefined)(options, options.sample)

/** The tag of a wrench or a gauge. */
export const tag = <N extends boolean = false>(
  options: Options<N> & { readonly sample?: string } = {},
): Input<string, N> =>
  worded('tag', LONGEST_TAG, false, (typed, input) =>
    tagPattern.test(typed) && !unseenLetter.test(typed)
      ? undefined
      : fault('not-a-tag', input, typed, { most: String(LONGEST_TAG) }),
  )(options, options.sample ?? 'W-07')

export interface ToleranceRead {
  readonly share: Quantity
  readonly of: (typeof tolerancesOf)[number]
}

const toleranceExamples = ['4 %', '4 % of full scale'] as const
const toleranceParts =
  /^(?:±|\+\/-)?\s*(.+?%|.+?\bpercent|.+?\bpct)\s*(?:(?:of\s+)?(?:the\s+)?(reading|setting|rdg|full[\s-]?scale|fs|f\.s\.))?$/i
const smallestShare = quantity(0.01, units['%'])
const largestShare = quantity(50, units['%'])

const parseTolerance = (typed: string, input: string): Read<ToleranceRead> => {
  const parts = toleranceParts.exec(typed)
  if (!parts) return refuse(fault('not-a-tolerance', input, typed, { options: toleranceExamples }))
  const wanted = { input, dimensions: ['percent'] } as const
  const share = parseQuantity(parts[1] as string, wanted)
  if (!share.ok) return share
  const wrong = within(share.value, wanted, typed, { least: smallestShare, most: largestShare })
  if (wrong) return refuse(wrong)
  return read({ share: share.value, of: /^f/i.test(parts[2] ?? '') ? 'full-scale' : 'reading' })
}

/** A percentage of the reading, or of the full scale where that is said. */
export const tolerance = <N extends boolean = false>(options: Options<N> = {}): Input<ToleranceRead, N> => ({
  kind: 'tolerance',
  most: 1,
  ...common(options, same('4 %')),
  read: (texts, input) => {
    const typed = one(texts, input)
    if (!typed.ok) return typed
    const wrong = emptyOrLong(typed.value, input, LONGEST_QUANTITY)
    return wrong ? refuse(wrong) : parseTolerance(typed.value.trim(), input)
  },
  given: ({ share, of }, input) => [
    of === 'reading' ? asked(input, share) : asked(input, `${writeQuantity(share)} of full scale`),
  ],
})

const temperatureExamples = ['21 °C', '70 °F'] as const
const COLDEST = -40
const HOTTEST = 80

const parseTemperature = (typed: string, input: string): Read<number> => {
  const not = refuse(fault('not-a-temperature', input, typed, { options: temperatureExamples }))
  const number = readNumber(typed)
  if (!number.ok) return not
  const scale = /^(?:°|deg(?:rees?)?)?\s*([CF])$/i.exec(number.rest.trim())?.[1]?.toUpperCase()
  if (scale === undefined) return not
  // To a tenth: no thermometer on a bench tells more, and 70 °F is 21.1 °C.
  const celsius = scale === 'C' ? number.value : Math.round(((number.value - 32) / 1.8) * 10) / 10
  return celsius < COLDEST || celsius > HOTTEST ? not : read(celsius)
}

/** Degrees Celsius, typed in either scale. */
export const temperature = <N extends boolean = false>(options: Options<N> = {}): Input<number, N> => ({
  kind: 'temperature',
  most: 1,
  ...common(options, { metric: temperatureExamples[0], inch: temperatureExamples[1] }),
  read: (texts, input) => {
    const typed = one(texts, input)
    if (!typed.ok) return typed
    const wrong = emptyOrLong(typed.value, input, LONGEST_QUANTITY)
    return wrong ? refuse(wrong) : parseTemperature(typed.value.trim(), input)
  },
  given: (value, input) => [asked(input, `${value} °C`)],
})
