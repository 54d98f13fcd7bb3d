// Under which tags an entry is filed: its own, and all those of what it supersedes. A correction that moves a check to another
// wrench is found at both, with all that it corrects. Pure; every store files by it.
import { type Entry, tagOf } from '../register/records.ts'
import { folded } from './order.ts'

/** An entry that is filed already. */
export interface Placed {
  readonly seq: number
  readonly tags: ReadonlySet<string>
  readonly supersedes: string | undefined
}

export interface Filing {
  readonly tag: string
  readonly seq: number
}

export interface NewFilings {
  readonly filings: readonly Filing[]
  /** The tags that the new entries themselves are filed under. */
  readonly touched: ReadonlySet<string>
}

const chainOf = (id: string | undefined, placed: ReadonlyMap<string, Placed>): Placed[] => {
  const chain: Placed[] = []
  for (let at = id; at !== undefined; ) {
    const found = placed.get(at)
    if (!found) throw new Error(`bug: entry ${at} is superseded and is not in the record`)
    chain.push(found)
    at = found.supersedes
  }
  return chain
}

/** The filings of new entries; `before` holds what they supersede, whole chains. */
export const filingsOf = (
  entries: readonly Entry[],
  firstSeq: number,
  before: ReadonlyMap<string, Placed>,
): NewFilings => {
  const placed = new Map(before)
  const filings: Filing[] = []
  const touched = new Set<string>()
  entries.forEach((entry, n) => {
    const seq = firstSeq + n
    const tag = tagOf(entry)
    const own = tag === undefined ? undefined : folded(tag)
    const chain = chainOf(entry.supersedes, placed)
    const tags = new Set(chain.flatMap((one) => [...one.tags]))
    if (own !== undefined && !tags.has(own)) filings.push(...chain.map((one) => ({ tag: own, seq: one.seq })))
    if (own !== undefined) tags.add(own)
    if (tags.size === 0) throw new Error(`bug: entry ${entry.id} belongs to no tag`)
    for (const one of tags) {
      filings.push({ tag: one, seq })
      touched.add(one)
    }
    placed.set(entry.id, { seq, tags, supersedes: entry.supersedes })
  })
  return { filings: [...filings].sort((one, other) => one.seq - other.seq), touched }
}

/** Deciding about a tag without having looked at it is how updates get lost. */
export const assertExpected = (touched: ReadonlySet<string>, expected: ReadonlyMap<string, number>): void => {
  for (const tag of touched) if (!expected.has(tag)) throw new Error(`bug: nothing is expected of ${tag}`)
}
