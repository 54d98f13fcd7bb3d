// Keeps the demo shop as anybody would keep a shop: entry by entry, through the one gate.
import type { Shop } from '../desk/shop.ts'
import { kilnLane } from './kiln-lane.ts'

export const DEMO_SHOP = 'Kiln Lane Garage'

/** Throws (a bug) where an entry of the demo is not taken. */
export const fillDemo = async (shop: Shop): Promise<number> => {
  const entries = kilnLane(shop.today().today)
  for (const { kind, raw } of entries) {
    const kept = await shop.keep(kind, raw, { role: 'keeper', door: 'terminal' })
    if (kept.kind !== 'kept')
      throw new Error(`bug: the demo holds what is not taken: ${JSON.stringify([kind, raw, kept])}`)
  }
  return entries.length
}
