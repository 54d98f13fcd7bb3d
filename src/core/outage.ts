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

/** After these it is sure that nothing was kept; after the others an answer was lost, and nobody knows. */
const surelyNot: readonly OutageCode[] = [
  'disk-full',
  'locked',
  'read-only',
  'refused',
  'too-new',
  'not-ours',
  'no-driver',
  'closed',
]

export class Outage extends Error {
  readonly code: OutageCode
  /** Whether it happened while something was being kept: what to do next differs. */
  isWriting = false
  constructor(code: OutageCode, message: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause })
    this.name = 'Outage'
    this.code = code
  }

  get isSurelyUnkept(): boolean {
    return surelyNot.includes(this.code)
  }
}

/** Does what keeps something; an outage of it says so. */
export const whileWriting = async <T>(work: () => Promise<T>): Promise<T> => {
  try {
    return await work()
  } catch (error) {
    if (error instanceof Outage) error.isWriting = true
    throw error
  }
}
