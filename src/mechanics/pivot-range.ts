// How far behind the drive a wrench trips, where nobody measured it: by kind, as a share of the lever.
// Common practice, no published source; measure it (two pulls at one setting) where it matters.

export const wrenchTypes = ['click', 'split-beam', 'beam', 'dial', 'electronic'] as const
export type WrenchType = (typeof wrenchTypes)[number]

export interface PivotRange {
  readonly low: number
  readonly high: number
}

/** Share of L, low and high. `beam`: deflecting beam without a floating grip; with one, the hand is always at L. */
export const pivotShareByType: Readonly<Record<WrenchType, PivotRange>> = {
  click: { low: 0.02, high: 0.1 },
  'split-beam': { low: 0.02, high: 0.1 },
  beam: { low: 0.2, high: 0.3 },
  dial: { low: 0, high: 0 },
  electronic: { low: 0, high: 0 },
}

/** Where not even the kind is known: from a wrench that senses at the drive to a click wrench with a long head. */
export const pivotShareUnknown: PivotRange = { low: 0, high: 0.1 }
