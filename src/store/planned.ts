// A store from a database that can run plans: the same for SQLite and PostgreSQL. They add only how a plan is run.
import type { Kind } from '../register/records.ts'
import { appendPlan } from './append-plan.ts'
import { cardPlan, cardsPlan, findPlan, rebuildPlan } from './card-plans.ts'
import { entryPlan, historyPlan, knownPlan, sincePlan } from './entry-plans.ts'
import {
  leasePlan,
  markedBeforePlan,
  markedPlan,
  markPlan,
  probePlan,
  setPlan,
  settingsHistoryPlan,
  settingsPlan,
} from './job-plans.ts'
import { forgetIdlePlan, forgetOwnPlan, ownPlan, setOwnPlan, usedOwnPlan } from './own-plans.ts'
import type { Build, Plan } from './plan.ts'
import type { FoldCards, Store } from './store.ts'

export interface Runner {
  readonly build: Build
  /** Runs a plan of one statement, which is whole or not at all by itself. */
  readonly once: <T>(plan: () => Plan<T>) => Promise<T>
  /** Runs a plan alone and as one: no other writes meanwhile, and it is kept whole or not at all. */
  readonly write: <T>(plan: () => Plan<T>) => Promise<T>
  /** After something was erased: takes it out of what is kept beside the tables, too. */
  readonly erased?: () => Promise<void>
  readonly backup: Store['backup']
  readonly close: Store['close']
}

const rebuildAll = async ({ build, write }: Runner, fold: FoldCards): Promise<number> => {
  let cards = 0
  for (let after: string | undefined = ''; after !== undefined; ) {
    const from: string = after
    const done = await write(() => rebuildPlan(build, from, fold))
    cards += done.cards
    after = done.last
    // Whoever else waits for this process gets a turn between the parts.
    await new Promise((resolve) => setImmediate(resolve))
  }
  return cards
}

/** Always, not only where something stood there: what was taken back one by one may be beside the tables as well. */
const erasing = async ({ once, erased }: Runner, plan: () => Plan<number>): Promise<number> => {
  const gone = await once(plan)
  await erased?.()
  return gone
}

export const plannedStore = (runner: Runner): Store => {
  const { build, once, write, backup, close } = runner
  return {
    append: (wanted) => write(() => appendPlan(build, wanted)),
    history: (tag: string, kind?: Kind) => once(() => historyPlan(build, tag, kind)) as never,
    entry: (id) => once(() => entryPlan(build, id)),
    known: (key) => once(() => knownPlan(build, key)),
    since: (seq, limit) => once(() => sincePlan(build, seq, limit)),
    card: (name) => once(() => cardPlan(build, name)),
    cards: (wanted) => once(() => cardsPlan(build, wanted)),
    find: (text, wanted) => once(() => findPlan(build, text, wanted)),
    rebuild: (fold) => rebuildAll(runner, fold),
    lease: (wanted) => once(() => leasePlan(build, wanted)),
    mark: (job, key, at) => once(() => markPlan(build, job, key, at)),
    marked: (job, key) => once(() => markedPlan(build, job, key)),
    markedBefore: (job, key) => once(() => markedBeforePlan(build, job, key)),
    settings: (scope) => once(() => settingsPlan(build, scope)),
    set: (setting) => write(() => setPlan(build, setting)),
    settingsHistory: (scope) => once(() => settingsHistoryPlan(build, scope)),
    own: (owner) => once(() => ownPlan(build, owner)),
    setOwn: (setting) => once(() => setOwnPlan(build, setting)),
    usedOwn: (owner, at) => once(() => usedOwnPlan(build, owner, at)),
    forgetOwn: (owner) => erasing(runner, () => forgetOwnPlan(build, owner)),
    forgetIdle: (before) => erasing(runner, () => forgetIdlePlan(build, before)),
    check: () => write(() => probePlan(build)),
    backup,
    close,
  }
}
