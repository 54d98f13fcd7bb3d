// THE CHECK DOCUMENT: a check that is planned or under way, the same for every door. The types are derived from these schemas.
import { z } from 'zod'
import { faultSchema, missingSchema } from './answer.ts'

const shown = z.object({ value: z.number(), unit: z.string(), text: z.string() })
const span = z.object({ low: shown, high: shown })
const showing = z.object({ low: shown, middle: shown, high: shown })
const word = z.object({ code: z.string(), text: z.string() })
const part = z.object({ tag: z.string(), name: z.string() })

export const checkPointSchema = z.object({
  setting: shown,
  share: shown.describe('of the largest torque'),
  planned: z.boolean(),
  window: span.describe('torques within the limit'),
  shows: showing.describe('what the gauge shows within the limit, and where the wrench is right'),
  allowed: shown,
  uncertainty: shown.optional().describe('of the reference there'),
  fineEnough: z.boolean().optional().describe('the uncertainty is a quarter of the limit or less'),
  reaches: z.boolean().optional().describe('the gauge goes as far as the window does'),
  taken: z.array(shown),
  open: z.number().int().describe('readings still to be made'),
  mean: shown.optional(),
  deviation: shown.optional(),
  spread: shown.optional(),
  verdict: word.optional(),
})

export const checkDocumentSchema = z
  .object({
    status: z.enum(['planned', 'asking', 'whole', 'incomplete', 'refused']),
    headline: z.string(),
    wrench: part.optional(),
    gauge: part.optional(),
    limit: z.object({ share: shown, of: z.enum(['reading', 'full-scale']), by: word }).optional(),
    rule: word.optional().describe('absent before the first reading'),
    prePulls: z.number().int().optional(),
    readings: z.number().int().optional().describe('at each point'),
    farEnough: shown.optional().describe('the shortest distance at which a gauge that runs out would do'),
    points: z.array(checkPointSchema),
    taken: z.number().int(),
    open: z.number().int(),
    verdict: word.optional().describe('of the readings so far'),
    means: z.string().optional().describe('what the verdict means for the wrench, once all readings are in'),
    next: z
      .object({
        setting: shown,
        nth: z.number().int(),
        of: z.number().int(),
        shows: showing,
        ask: z.string(),
        held: z.string().optional().describe('why this gauge cannot read it'),
      })
      .optional(),
    notes: z.array(word),
    inputs: z.record(z.string(), z.string()).describe('to be handed in again, to go on or to keep the check'),
    faults: z.array(faultSchema),
    missing: z.array(missingSchema),
    lines: z.array(z.string()).describe('the same in sentences, for people'),
  })
  .meta({ id: 'GrowingCheck' })

export type CheckDocument = z.infer<typeof checkDocumentSchema>
export type CheckPoint = z.infer<typeof checkPointSchema>

/** THE CHECK REPORT: a check that was kept, with how it was judged. */
export const reportDocumentSchema = z
  .object({
    id: z.string(),
    date: z.string().describe('ISO 8601'),
    kept: z.string().describe('when it was recorded, an instant in UTC'),
    headline: z.string(),
    state: word,
    way: word,
    wrench: part.extend({
      serial: z.string().optional(),
      range: z.string(),
      lever: z.string().optional(),
      kind: z.string(),
    }),
    gauge: part
      .extend({ serial: z.string().optional(), checked: z.string().optional(), tolerance: z.string().optional() })
      .optional(),
    uncertainty: z.string().optional().describe('of the reference, as its certificate states it'),
    distance: z.string().optional(),
    weight: word.optional().describe('whether the own weight of the wrench was counted'),
    temperature: z.string().optional(),
    remarks: z.string().optional(),
    limit: z.object({ share: shown, of: z.enum(['reading', 'full-scale']), by: word, text: z.string() }),
    rule: word,
    points: z.array(
      z.object({
        setting: shown,
        window: span,
        readings: z.array(z.object({ read: shown, torque: shown, deviation: shown, verdict: word })),
        mean: shown,
        deviation: shown,
        spread: shown,
        allowed: shown,
        uncertainty: shown.optional(),
        verdict: word,
      }),
    ),
    verdict: word,
    notes: z.array(word),
    companion: z.object({ id: z.string(), state: word, verdict: word }).optional(),
    isLatest: z.boolean(),
    standing: z.string(),
  })
  .meta({ id: 'CheckReport' })

export type ReportDocument = z.infer<typeof reportDocumentSchema>
