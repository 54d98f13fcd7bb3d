// Which fields go with which event: only what lasts has a beginning and a setting. Asked when it is typed and when it is recorded.
import { type Fault, fault } from '../core/fault.ts'
import type { EventKind } from './bodies.ts'

/** What a later check does not undo: somebody has the wrench, nobody has it, or it is out of service for good. */
export const lastingEvents: readonly EventKind[] = ['lent', 'lost', 'retired']

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
