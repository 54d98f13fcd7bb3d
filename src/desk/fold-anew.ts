// Brings the stored rows of wrenches and gauges to what this program folds: once for each version of the fold, when the register
// is opened. The record itself is never touched by it.
import { Outage } from '../core/outage.ts'
import type { Today } from '../register/status.ts'
import type { Store } from '../store/store.ts'
import { FOLD_VERSION, foldRows } from './card-rows.ts'

const JOB = 'rows folded'

export const foldAnew = async (
  store: Pick<Store, 'marked' | 'mark' | 'rebuild'>,
  now: Today,
  at: string,
): Promise<void> => {
  const version = String(FOLD_VERSION)
  if (await store.marked(JOB, version)) return
  try {
    await store.rebuild(foldRows(now))
    await store.mark(JOB, version, at)
  } catch (error) {
    // A register that cannot be written to can still be read; the next that opens it tries again.
    if (!(error instanceof Outage)) throw error
  }
}
