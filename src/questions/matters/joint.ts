// The joint at the same click: what is on the threads, what slides under the nut, a nut that served before, wheels that settle.
import { quantity } from '../../core/quantity.ts'
import { units } from '../../core/unit.ts'
import { torqueShares } from '../../mechanics/torque-split.ts'
import { citations } from '../../tables/citation.ts'
import { type Condition, conditionTable } from '../../tables/conditions.ts'
import { practiceOn, workedOn } from '../../tables/matters.ts'
import { wheelLubrication, wheelsAgain } from '../../tables/wheels.ts'
import { caution } from '../outcome.ts'
import { phrase } from '../phrase.ts'
import { percentOf } from '../reach-doubt.ts'
import type { MattersOf } from './topic.ts'
import { workClamp, workRunOn } from './work-joint.ts'

const { iso16047, runOnAviation, runOnArmy } = citations

/** Both ends of the nut factors that sources print for dry threads and for another state. */
const factorSpan = (condition: Condition) => {
  const bare = (value: number) => quantity(value, units['1'])
  const [dry, wet] = [conditionTable.dry, conditionTable[condition]]
  return { drylow: bare(dry.low), dryhigh: bare(dry.high), low: bare(wet.low), high: bare(wet.high) }
}

// M10, coarse, flat seat of 14.63 over 11 mm, 0.12 throughout: the example of torque-split.ts.
const SEAT_RADIUS = (0.014_63 + 0.011) / 4
const shares = torqueShares({ P: 0.0015, d2: 0.009_026 }, { thread: 0.12, seat: 0.12 }, SEAT_RADIUS)

/** From the earliest to the latest that any source says, each as it prints it. */
export const wheelsSpan = (): { first: string; last: string; minutes: string } => {
  const travelled = wheelsAgain.flatMap(({ km, miles }) => (km && miles ? [{ km, miles }] : []))
  const told = travelled.filter(({ km }) => km[0] > 0)
  const first = told.reduce((least, other) => (other.km[0] < least.km[0] ? other : least))
  const last = travelled.reduce((most, other) => (other.km[1] > most.km[1] ? other : most))
  const minutes = wheelsAgain.flatMap((row) => row.minutes ?? [])
  return {
    first: `${first.km[0]} km (${first.miles[0]} miles)`,
    last: `${last.km[1]} km (${last.miles[1]} miles)`,
    minutes: String(Math.min(...minutes)),
  }
}

/** The state of threads and seat is where rules besides the maker's come in: wheels, lifting, pressure, aircraft. */
const critical = [caution('critical-joint'), caution('local-rules')]
const lubricantCautions = [caution('which-condition'), caution('estimate-only'), caution('yield-fastener'), ...critical]

export const joint: MattersOf<'joint'> = {
  'anti-seize': {
    code: 'yes',
    size: phrase('matter.anti-seize.size', factorSpan('anti-seize')),
    from: {
      verdict: [citations.nutFactor],
      'what-to-do': [practiceOn('lubricants and the figure of the maker'), ...wheelLubrication.map(({ from }) => from)],
      mechanism: [iso16047],
      'size-of-effect': [
        citations.nutFactor,
        conditionTable.dry.rangeFrom,
        conditionTable['anti-seize'].rangeFrom,
        workedOn('ratio of two nut factors'),
      ],
    },
    cautions: lubricantCautions,
    pointers: ['torque-figure', 'lubricant-maker'],
    works: [workClamp],
  },
  oil: {
    code: 'yes',
    size: phrase('matter.oil.size', factorSpan('oiled')),
    from: {
      verdict: [citations.nutFactor],
      'what-to-do': [practiceOn('lubricants and the figure of the maker'), ...wheelLubrication.map(({ from }) => from)],
      mechanism: [iso16047],
      'size-of-effect': [
        citations.nutFactor,
        conditionTable.dry.rangeFrom,
        conditionTable.oiled.rangeFrom,
        workedOn('ratio of two nut factors'),
      ],
    },
    cautions: lubricantCautions,
    pointers: ['torque-figure', 'lubricant-maker'],
    works: [workClamp],
  },
  're-used-nut': {
    code: 'depends',
    depends: phrase('matter.re-used-nut.depends'),
    size: phrase('matter.re-used-nut.size'),
    from: {
      verdict: [practiceOn('nuts and bolts that served before')],
      'what-to-do': [practiceOn('nuts and bolts that served before')],
      mechanism: [practiceOn('nuts and bolts that served before')],
      'size-of-effect': [citations.nutFactor, runOnAviation, runOnArmy],
    },
    cautions: [caution('yield-fastener'), caution('estimate-only'), ...critical],
    pointers: ['torque-figure'],
    works: [workClamp, workRunOn],
  },
  washers: {
    code: 'depends',
    depends: phrase('matter.washers.depends'),
    size: phrase('matter.washers.size', { seat: percentOf(shares.seat) }),
    from: {
      verdict: [iso16047],
      'what-to-do': [practiceOn('washers as the maker shows them')],
      mechanism: [iso16047],
      'size-of-effect': [iso16047, workedOn('share of the seat in the torque')],
    },
    cautions: [caution('estimate-only'), ...critical],
    pointers: ['torque-figure'],
    works: [workClamp],
  },
  'wheel-re-torque': {
    code: 'yes',
    size: phrase('matter.wheel-re-torque.size', wheelsSpan()),
    from: {
      verdict: wheelsAgain.map(({ from }) => from),
      'what-to-do': [practiceOn('fitting a wheel')],
      mechanism: [practiceOn('how a wheel joint beds in')],
      'size-of-effect': wheelsAgain.map(({ from }) => from),
    },
    cautions: [caution('wheels-again', wheelsSpan()), caution('which-condition'), ...critical],
    pointers: ['torque-figure'],
    works: [],
  },
}
