// A BENCH RUN as it is kept: what is asked, what is held the same and what is changed; readings; how it ended. Entries are only
// ever added; a later one may supersede an earlier one. Shapes and their types; no clock, no ids: those come with the entry.
import { z } from 'zod'
import { daySchema, measuredFromZero, measuredIn, tagSchema, textUpTo } from '../register/parts.ts'
import { type Head, headShape } from '../register/records.ts'

export const LONGEST_QUESTION = 200
export const LONGEST_NAME = 80
export const LONGEST_NOTE = 500
export const MOST_CONDITIONS = 6
export const MOST_SAME = 12
export const MOST_AGAIN = 12
export const MOST_READINGS_AT_ONCE = 30

const conditionName = textUpTo(24)
const foldName = (name: string): string => name.normalize('NFKC').toLowerCase()
export const isSameName = (one: string, other: string): boolean => foldName(one) === foldName(other)

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
      .refine((all) => new Set(all.map(({ name }) => foldName(name))).size === all.length)
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
      .array(z.int().min(1).max(120))
      .max(MOST_AGAIN)
      .refine((months) => months.every((month, at) => at === 0 || month > (months[at - 1] as number)))
      .readonly()
      .optional(),
    note: textUpTo(LONGEST_NOTE).optional(),
  })
  .readonly()
export type Run = z.infer<typeof runBody>

/** One turn of the wrench: what the wrench said, what was delivered, what it clamped, how far it turned; any of them. */
const readingSchema = z
  .strictObject({
    wrench: measuredIn('torque').optional(),
    torque: measuredIn('torque').optional(),
    clamp: measuredIn('force').optional(),
    angle: measuredFromZero('angle').optional(),
    /** The piece, where the same one is read under two conditions. */
    piece: textUpTo(24).optional(),
  })
  .refine(({ wrench, torque, clamp, angle }) => [wrench, torque, clamp, angle].some((one) => one !== undefined))
  .readonly()
export type Reading = z.infer<typeof readingSchema>

export const measures = ['wrench', 'torque', 'clamp', 'angle'] as const
export type Measure = (typeof measures)[number]

export const runReadingBody = z
  .strictObject({
    run: tagSchema,
    date: daySchema,
    condition: conditionName,
    /** Of which re-run, in months after the opening; absent: of the run itself. */
    again: z.int().min(1).max(120).optional(),
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

export const runKinds = { run: runBody, 'run-reading': runReadingBody, 'run-finish': runFinishBody } as const
export type RunKind = keyof typeof runKinds
export type RunBodyOf<K extends RunKind> = z.infer<(typeof runKinds)[K]>

const entryOf = <K extends RunKind>(kind: K) =>
  z.strictObject({ ...headShape, kind: z.literal(kind), body: runKinds[kind] })

/** Any entry of a run, for what comes from a file or a store. */
export const runEntrySchema = z
  .discriminatedUnion('kind', [entryOf('run'), entryOf('run-reading'), entryOf('run-finish')])
  .refine(({ supersedes, why }) => (supersedes === undefined) === (why === undefined), { path: ['why'] })
  .readonly()

export type RunEntry<K extends RunKind = RunKind> = {
  readonly [P in K]: Head & { readonly kind: P; readonly body: RunBodyOf<P> }
}[K]

/** What is to be recorded, before it has an id and a time. */
export type RunDraft<K extends RunKind = RunKind> = {
  readonly [P in K]: Omit<Head, 'id' | 'at'> & { readonly kind: P; readonly body: RunBodyOf<P> }
}[K]
