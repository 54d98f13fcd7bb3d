// A wrench against a reference: what was set, what was shown at it, and what is allowed. Where the words do not tell which is which,
// both ways are offered and none is taken.
import { quantity } from '../../core/quantity.ts'
import { writeQuantity } from '../../core/quantity-text.ts'
import type { Unit } from '../../core/unit.ts'
import { marksBehind } from '../combine.ts'
import { type Facts, percentBy, pickTorque } from '../facts.ts'
import { isDimension, textOf } from '../measure.ts'
import { type OffBy, offByOf } from '../off-by.ts'
import { type Alternative, type Entry, entry, otherwise, type Proposal, proposal } from '../proposal.ts'
import { type Placed, pull } from '../scene.ts'
import { isRowSet, settingOf } from '../set-and-shown.ts'
import { type Torque, torqueText } from '../torques.ts'

const isRead = ({ measure }: Placed): boolean =>
  !measure.fraction &&
  !measure.doubtful &&
  measure.low === undefined &&
  (measure.kind === 'bare' || isDimension(measure, 'torque'))

/** One that is far from the others may be a slip: none is left out. */
const isShown = (setting: Placed, shown: readonly Placed[]): boolean =>
  shown.length > 0 && shown.every(({ measure }) => isAlike(measure.value, setting.measure.value))

const settingsOf = ({ scene }: Facts): readonly Placed[] =>
  scene.placed.filter((one) => isRead(one) && marksBehind(scene.pieces, one.at) > 0)

/** `20: 20.4 20.6, 60: 61 60.5 Nm`: each setting before its colon with what stands behind it; undefined where there is one. */
const severalPoints = (facts: Facts): Entry | undefined => {
  const { scene } = facts
  const settings = settingsOf(facts)
  if (settings.length < 2) return undefined
  const points = settings.map((setting, place) => {
    const next = settings[place + 1]?.at ?? Number.POSITIVE_INFINITY
    const behind = scene.placed.filter(({ at }) => at > setting.at && at < next)
    return { setting, shown: behind.filter(isRead) }
  })
  const all = points.flatMap(({ setting, shown }) => [setting, ...shown])
  const named = all.flatMap(({ measure }) => (measure.unit ? [measure.unit] : []))
  const [unit] = named
  if (!unit || named.some((one) => one !== unit) || points.some(({ setting, shown }) => !isShown(setting, shown)))
    return undefined
  const text = points.map(
    ({ setting, shown }) =>
      `${textOf(setting.measure, unit)}: ${shown.map(({ measure }) => textOf(measure, unit)).join('; ')}`,
  )
  return entry('points', text.join(' | '), spanning(all))
}

const rowsOf = (torques: readonly Torque[]): ReadonlyArray<readonly Torque[]> => {
  const rows = new Map<number, Torque[]>()
  for (const one of torques)
    if (one.measure.list !== undefined) rows.set(one.measure.list, [...(rows.get(one.measure.list) ?? []), one])
  return [...rows.values()]
}

/** The longest row: the readings of one setting. */
const listOf = (torques: readonly Torque[]): readonly Torque[] =>
  [...rowsOf(torques)].sort((one, other) => other.length - one.length)[0] ?? []

/** `at 20, 60 and 100 Nm: 20.5, 61, 102 Nm`: the settings in one row, what was shown at each in another. */
const pairedRows = ({ torques, scene }: Facts): Entry | undefined => {
  const [one, other, ...more] = rowsOf(torques)
  if (!one || !other || more.length > 0 || one.length !== other.length) return undefined
  const set = [one, other].filter((row) => isRowSet(scene, row))
  const [settings] = set
  const shown = settings === one ? other : one
  if (!settings || set.length > 1 || !settings.every((at, place) => isNear(at, shown[place]))) return undefined
  const points = settings.map((at, place) => `${torqueText(at)}: ${torqueText(shown[place] as Torque)}`)
  return entry('points', points.join(' | '), spanning([...settings, ...shown]))
}

/** No wrench is so far off: what differs more is another number. */
const FARTHEST = 0.5

const isAlike = (one: number, other: number): boolean => Math.abs(one / other - 1) < FARTHEST

const isNear = (setting: Torque, shown: Torque | undefined): boolean =>
  shown?.unit !== undefined &&
  setting.unit !== undefined &&
  isAlike(shown.measure.value * shown.unit.factor, setting.measure.value * setting.unit.factor)

/** From the first of them to the last, in whatever order they were written. */
const spanning = (all: readonly Placed[]): { start: number; end: number } => ({
  start: Math.min(...all.map(({ start }) => start)),
  end: Math.max(...all.map(({ end }) => end)),
})

/** What was said to be off, as a reading: computed from what was told, and shown as assumed. */
const readingOff = ({ amount, setting }: OffBy, side: 'below' | 'above'): string | undefined => {
  if (!setting.unit) return undefined
  const value = setting.measure.value + (side === 'below' ? -amount : amount)
  const reading = quantity(Number(value.toPrecision(6)), setting.unit)
  return `${textOf(setting.measure, setting.unit)}: ${writeQuantity(reading)}`
}

const offPoints = (off: OffBy, side: 'below' | 'above'): Entry | undefined => {
  const text = readingOff(off, side)
  return text === undefined ? undefined : entry('points', text, spanning([off.by, off.setting]), true)
}

/** A setting and what was shown at it. */
const pointsOf = (setting: Torque | undefined, shown: readonly Torque[], listed?: Unit): Entry | undefined => {
  const unit = setting?.assumed ? (listed ?? setting.unit) : setting?.unit
  if (!setting || !unit || shown.length === 0) return undefined
  if (!shown.every((one) => isNear({ ...setting, unit }, one))) return undefined
  const text = `${textOf(setting.measure, unit)}: ${shown.map((one) => torqueText(one)).join('; ')}`
  return entry('points', text, spanning([setting, ...shown]))
}

/** Torques that stand by themselves: neither in a row of readings nor an end of a range. */
const singles = ({ torques }: Facts, listed: readonly Torque[]): readonly Torque[] =>
  torques.filter((one) => !listed.includes(one) && one.role !== 'range')

const HELD_BY_TESTER = 9
const ofTester = /^(?:tester|reference|gauge|transducer|analyser|analyzer)s?$/

/** `tester accuracy ±1 %`, `tester good to 0.5 %`. */
const isSaidOf = ({ scene }: Facts, { at }: Placed): boolean => {
  const before = [1, 2, 3, 4].map((back) => scene.pieces[at - back])
  const stop = before.findIndex((piece) => piece?.kind === 'measure' || (piece?.kind === 'mark' && piece.text !== '±'))
  return before
    .slice(0, stop === -1 ? before.length : stop)
    .some((piece) => piece?.kind === 'word' && ofTester.test(piece.text))
}

/** What is said of the wrench's tolerance and of the reference's; a share of a full scale is one of the reading at the setting. */
const sharesOf = (
  facts: Facts,
  setting: Torque | undefined,
): { entries: readonly (Entry | undefined)[]; asks: readonly string[] } => {
  const { scene, percents } = facts
  const tester = percentBy(facts, 'tester')
  const isTesters =
    (tester && isSaidOf(facts, tester)) ||
    (tester && pull(scene, tester, 'tester') > Math.max(HELD_BY_TESTER, pull(scene, tester, 'wrench', 'tolerance')))
  const reference = isTesters || percents.length > 1 ? tester : undefined
  const wrench = percents.find((one) => one !== reference)
  const tolerance =
    wrench && percentBy({ ...facts, percents: [wrench] }, 'wrench', 'tolerance', 'of-scale', 'check')
      ? wrench
      : undefined
  const gauge = reference && entry('gauge-uncertainty', textOf(reference.measure), reference)
  if (!scene.has('of-scale'))
    return { entries: [tolerance && entry('tolerance', textOf(tolerance.measure), tolerance), gauge], asks: [] }
  const range = facts.torques.find(({ role }) => role === 'range')
  const most = range && (range.measure.high ?? range.measure.value)
  if (!tolerance || most === undefined || !setting || range?.unit !== setting.unit)
    return { entries: [], asks: ['tolerance'] }
  const share = Number(((tolerance.measure.value * most) / setting.measure.value).toPrecision(4))
  return { entries: [entry('tolerance', `${share} %`, tolerance, true)], asks: [] }
}

const checkOf = (facts: Facts, points: Entry | undefined, setting: Torque | undefined): Proposal => {
  const { entries, asks } = sharesOf(facts, setting)
  return proposal('wrench-check', [points, ...entries], { asks })
}

/** By how many per cent it is off is nothing that is allowed. */
const withoutShare = (facts: Facts, { by }: OffBy): Facts => ({
  ...facts,
  percents: facts.percents.filter((one) => one.at !== by.at),
})

/** Both ways of a check where the words do not tell which torque was set, or to which side the wrench is off. */
export const checkEitherWay = (facts: Facts): readonly Alternative[] | undefined => {
  const { scene, torques } = facts
  const off = offByOf(scene, torques, facts.percents)
  const ways = (
    all: readonly (Entry | undefined)[],
    setting: (at: number) => Torque | undefined,
  ): readonly Alternative[] =>
    all.map((points, at) => {
      const { question, entries } = checkOf(off ? withoutShare(facts, off) : facts, points, setting(at))
      return otherwise(question, entries)
    })
  if (off) {
    if (off.side !== undefined) return undefined
    return ways([offPoints(off, 'below'), offPoints(off, 'above')], () => off.setting)
  }
  if (severalPoints(facts) || listOf(torques).length > 0) return undefined
  const [one, other, ...more] = singles(facts, [])
  if (!one?.unit || !other?.unit || more.length > 0 || settingOf(scene, [one, other])) return undefined
  return ways([pointsOf(one, [other]), pointsOf(other, [one])], (at) => (at === 0 ? one : other))
}

/** A setting and what the reference showed at it. */
export const composeCheck = (facts: Facts): Proposal => {
  const off = offByOf(facts.scene, facts.torques, facts.percents)
  if (off?.side !== undefined) return checkOf(withoutShare(facts, off), offPoints(off, off.side), off.setting)
  const listed = listOf(facts.torques)
  // What is wanted of the bolt was not shown by a tester.
  const rest = singles(facts, listed).filter(({ role }, _, all) => all.length < 3 || role !== 'wanted')
  const roles = ['at-setting', 'dialled', undefined, 'wanted', 'claimed'] as const
  const setting =
    (listed.length === 0 ? settingOf(facts.scene, rest) : undefined) ??
    pickTorque({ ...facts, torques: rest }, roles).torque
  const shown = listed.length > 0 ? listed : rest.filter((one) => one !== setting)
  // Of several points none is left out.
  const points =
    settingsOf(facts).length > 1
      ? severalPoints(facts)
      : (pairedRows(facts) ?? pointsOf(setting, shown, listed[0]?.unit))
  return checkOf(facts, points, setting)
}
