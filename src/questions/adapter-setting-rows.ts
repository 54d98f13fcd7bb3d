// Around the setting: the marks of the wrench below and above it, and what the setting would be in other directions.
import { fromSi, type Quantity, quantity, si, type Target } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import { effectiveLever, settingFor, torqueAt } from '../mechanics/lever.ts'
import { type Result, type Row, result } from './outcome.ts'
import { leverOf, type Reach } from './reach.ts'

export interface SettingAsked extends Reach {
  readonly torque: Target
  readonly mark?: Quantity | undefined
  readonly least?: Quantity | undefined
}

export const marks = (
  setting: number,
  given: SettingAsked,
  p: number,
  unit: Quantity['unit'],
): Record<string, Result> => {
  if (!given.mark) return {}
  const mark = si(given.mark)
  const start = given.least ? si(given.least) : 0
  const steps = (setting - start) / mark
  const nearest = Math.round(steps)
  const onMark = Math.abs(steps - nearest) < 1e-9
  const at = (count: number): Result | undefined => {
    const S = start + count * mark
    if (S <= 0 || S < start * (1 - 1e-12) || (given.most && S > si(given.most) * (1 + 1e-12))) return undefined
    const torque = fromSi(torqueAt(S, leverOf(given, p)), given.torque.unit)
    // A mark is where it is: rounded to the digits of a setting, 250.5 would be a mark that the wrench has not.
    return { row: { setting: fromSi(S, unit), torque }, exact: ['setting'] }
  }
  const below = at(onMark ? nearest : Math.floor(steps))
  const above = at(onMark ? nearest : Math.ceil(steps))
  return { ...(below ? { 'mark-below': below } : {}), ...(above ? { 'mark-above': above } : {}) }
}

export const shownDirections = [0, 45, 90, 135, 180] as const

export const directions = (given: SettingAsked, T: number, p: number, unit: Quantity['unit']): Row[] => {
  const [only, ...more] = given.adapter
  if (!only || more.length > 0) return []
  return shownDirections.flatMap((degrees) => {
    const turn = quantity(degrees, units['°'])
    const lever = leverOf({ ...given, adapter: [{ length: only.length, angle: turn }], angle: undefined }, p)
    if (effectiveLever(lever) <= lever.H * 1e-9) return []
    return [{ angle: result(turn), setting: result(fromSi(settingFor(T, lever), unit)) }]
  })
}
