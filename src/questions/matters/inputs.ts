// The inputs of does-it-matter: the topic, and the optional numbers by which the size of its effect is worked out.
import type { Adapter } from '../../core/parse-list.ts'
import { type Quantity, quantity } from '../../core/quantity.ts'
import { units } from '../../core/unit.ts'
import { type WrenchType, wrenchTypes } from '../../mechanics/pivot-range.ts'
import type { SquareDrive } from '../../tables/square-drives.ts'
import { angle, handleLength, length, percent, plainNumber, torque } from '../input.ts'
import { drive } from '../input-drive.ts'
import { adapters } from '../input-lists.ts'
import { benchRuns } from '../input-shop.ts'
import { choice } from '../input-words.ts'
import type { Slug } from './topic.ts'
import { topicInput } from './topic-input.ts'

const nutFactorBounds = { least: quantity(0.02, units['1']), most: quantity(1, units['1']) }
/** Beyond this bend or tilt [°] there is no drive left to speak of. */
export const STEEPEST = quantity(80, units['°'])

export const inputs = {
  topic: topicInput({ needed: true }),
  torque: torque(),
  setting: torque(),
  lever: handleLength(),
  hand: handleLength({ example: { metric: '330 mm', inch: '13 in' } }),
  adapter: adapters(),
  angle: angle(),
  pivot: length({ zero: true, example: { metric: '20 mm', inch: '3/4 in' } }),
  'wrench-type': choice({ of: wrenchTypes }),
  tolerance: percent({ least: quantity(0.01, units['%']), most: quantity(50, units['%']) }),
  most: torque({ example: { metric: '200 N·m', inch: '150 lbf·ft' } }),
  'fitting-change': length({ signed: true, example: { metric: '-30 mm', inch: '1/2 in' } }),
  tilt: angle({ signed: false, zero: true, most: STEEPEST, example: { metric: '15°', inch: '15°' } }),
  length: length({ example: { metric: '250 mm', inch: '10 in' } }),
  drive: drive(),
  'run-on': torque({ example: { metric: '8 N·m', inch: '70 lbf·in' } }),
  'k-from': plainNumber(nutFactorBounds),
  'k-to': plainNumber({ ...nutFactorBounds, example: { metric: '0.13', inch: '0.13' } }),
  bench: benchRuns('B-01'),
}

export interface Asked {
  readonly topic: Slug
  readonly torque?: Quantity | undefined
  readonly setting?: Quantity | undefined
  readonly lever?: Quantity | undefined
  readonly hand?: Quantity | undefined
  readonly adapter?: readonly Adapter[] | undefined
  readonly angle?: Quantity | undefined
  readonly pivot?: Quantity | undefined
  readonly 'wrench-type'?: WrenchType | undefined
  readonly tolerance?: Quantity | undefined
  readonly most?: Quantity | undefined
  readonly 'fitting-change'?: Quantity | undefined
  readonly tilt?: Quantity | undefined
  readonly length?: Quantity | undefined
  readonly drive?: SquareDrive | undefined
  readonly 'run-on'?: Quantity | undefined
  readonly 'k-from'?: Quantity | undefined
  readonly 'k-to'?: Quantity | undefined
}
