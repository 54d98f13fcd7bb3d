// A bench run of Kiln Lane, begun and read through the shop's own gate: dry against oil on an M12, invented readings.
import type { Shop, Writer } from '../../src/desk/shop.ts'

const keeper: Writer = { role: 'keeper', door: 'terminal' }
type Raw = Readonly<Record<string, string>>

export const oilOpening: Raw = {
  tag: 'B-01',
  date: '2026-05-01',
  asked: 'Does oil on the thread change the clamp force?',
  conditions: 'A: dry, as delivered | B: oil on thread',
  wrench: 'W-07',
  size: 'M12',
  seat: 'flat 18 mm x 13 mm',
  again: '1; 3; 6 months',
}

const keep = async (shop: Shop, kind: Parameters<Shop['keep']>[0], raw: Raw): Promise<void> => {
  const kept = await shop.keep(kind, raw, keeper)
  if (kept.kind !== 'kept') throw new Error(JSON.stringify(kept))
}

export const beginOil = async (shop: Shop, more: Raw = {}): Promise<void> => {
  await keep(shop, 'wrench', { tag: 'W-07', name: 'Click wrench', 'wrench-type': 'click', most: '200 N·m' })
  await keep(shop, 'run', { ...oilOpening, ...more })
}

export const addReadings = (shop: Shop, condition: string, more: Raw): Promise<void> =>
  keep(shop, 'run-reading', { run: 'B-01', condition, date: '2026-05-01', ...more })

export const dry: Raw = { torque: '80; 80; 80; 80; 80 N·m', 'clamp-force': '33.1; 34.2; 32.7; 33.6; 33.4 kN' }
export const oiled: Raw = { torque: '80; 80; 80; 80; 80 N·m', 'clamp-force': '37.1; 38.2; 36.4; 38.9; 37.4 kN' }

/** Begun, read under both conditions, finished. */
export const wholeOil = async (shop: Shop): Promise<void> => {
  await beginOil(shop)
  await addReadings(shop, 'A', dry)
  await addReadings(shop, 'B', oiled)
  await keep(shop, 'run-finish', { run: 'B-01', date: '2026-05-02', note: 'oil it is' })
}
