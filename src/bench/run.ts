// A BENCH RUN as the register keeps it, by the names that judging uses: its kinds of entry and what they hold.
import type { BodyOf, Draft, Entry } from '../register/records.ts'

export {
  type Condition,
  isSameName,
  type Measure,
  measures,
  type Reading,
  type Run,
  type RunReading,
} from '../register/run-bodies.ts'

export const runKinds = ['run', 'run-reading', 'run-finish'] as const
export type RunKind = (typeof runKinds)[number]
export type RunBodyOf<K extends RunKind> = BodyOf<K>
export type RunEntry<K extends RunKind = RunKind> = Entry<K>
export type RunDraft<K extends RunKind = RunKind> = Draft<K>
