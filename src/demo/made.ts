// What the demo is made with: what is kept when, chance from a seed, and days that end today.
import { writeNumber } from '../core/number-style.ts'
import type { Kind } from '../register/records.ts'

export interface DemoEntry {
  readonly kind: Kind
  readonly raw: Readonly<Record<string, string>>
}

/** Minimal standard generator (Park and Miller 1988): the demo is the same every time. */
export const createChance = (seed: number) => {
  let state = seed
  const next = (): number => {
    state = (state * 48_271) % 2_147_483_647
    return state / 2_147_483_647
  }
  /** About normal, of standard deviation 1: the sum of twelve. */
  return (): number => Array.from({ length: 12 }, next).reduce((sum, one) => sum + one, 0) - 6
}

const DAY_MS = 86_400_000
export const monthsBefore = (today: string, months: number): string =>
  new Date(Date.parse(`${today}T00:00:00Z`) - Math.round(months * 30.44) * DAY_MS).toISOString().slice(0, 10)

export interface TimedEntry {
  /** Before today. */
  readonly months: number
  readonly entry: DemoEntry
}

export const round = (value: number): string => writeNumber(Number(value.toPrecision(4)))
