// The rules by which a wrench's status follows from its book, as tables: every reason, the status it leads to, and which
// status wins where several reasons hold. Stated here once; status.ts applies them.
//
// Source     After overload, repair or mishandling, and at 12 months or 5000 uses a check: ISO 6789-1:2017 (from memory).
//            Wound up, lent, lost: common practice, no source; the safe side is taken.

/** The first that holds wins. */
export const statuses = ['retired', 'set-aside', 'out-of-limit', 'check-before-use', 'check-due', 'in-service'] as const
export type Status = (typeof statuses)[number]

/** Every reason and the status it leads to. Among reasons of one status the first listed leads. */
export const reasonStatus = {
  /** Taken out of service for good. */
  retired: 'retired',
  /** Nobody has it. */
  lost: 'set-aside',
  /** Someone else has it. */
  lent: 'set-aside',
  /** Its last check failed. */
  failed: 'out-of-limit',
  /** Its last check failed by less than the doubt of the reference. */
  'failed-in-doubt': 'out-of-limit',
  /** Since its last check it was dropped, overloaded, repaired, adjusted, or left wound up for a month or longer. */
  dropped: 'check-before-use',
  overloaded: 'check-before-use',
  repaired: 'check-before-use',
  adjusted: 'check-before-use',
  'wound-up': 'check-before-use',
  /** It came back, and nobody here knows what it went through. */
  returned: 'check-before-use',
  found: 'check-before-use',
  /** No check of it is recorded. */
  'never-checked': 'check-due',
  /** Its interval is over. */
  months: 'check-due',
  uses: 'check-due',
  /** At the pace of its counts the uses have run out by now. */
  'uses-foreseen': 'check-due',
  /** Due within the days of warning. */
  'due-soon': 'in-service',
  /** Its last check passed by less than the doubt of the reference. */
  'passed-in-doubt': 'in-service',
  passed: 'in-service',
} as const satisfies Record<string, Status>

export type ReasonCode = keyof typeof reasonStatus
export const reasonCodes = Object.keys(reasonStatus) as ReasonCode[]

/** A torque may be pulled with a wrench of this status. */
export const usable = (status: Status): boolean => status === 'check-due' || status === 'in-service'

/** It is here to be taken in hand, whether it may be pulled with or not. */
export const hangs = (status: Status): boolean => status !== 'retired' && status !== 'set-aside'

/** Days before it is due on which a wrench is warned of. */
export const WARN_DAYS = 30
/** Weeks of being left wound up change little; from this many months on a check is wanted. */
export const WOUND_UP_MONTHS = 1
