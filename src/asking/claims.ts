// Shortcuts and beliefs that a text quotes, worked out with its own numbers where they are there. They are the asker's, and never lead.

import { parseQuantity } from '../core/parse-quantity.ts'
import { parseTarget } from '../core/parse-target.ts'
import { fromSi, type Quantity, si } from '../core/quantity.ts'
import { asAdapter, lessBy, oneFoot, oneMinus } from '../mechanics/quoted-rules.ts'
import { bendAngles, type Facts, percentBy } from './facts.ts'
import { dimensionOf } from './measure.ts'
import { inputsOf, type Proposal } from './proposal.ts'
import { pull } from './scene.ts'

/** `turn-stage` is no claim but goes with them: a turn behind the torque, which was left aside. */
export type ClaimName = 'turn-stage' | 'one-minus' | 'one-foot' | 'square-same' | 'percent-off' | 'bar-as-adapter'

export interface Claim {
  readonly claim: ClaimName
  /** What it comes to with the asker's numbers; absent where they are not all there. */
  readonly value?: Quantity
}

interface Numbers {
  readonly torque: Quantity | undefined
  readonly lever: number | undefined
  readonly adapter: number | undefined
}

const one = (value: string | readonly string[] | undefined): string | undefined =>
  typeof value === 'string' ? value : undefined

const lengthIn = (text: string | undefined): number | undefined => {
  const read =
    text === undefined ? undefined : parseQuantity(text.split('@')[0] ?? '', { input: '', dimensions: ['length'] })
  return read?.ok ? si(read.value) : undefined
}

const numbersOf = (facts: Facts, proposal: Proposal | undefined): Numbers => {
  const inputs = proposal ? inputsOf(proposal.entries) : {}
  const text = one(inputs['torque'])
  const read = text === undefined ? undefined : parseTarget(text, { input: '', dimensions: ['torque'] })
  const torque = read?.ok ? { value: read.value.value, unit: read.value.unit } : undefined
  const lever = facts.lengthOf('lever', 'from-drive')
  const adapter = facts.lengthOf('adapter', 'extension', 'bar')
  const metres = (length: typeof lever): number | undefined =>
    length && !length.unitless ? length.measure.value * (length.measure.unit?.factor ?? 1) : undefined
  return {
    torque,
    lever: lengthIn(one(inputs['lever'])) ?? metres(lever),
    adapter: lengthIn(one(inputs['adapter'])) ?? metres(adapter),
  }
}

const quoted = (
  claim: ClaimName,
  torque: Quantity | undefined,
  work: ((T: number) => number | undefined) | undefined,
): Claim => {
  const value = torque && work?.(si(torque))
  return torque && value !== undefined && Number.isFinite(value) && value > 0
    ? { claim, value: fromSi(value, torque.unit) }
    : { claim }
}

const minusRule = /1-\(?[a-z]{1,8}\/[a-z]{1,8}|\(l-[ae]\)\/l/
const footRule = /\/\(1\+[a-z]{1,6}\)|1\+[ae](?:in)?feet|\(1\+feet\)/
const leverRule = /[l\d]\/\(?(?:l\+|\d{1,4}\+\d|l\+[ae])|l\+[ae]\)/

const squeezed = (facts: Facts): string => facts.scene.folded.replace(/[\s*·]+/g, '').replace(/[x](?=\()/g, '')

const percentOff = (facts: Facts): number | undefined => {
  const { scene, states } = facts
  const held = percentBy(facts, 'reduce')
  const about = states.general || states.to !== undefined || states.from !== undefined
  if (!about) return undefined
  const quarter = /\b(?:a |one )?(quarter|third|fifth|tenth)\b(?=.{0,24}\b(?:off|less|lower|down)\b)/.exec(scene.folded)
  const parts: Readonly<Record<string, number>> = { quarter: 25, third: 100 / 3, fifth: 20, tenth: 10 }
  if (!held) return quarter ? parts[quarter[1] as string] : undefined
  if (pull(scene, held, 'reduce') <= 0 || dimensionOf(held.measure) !== 'percent') return undefined
  const behind = scene.folded.slice(held.end, held.end + 18)
  const { value } = held.measure
  // `80 % of the dry figure` keeps 80, `20 % off` takes 20.
  return /^\s?of\b/.test(behind) && value > 50 ? 100 - value : value
}

/** What the text quotes. `proposal` gives the numbers as they were taken. */
export const claimsOf = (facts: Facts, proposal: Proposal | undefined): readonly Claim[] => {
  const { scene } = facts
  const { torque, lever, adapter } = numbersOf(facts, proposal)
  const text = squeezed(facts)
  const claims: Claim[] = []
  if (facts.angles.some(({ turn }) => turn) && torque !== undefined) claims.push({ claim: 'turn-stage' })
  if (minusRule.test(text))
    claims.push(
      quoted(
        'one-minus',
        torque,
        lever !== undefined && adapter !== undefined ? (T) => oneMinus(T, adapter, lever) : undefined,
      ),
    )
  if (footRule.test(text))
    claims.push(quoted('one-foot', torque, adapter === undefined ? undefined : (T) => oneFoot(T, adapter)))
  const square =
    bendAngles(facts).some(({ measure }) => measure.value === 90) || facts.bends.known.some(({ angle }) => angle === 90)
  if (
    square &&
    /\b(?:nothing changes|no (?:correction|adjustment|change|difference|compensation)|zero (?:adjustment|correction|change)|(?:doesnt|does not|doesn't|dont|don't) (?:change|matter|affect)|same setting|stays the same)\b/.test(
      scene.folded,
    )
  ) {
    claims.push(quoted('square-same', torque, (T) => T))
  }
  const barred =
    proposal?.question === 'extension-bar' || (proposal?.question === 'does-it-matter' && scene.has('bar', 'extension'))
  if (barred && (leverRule.test(text) || scene.has('formula'))) {
    claims.push(
      quoted(
        'bar-as-adapter',
        torque,
        lever !== undefined && adapter !== undefined ? (T) => asAdapter(T, adapter, lever) : undefined,
      ),
    )
  }
  const percent = percentOff(facts)
  if (percent !== undefined && percent > 0 && percent < 100)
    claims.push(quoted('percent-off', torque, (T) => lessBy(T, percent)))
  return claims
}
