// How often a wrench was used since a check, as it was counted. A count is since the last check or since the last count.
import { type Kept, newestFirst } from './book.ts'

export interface UsesSince {
  readonly uses: number
  /** The day up to which they were counted. */
  readonly countedOn: string
}

/** Whether an entry stands after a check: a later day, or on that day recorded later. */
export const isAfter = (
  one: { readonly entry: { readonly body: { readonly date: string } }; readonly order: number },
  check: Kept<'check'>,
): boolean => newestFirst(one, check) < 0

/** The uses counted since a check; undefined where nobody counted. `counts` newest first. */
export const usesSince = (counts: ReadonlyArray<Kept<'uses'>>, check: Kept<'check'>): UsesSince | undefined => {
  const after = counts.filter((count) => isAfter(count, check)).reverse()
  const newest = after.at(-1)
  if (!newest) return undefined
  const uses = after.reduce(
    (sum, { entry }) => (entry.body.since === 'check' ? entry.body.count : sum + entry.body.count),
    0,
  )
  return { uses, countedOn: newest.entry.body.date }
}
