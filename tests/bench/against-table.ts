// What `npm run bench -- against` is asked, and its table: each measure of both sides in turn, round by round, and their ratios.

export const ROUNDS = 5
const MOST_ROUNDS = 50

export interface AgainstWanted {
  readonly commit: string
  readonly rounds: number
}

const USAGE = 'say what to measure against: npm run bench -- against <commit> [rounds]'

/** Reads what stands after `against`. Throws one sentence where it cannot be read. */
export const readAgainst = (argv: readonly string[]): AgainstWanted => {
  const [commit, rounds = String(ROUNDS), ...more] = argv
  if (commit === undefined || commit.trim() === '' || more.length > 0) throw new Error(USAGE)
  if (!/^[1-9]\d*$/.test(rounds) || Number(rounds) > MOST_ROUNDS)
    throw new Error(`“${rounds}” is no number of rounds: give 1 to ${MOST_ROUNDS}`)
  return { commit, rounds: Number(rounds) }
}

/** One side in one round: the measures by name. */
export type Measures = Readonly<Record<string, number>>

export interface Row {
  readonly name: string
  readonly old: number
  readonly new: number
  /** New by old: the middle of the rounds, the least and the most of them. */
  readonly ratio: number
  readonly least: number
  readonly most: number
}

export const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((one, other) => one - other)
  const half = Math.floor(sorted.length / 2)
  const [low, high] = [sorted[half - 1], sorted[half]]
  if (high === undefined) throw new Error('no values: no median')
  return sorted.length % 2 === 1 || low === undefined ? high : (low + high) / 2
}

export interface Round {
  readonly old: Measures
  readonly new: Measures
}

/** Rows of what both sides have in every round; the names of what only one has. */
export const tableOf = (
  rounds: readonly Round[],
): { readonly rows: readonly Row[]; readonly alone: readonly string[] } => {
  const names = [...new Set(rounds.flatMap((round) => [...Object.keys(round.old), ...Object.keys(round.new)]))]
  const isWhole = (name: string): boolean => rounds.every((round) => name in round.old && name in round.new)
  const rows = names.filter(isWhole).map((name): Row => {
    const pairs = rounds.map((round) => [round.old[name] as number, round.new[name] as number] as const)
    const ratios = pairs.map(([old, now]) => now / old)
    return {
      name,
      old: median(pairs.map(([old]) => old)),
      new: median(pairs.map(([, now]) => now)),
      ratio: median(ratios),
      least: Math.min(...ratios),
      most: Math.max(...ratios),
    }
  })
  return { rows, alone: names.filter((name) => !isWhole(name)) }
}
