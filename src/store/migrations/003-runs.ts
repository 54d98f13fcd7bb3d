// Cards of bench runs beside those of wrenches and gauges. Cards are folded from the entries, so that the table may be made anew.
import type { Migration } from './migration.ts'

export const runs: Migration = {
  number: 3,
  brings: 'bench runs',
  sqlite: [
    `create table cards_wider (
       kind text not null check (kind in ('wrench', 'gauge', 'run')),
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
    'insert into cards_wider select kind, tag, name, tag_order, place_order, due_order, retired, seq, card from cards',
    'drop table cards',
    'alter table cards_wider rename to cards',
    'create index cards_by_tag on cards (tag_order, kind)',
    'create index cards_by_place on cards (place_order, tag_order, kind)',
    'create index cards_by_due on cards (due_order, tag_order, kind)',
  ],
  postgres: [
    'alter table cards drop constraint cards_kind_check',
    `alter table cards add constraint cards_kind_check check (kind in ('wrench', 'gauge', 'run'))`,
  ],
}
