// All migrations in order, and the plan that brings a database up to date. Runs alone, under the lock of its database.
import { CompiledQuery } from 'kysely'
import { Outage } from '../../core/outage.ts'
import type { Plan } from '../plan.ts'
import { register } from './001-register.ts'
import { own } from './002-own.ts'
import { runs } from './003-runs.ts'
import type { Migration } from './migration.ts'

export type { Migration }

export const migrations: readonly Migration[] = [register, own, runs]

/** Throws where a store has a schema that only a newer program knows. */
export const assertKnown = (at: number, known: number): void => {
  if (at <= known) return
  throw new Outage('too-new', `the store has schema ${at}, this program knows ${known}: run the newer program`)
}

export function* migratePlan(dialect: 'sqlite' | 'postgres', all: readonly Migration[] = migrations): Plan<void> {
  yield CompiledQuery.raw(
    'create table if not exists migrations (number integer primary key, brings text not null)' +
      (dialect === 'sqlite' ? ' strict' : ''),
  )
  const rows = yield CompiledQuery.raw('select coalesce(max(number), 0) as number from migrations')
  const { number: at } = rows[0] as { readonly number: number }
  assertKnown(at, all.at(-1)?.number ?? 0)
  for (const { number, brings, ...statements } of all.filter((one) => one.number > at)) {
    for (const statement of statements[dialect]) yield CompiledQuery.raw(statement)
    yield CompiledQuery.raw(`insert into migrations (number, brings) values (${number}, '${brings}')`)
  }
}
