// Whether an append was made before: by the keys and ids of its entries. Pure; every store asks it.
import type { Entry } from '../register/records.ts'
import { isSameDraft } from '../register/same-draft.ts'
import type { Appended, Filed } from './store.ts'

/**
 * Undefined if nothing of it is in the record yet. `found` is all that the record holds under these keys and ids, in order.
 * What was kept together must come together: a part of it, or more than it, is something else.
 */
export const knownOf = (entries: readonly Entry[], found: readonly Filed[]): Appended | undefined => {
  if (found.length === 0) return undefined
  const differs = entries.findIndex((entry, n) => {
    const kept = found[n]?.entry
    return !kept || !isSameDraft(kept, entry) || (kept.key !== entry.key && kept.id !== entry.id)
  })
  if (differs < 0 && found.length === entries.length) return { kind: 'known', filed: found }
  const keys = new Set(entries.map(({ key }) => key))
  const used = found.find(({ entry }) => entry.key !== undefined && keys.has(entry.key))?.entry.key
  return used === undefined
    ? { kind: 'clash', by: 'id', value: found[0]?.entry.id as string }
    : { kind: 'clash', by: 'key', value: used }
}
