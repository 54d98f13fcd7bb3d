// What befalls one interaction on its way, and what is to become of it where nothing else happens: how often it is answered, and
// under which names the program may count it.
import type { ChatEvent } from '../../src/counters.ts'
import { type Fault, faults } from '../support/fake-discord/faults.ts'
import type { Random } from '../support/random.ts'

export interface Fate {
  readonly name: string
  readonly weight: number
  /** How late it is delivered, in ms. */
  readonly lateMs?: number
  readonly copies?: number
  /** The faults before its first callbacks, in order; the last holds for all that follow where `always`. */
  readonly callbacks?: readonly Fault[]
  readonly always?: boolean
  /** How often Discord ends up with an answer. */
  readonly answers: readonly number[]
  readonly counted: readonly ChatEvent[]
}

const good = ['answered', 'answered-late', 'offered'] as const
const claims: Fault = { status: 200, code: 0, message: 'taken, it says, and it is not' }

export const fates: readonly Fate[] = [
  { name: 'nothing', weight: 70, answers: [1], counted: good },
  { name: 'delivered late', weight: 4, lateMs: 800, answers: [1], counted: good },
  { name: 'delivered so late that the answer is promised', weight: 3, lateMs: 1450, answers: [1], counted: good },
  { name: 'delivered too late', weight: 2, lateMs: 3300, answers: [0], counted: ['too-old'] },
  { name: 'delivered twice', weight: 3, copies: 2, answers: [1], counted: [...good, 'twice'] },
  { name: 'delivered four times', weight: 1, copies: 4, answers: [1], counted: [...good, 'twice'] },
  { name: 'a slow callback', weight: 3, callbacks: [faults.slow(500)], answers: [1], counted: good },
  { name: 'one 5xx', weight: 2, callbacks: [faults.broken(503)], answers: [1], counted: good },
  { name: '5xx for ever', weight: 1, callbacks: [faults.broken(500)], always: true, answers: [0], counted: ['failed'] },
  { name: 'a short 429', weight: 1, callbacks: [faults.rateLimited(0.3)], answers: [1], counted: good },
  {
    name: 'a long 429',
    weight: 1,
    callbacks: [faults.rateLimited(600)],
    always: true,
    answers: [0],
    counted: ['rate-limited'],
  },
  {
    name: '429 without end',
    weight: 1,
    callbacks: [faults.rateLimited(0.3)],
    always: true,
    answers: [0],
    counted: ['rate-limited', 'timed-out'],
  },
  {
    name: 'a callback that hangs',
    weight: 1,
    callbacks: [faults.hang],
    always: true,
    answers: [0],
    counted: ['timed-out'],
  },
  {
    name: 'a callback that is taken and hangs',
    weight: 1,
    callbacks: [faults.took(faults.hang)],
    answers: [1],
    counted: ['timed-out', 'answered-late'],
  },
  {
    name: 'a callback that is taken, and 500 is said',
    weight: 1,
    callbacks: [faults.took(faults.broken(500))],
    answers: [1],
    counted: ['already-answered'],
  },
  {
    name: 'a torn connection',
    weight: 1,
    callbacks: [faults.reset],
    answers: [0, 1],
    counted: [...good, 'failed', 'timed-out'],
  },
  { name: '10062 though in time', weight: 1, callbacks: [faults.unknownInteraction], answers: [0], counted: ['late'] },
  {
    name: '40060 though first',
    weight: 1,
    callbacks: [faults.alreadyAcknowledged],
    answers: [0],
    counted: ['already-answered'],
  },
  { name: 'said to be taken, and not', weight: 1, callbacks: [claims], answers: [0], counted: [...good, 'failed'] },
]

const whole = fates.reduce((sum, { weight }) => sum + weight, 0)

export const pickFate = (random: Random): Fate => {
  let at = random() * whole
  const found = fates.find(({ weight }) => {
    at -= weight
    return at < 0
  })
  return found ?? (fates[0] as Fate)
}

/** The fault before the nth callback of an interaction with this fate. */
export const faultOf = ({ callbacks = [], always = false }: Fate, nth: number): Fault | undefined =>
  callbacks[nth] ?? (always ? callbacks.at(-1) : undefined)
