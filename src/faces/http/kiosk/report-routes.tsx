// The page of a check's report, and the sheet that it is shown and printed by.
import type { FastifyInstance } from 'fastify'
import { reportOf } from '../../../desk/check-report.ts'
import { checkReport } from '../../../register/report.ts'
import { problem, sendProblem } from '../problem.ts'
import { CheckReportPage, reportAddress } from './check-report.tsx'
import { languageOf, send } from './page.ts'
import { reportSheet } from './report-sheet.ts'
import type { KioskParts } from './routes.tsx'

export const reportRoutes = (app: FastifyInstance, { desk, shop, register }: KioskParts): void => {
  const hidden = { schema: { hide: true } }

  app.get('/wrench/:tag/check/:id', hidden, async (request, reply) => {
    const { tag, id } = request.params as { tag: string; id: string }
    const found = await register.wrench(tag)
    if (!found) return sendProblem(reply, problem('no-such-wrench', 'The board is at /board.'))
    const report = checkReport(found.book, tag, id, register.today())
    if (!report) return sendProblem(reply, problem('no-such-check', 'Its checks stand on the page of the wrench.'))
    const language = languageOf(desk, request)
    const parts = { language, shop, here: reportAddress(tag, id), report: reportOf(report, language) }
    return send(reply, <CheckReportPage {...parts} />, 'no-store')
  })

  app.get('/report.css', hidden, (_request, reply) =>
    reply
      .header('content-type', 'text/css; charset=utf-8')
      .header('cache-control', 'public, max-age=300')
      .send(reportSheet),
  )
}
