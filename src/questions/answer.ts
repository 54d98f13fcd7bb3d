// THE ANSWER DOCUMENT: what every door gets. The types are derived from these schemas; nothing else describes an answer.
import { z } from 'zod'

const shown = z.object({ value: z.number(), unit: z.string(), text: z.string() })

const quantityResult = z.object({
  value: z.number().describe('unrounded'),
  unit: z.string(),
  text: z.string().describe('rounded for people'),
  low: z.number().optional(),
  high: z.number().optional(),
  span: z.string().optional().describe('low and high, rounded for people'),
  also: z.array(shown),
})
const wordResult = z.object({ code: z.string(), text: z.string() })
const dateResult = z.object({ date: z.string().describe('ISO 8601'), text: z.string() })
const listResult = z.array(
  z.record(z.string(), z.union([quantityResult.partial({ also: true }), wordResult, dateResult])),
)
const rowResult = z.record(z.string(), shown)

export const resultSchema = z.union([quantityResult, wordResult, dateResult, listResult, rowResult])
const resultsSchema = z.record(z.string(), resultSchema)

export const givenSchema = z.object({
  input: z.string(),
  text: z.string(),
  value: z.union([z.number(), z.string()]),
  unit: z.string().optional(),
  low: z.number().optional(),
  high: z.number().optional(),
  also: z.array(shown),
  index: z.number().int().optional(),
  angle: z.number().optional(),
  values: z.array(z.number()).optional().describe('every reading of a list that is told in one line, in its unit'),
  from: z.enum(['asked', 'assumed', 'register', 'bench', 'table']),
})

export const stepSchema = z.object({
  say: z.string(),
  formula: z.string(),
  numbers: z.string(),
  value: z.number(),
  unit: z.string(),
  shown: z.string().describe('value and unit, rounded for people'),
})

export const standings = ['published', 'common practice', 'from memory', 'measured here', 'worked out'] as const

export const faultSchema = z.object({
  code: z.string(),
  input: z.string(),
  got: z.string(),
  allowed: z.string(),
  hint: z.string(),
})

export const missingSchema = z.object({ input: z.string(), ask: z.string(), measure: z.string() })

const inputsSchema = z.record(z.string(), z.union([z.string(), z.array(z.string())]))

export const readingSchema = z.object({
  taken: z.array(
    z.object({
      span: z.string().describe('as it was typed; empty where it was not written'),
      input: z.string(),
      text: z.string(),
    }),
  ),
  ignored: z.array(z.string()).describe('numbers of the text that were left aside, as they were typed'),
  alternatives: z.array(z.object({ question: z.string(), inputs: inputsSchema, label: z.string() })),
})

export const answerSchema = z
  .object({
    question: z.string().nullable(),
    status: z.enum(['answered', 'incomplete', 'refused']),
    headline: z.string(),
    given: z.array(givenSchema),
    results: resultsSchema,
    steps: z.array(stepSchema),
    cautions: z.array(z.object({ code: z.string(), text: z.string() })),
    pointers: z.array(z.object({ text: z.string(), url: z.string().optional() })),
    sources: z.array(z.object({ title: z.string(), where: z.string(), standing: z.enum(standings) })),
    missing: z.array(missingSchema),
    ladder: z
      .object({
        by: z.string(),
        rows: z.array(
          z.object({
            at: z.object({ value: z.union([z.number(), z.string()]), unit: z.string(), text: z.string() }),
            results: resultsSchema,
          }),
        ),
      })
      .optional(),
    faults: z.array(faultSchema),
    related: z.array(
      z.object({
        question: z.string(),
        inputs: inputsSchema,
        label: z.string(),
      }),
    ),
    reading: readingSchema.optional().describe('how free text was read'),
    versions: z.object({ engine: z.string(), data: z.string() }),
  })
  .meta({ id: 'Answer' })

export type Answer = z.infer<typeof answerSchema>
export type ShownResult = z.infer<typeof resultSchema>
export type ShownQuantity = z.infer<typeof quantityResult>
export type ShownGiven = z.infer<typeof givenSchema>
export type ShownFault = z.infer<typeof faultSchema>
export type Standing = (typeof standings)[number]
