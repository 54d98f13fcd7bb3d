// The parts that records are made of: tags, days, texts and quantities as they are kept. Shapes only; what is sensible is
// judged where an entry is admitted.
import { z } from 'zod'
import { parseDate } from '../core/parse-date.ts'
import { fromSi, type Quantity, si, tidy } from '../core/quantity.ts'
import { echoQuantity } from '../core/quantity-text.ts'
import { type Dimension, type UnitSymbol, units, unitsOf } from '../core/unit.ts'

/** A tag is short and can stand in an address: letters of any script, digits, `.`, `-` and `_`. */
export const LONGEST_TAG = 24
export const tagPattern = /^[\p{L}\p{N}][\p{L}\p{N}._-]*$/u

/** Letters that nobody sees: with one, two tags look alike. None is taken; a record that holds one is still read. */
export const unseenLetter = /\p{Default_Ignorable_Code_Point}/u

export const tagSchema = z.string().max(LONGEST_TAG).regex(tagPattern)

/** Two tags are the same wrench however they are typed: `W-07` and `w-07`. */
export const foldTag = (tag: string): string => tag.normalize('NFKC').toLowerCase()

/** A day that there is, as ISO 8601 writes it. */
export const daySchema = z
  .string()
  .refine((text) => {
    const day = parseDate(text, 'date')
    return day.ok && day.value === text
  })
  .meta({ format: 'date' })

export const textUpTo = (longest: number) => z.string().trim().min(1).max(longest)

/** A quantity as it is kept: the number in SI, the text as it was entered, and the unit it was entered in. */
export interface Measured {
  readonly value: number
  readonly text: string
  readonly unit: UnitSymbol
}

export const LONGEST_ENTERED = 64

const shapeOf = (value: z.ZodNumber, dimensions: readonly Dimension[]) =>
  z
    .strictObject({
      value,
      text: textUpTo(LONGEST_ENTERED),
      unit: z.enum(dimensions.flatMap((dimension) => unitsOf(dimension).map(({ symbol }) => symbol as UnitSymbol))),
    })
    .readonly()

/** Above zero, in a unit of these dimensions. */
export const measuredIn = (...dimensions: readonly Dimension[]) => shapeOf(z.number().positive(), dimensions)
/** Zero as well: a pivot at the drive, a wrench wound down. */
export const measuredFromZero = (...dimensions: readonly Dimension[]) => shapeOf(z.number().nonnegative(), dimensions)

/** Keeps a quantity; without the text it came from, as it would be typed. */
export const measured = (q: Quantity, text: string = echoQuantity(q)): Measured => ({
  value: si(q),
  text,
  unit: q.unit.symbol as UnitSymbol,
})

/** The quantity again, in the unit it was entered in. */
export const quantityOf = ({ value, unit }: Measured): Quantity => tidy(fromSi(value, units[unit]))

/** A share that a maker or a certificate states: of what is read, or of the full scale. */
export const tolerancesOf = ['reading', 'full-scale'] as const
export const toleranceSchema = z.strictObject({ share: measuredIn('percent'), of: z.enum(tolerancesOf) }).readonly()
export type Tolerance = z.infer<typeof toleranceSchema>

export const intervalSchema = z
  .strictObject({ months: z.int().min(1).max(120).optional(), uses: z.int().min(1).max(1_000_000).optional() })
  .readonly()
