// Whether a text is about a wrench that was held against a reference: by a tester that it names, a row of readings, how far it is off.
import { marksBehind } from './combine.ts'
import type { Facts } from './facts.ts'
import type { Measure } from './measure.ts'
import { offByOf } from './off-by.ts'
import type { Scene } from './scene.ts'
import { when } from './score.ts'
import { isSetAndShown } from './set-and-shown.ts'

const ALIKE = 1.5

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

/** Settings that stand each before a number of about their size, with that number: `20 -> 20.3`, `40: 41.2`. */
const settingsShown = ({ pieces, placed }: Scene): readonly Measure[] =>
  placed.flatMap(({ measure, at }, place) => {
    const next = placed[place + 1]?.measure
    const share = next === undefined ? 0 : next.value / measure.value
    return next && marksBehind(pieces, at) > 0 && share < ALIKE && share > 1 / ALIKE ? [next] : []
  })

/** `40: 41.2 41.0; 100: 102 103`: what stands behind a setting is a row. */
export const isPointed = ({ scene }: Facts): boolean => settingsShown(scene).some(({ list }) => list !== undefined)

/** How strongly a text is about a wrench held against a reference. */
export const checkScore = (facts: Facts): number => {
  const { scene, torques } = facts
  const row = torques.filter(({ measure }) => measure.list !== undefined).length
  const told = torques.filter(({ measure, role }) => measure.list === undefined && role !== 'range')
  const atSetting = torques.some(({ role }) => role === 'at-setting')
  return (
    when(scene.has('tester'), 5) +
    when(isOff(facts), 11) +
    when(isJudged(facts), 5) +
    when(row >= 3, 3) +
    when(settingsShown(scene).length > 1 && !scene.has(...ofAdapters), 6) +
    when(row >= 3 && told.length === 1 && !scene.has(...ofAdapters), 2) +
    when(scene.has('check') && torques.length > 1, 3) +
    when(atSetting && torques.length > 1, 3) +
    when(
      scene.has('check') &&
        torques.filter(({ measure, role }) => measure.kind === 'bare' && role === 'claimed').length > 1,
      3,
    )
  )
}
