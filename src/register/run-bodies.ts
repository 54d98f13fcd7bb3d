// What a bench run is kept as: what is asked, what is held the same and what is changed; readings; how it ended. Shapes only.
import { z } from 'zod'
import { daySchema, measuredFromZero, measuredIn, tagSchema, textUpTo } from './parts.ts'

export const LONGEST_QUESTION = 200
export const LONGEST_CONDITION = 24
export const LONGEST_NAME = 80
export const LONGEST_NOTE = 500
export const MOST_CONDITIONS = 6
export const MOST_SAME = 12
export const MOST_AGAIN = 12
export const MOST_MONTHS = 120
export const MOST_READINGS_AT_ONCE = 30

const conditionName = textUpTo(LONGEST_CONDITION)
const foldName = (name: string): string => name.normalize('NFKC').toLowerCase()
/** `Dry` and `dry` are one condition, and one piece. */
export const isSameName = (one: string, other: string): boolean => foldName(one) === foldName(other)
export const areDifferent = (names: readonly string[]): boolean => new Set(names.map(foldName)).size === names.length

const conditionSchema = z.strictObject({ name: conditionName, what: textUpTo(LONGEST_QUESTION) }).readonly()
export type Condition = z.infer<typeof conditionSchema>

/** The opening of a run. The first condition is the baseline. */
export const runBody = z
  .strictObject({
    tag: tagSchema,
    date: daySchema,
    asked: textUpTo(LONGEST_QUESTION),
    same: z.array(textUpTo(LONGEST_QUESTION)).max(MOST_SAME).readonly(),
    conditions: z
      .array(conditionSchema)
      .min(1)
      .max(MOST_CONDITIONS)
      .refine((all) => areDifferent(all.map(({ name }) => name)))
      .readonly(),
    wrench: tagSchema.optional(),
    size: textUpTo(LONGEST_NAME).optional(),
    'property-class': textUpTo(LONGEST_NAME).optional(),
    /** Nominal diameter, without which there is no K. */
    diameter: measuredIn('length').optional(),
    threads: textUpTo(LONGEST_NAME).optional(),
    seat: textUpTo(LONGEST_NAME).optional(),
    /** To be measured again so many months after the opening. */
    again: z
      .array(z.int().min(1).max(MOST_MONTHS))
      .max(MOST_AGAIN)
      .refine((months) => months.every((month, at) => at === 0 || month > (months[at - 1] as number)))
      .readonly()
      .optional(),
    /** What matters, of the first condition, and how sure a verdict must be; absent: 4 % and 95 %. */
    margin: measuredIn('percent').optional(),
    confidence: measuredIn('percent').optional(),
    note: textUpTo(LONGEST_NOTE).optional(),
  })
  .readonly()
export type Run = z.infer<typeof runBody>

export const measures = ['wrench', 'torque', 'clamp', 'angle'] as const
export type Measure = (typeof measures)[number]

/** One turn of the wrench: what the wrench said, what was delivered, what it clamped, how far it turned; any of them. */
const readingSchema = z
  .strictObject({
    wrench: measuredIn('torque').optional(),
    torque: measuredIn('torque').optional(),
    clamp: measuredIn('force').optional(),
    angle: measuredFromZero('angle').optional(),
    /** The piece, where the same one is read under two conditions. */
    piece: textUpTo(LONGEST_CONDITION).optional(),
  })
  .refine((reading) => measures.some((one) => reading[one] !== undefined))
  .readonly()
export type Reading = z.infer<typeof readingSchema>

export const runReadingBody = z
  .strictObject({
    run: tagSchema,
    date: daySchema,
    condition: conditionName,
    /** Of which re-run, in months after the opening; absent: of the run itself. */
    again: z.int().min(1).max(MOST_MONTHS).optional(),
    /** In the order in which they were taken. */
    readings: z.array(readingSchema).min(1).max(MOST_READINGS_AT_ONCE).readonly(),
    note: textUpTo(LONGEST_NOTE).optional(),
  })
  .readonly()
export type RunReading = z.infer<typeof runReadingBody>

/** The end of a run: what its keeper says of it. The verdicts are worked out, not kept. */
export const runFinishBody = z
  .strictObject({ run: tagSchema, date: daySchema, note: textUpTo(LONGEST_NOTE).optional() })
  .readonly()
