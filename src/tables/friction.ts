// Friction μ of thread and seat by their state, several sources side by side; they disagree, and that is the message.
// Classes A to E: VDI 2230 Part 1, table A5, as a supplier reprints it; which condition belongs to which class is partly our
// reading of its examples, and says so. Room temperature, steel, first tightening.
import type { Citation } from './citation.ts'
import type { Condition } from './conditions.ts'

const vdi = (frictionClass: string, example: string): Citation => ({
  title: 'VDI 2230 Part 1, friction classes (supplier reprint)',
  where: `table A5, class ${frictionClass}: ${example}`,
  standing: 'published',
})
const vdiRead = (frictionClass: string, example: string): Citation => ({
  ...vdi(frictionClass, example),
  standing: 'common practice',
})
const handbook = (where: string): Citation => ({ title: 'Handbooks of bolted joints', where, standing: 'from memory' })

export const frictionClasses = ['A', 'B', 'C', 'D', 'E'] as const
export type FrictionClass = (typeof frictionClasses)[number]

export interface MuRange {
  readonly low: number
  /** Absent where the source names no upper end. */
  readonly high?: number
}

/** VDI 2230 Part 1, table A5: holds for μ in the thread and under the head. */
export const frictionClassTable: Readonly<
  Record<FrictionClass, MuRange & { readonly examples: string; readonly from: Citation }>
> = {
  A: { low: 0.04, high: 0.1, examples: 'solid lubricants, wax', from: vdi('A', 'moly, graphite, PTFE, wax') },
  B: { low: 0.08, high: 0.16, examples: 'greases, oils, as delivered', from: vdi('B', 'greases, oils, as delivered') },
  C: {
    low: 0.14,
    high: 0.24,
    examples: 'bare or phosphated, slightly oiled; plated dry; adhesive',
    from: vdi('C', 'slightly oiled; plated dry'),
  },
  D: { low: 0.2, high: 0.35, examples: 'zinc plated dry, hot-dip dry', from: vdi('D', 'zinc plated dry') },
  E: { low: 0.3, examples: 'zinc-iron, zinc-nickel dry; stainless dry', from: vdi('E', 'stainless dry') },
}

export interface MuRow extends MuRange {
  readonly from: Citation
}

const byClass = (letter: FrictionClass, example: string, named: boolean): MuRow => {
  const { low, high } = frictionClassTable[letter]
  return { low, ...(high === undefined ? {} : { high }), from: (named ? vdi : vdiRead)(letter, example) }
}

/** μ by condition: the first row is the one to work with, the others say how far sources differ. */
export const frictionTable: Readonly<Record<Condition, readonly [MuRow, ...MuRow[]]>> = {
  dry: [
    { low: 0.12, high: 0.25, from: handbook('plain steel as received, traces of oil') },
    byClass('C', 'bare, slightly oiled, taken for as received', false),
  ],
  oiled: [byClass('B', 'oils', true), byClass('C', 'bare, slightly oiled', true)],
  greased: [byClass('B', 'greases', true)],
  'anti-seize': [
    { low: 0.06, high: 0.15, from: handbook('metal-filled pastes') },
    byClass('A', 'solid lubricants', false),
    byClass('B', 'greases', false),
  ],
  moly: [byClass('A', 'moly', true), byClass('B', 'moly in grease', true)],
  wax: [byClass('A', 'wax', true), byClass('B', 'hot-dip with wax', true)],
  zinc: [byClass('C', 'plated dry', true), byClass('D', 'zinc plated dry', true)],
  'zinc-oiled': [byClass('B', 'oils', false), byClass('C', 'slightly oiled', false)],
  cadmium: [{ low: 0.08, high: 0.16, from: handbook('cadmium plated, dry') }, byClass('C', 'plated dry', false)],
  'phosphate-oiled': [byClass('C', 'phosphated, slightly oiled', true), byClass('B', 'oils', false)],
  'black-oxide': [byClass('C', 'bare, slightly oiled', false), byClass('B', 'as delivered', false)],
  'stainless-dry': [
    { low: 0.3, high: 0.5, from: handbook('austenitic on austenitic, dry; class E names no upper end') },
    byClass('E', 'stainless dry', true),
  ],
  'thread-locker': [byClass('C', 'adhesive', true)],
}
