// What an answer must know when one of its keys is pressed: who asked, what, with which inputs. It travels in the keys themselves,
// packed and parted over their ids; so it outlives a restart, is there for any process, and nothing is kept of anybody.
import { deflateRawSync, inflateRawSync } from 'node:zlib'
import type { System } from '../../../desk/own-units.ts'
import type { OwnSettings } from '../liking.ts'
import { partsOf } from '../parts.ts'

export interface Carried {
  /** Whose answer it is: the id of a user. */
  readonly asker: string
  /** Null where no question was found in a text; `raw` then holds the text. */
  readonly question: string | null
  readonly raw: Readonly<Record<string, unknown>>
  /** The system that results are shown in, where one was chosen. */
  readonly shown?: System | undefined
  /** What the asker had set for themselves when it was asked. */
  readonly own?: OwnSettings | undefined
}

/** Longest id that Discord takes. */
const ID = 100
const BETWEEN = '~'
// Never changed: what was packed with it stands under messages for days. A new one gets a new mark in front.
const MARK = '1'
const LONGEST = 4000
const dictionary = Buffer.from(
  'does-it-matter topic which-wrench compare next-check last-check uses interval events margin confidence resolution wrench-check points iso-type iso-class gauge-uncertainty rule tolerance-band setting spec scale-plan scale-check distance force pull-angle wrench-mass balance-point lie level upright pull-direction gauge-tolerance gauge-limit nut-factor turn-angle bolt-torque share clamp-force size seat class condition mu-threads mu-seat grip-length turn thread-length thread-torque dry oiled greased anti-seize lubricant from to where k-from k-to convert quantity prevailing run-on multiplier torque-ratio turns-ratio efficiency extension-bar length drive diameter part swivel flex-head tilt hinge sensing end-fitting fitting-change pivot-offset torque-at-lever torque-at-hand hand-position pull adapter-reading reading adapter-setting wrench W-0 wrench-type click tolerance 4 % mark least most pivot hand angle inch metric text lbf·in kgf·m ft-lb lbf·ft Nm N·m mm in kN MPa "]," "," ":" {"torque":" N·m","lever":" mm","adapter":" mm@"}',
)

const asBytes = (id: string): Buffer => {
  const bytes = Buffer.alloc(8)
  bytes.writeBigUInt64BE(BigInt(id))
  return bytes
}

const packed = ({ asker, question, raw, shown, own = {} }: Carried): string | undefined => {
  const besides = shown === undefined && Object.keys(own).length === 0 ? [] : [shown ?? null, own]
  const text = JSON.stringify([question, raw, ...besides])
  if (text.length > LONGEST || !/^\d{1,20}$/.test(asker) || BigInt(asker) >= 1n << 64n) return undefined
  const body = deflateRawSync(Buffer.from(text), { level: 9, dictionary })
  return MARK + Buffer.concat([asBytes(asker), body]).toString('base64url')
}

type Packed = [string | null, Record<string, unknown>, (System | null)?, OwnSettings?]

const unpacked = (text: string): Carried | undefined => {
  if (!text.startsWith(MARK)) return undefined
  try {
    const bytes = Buffer.from(text.slice(MARK.length), 'base64url')
    const body = inflateRawSync(bytes.subarray(8), { dictionary, maxOutputLength: LONGEST * 4 }).toString()
    const [question, raw, shown, own = {}] = JSON.parse(body) as Packed
    if (typeof raw !== 'object' || raw === null) return undefined
    const besides = { ...(shown ? { shown } : {}), ...(Object.keys(own).length > 0 ? { own } : {}) }
    return { asker: String(bytes.readBigUInt64BE(0)), question, raw, ...besides }
  } catch {
    return undefined
  }
}

/**
 * The ids of the keys of an answer: each its verb, and behind it a part of what is carried. Undefined where it does not fit
 * (an answer to pages of readings): its keys are left out then, and it is asked anew instead.
 */
export const idsFor = (carried: Carried, verbs: readonly string[]): readonly string[] | undefined => {
  let rest = packed(carried)
  if (rest === undefined) return undefined
  const ids = verbs.map((verb) => {
    const room = ID - verb.length - BETWEEN.length
    const id = `${verb}${BETWEEN}${rest?.slice(0, room)}`
    rest = rest?.slice(room)
    return id
  })
  return rest === '' ? ids : undefined
}

/** What a key is for; undefined where it is none of an answer's. */
export const verbOf = (id: string): string | undefined => {
  const at = id.indexOf(BETWEEN)
  return at > 0 ? id.slice(0, at) : undefined
}

/** What the keys of a message carry, put together in the order in which they stand. */
export const carriedBy = (components: unknown): Carried | undefined => {
  let text = ''
  for (const { custom_id: id } of partsOf(components))
    if (typeof id === 'string' && verbOf(id) !== undefined) text += id.slice(id.indexOf(BETWEEN) + BETWEEN.length)
  return unpacked(text)
}
