// The register as files: everything as JSON, in the order in which it was kept; and what is due as a calendar.
import { Readable } from 'node:stream'
import type { FastifyInstance } from 'fastify'
import type { Desk } from '../../../desk/desk.ts'
import type { Shop } from '../../../desk/shop.ts'
import { languageFor } from '../../../words/index.ts'
import { calendarOf } from '../calendar.ts'
import type { RegisterParts } from './register-parts.ts'

const CHUNK = 500

// Read a page at a time, so that a long record needs no more memory than a short one.
async function* recordOf(shop: Shop, first: Awaited<ReturnType<Shop['since']>>): AsyncGenerator<string> {
  let page = first
  let before = '{"entries":['
  while (page.length > 0) {
    for (const { entry } of page) {
      yield `${before}\n${JSON.stringify(entry)}`
      before = ','
    }
    page = await shop.since((page.at(-1) as (typeof page)[number]).seq, CHUNK)
  }
  yield `${before.startsWith('{') ? before : ''}\n]}\n`
}

export const registerFileRoutes = (app: FastifyInstance, desk: Desk, { shop, now }: RegisterParts): void => {
  const tags = ['register']

  app.get(
    '/v1/export.json',
    { schema: { tags, summary: 'Every entry of the register, superseded ones too', produces: ['application/json'] } },
    async (_request, reply) => {
      // The first page before the head: a register that is away is told as a problem, not as half a file.
      const first = await shop.since(0, CHUNK)
      return reply
        .header('content-type', 'application/json; charset=utf-8')
        .header('cache-control', 'no-store')
        .header('content-disposition', 'attachment; filename="register.json"')
        .send(Readable.from(recordOf(shop, first)))
    },
  )

  app.get(
    '/v1/due.ics',
    { schema: { tags, summary: 'When each wrench is due, as iCalendar', produces: ['text/calendar'] } },
    async (request, reply) => {
      const { words } = languageFor(request.headers['accept-language'], desk.locale)
      const due = await shop.due()
      return reply
        .header('content-type', 'text/calendar; charset=utf-8')
        .header('cache-control', 'no-store')
        .send(calendarOf(due, now(), ({ tag, name }) => `${words.register.due}: ${tag}, ${name}`))
    },
  )
}
