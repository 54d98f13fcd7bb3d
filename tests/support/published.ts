// Published rows and what is reached for them: one claim for each number that a row prints.
import { readFileSync } from 'node:fs'

export interface Row {
  readonly id: string
  readonly topic: string
  readonly inputs: Readonly<Record<string, unknown>>
  readonly expected: Readonly<Record<string, unknown>>
  readonly rounding: string
  readonly note?: string
  readonly source: {
    readonly title: string
    readonly number?: string
    readonly where?: string
    readonly standing: 'published' | 'from memory' | 'worked out'
  }
}

/** One printed number beside the one that is reached here. `key` is the row's own name for it, with an index in a list. */
export interface Claim {
  readonly key: string
  /** Said of a claim that takes the printed number in another sense than the row's plain one. */
  readonly taken?: string
  readonly printed: number
  readonly reached: number
  readonly within: number
}

export const rowsIn = (file: URL): readonly Row[] => JSON.parse(readFileSync(file, 'utf8')) as Row[]

const at = (values: Row['inputs'], key: string): unknown => {
  const [name = '', index] = key.split(/[[\]]/)
  const value = values[name]
  return index === undefined ? value : (value as readonly unknown[])[Number(index)]
}

const numberAt = (values: Row['inputs'], key: string): number => {
  const value = at(values, key)
  const number = typeof value === 'string' ? Number(value) : value
  if (typeof number !== 'number' || Number.isNaN(number)) throw new Error(`a row has no number ${key}`)
  return number
}

export const input = (row: Row, key: string): number => numberAt(row.inputs, key)

/** Half of the last printed digit: 2 places are within 0.005. */
export const half = (places: number): number => 0.5 * 10 ** -places
/** Where nothing was rounded: the noise of binary only. */
export const exact = (size: number): number => Math.abs(size) * 1e-12 + 1e-12

/** What a row prints under `key`, beside what is reached. `places`: how many decimals are printed; none where exact. */
export const claim = (row: Row, key: string, reached: number, places?: number): Claim => {
  const printed = numberAt(row.expected, key)
  return { key, printed, reached, within: places === undefined ? exact(printed) : half(places) }
}

export const nameOf = (one: Claim): string => (one.taken === undefined ? one.key : `${one.key} (${one.taken})`)

/** As far apart as the print allows, with a little for numbers that lie exactly on the half. */
export const agrees = ({ printed, reached, within }: Claim): boolean =>
  Math.abs(reached - printed) <= within * (1 + 1e-9)
