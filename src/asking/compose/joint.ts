// Bolts and joints: what a lubricant does, how hard a torque clamps, nut factor, what a bolt bears, turn from snug, run-on.
import { parseSize } from '../../core/parse-size.ts'
import { fromSi, type Quantity, si, tidy } from '../../core/quantity.ts'
import { writeQuantity } from '../../core/quantity-text.ts'
import { type Unit, units } from '../../core/unit.ts'
import type { Cue } from '../cues.ts'
import { type Facts, percentBy, pickTorque, turnsOf } from '../facts.ts'
import type { NutFactor, Told } from '../joint-facts.ts'
import { textOf } from '../measure.ts'
import { type Entry, entry, otherwise, type Proposal, proposal } from '../proposal.ts'
import type { Placed } from '../scene.ts'
import { type Torque, torqueText } from '../torques.ts'
import { unitChoices } from './reach.ts'

const torqueEntry = (input: string, torque: Torque | undefined): Entry | undefined =>
  torque?.unit ? entry(input, torqueText(torque), torque, torque.assumed) : undefined
const toldEntry = (input: string, told: Told | undefined): Entry | undefined =>
  told && entry(input, told.text, told.from, told.assumed)

const cueEntry = (facts: Facts, input: string, cue: Cue | undefined): Entry | undefined =>
  cue?.name === undefined
    ? undefined
    : entry(input, cue.name, {
        start: facts.scene.pieces[cue.first]?.start ?? 0,
        end: facts.scene.pieces[cue.next - 1]?.end ?? 0,
      })

const anyTorque = ['wanted', 'dialled', undefined, 'at-setting'] as const

/** Nut factors before and after: by the state beside them, else in reading order. */
const factorPair = ({ nutFactors, states }: Facts): { from?: NutFactor; to?: NutFactor } => {
  if (nutFactors.length < 2) return {}
  const dry = nutFactors.find(({ state }) => state !== undefined && state === (states.from?.name ?? 'dry'))
  const [first, second] = nutFactors as readonly [NutFactor, NutFactor]
  const from = dry ?? first
  return { from, to: from === first ? second : first }
}

const where = /\b(?:only the threads?|threads? only|on the threads? (?:only|alone))\b/

export const composeLubricant = (facts: Facts): Proposal => {
  const { torque, rivals } = pickTorque(facts, anyTorque)
  const { from, to } = factorPair(facts)
  const used = rivals.length === 0 ? torque : undefined
  const threads = from ? null : where.exec(facts.scene.folded)
  const fallback = from && to
  // Of two nut factors the second is not that of dry threads again, whatever word stands alone.
  const lubricated = fallback && facts.states.to?.name === 'dry' && !facts.states.from ? undefined : facts.states.to
  const entries = [
    torqueEntry('torque', used),
    cueEntry(facts, 'from', facts.states.from) ?? (fallback ? entry('from', 'dry', undefined, true) : undefined),
    cueEntry(facts, 'to', lubricated) ?? (fallback ? entry('to', 'oiled', undefined, true) : undefined),
    from && entry('k-from', textOf(from.measure), from),
    to && entry('k-to', textOf(to.measure), to),
    // A nut factor is of one joint already; without one the size of the thread helps only with where.
    threads ? toldEntry('size', facts.size) : undefined,
    threads ? entry('where', 'threads', { start: threads.index, end: threads.index + threads[0].length }) : undefined,
  ]
  const choices =
    torque && rivals.length > 0
      ? [torque, ...rivals].map((one) => ({ torque: torqueText(one) }))
      : unitChoices('torque', torque)
  return proposal('lubricant', entries, { others: choices.map((change) => otherwise('lubricant', entries, change)) })
}

const friction = (facts: Facts): readonly (Entry | undefined)[] => {
  const [k] = facts.nutFactors
  if (k) return [entry('k', textOf(k.measure), k)]
  const [threads, seat] = facts.frictions
  if (threads) {
    const both = seat ?? threads
    return [entry('mu-threads', textOf(threads.measure), threads), entry('mu-seat', textOf(both.measure), both)]
  }
  return [cueEntry(facts, 'condition', facts.states.to ?? facts.states.from)]
}

const isForce = ({ measure }: Placed): boolean => measure.unit?.dimension === 'force' || measure.weight !== undefined
const asForce = ({ measure }: Placed): { text: string; si: number } => {
  const unit: Unit =
    measure.weight === 'kg' ? units.kgf : measure.weight === 'lb' ? units.lbf : (measure.unit ?? units.N)
  return { text: textOf(measure, unit), si: measure.value * unit.factor }
}

const clampOf = (facts: Facts): Placed | undefined => facts.forces.filter(isForce)[0]

const diameterOf = (text: string): Quantity | undefined => {
  const size = parseSize(text, '')
  return size.ok ? size.value.diameter : undefined
}

/** A clamp force and a nut factor give a torque, T = K d F: the question is asked the other way round, and shows both. */
const torqueFor = (facts: Facts): Entry | undefined => {
  const clamp = clampOf(facts)
  const [k] = facts.nutFactors
  const d = facts.size && diameterOf(facts.size.text)
  if (!clamp || !k || d === undefined) return undefined
  const unit = d.unit.system === 'inch' ? units['lbf·ft'] : units['N·m']
  const torque = tidy(fromSi(k.measure.value * si(d) * asForce(clamp).si, unit))
  return entry('torque', writeQuantity(torque), clamp, true)
}

export const composeClamp = (facts: Facts): Proposal => {
  const { torque } = pickTorque(facts, anyTorque)
  const worked = torque ? undefined : torqueFor(facts)
  const entries = [
    toldEntry('size', facts.size),
    torqueEntry('torque', torque) ?? worked,
    ...friction(facts),
    toldEntry('class', facts.grade),
  ]
  return proposal('clamp-force', entries, {
    others: unitChoices('torque', torque).map((change) => otherwise('clamp-force', entries, change)),
  })
}

export const composeNutFactor = (facts: Facts): Proposal => {
  const { torque } = pickTorque(facts, [...anyTorque, 'claimed'])
  const clamp = clampOf(facts)
  return proposal('nut-factor', [
    toldEntry('size', facts.size),
    torqueEntry('torque', torque),
    clamp && entry('clamp-force', asForce(clamp).text, clamp),
  ])
}

export const composeBolt = (facts: Facts): Proposal => {
  // A clamp force that is wanted asks for the torque of that, not for the most that the bolt bears.
  if (torqueFor(facts)) return composeClamp(facts)
  const share = percentBy(facts, 'strength')
  const of = /\byield\b/.test(facts.scene.folded) ? 'yield' : 'proof'
  return proposal('bolt-torque', [
    toldEntry('size', facts.size),
    toldEntry('class', facts.grade),
    ...friction(facts),
    share && entry('share', `${textOf(share.measure)} of ${of}`, share),
  ])
}

export const composeTurn = (facts: Facts): Proposal => {
  const [turn] = turnsOf(facts)
  const { pieces } = facts.scene
  const isGrip = ({ at }: Placed): boolean =>
    [at - 2, at - 1, at + 1].some((near) => {
      const piece = pieces[near]
      return piece?.kind === 'word' && /^grip/.test(piece.text)
    })
  const measured = facts.lengths.filter(({ unitless }) => !unitless)
  const grip = measured.find(isGrip) ?? measured.find(({ role }) => role === undefined)
  const clamp = turn ? undefined : clampOf(facts)
  return proposal('turn-angle', [
    toldEntry('size', facts.size),
    grip && entry('grip-length', textOf(grip.measure), grip),
    turn && entry('turn', textOf(turn.measure), turn),
    clamp && entry('clamp-force', asForce(clamp).text, clamp),
    toldEntry('class', facts.grade),
  ])
}

export const composePrevailing = (facts: Facts): Proposal => {
  const [runOn] = facts.torques
    .filter(({ role }) => role === 'prevailing')
    .sort((one, other) => other.score - one.score)
  const rest = facts.torques.filter((one) => one !== runOn)
  const { torque } = pickTorque({ ...facts, torques: rest }, ['wanted', undefined, 'dialled', 'prevailing'])
  return proposal('prevailing', [torqueEntry('torque', torque), torqueEntry('run-on', runOn)])
}
