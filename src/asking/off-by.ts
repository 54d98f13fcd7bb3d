// `3 Nm low at 100 Nm`, `3 % low`: by how much a wrench is off, and to which side. Such a torque is nothing that was set or read.
import type { Piece } from './pieces.ts'
import type { Placed, Scene } from './scene.ts'
import type { Torque } from './torques.ts'

export interface OffBy {
  readonly by: Placed
  /** In the unit of the setting. */
  readonly amount: number
  readonly setting: Torque
  /** Whether what is delivered lies below the setting or above it; undefined where the text does not tell. */
  readonly side: 'below' | 'above' | undefined
}

type Side = OffBy['side'] | 'off'

const sides: ReadonlyMap<string, Side> = new Map<string, Side>([
  ...['low', 'lower', 'early', 'short', 'shy', 'under', 'below', 'weak', 'light'].map(
    (word) => [word, 'below'] as const,
  ),
  ...['high', 'higher', 'late', 'over', 'above', 'heavy'].map((word) => [word, 'above'] as const),
  ...['off', 'out', 'apart', 'difference', 'deviation', 'error'].map((word) => [word, 'off'] as const),
])

/** No wrench that still clicks is farther off. */
const MOST = 0.3
const filler = new Set(['too', 'a', 'bit', 'about', 'by', 'around', 'to', 'the'])
/** Behind these words of side something else is meant: `high tensile`, `low range`, `over spec`, `out of spec`. */
const others = new Set(['of', 'tensile', 'range', 'end', 'strength', 'spec', 'profile', 'torque', 'grade', 'side'])

const word = (piece: Piece | undefined): string | undefined => (piece?.kind === 'word' ? piece.text : undefined)

const saidOf = new Set(['wrench', 'clicker', 'is', 'was', 'its', 'it', 'been'])

/** `2 Nm low`, `2 Nm too low`. */
const sideBehind = ({ pieces }: Scene, { at }: Placed): Side => {
  let here = at + 1
  while (filler.has(word(pieces[here]) ?? '') && here < at + 3) here++
  const side = sides.get(word(pieces[here]) ?? '')
  const next = word(pieces[here + 1]) ?? ''
  return side === undefined || others.has(next) ? undefined : side
}

/** `off by 2 Nm`, `low by 2 Nm`. */
const sideBefore = ({ pieces }: Scene, { at }: Placed): Side => {
  let here = at - 1
  while (['about', 'around', 'roughly', 'only'].includes(word(pieces[here]) ?? '') && here > at - 3) here--
  if (word(pieces[here]) === 'by') return sides.get(word(pieces[here - 1]) ?? '')
  // `the wrench is out 10 %`
  return saidOf.has(word(pieces[here - 1]) ?? '') ? sides.get(word(pieces[here]) ?? '') : undefined
}

const shows = new Set([
  'reads',
  'read',
  'reading',
  'shows',
  'showed',
  'showing',
  'indicates',
  'indicated',
  'says',
  'said',
])

/** `the wrench reads high` is said of a wrench that delivers too little as well as of one that delivers too much. */
const isOfScale = (scene: Scene, { at }: Placed): boolean =>
  !scene.has('tester') && [1, 2].some((back) => shows.has(word(scene.pieces[at - back]) ?? ''))

const unitOf = (one: Placed, torques: readonly Torque[]): number | undefined =>
  torques.find(({ at }) => at === one.at)?.unit?.factor

/** How far off, and at what; undefined where nobody says so. `torques` and `percents`: all of the text. */
export const offByOf = (scene: Scene, torques: readonly Torque[], percents: readonly Placed[]): OffBy | undefined => {
  for (const by of [...torques, ...percents]) {
    if (by.measure.list !== undefined || by.measure.low !== undefined) continue
    const side = sideBehind(scene, by) ?? sideBefore(scene, by)
    if (side === undefined) continue
    const isShare = percents.includes(by)
    const amountAt = (setting: Torque): number =>
      isShare
        ? (setting.measure.value * by.measure.value) / 100
        : (by.measure.value * (unitOf(by, torques) ?? Number.NaN)) / (setting.unit?.factor ?? Number.NaN)
    const [setting, ...more] = torques.filter(
      (one) =>
        one.at !== by.at &&
        one.role !== 'range' &&
        one.measure.low === undefined &&
        amountAt(one) <= MOST * one.measure.value,
    )
    if (!setting || more.some(({ measure }) => measure.value !== setting.measure.value)) continue
    const isTold = side !== 'off' && !isOfScale(scene, by)
    return { by, amount: amountAt(setting), setting, side: isTold ? side : undefined }
  }
  return undefined
}
