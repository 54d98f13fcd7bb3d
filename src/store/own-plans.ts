// What people keep for themselves: set, told, taken back, and let go when nobody has used it for long.
import { plain } from './order.ts'
import { type Build, type Plan, rowsOf, run } from './plan.ts'
import type { OwnSetting } from './store.ts'

export function* ownPlan(db: Build, owner: string): Plan<Record<string, string>> {
  const rows = yield* rowsOf(db.selectFrom('own').select(['name', 'value']).where('owner', '=', plain(owner)))
  return Object.fromEntries(rows.map(({ name, value }) => [name, value]))
}

export function* setOwnPlan(db: Build, { owner, name, value, at }: OwnSetting): Plan<void> {
  if (value === null) {
    yield* run(db.deleteFrom('own').where('owner', '=', plain(owner)).where('name', '=', plain(name)))
    return
  }
  yield* run(
    db
      .insertInto('own')
      .values({ owner: plain(owner), name: plain(name), value: plain(value), at: plain(at) })
      .onConflict((on) =>
        on
          .columns(['owner', 'name'])
          .doUpdateSet((eb) => ({ value: eb.ref('excluded.value'), at: eb.ref('excluded.at') })),
      ),
  )
}

export function* usedOwnPlan(db: Build, owner: string, at: string): Plan<void> {
  yield* run(
    db
      .updateTable('own')
      .set({ at: plain(at) })
      .where('owner', '=', plain(owner)),
  )
}

export function* forgetOwnPlan(db: Build, owner: string): Plan<number> {
  const gone = yield* rowsOf(db.deleteFrom('own').where('owner', '=', plain(owner)).returning('name'))
  return gone.length
}

// An owner's settings go together, by the one that was used last.
export function* forgetIdlePlan(db: Build, before: string): Plan<number> {
  const gone = yield* rowsOf(
    db
      .deleteFrom('own')
      .where('owner', 'not in', db.selectFrom('own').select('owner').where('at', '>=', plain(before)))
      .returning('owner'),
  )
  return new Set(gone.map(({ owner }) => owner)).size
}
