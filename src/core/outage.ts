// What the world failed to do: thrown, never returned, with a code and its cause. The asker gets one calm sentence for the code;
// the cause is for the log. Not for what an asker can mend (a fault), nor for what we did wrong (a bug).

export const outageCodes = [
  /** No room left to write. */
  'disk-full',
  /** Another process held the store for longer than we wait. */
  'locked',
  /** It may be read, not written. */
  'read-only',
  /** The server or the file is not there, or does not answer in time. */
  'unreachable',
  /** The server is there and does not let us in. */
  'refused',
  /** What was read is damaged, or the disk failed under it. */
  'broken',
  /** Written by a newer version of this program. */
  'too-new',
  /** It holds something that this program did not make. */
  'not-ours',
  /** The package that opens it is not on this machine. */
  'no-driver',
  /** This store cannot do that; the message says what can. */
  'not-offered',
  /** It was closed before it was asked. */
  'closed',
] as const

export type OutageCode = (typeof outageCodes)[number]

export class Outage extends Error {
  readonly code: OutageCode
  constructor(code: OutageCode, message: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause })
    this.name = 'Outage'
    this.code = code
  }
}
