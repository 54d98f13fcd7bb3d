// What people keep for themselves: no history of it, and nothing that would keep them from taking it back.
import type { Migration } from './migration.ts'

export const own: Migration = {
  number: 2,
  brings: 'own settings of people',
  sqlite: [
    `create table own (
       owner text not null,
       name text not null,
       value text not null,
       at text not null,
       primary key (owner, name)
     ) strict`,
    'create index own_by_time on own (at)',
  ],
  postgres: [
    `create table own (
       owner text collate "C" not null,
       name text collate "C" not null,
       value text not null,
       at text collate "C" not null,
       primary key (owner, name)
     )`,
    'create index own_by_time on own (at)',
  ],
}
