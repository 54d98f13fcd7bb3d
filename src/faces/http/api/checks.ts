// Checks over HTTP: the plan of one, one that is under way and kept nowhere, and the report of one that was kept.
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import { reportOf } from '../../../desk/check-report.ts'
import { checkingOf } from '../../../desk/checking.ts'
import type { Desk } from '../../../desk/desk.ts'
import type { Shop } from '../../../desk/shop.ts'
import { growingInputs } from '../../../keeping/check-inputs.ts'
import { type CheckDocument, checkDocumentSchema, reportDocumentSchema } from '../../../questions/check-document.ts'
import { entrySchema } from '../../../register/records.ts'
import { checkReport } from '../../../register/report.ts'
import { problem, sendProblem } from '../problem.ts'
import {
  asItIs,
  fresh,
  languageOf,
  ofWrench,
  type RegisterParts,
  sendOtherWrench,
  textsSchema,
  untouched,
} from './register-parts.ts'

/** Of a check that is judged and not kept: its inputs, of which it needs fewer, and what is answered. */
export const growing = {
  querystring: z.object({
    'dry-run': z.string().optional().meta({ description: 'judges, keeps nothing, needs no key' }),
  }),
  body: textsSchema(growingInputs.inputs, ['wrench']),
  response: { 200: checkDocumentSchema, 201: entrySchema },
}

const answered = (document: CheckDocument, reply: FastifyReply): FastifyReply => {
  if (document.faults.some(({ input, code }) => input === 'wrench' && code === 'not-in-register')) {
    return sendProblem(reply, { ...problem('no-such-wrench', 'The board is at /v1/wrenches.'), check: document })
  }
  if (document.status === 'refused') {
    const { faults, missing } = document
    return sendProblem(reply, { ...problem('check-refused', document.headline), faults, missing, check: document })
  }
  return fresh(reply).serializer(JSON.stringify).send(document)
}

/** A check as far as it goes: judged, and kept nowhere. */
export const judgeOnly = async (
  desk: Desk,
  shop: Shop,
  raw: unknown,
  request: FastifyRequest,
  reply: FastifyReply,
): Promise<FastifyReply> => answered(await checkingOf(shop).grow(raw, languageOf(desk, request)), reply)

export const checkRoutes = (app: FastifyInstance, desk: Desk, { shop }: RegisterParts): void => {
  const tags = ['register']
  const params = z.object({ tag: z.string() })

  app.get(
    '/v1/wrenches/:tag/check-plan',
    {
      schema: {
        tags,
        summary:
          'How to check this wrench: points, what the gauge must show, pulls and readings, and whether the gauge will do',
        params,
        querystring: textsSchema(growingInputs.inputs, ['wrench', 'points', 'reading', 'sure', 'supersedes', 'why']),
        response: { 200: checkDocumentSchema },
      },
      validatorCompiler: untouched,
      serializerCompiler: asItIs,
    },
    async (request, reply) => {
      const { tag } = request.params as { tag: string }
      const raw = ofWrench(tag, request.query)
      if (raw === undefined) return sendOtherWrench(reply as FastifyReply) as never
      return answered(await checkingOf(shop).plan(raw, languageOf(desk, request)), reply as FastifyReply) as never
    },
  )

  app.get(
    '/v1/wrenches/:tag/checks/:id',
    {
      schema: {
        tags,
        summary: 'The report of a check: with what and how it was made, every reading, the verdict and its rule',
        params: params.extend({ id: z.string() }),
        response: { 200: reportDocumentSchema },
      },
      validatorCompiler: untouched,
      serializerCompiler: asItIs,
    },
    async (request, reply) => {
      const { tag, id } = request.params as { tag: string; id: string }
      const found = await shop.wrench(tag)
      if (!found) return sendProblem(reply as FastifyReply, problem('no-such-wrench', 'The board is at /v1/wrenches.'))
      const report = checkReport(found.book, tag, id, shop.today())
      if (!report) {
        return sendProblem(reply as FastifyReply, problem('no-such-check', 'Its checks stand with the wrench.'))
      }
      fresh(reply as FastifyReply)
      return reportOf(report, languageOf(desk, request)) as never
    },
  )
}
