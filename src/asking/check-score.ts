// Whether a text is about a wrench that was held against a reference: by a tester that it names, a row of readings, how far it is off.
import type { Facts } from './facts.ts'
import { offByOf } from './off-by.ts'
import { isSetAndShown } from './set-and-shown.ts'

const when = (true_: boolean, weight: number): number => (true_ ? weight : 0)

const ofAdapters = ['crowfoot', 'adapter', 'spanner', 'extension'] as const

/** What was set and what was measured at it, in so many words. */
export const isJudged = ({ scene, torques }: Facts): boolean =>
  !scene.has(...ofAdapters, 'weigh-scale', 'compare') && isSetAndShown(scene, torques)

/** `3 Nm low at 100 Nm`, where a wrench or its tolerance is spoken of, or what it was set to. */
const isOff = ({ scene, torques, percents, weighed }: Facts): boolean =>
  !weighed &&
  !scene.has(...ofAdapters) &&
  scene.has('wrench', 'tester', 'check', 'tolerance', 'at-setting', 'dialled') &&
  offByOf(scene, torques, percents) !== undefined

/** How strongly a text is about a wrench held against a reference. */
export const checkScore = (facts: Facts): number => {
  const { scene, torques } = facts
  const row = torques.filter(({ measure }) => measure.list !== undefined).length
  const atSetting = torques.some(({ role }) => role === 'at-setting')
  return (
    when(scene.has('tester'), 5) +
    when(isOff(facts), 11) +
    when(isJudged(facts), 5) +
    when(row >= 3, 3) +
    when(scene.has('check') && torques.length > 1, 3) +
    when(atSetting && torques.length > 1, 3) +
    when(
      scene.has('check') &&
        torques.filter(({ measure, role }) => measure.kind === 'bare' && role === 'claimed').length > 1,
      3,
    )
  )
}
