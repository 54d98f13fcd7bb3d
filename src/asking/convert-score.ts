// Whether a text asks for a quantity in another unit.
import type { Facts } from './facts.ts'
import { isDimension } from './measure.ts'
import type { Scene } from './scene.ts'
import { LEAST, when } from './score.ts'

/** `1,2 kNm in Nm`: one quantity, a unit, and nothing else. */
const isPlainConversion = ({ pieces, placed, unitsNamed }: Scene): boolean => {
  const [only, ...more] = placed
  const target = unitsNamed.at(-1)?.unit
  return (
    only?.measure.unit !== undefined &&
    more.length === 0 &&
    target?.dimension === only.measure.unit.dimension &&
    pieces.length <= MOST_PIECES
  )
}
const MOST_PIECES = 8

/** How strongly a text asks for a quantity in another unit. */
export const convertScore = (facts: Facts, reach: number): number => {
  const { scene } = facts
  const torques = scene.everyPlaced.filter(({ measure }) => isDimension(measure, 'torque'))
  const written = new Set(torques.map(({ measure }) => measure.unit))
  const other = scene.unitsNamed.some(({ unit }) => written.size > 0 && !written.has(unit))
  const lengths =
    scene.has('convert') && torques.length === 0 && scene.placed.some(({ measure }) => measure.kind === 'quantity')
  const asked = /=\s?\?/.test(scene.folded)
  // With a ratio it is what goes into a gear.
  if (facts.ratios.length > 0) return 0
  const whole =
    when(other, 4) +
    when(scene.has('convert'), 2) +
    when(scene.has('convert') && written.size > 1, 3) +
    when(asked, 4) +
    when(/\bconvert\b/.test(scene.folded) && written.size === 1, 2) +
    when(lengths, 2) +
    when(isPlainConversion(scene), 4) +
    when(scene.everyPlaced.length > scene.placed.length && written.size > 1, 4)
  return reach >= LEAST || facts.weighed ? whole - 4 : whole
}
