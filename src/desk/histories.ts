// What the record holds of several tags at once, in the order in which it was kept.
import { foldTag } from '../register/parts.ts'
import { type Entry, isOf } from '../register/records.ts'
import type { RegisterStore } from '../store/lazy.ts'
import type { Filed } from '../store/store.ts'

export const historyOf = async (
  store: Pick<RegisterStore, 'history'>,
  tags: readonly string[],
): Promise<readonly Filed[]> => {
  const unique = [...new Map(tags.map((tag) => [foldTag(tag), tag])).values()]
  const all = (await Promise.all(unique.map((tag) => store.history(tag)))).flat()
  const once = new Map(all.map((filed) => [filed.seq, filed]))
  return [...once.values()].sort((one, other) => one.seq - other.seq)
}

/** The gauges that checks among these entries were made with. */
export const gaugeTags = (entries: readonly Entry[]): string[] =>
  entries.flatMap((entry) => (isOf('check')(entry) && entry.body.gauge !== undefined ? [entry.body.gauge] : []))
