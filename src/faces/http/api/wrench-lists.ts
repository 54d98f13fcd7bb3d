// What needs doing over HTTP: which list is asked for, and how many wrenches are in each.
import type { FastifyInstance } from 'fastify'
import { z } from 'zod'
import { type Show, shows } from '../../../desk/fleet-index.ts'
import type { Shop } from '../../../desk/shop.ts'
import type { ListedRow } from '../../../register/fleet.ts'

export const isShow = (text: unknown): text is Show => (shows as readonly unknown[]).includes(text)

export interface RowsPage {
  readonly rows: readonly ListedRow[]
  readonly next?: string | undefined
}

export interface ListWanted {
  readonly show?: Show | undefined
  readonly limit: number
  readonly after?: string | undefined
}

const MOST_ROWS = 200
const ROWS = 60

export const listQuery = z.object({
  after: z.string().optional(),
  show: z.enum(shows).optional(),
  limit: z.string().optional(),
})

/** What is wanted by an address, or what is wrong with it. */
export const readList = (query: Readonly<Record<string, unknown>>): ListWanted | string => {
  const { after, show, limit = String(ROWS), ...other } = query
  const rows = typeof limit === 'string' && /^\d{1,3}$/.test(limit) ? Number(limit) : 0
  const isAfter = after === undefined || typeof after === 'string'
  const isKnown = show === undefined || isShow(show)
  if (isAfter && isKnown && Object.keys(other).length === 0 && rows >= 1 && rows <= MOST_ROWS)
    return { limit: rows, after, show }
  return `Only after, show (${shows.join(', ')}), and limit from 1 to ${MOST_ROWS}, are taken here.`
}

/** A page of one list, or of the whole board where none is named. */
export const pageOf = (shop: Shop, { show, limit, after }: ListWanted): Promise<RowsPage> =>
  show === undefined ? shop.board(limit, after) : shop.lists.list(show, limit, after)

export const wrenchListRoutes = (app: FastifyInstance, shop: Shop): void => {
  app.get(
    '/v1/wrenches/summary',
    {
      schema: {
        tags: ['register'],
        summary: 'How many wrenches are due this month, to be checked before use, out of limit, and never checked',
        response: { 200: z.object({ due: z.number(), before: z.number(), out: z.number(), never: z.number() }) },
      },
    },
    async (_request, reply) => {
      const counts = await shop.lists.counts()
      reply.header('cache-control', 'no-store')
      return counts
    },
  )
}
