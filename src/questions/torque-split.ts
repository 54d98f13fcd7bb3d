// Where the torque of a joint goes, told where the friction of thread and seat is known apart: as a result and as a step.
import { type Friction, type Shares, torqueShares } from '../mechanics/torque-split.ts'
import { type Joint, seatRadiusOf, threadOf } from './joint.ts'
import { put, type Result, type RowResult, type Step, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { percentOf } from './reach-doubt.ts'

const sharesOf = ({ size, seat }: Joint, mu: Friction): Shares | undefined =>
  size && torqueShares(threadOf(size), mu, seatRadiusOf({ size, seat }))

const rowOf = (shares: Shares) => ({
  stretch: percentOf(shares.pitch),
  thread: percentOf(shares.thread),
  seat: percentOf(shares.seat),
})

/** The three shares at a friction of thread and seat, as a row of results. */
export const splitAt = (joint: Joint, mu: Friction): RowResult | undefined => {
  const shares = sharesOf(joint, mu)
  return shares && { row: rowOf(shares) }
}

interface Split {
  readonly results: Readonly<Record<string, Result>>
  readonly steps: readonly Step[]
}

/** Nothing for a nut factor: it does not tell thread from seat. */
export const splitOf = (joint: Joint): Split => {
  const { 'mu-threads': threads, 'mu-seat': seat } = joint
  const shares = threads && seat && sharesOf(joint, { thread: threads.value, seat: seat.value })
  if (!shares) return { results: {}, steps: [] }
  const row = rowOf(shares)
  return {
    results: { 'torque-split': { row } },
    steps: [
      step(
        phrase('bolt.split'),
        'P/2π : thread : seat',
        put`${row.stretch} : ${row.thread} : ${row.seat}`,
        row.stretch,
      ),
    ],
  }
}
