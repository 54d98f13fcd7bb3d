// RFC 9457 problem documents: every error that HTTP gives, whatever went wrong. One table of types and statuses.
import type { FastifyReply } from 'fastify'
import { z } from 'zod'
import { type Answer, answerSchema, faultSchema, missingSchema } from '../../questions/answer.ts'

export const problems = {
  refused: { status: 422, title: 'The question cannot be worked out as it stands' },
  'not-readable': { status: 400, title: 'The request cannot be read' },
  'unknown-question': { status: 404, title: 'There is no such question' },
  'wrong-method': { status: 405, title: 'This address is asked in another way' },
  'no-key': { status: 401, title: 'Who writes is not known' },
  forbidden: { status: 403, title: 'This may not be written' },
  'not-kept': { status: 422, title: 'This cannot be kept as it stands' },
  'no-such-wrench': { status: 404, title: 'No wrench of this tag is in the register' },
  'no-such-run': { status: 404, title: 'No bench run of this tag is in the register' },
  'no-such-check': { status: 404, title: 'No check of this id stands at this wrench' },
  'check-refused': { status: 422, title: 'This check cannot be judged as it stands' },
  'register-away': { status: 503, title: 'The register cannot be reached; questions without a wrench are answered' },
  'not-written': { status: 503, title: 'The register cannot be written to just now' },
  'others-write': { status: 409, title: 'Others are writing of this just now' },
  'busy-drawing': { status: 503, title: 'Too many pictures are waited for just now' },
  'no-figure': { status: 404, title: 'There is no figure for this' },
  'not-answered': { status: 422, title: 'Something is missing, so there is nothing to draw' },
  'not-found': { status: 404, title: 'There is nothing at this address' },
  'too-large': { status: 413, title: 'The request is too large' },
  'not-csv': { status: 415, title: 'Only text/csv is read here' },
  'not-json': { status: 415, title: 'Only application/json is read' },
  'too-many': { status: 429, title: 'Too many requests' },
  outage: { status: 500, title: 'Something here failed, not your question' },
} as const
export type ProblemName = keyof typeof problems

const problemSchema = z.object({
  type: z.string(),
  title: z.string(),
  status: z.number().int(),
  detail: z.string(),
  instance: z.string().optional(),
})

export const refusedSchema = problemSchema
  .extend({ faults: z.array(faultSchema), missing: z.array(missingSchema), answer: answerSchema })
  .meta({ id: 'Refused' })

export interface Problem {
  readonly type: string
  readonly title: string
  readonly status: number
  readonly detail: string
  readonly instance?: string
}

/** On every problem, those too that leave before a hook of the server has run. */
export const guarded = {
  'x-content-type-options': 'nosniff',
  'cache-control': 'no-store',
  'referrer-policy': 'same-origin',
} as const

export const PROBLEM_TYPE = 'application/problem+json; charset=utf-8'

export const problem = (name: ProblemName, detail: string, instance?: string): Problem => ({
  type: `urn:armlength:problem:${name}`,
  title: problems[name].title,
  status: problems[name].status,
  detail,
  ...(instance === undefined ? {} : { instance }),
})

/** Sends a problem; its bytes are made by JSON.stringify alone, so that nothing can go wrong on the way out. */
export const sendProblem = (
  reply: FastifyReply,
  document: Problem | (Problem & Record<string, unknown>),
): FastifyReply =>
  reply
    .removeHeader('etag')
    .code(document.status)
    .header('content-type', PROBLEM_TYPE)
    .headers(guarded)
    .serializer((body: unknown) => JSON.stringify(body))
    .send(document)

export const refusedProblem = (answer: Answer): Problem & Record<string, unknown> => ({
  ...problem('refused', answer.headline),
  faults: answer.faults,
  missing: answer.missing,
  answer,
})
