// The register as a sheet: all of it out as CSV, and a sheet read in, tried first with `dry-run`. Every fault with its line.
import { Readable } from 'node:stream'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { z } from 'zod'
import type { Desk } from '../../../desk/desk.ts'
import { MOST_SHEET_FAULTS } from '../../../desk/intake.ts'
import type { Writer } from '../../../desk/shop.ts'
import { sheetHead, sheetRow } from '../../../keeping/sheet.ts'
import { problem, sendProblem } from '../problem.ts'
import { decodeUtf8 } from '../utf8.ts'
import {
  asItIs,
  dryRunIn,
  fresh,
  type RegisterParts,
  sayerOf,
  sendDryRunUnread,
  sendOthersWrite,
  writerOf,
} from './register-parts.ts'

/** Where sheets are read in. */
export const SHEETS = '/v1/import'

const CHUNK = 500
const LARGEST_SHEET = 10 * 1024 * 1024

const readSchema = z
  .object({ rows: z.object({ new: z.number(), again: z.number() }), kept: z.boolean() })
  .meta({ id: 'SheetRead' })

async function* sheetOf(
  { shop }: RegisterParts,
  first: Awaited<ReturnType<RegisterParts['shop']['since']>>,
): AsyncGenerator<string> {
  yield sheetHead()
  let page = first
  while (page.length > 0) {
    for (const { entry } of page) yield sheetRow(entry)
    page = await shop.since((page.at(-1) as (typeof page)[number]).seq, CHUNK)
  }
}

export const sheetRoutes = async (app: FastifyInstance, desk: Desk, parts: RegisterParts): Promise<void> => {
  const tags = ['register']

  app.get(
    '/v1/export.csv',
    { schema: { tags, summary: 'Every entry of the register as comma-separated values', produces: ['text/csv'] } },
    async (_request, reply) => {
      const first = await parts.shop.since(0, CHUNK)
      return fresh(reply)
        .header('content-type', 'text/csv; charset=utf-8')
        .header('content-disposition', 'attachment; filename="register.csv"')
        .send(Readable.from(sheetOf(parts, first)))
    },
  )

  await app.register(async (scope) => {
    const writers = new WeakMap<object, Writer>()
    scope.addContentTypeParser(
      'text/csv',
      { parseAs: 'buffer', bodyLimit: LARGEST_SHEET },
      (_request: FastifyRequest, bytes: string | Buffer, done: (error: Error | null, body?: unknown) => void) => {
        try {
          done(null, decodeUtf8(bytes))
        } catch (error) {
          done(error as Error)
        }
      },
    )
    scope.post(
      SHEETS,
      {
        bodyLimit: LARGEST_SHEET,
        schema: {
          tags,
          summary: 'Reads a sheet in, all of it or nothing; with dry-run it is only judged',
          consumes: ['text/csv'],
          querystring: z.object({ 'dry-run': z.string().optional() }),
          response: { 200: readSchema },
        },
        validatorCompiler: () => (data: unknown) => ({ value: data }),
        serializerCompiler: asItIs,
        // Before the sheet is read: ten megabytes are taken from nobody who may not write.
        onRequest: async (request, reply) => {
          const who = writerOf(parts, request, reply as FastifyReply)
          if (who) writers.set(request, who)
          else return reply
        },
      },
      async (request, reply) => {
        const who = writers.get(request) as Writer
        if (typeof request.body !== 'string')
          return sendProblem(reply as FastifyReply, problem('not-csv', 'Send the sheet as text/csv.'))
        const dryRun = dryRunIn(request.query)
        if (dryRun === undefined) return sendDryRunUnread(reply as FastifyReply)
        const read = await parts.shop.takeIn(request.body, who, dryRun)
        if (read.kind === 'forbidden')
          return sendProblem(reply as FastifyReply, problem('forbidden', 'This key may not write this.'))
        if (read.kind === 'read')
          return fresh(reply as FastifyReply).send({
            rows: { new: read.fresh, again: read.again },
            kept: read.kept,
          } as never)
        const say = sayerOf(desk, request)
        if (read.faults[0]?.fault.tell === 'others-write') return sendOthersWrite(reply as FastifyReply)
        return sendProblem(reply as FastifyReply, {
          ...problem('not-kept', 'Nothing was read in. Mend what is listed and send the sheet again.'),
          count: read.faults.length,
          rows: read.faults.slice(0, MOST_SHEET_FAULTS).map(({ line, fault: { input: column, ...rest } }) => ({
            line,
            column,
            ...withoutInput(say.fault({ input: column, ...rest })),
          })),
        })
      },
    )
  })
}

const withoutInput = <T extends { readonly input: string }>({ input: _, ...rest }: T): Omit<T, 'input'> => rest
