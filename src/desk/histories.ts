// What the record holds of several tags at once, in the order in which it was kept.
import { foldTag } from '../register/parts.ts'
import { type Draft, type Entry, isOf } from '../register/records.ts'
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

/** The tags that an entry names beside its own: the gauge of a check, the wrench of a run. */
export const namedIn = (draft: Pick<Draft, 'kind' | 'body'>): string[] => {
  const { gauge, wrench } = draft.body as { readonly gauge?: string; readonly wrench?: string }
  const named = draft.kind === 'check' ? gauge : draft.kind === 'run' ? wrench : undefined
  return named === undefined ? [] : [named]
}

/** The gauges that checks among these entries were made with. */
export const gaugeTags = (entries: readonly Entry[]): string[] =>
  entries.flatMap((entry) => (isOf('check')(entry) && entry.body.gauge !== undefined ? [entry.body.gauge] : []))
