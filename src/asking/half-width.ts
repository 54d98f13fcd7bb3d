// Whether a percentage is the tolerance of a wrench, though nobody calls it so: `±4 %`, `a 4 % wrench`, `4 % on a 40 Nm setting`.
import type { Facts } from './facts.ts'
import { isDimension } from './measure.ts'
import { type Placed, pull } from './scene.ts'

const WRENCH_HELD = 9

const MOST_TOLERANCE = 10 // %: no wrench is sold with more

/** `4 % on a 40 Nm setting`, `4 % at 60 Nm`. */
const ofATorque = (scene: Facts['scene'], at: number): boolean => {
  const behind = scene.pieces[at + 1]
  if (behind?.kind !== 'word' || (behind.text !== 'on' && behind.text !== 'at')) return false
  return [2, 3].some((ahead) => {
    const piece = scene.pieces[at + ahead]
    return piece?.kind === 'measure' && isDimension(piece.measure, 'torque')
  })
}

/** `±4 %`, `a 4 % wrench`: a tolerance without the word. */
export const isHalfWidth = ({ scene }: Facts, placed: Placed): boolean => {
  const { at } = placed
  if (pull(scene, placed, 'wrench') > WRENCH_HELD) return true
  const [before, after] = [scene.pieces[at - 1], scene.pieces[at + 1]]
  if (placed.measure.value <= MOST_TOLERANCE && ofATorque(scene, at)) return true
  return (
    (before?.kind === 'mark' && before.text === '±') ||
    (after?.kind === 'word' && /^(?:wrench|clicker|torque|tool)/.test(after.text))
  )
}
