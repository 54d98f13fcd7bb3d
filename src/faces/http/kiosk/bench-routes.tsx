// The routes of the pages of bench runs. Reading is open; the form for the next reading shows to who is signed in.
import type { FastifyInstance } from 'fastify'
import { runDocument } from '../../../desk/run-document.ts'
import { runRow } from '../../../desk/run-rows.ts'
import { problem, sendProblem } from '../problem.ts'
import { BenchPage, RunPage, runAddress } from './bench-page.tsx'
import { isKeptOf } from './kept-pages.ts'
import { languageOf, type Query, send } from './page.ts'
import type { KioskParts } from './routes.tsx'
import type { Sessions } from './sessions.ts'

const PAGE = 50

const textIn = (query: unknown, name: string): string | undefined => {
  const told = (query as Query)[name]
  return typeof told === 'string' && told !== '' ? told : undefined
}

export const benchPages = (
  app: FastifyInstance,
  { desk, shop, register }: KioskParts,
  sessions: Pick<Sessions, 'of'>,
  id: () => string,
): void => {
  const hidden = { schema: { hide: true } }

  app.get('/bench', hidden, async (request, reply) => {
    const language = languageOf(desk, request)
    const page = await register.runs.page(PAGE, textIn(request.query, 'after'))
    const rows = page.runs.map((run) => runRow(run, language.words))
    return send(
      reply,
      <BenchPage language={language} shop={shop} here="/bench" rows={rows} next={page.next} />,
      'no-store',
    )
  })

  app.get('/bench/:tag', hidden, async (request, reply) => {
    const found = await register.runs.one((request.params as { tag: string }).tag)
    if (!found) return sendProblem(reply, problem('no-such-run', 'The bench runs are at /bench.'))
    const language = languageOf(desk, request)
    const { today } = register.today()
    const document = runDocument(found.folder, language, today)
    const parts = {
      found,
      document,
      today,
      session: sessions.of(request.headers.cookie),
      formKey: id(),
      condition: textIn(request.query, 'condition'),
      isKept: await isKeptOf(register, textIn(request.query, 'kept'), document.tag),
    }
    return send(
      reply,
      <RunPage language={language} shop={shop} here={runAddress(document.tag)} parts={parts} />,
      'no-store',
    )
  })
}
