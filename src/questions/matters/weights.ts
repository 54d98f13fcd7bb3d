// What each idea that is found in a question weighs for each topic. Less than 3 in all is a passing mention.
import type { Idea } from '../../tables/ideas.ts'
import type { Slug } from './topic.ts'

/**
 * An extension is a bar to some and an adapter to others: alone it fits three topics, and is asked back.
 * 0: the topic knows the idea, which then names no other topic beside it.
 */
export const topicIdeas: Readonly<Record<Slug, Readonly<Partial<Record<Idea, number>>>>> = {
  calibration: { calibrate: 5, check: 3, age: 3, accuracy: 2, time: 1, temperature: -9, digital: 0 },
  dropped: { drop: 6, floor: 2, calibrate: 0 },
  'loosening-with-it': { loosen: 5, calibrate: 0 },
  'stored-wound-up': { stored: 5, spring: 3, time: 1, temperature: -3, calibrate: 0 },
  'under-a-fifth': { low: 5, accuracy: 1 },
  'anti-seize': { antiseize: 8, dry: 1, lube: 1 },
  oil: { oil: 8, grease: 7, lube: 5, dry: 1 },
  're-used-nut': { reuse: 5, locknut: 3 },
  washers: { washer: 5 },
  'wheel-re-torque': { wheel: 2, retorque: 2, distance: 2 },
  'clicked-twice': { twice: 5, clicker: 1 },
  'hand-position': { hand: 4, hold: 2, grip: 2, handle: 1 },
  jerked: { jerk: 5 },
  'pipe-on-the-handle': { pipe: 6, handle: 1 },
  'adapter-square': { adapter: 5, extension: 3, square: 2 },
  'adapter-straight': { adapter: 5, extension: 3, straight: 2 },
  bars: { bar: 5, extension: 3, vertical: 2, twist: 2, socket: 1 },
  'changed-head': { head: 5 },
  'chained-spanner': { spanner: 5 },
  'flex-head': { flexhead: 6 },
  'size-adapters': { reducer: 6, adapter: 0 },
  swivel: { swivel: 7 },
  'digital-or-click': { digital: 4, clicker: 2, indicator: 2, kind: 3, accuracy: 1, temperature: -9 },
  price: { price: 5, sum: 3 },
}
