// THE RUN DOCUMENT: a bench run with what its readings say, the same for every door. The types are derived from these schemas.
import { z } from 'zod'

const shown = z.object({ value: z.number(), unit: z.string(), text: z.string() })
const spanned = shown.extend({ low: shown.optional(), high: shown.optional() })
const word = z.object({ code: z.string(), text: z.string() })

const setSchema = z.object({
  condition: z.string(),
  values: z.array(z.number()).describe('in the unit of the subject, in the order in which they were taken'),
  mean: shown.optional(),
  spread: shown.optional(),
})

const verdictSchema = z.object({
  condition: z.string(),
  against: z.string(),
  verdict: word,
  difference: spanned.describe('of the mean against, with the interval of the family'),
  more: z.number().int().optional().describe('about so many more readings of each until it is decided'),
  text: z.string(),
})

const subjectSchema = z.object({
  subject: word,
  unit: z.string(),
  sets: z.array(setSchema),
  verdicts: z.array(verdictSchema),
  open: z.string().optional().describe('why nothing can be told yet'),
  pairs: z.array(
    z.object({
      condition: z.string(),
      n: z.number().int(),
      verdict: word,
      difference: spanned,
      unpaired: z.array(z.string()),
      text: z.string(),
    }),
  ),
  series: z.array(
    z.object({
      condition: z.string(),
      verdict: word,
      change: spanned.describe('from the first day to the last, of the level on the first'),
      dots: z.array(z.object({ month: z.number(), value: z.number() })),
      line: z.object({ first: z.number(), last: z.number() }),
      text: z.string(),
    }),
  ),
})

export const runDocumentSchema = z
  .object({
    tag: z.string(),
    asked: z.string(),
    date: z.string().describe('ISO 8601, the first day'),
    state: word,
    headline: z.string(),
    conditions: z.array(z.object({ name: z.string(), what: z.string(), readings: z.number().int() })),
    held: z.array(z.string()),
    margin: shown.describe('how much of a difference matters, in % of the first condition'),
    confidence: shown.describe('of all that is told together'),
    subjects: z.array(subjectSchema),
    factors: z.array(
      z.object({
        condition: z.string(),
        k: spanned.describe('with where the next bolt will lie, at 95 %'),
        diameter: z.number().describe('m'),
        units: z.object({ torque: z.string(), clamp: z.string() }),
        readings: z.array(z.object({ torque: z.number(), clamp: z.number() })),
        friction: shown.optional().describe('of thread and seat as one number'),
        text: z.string(),
      }),
    ),
    following: z.array(
      z.object({ condition: z.string(), verdict: word, slope: spanned, offset: spanned, text: z.string() }),
    ),
    method: z.array(z.string()).describe('how it was judged'),
    outlook: z.array(z.string()).describe('what the run can see, and how many readings that takes'),
    again: z.array(z.object({ months: z.number().int(), due: z.string(), isDone: z.boolean(), text: z.string() })),
    limits: z.string().describe('how far it speaks').optional(),
    note: z.string().optional(),
    end: z.object({ date: z.string(), note: z.string().optional() }).optional(),
    readings: z.array(
      z.object({
        id: z.string(),
        date: z.string(),
        condition: z.string(),
        role: z.string(),
        door: z.string(),
        text: z.string(),
        again: z.number().int().optional(),
        note: z.string().optional(),
        corrected: z.boolean(),
      }),
    ),
    lines: z.array(z.string()).describe('what it says in sentences, for people'),
  })
  .meta({ id: 'BenchRun' })

export type RunDocument = z.infer<typeof runDocumentSchema>
export type RunSubject = RunDocument['subjects'][number]
