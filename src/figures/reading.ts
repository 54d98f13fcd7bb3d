// What a figure takes from an answer: the texts as they stand there, and lengths in metres for the drawing. Nothing is worked out anew.
import { type UnitSymbol, units } from '../core/unit.ts'
import type { Answer, ShownGiven } from '../questions/answer.ts'

export const givenOf = (answer: Answer, input: string): ShownGiven | undefined =>
  answer.given.find((one) => one.input === input)

export const metres = (given: ShownGiven | undefined): number | undefined =>
  given === undefined || typeof given.value !== 'number' || given.unit === undefined
    ? undefined
    : given.value * units[given.unit as UnitSymbol].factor

export interface ShownText {
  readonly text: string
  readonly span: string | undefined
}

export const resultOf = (answer: Answer, name: string): ShownText => {
  const found = answer.results[name] as { text?: string; span?: string } | undefined
  return { text: found?.text ?? '', span: found?.span }
}

export const hasCaution = (answer: Answer, code: string): boolean => answer.cautions.some((one) => one.code === code)

export interface DrawnLink {
  readonly length: number
  readonly degrees: number
  readonly lengthText: string
  readonly angleText: string
  /** Nobody told the angle: straight ahead was taken. */
  readonly isAssumed: boolean
}

const angleShown = (degrees: number): string => `${Math.round(degrees * 10) / 10}°`.replace('-', '−')

/** The adapters in order, each with the angle that went into the answer. */
export const chainOf = (answer: Answer): readonly DrawnLink[] => {
  const lone = answer.given.find((one) => one.input === 'angle' && one.index === undefined)
  return answer.given
    .filter((one) => one.input === 'adapter')
    .map((one, index) => {
      const degrees = one.angle ?? (typeof lone?.value === 'number' ? lone.value : 0)
      return {
        length: metres(one) ?? 0,
        degrees,
        lengthText: one.text.split('@')[0] as string,
        angleText: angleShown(degrees),
        isAssumed: answer.given.some(
          (given) => given.input === 'angle' && given.index === index && given.from === 'assumed',
        ),
      }
    })
}
