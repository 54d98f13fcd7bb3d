// Which page what was kept is seen on, and where a form leads that is left.
import type { Shop } from '../../../desk/shop.ts'
import { foldTag } from '../../../register/parts.ts'
import { type Entry, type Kind, tagOf } from '../../../register/records.ts'
import { runAddress } from './bench-page.tsx'

/** The page on which an entry is seen. */
export const pageOf = (entry: Entry): string => {
  const tag = entry.kind === 'gauge' ? undefined : tagOf(entry)
  if (tag === undefined) return '/board'
  return isOfRun(entry.kind) ? runAddress(tag) : `/wrench/${encodeURIComponent(tag)}`
}

const isOfRun = (kind: Kind): boolean => kind === 'run' || kind === 'run-reading' || kind === 'run-finish'

/** Whether it may be said that something was kept: only of an entry that stands in this record, whatever an address claims. */
export const isKeptOf = async (register: Shop, kept: unknown, tag: string): Promise<boolean> => {
  const entry = typeof kept === 'string' ? await register.entry(kept) : undefined
  return entry !== undefined && foldTag(tagOf(entry) ?? '') === foldTag(tag)
}

/** Where a form leads that is left. */
export const leaveFor = (kind: Kind, values: Readonly<Record<string, string>>): string => {
  const own = kind === 'wrench' || kind === 'run' ? values['tag'] : undefined
  const tag = own ?? (isOfRun(kind) ? values['run'] : values['wrench'])
  if (tag === undefined || tag === '') return isOfRun(kind) ? '/bench' : '/board'
  return isOfRun(kind) ? runAddress(tag) : `/wrench/${encodeURIComponent(tag)}`
}
