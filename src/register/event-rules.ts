// Which fields go with which event: only what lasts has a beginning and a setting. Asked when it is typed and when it is recorded.
// And which events stand until another one ends them, whatever is checked meanwhile.
import { type Fault, fault } from '../core/fault.ts'
import type { EventKind } from './bodies.ts'

/** Where a wrench is: the last of these that happened says so. */
const whereabouts: readonly EventKind[] = ['lost', 'found', 'lent', 'returned']

interface Happened {
  readonly entry: { readonly body: { readonly what: EventKind } }
}

/** What a later check does not undo, of events newest first: that it is out of service for good, and where it is. */
export const lastingOf = <T extends Happened>(
  events: readonly T[],
): { readonly retired: T | undefined; readonly moved: T | undefined } => ({
  retired: events.find(({ entry }) => entry.body.what === 'retired'),
  moved: events.find(({ entry }) => whereabouts.includes(entry.body.what)),
})

export interface EventFields {
  readonly what?: EventKind | undefined
  readonly date?: string | undefined
  readonly from?: string | undefined
  /** The setting as it was entered. */
  readonly setting?: string | undefined
}

export const eventFaults = ({ what, date, from, setting }: EventFields): Fault[] => {
  if (what === undefined) return []
  const lasts = what === 'wound-up'
  return [
    ...(from !== undefined && !lasts ? [fault('event-one-day', 'from', from, { event: what })] : []),
    ...(setting !== undefined && !lasts ? [fault('event-without-setting', 'setting', setting, { event: what })] : []),
    ...(lasts && from !== undefined && date !== undefined && from > date ? [fault('days-reversed', 'from', from)] : []),
  ]
}
