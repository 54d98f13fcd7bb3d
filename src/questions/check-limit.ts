// Which limit a wrench is held to: the maker's own, else the standard's by kind and class, else by its largest torque.
import { type Fault, fault } from '../core/fault.ts'
import type { Point } from '../core/parse-points.ts'
import { type Quantity, quantity, si } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import { classesOf, type IsoClass, type IsoType, limitOf } from '../mechanics/check-verdict.ts'
import { deviation, standardLimit } from '../mechanics/deviation.ts'
import { put, type Step, step } from './outcome.ts'
import { phrase } from './phrase.ts'

export interface HeldTo {
  readonly points: readonly Point[]
  readonly 'iso-type'?: IsoType | undefined
  readonly 'iso-class'?: IsoClass | undefined
  readonly most?: Quantity | undefined
  readonly tolerance?: Quantity | undefined
}

export interface CheckLimit {
  /** In %. */
  readonly limit: Quantity
  readonly step: Step
}

const percent = (fraction: number): Quantity => quantity(fraction * 100, units['%'])

/** The highest setting that was checked: the tool goes at least that far. */
export const highestOf = (points: readonly Point[]): Quantity =>
  points.map(({ setting }) => setting).reduce((high, one) => (si(one) > si(high) ? one : high))

/** The limit, and a step that says by what it was taken. */
export const limitFor = ({ points, 'iso-type': type, 'iso-class': isoClass, most, tolerance }: HeldTo): CheckLimit => {
  if (tolerance) {
    return { limit: tolerance, step: step(phrase('wrench-check.limit-maker'), 'l', put`${tolerance}`, tolerance) }
  }
  const highest = highestOf(points)
  const largest = most ?? highest
  if (type && isoClass) {
    const limit = percent(limitOf(type, isoClass, si(largest)))
    const say = phrase('wrench-check.limit-class', { type, class: isoClass })
    return { limit, step: step(say, 'l', put`${largest}`, limit) }
  }
  const limit = percent(standardLimit(si(largest)))
  const say = phrase(most ? 'wrench-check.limit-most' : 'wrench-check.limit-highest')
  return { limit, step: step(say, 'l = 6 % ≤ 10 N·m < 4 %', put`${largest}`, limit) }
}

// Checked up to 10 N·m only, the tool may be a small one (6 %) or the low part of a larger one (4 %): that matters where a
// reading lies between the two limits.
const settledWithoutMost = (points: readonly Point[]): boolean => {
  const [loose, strict] = [standardLimit(0) * 100, standardLimit(Number.POSITIVE_INFINITY) * 100]
  if (standardLimit(si(highestOf(points))) * 100 === strict) return true
  const off = points.flatMap(({ setting, readings }) =>
    readings.map((reading) => Math.abs(deviation(si(setting), si(reading)))),
  )
  return !off.some((one) => one > strict * (1 - 1e-12) && one <= loose * (1 + 1e-12))
}

/** What the class needs besides: its kind, and the largest torque where the points alone leave the limit open. */
export const neededForLimit = ({
  points,
  'iso-type': type,
  'iso-class': isoClass,
  most,
  tolerance,
}: Partial<HeldTo>): ReadonlyArray<'iso-type' | 'most'> => {
  if (tolerance) return []
  if (!isoClass) return most || !points || settledWithoutMost(points) ? [] : ['most']
  if (!type) return ['iso-type']
  if (most || !points) return []
  // A tool checked at 25 N·m goes above 10 N·m for sure; one checked at 8 N·m may or may not.
  const settled = limitOf(type, isoClass, si(highestOf(points))) === limitOf(type, isoClass, Number.POSITIVE_INFINITY)
  return settled ? [] : ['most']
}

/** A class that this kind of tool does not have. */
export const checkClass = ({ 'iso-type': type, 'iso-class': isoClass }: Partial<HeldTo>): Fault[] =>
  type && isoClass && !classesOf[type].includes(isoClass)
    ? [fault('class-not-of-type', 'iso-class', isoClass, { type, options: classesOf[type] })]
    : []
