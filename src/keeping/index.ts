// Everything that can be kept, by kind; a kind of the record without its declaration does not compile.
import type { Kind } from '../register/records.ts'
import { gaugeCard, wrenchCard } from './cards.ts'
import { checkRecord } from './check.ts'
import { eventRecord, usesRecord, withdrawalRecord } from './happenings.ts'
import type { Keepable } from './keepable.ts'
import { runFinishRecord, runReadingRecord, runRecord } from './run.ts'

export const keepables = {
  wrench: wrenchCard,
  gauge: gaugeCard,
  check: checkRecord,
  event: eventRecord,
  uses: usesRecord,
  run: runRecord,
  'run-reading': runReadingRecord,
  'run-finish': runFinishRecord,
  withdrawal: withdrawalRecord,
} as const satisfies { readonly [K in Kind]: Keepable<K> }
