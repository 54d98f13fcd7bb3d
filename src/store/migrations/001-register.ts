// The first schema: entries that are only ever added, the tags they are filed under, and what is folded from them.
import type { Migration } from './migration.ts'

// Both databases guard the record themselves, whoever comes by another door. SQLite replaces a row without asking the triggers
// for deleting, hence the guard before inserting.
const sqliteOnlyAdded = (table: string): string[] => [
  `create trigger ${table}_no_update before update on ${table} begin select raise(abort, '${table} are only ever added'); end`,
  `create trigger ${table}_no_delete before delete on ${table} begin select raise(abort, '${table} are only ever added'); end`,
]

const sqliteNextOnly = (table: string): string =>
  `create trigger ${table}_next before insert on ${table}
   when new.seq <> (select coalesce(max(seq), 0) + 1 from ${table})
   begin select raise(abort, '${table} have places without a gap'); end`

const postgresOnlyAdded = (table: string): string =>
  `create trigger ${table}_only_added before update or delete or truncate on ${table}
   for each statement execute function only_added()`

export const register: Migration = {
  number: 1,
  brings: 'the register',
  sqlite: [
    // entry: the whole entry as JSON; the columns beside it are there to look for it.
    `create table entries (
       seq integer primary key check (seq >= 1),
       id text not null unique check (length(id) between 1 and 64),
       at text not null,
       kind text not null check (length(kind) > 0),
       supersedes text references entries (id),
       key text check (length(key) between 1 and 128),
       entry text not null check (json_valid(entry))
     ) strict`,
    'create index entries_by_key on entries (key) where key is not null',
    `create trigger entries_new_id before insert on entries when exists (select 1 from entries where id = new.id)
     begin select raise(abort, 'entries are only ever added'); end`,
    sqliteNextOnly('entries'),
    ...sqliteOnlyAdded('entries'),
    // tag: folded. A correction that moves an entry to another tag is filed under both.
    `create table filings (
       tag text not null check (length(tag) > 0),
       seq integer not null references entries (seq),
       primary key (tag, seq)
     ) strict, without rowid`,
    ...sqliteOnlyAdded('filings'),
    // Folded from the entries and replaced with every one that is added; tag and name are folded, the orders say how lists run.
    `create table cards (
       kind text not null check (kind in ('wrench', 'gauge')),
       tag text not null check (length(tag) > 0),
       name text not null,
       tag_order text not null,
       place_order text not null,
       due_order text not null,
       retired integer not null check (retired in (0, 1)),
       seq integer not null check (seq >= 0),
       card text not null check (json_valid(card)),
       primary key (kind, tag)
     ) strict`,
    'create index cards_by_tag on cards (tag_order, kind)',
    'create index cards_by_place on cards (place_order, tag_order, kind)',
    'create index cards_by_due on cards (due_order, tag_order, kind)',
    'create table leases (name text primary key, owner text not null, until text not null) strict',
    'create table marks (job text not null, key text not null, at text not null, primary key (job, key)) strict',
    ...sqliteOnlyAdded('marks'),
    // setting: the whole of it as JSON; value is null where it was taken away.
    `create table settings (
       seq integer primary key check (seq >= 1),
       scope text not null,
       name text not null,
       value text,
       setting text not null check (json_valid(setting))
     ) strict`,
    'create index settings_by_scope on settings (scope, seq)',
    sqliteNextOnly('settings'),
    ...sqliteOnlyAdded('settings'),
    'create table probe (one integer primary key check (one = 1), times integer not null) strict',
  ],
  postgres: [
    `create function only_added() returns trigger language plpgsql as
     $$ begin raise exception '% are only ever added', tg_table_name; end $$`,
    // Texts are compared by code point, as the other stores do, whatever the language of the server.
    `create table entries (
       seq bigint primary key check (seq >= 1),
       id text collate "C" not null unique check (length(id) between 1 and 64),
       at text collate "C" not null,
       kind text collate "C" not null check (length(kind) > 0),
       supersedes text collate "C" references entries (id),
       key text collate "C" check (length(key) between 1 and 128),
       entry json not null
     )`,
    'create index entries_by_key on entries (key) where key is not null',
    postgresOnlyAdded('entries'),
    `create table filings (
       tag text collate "C" not null check (length(tag) > 0),
       seq bigint not null references entries (seq),
       primary key (tag, seq)
     )`,
    postgresOnlyAdded('filings'),
    `create table cards (
       kind text collate "C" not null check (kind in ('wrench', 'gauge')),
       tag text collate "C" not null check (length(tag) > 0),
       name text collate "C" not null,
       tag_order text collate "C" not null,
       place_order text collate "C" not null,
       due_order text collate "C" not null,
       retired integer not null check (retired in (0, 1)),
       seq bigint not null check (seq >= 0),
       card json not null,
       primary key (kind, tag)
     )`,
    'create index cards_by_tag on cards (tag_order, kind)',
    'create index cards_by_place on cards (place_order, tag_order, kind)',
    'create index cards_by_due on cards (due_order, tag_order, kind)',
    `create table leases (
       name text collate "C" primary key, owner text collate "C" not null, until text collate "C" not null
     )`,
    `create table marks (
       job text collate "C" not null, key text collate "C" not null, at text collate "C" not null, primary key (job, key)
     )`,
    postgresOnlyAdded('marks'),
    `create table settings (
       seq bigint primary key check (seq >= 1),
       scope text collate "C" not null,
       name text collate "C" not null,
       value text,
       setting json not null
     )`,
    'create index settings_by_scope on settings (scope, seq)',
    postgresOnlyAdded('settings'),
    'create table probe (one integer primary key check (one = 1), times bigint not null)',
  ],
}
