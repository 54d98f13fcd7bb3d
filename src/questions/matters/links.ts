// THE PLACE FOR LINKS: which questions work out what a topic is about, and what of the asker's numbers they take along.
// To link another question: a line in `carried`, its word in words/en/matters.ts (matter.link.…), and its name beside its topics.
import { type Quantity, quantity } from '../../core/quantity.ts'
import { writeQuantity } from '../../core/quantity-text.ts'
import { units } from '../../core/unit.ts'
import type { QuestionName } from '../index.ts'
import type { Related } from '../outcome.ts'
import { phrase } from '../phrase.ts'
import { writeAdapter } from '../reach.ts'
import type { Asked } from './inputs.ts'
import { dialled } from './judge.ts'
import type { Slug } from './topic.ts'

type InputName = Exclude<keyof Asked, 'topic'>

const lever = ['lever', 'hand', 'pivot', 'wrench-type', 'tolerance'] as const

/** The inputs that each question shares with this one. A `setting` that was not told is the torque. */
const carried = {
  'adapter-setting': ['torque', ...lever, 'adapter', 'angle', 'most'],
  'hand-position': ['setting', ...lever],
  'pivot-offset': ['lever', 'hand'],
  'end-fitting': ['torque', 'lever', 'fitting-change'],
  'flex-head': ['torque', 'lever', 'tilt'],
  swivel: ['torque', 'angle'],
  'extension-bar': ['torque', 'length', 'drive'],
  multiplier: ['torque'],
  pull: ['torque', 'lever', 'hand'],
  prevailing: ['torque', 'run-on'],
  lubricant: ['torque', 'k-from', 'k-to'],
  'clamp-force': ['torque'],
  'nut-factor': ['torque'],
  'scale-check': ['setting'],
  'scale-plan': ['most', 'tolerance'],
  'wrench-check': ['most', 'tolerance'],
  'tolerance-band': ['setting', 'tolerance', 'most'],
  'next-check': [],
  compare: [],
} as const satisfies Partial<Record<QuestionName, readonly InputName[]>>

type Linked = keyof typeof carried

/** Which questions go on from each topic, the likeliest first. */
export const links: Readonly<Record<Slug, readonly Linked[]>> = {
  calibration: ['next-check', 'wrench-check', 'scale-plan', 'scale-check', 'tolerance-band'],
  dropped: ['wrench-check', 'scale-plan', 'scale-check', 'next-check'],
  'loosening-with-it': ['wrench-check', 'scale-plan', 'next-check'],
  'stored-wound-up': ['wrench-check', 'scale-plan', 'scale-check', 'next-check'],
  'under-a-fifth': ['tolerance-band', 'wrench-check'],
  'anti-seize': ['lubricant', 'clamp-force', 'nut-factor'],
  oil: ['lubricant', 'clamp-force', 'nut-factor'],
  're-used-nut': ['prevailing', 'clamp-force', 'nut-factor'],
  washers: ['clamp-force', 'nut-factor'],
  // A wheel has its own procedure: nothing that is worked out here may stand in for it.
  'wheel-re-torque': [],
  'clicked-twice': ['compare'],
  'hand-position': ['hand-position', 'pivot-offset', 'adapter-setting'],
  jerked: ['pull', 'compare'],
  'pipe-on-the-handle': ['multiplier', 'pull', 'hand-position'],
  'adapter-square': ['adapter-setting'],
  'adapter-straight': ['adapter-setting'],
  bars: ['extension-bar'],
  'changed-head': ['end-fitting'],
  'chained-spanner': ['adapter-setting'],
  'flex-head': ['flex-head'],
  'size-adapters': ['extension-bar'],
  swivel: ['swivel'],
  'digital-or-click': ['tolerance-band', 'hand-position', 'compare'],
  price: ['wrench-check', 'tolerance-band', 'scale-plan', 'compare'],
}

/** Questions whose `torque` is what the wrench is dialled to. */
const dialledThere: ReadonlySet<Linked> = new Set(['flex-head', 'swivel', 'extension-bar'])

/** What a link says besides the asker's numbers: the state that the threads will be in, an angle that the topic is about. */
const fixed = (given: Asked, question: Linked): Readonly<Record<string, string>> => {
  if (question === 'clamp-force' && (given.topic === 'oil' || given.topic === 'anti-seize')) {
    return { condition: given.topic === 'oil' ? 'oiled' : 'anti-seize' }
  }
  if (question === 'lubricant') return { to: given.topic === 'oil' ? 'oiled' : 'anti-seize' }
  const square = given.topic === 'adapter-square' && given.adapter?.length === 1 && !given.adapter[0]?.angle
  if (question === 'adapter-setting' && square) return { angle: writeQuantity(given.angle ?? quantity(90, units['°'])) }
  return {}
}

const quantityOf = (given: Asked, question: Linked, name: Exclude<InputName, 'adapter'>) => {
  if (name === 'setting' || (name === 'torque' && dialledThere.has(question))) return dialled(given)
  // Which way a swivel is bent does not count there.
  if (name === 'angle' && question === 'swivel' && given.angle) return quantity(Math.abs(given.angle.value), units['°'])
  return given[name]
}

const written = (given: Asked, question: Linked, name: InputName): string | undefined => {
  if (name === 'adapter') return given.adapter?.map(writeAdapter).join(' + ')
  const value: Quantity | string | undefined = quantityOf(given, question, name)
  return value === undefined || typeof value === 'string' ? value : writeQuantity(value)
}

/** The links of a topic, with the asker's own numbers in them. */
export const linksOf = (given: Asked): Related[] =>
  links[given.topic].map((question) => ({
    question,
    inputs: {
      ...Object.fromEntries(
        carried[question].flatMap((name): [string, string][] => {
          const text = written(given, question, name)
          return text === undefined ? [] : [[name, text]]
        }),
      ),
      ...fixed(given, question),
    },
    label: phrase(`matter.link.${question}`),
  }))
