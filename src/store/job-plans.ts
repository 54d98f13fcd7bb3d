// What jobs and doors keep beside the register: leases and marks, so that a job is done once however many processes there
// are; settings, of which every earlier one stays; and the probe that shows whether anything can be kept at all.
import { plain } from './order.ts'
import { type Build, firstOf, type Plan, rowsOf, run } from './plan.ts'
import { settingsNow } from './settings-now.ts'
import { type LeaseWanted, leaseHorizon, type Setting } from './store.ts'

export function* leasePlan(db: Build, { name, owner, now, until }: LeaseWanted): Plan<boolean> {
  const taken = yield* firstOf(
    db
      .insertInto('leases')
      .values({ name: plain(name), owner: plain(owner), until: plain(until) })
      .onConflict((on) =>
        on
          .column('name')
          .doUpdateSet((eb) => ({ owner: eb.ref('excluded.owner'), until: eb.ref('excluded.until') }))
          .where((eb) =>
            eb.or([
              eb('leases.until', '<=', plain(now)),
              eb('leases.until', '>', plain(leaseHorizon(now))),
              eb('leases.owner', '=', eb.ref('excluded.owner')),
            ]),
          ),
      )
      .returning('name'),
  )
  return taken !== undefined
}

export function* markPlan(db: Build, job: string, key: string, at: string): Plan<boolean> {
  const first = yield* firstOf(
    db
      .insertInto('marks')
      .values({ job: plain(job), key: plain(key), at: plain(at) })
      .onConflict((on) => on.columns(['job', 'key']).doNothing())
      .returning('job'),
  )
  return first !== undefined
}

export function* markedPlan(db: Build, job: string, key: string): Plan<boolean> {
  const found = yield* firstOf(
    db.selectFrom('marks').select('job').where('job', '=', plain(job)).where('key', '=', plain(key)),
  )
  return found !== undefined
}

export function* markedBeforePlan(db: Build, job: string, key: string): Plan<string | undefined> {
  const found = yield* firstOf(
    db
      .selectFrom('marks')
      .select('key')
      .where('job', '=', plain(job))
      .where('key', '<', plain(key))
      .orderBy('key', 'desc')
      .limit(1),
  )
  return found?.key
}

export function* settingsHistoryPlan(db: Build, scope: string): Plan<Setting[]> {
  const rows = yield* rowsOf(
    db.selectFrom('settings').select('setting').where('scope', '=', plain(scope)).orderBy('seq'),
  )
  return rows.map(({ setting }) => JSON.parse(setting) as Setting)
}

export function* settingsPlan(db: Build, scope: string): Plan<Record<string, string>> {
  return settingsNow(yield* settingsHistoryPlan(db, scope))
}

export function* setPlan(db: Build, setting: Setting): Plan<void> {
  const last = yield* firstOf(db.selectFrom('settings').select((eb) => eb.fn.max<number | null>('seq').as('seq')))
  yield* run(
    db.insertInto('settings').values({
      seq: Number(last?.seq ?? 0) + 1,
      scope: plain(setting.scope),
      name: plain(setting.name),
      value: setting.value === null ? null : plain(setting.value),
      setting: JSON.stringify(setting),
    }),
  )
}

export function* probePlan(db: Build): Plan<void> {
  yield* run(
    db
      .insertInto('probe')
      .values({ one: 1, times: 1 })
      .onConflict((on) => on.column('one').doUpdateSet((eb) => ({ times: eb('probe.times', '+', 1) }))),
  )
  yield* run(
    db
      .selectFrom('entries')
      .select((eb) => eb.fn.max<number | null>('seq').as('seq'))
      .limit(1),
  )
}
