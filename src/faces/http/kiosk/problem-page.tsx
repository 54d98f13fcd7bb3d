// A problem as a page, where a person's browser asked for one: what is the matter and the way on. Programs get the document.
import type { FastifyInstance, FastifyRequest } from 'fastify'
import { renderToString } from 'preact-render-to-string'
import type { Desk } from '../../../desk/desk.ts'
import type { Words } from '../../../words/index.ts'
import { PROBLEM_TYPE, type Problem, type ProblemName } from '../problem.ts'
import { ownPath } from './own-path.ts'
import { languageOf } from './page.ts'
import { type PageParts, Shell } from './shell.tsx'

type Told = Extract<ProblemName, keyof Words['problems']>

// What only programs meet is told as what cannot be read.
const toldOf = (type: string, problems: Words['problems']): Told => {
  const name = type.slice(type.lastIndexOf(':') + 1)
  return typeof problems[name as Told] === 'object' ? (name as Told) : 'not-readable'
}

// Trying again helps where the world failed, and only where nothing was sent that might be kept twice.
const canAgain = (told: Told, method: string): boolean =>
  method === 'GET' && (told === 'outage' || told === 'register-away' || told === 'too-many')

export const ProblemPage = (parts: PageParts & { readonly document: Problem; readonly method: string }) => {
  const { document, language, here, method } = parts
  const { problems, register } = language.words
  const told = toldOf(document.type, problems)
  return (
    <Shell {...parts} title={problems[told].title}>
      <h1>{problems[told].title}</h1>
      <p>{problems[told].next}</p>
      {document.instance && (
        <p>
          {problems.reference} <code>{document.instance.replace('urn:uuid:', '')}</code>
        </p>
      )}
      <p class="ways">
        {canAgain(told, method) && (
          <a class="key" href={here}>
            {problems.again}
          </a>
        )}
        <a class="key" href="/">
          {problems.start}
        </a>
        <a class="key" href="/board">
          {register.board}
        </a>
      </p>
    </Shell>
  )
}

// The API's own addresses always speak JSON, whatever a browser says that it takes.
const wantsPage = ({ url, headers }: FastifyRequest): boolean =>
  (headers.accept ?? '').includes('text/html') && !/^\/(v1|openapi|healthz|readyz|metrics)\b/.test(url)

export const problemPages = (app: FastifyInstance, desk: Desk, shop: string): void => {
  app.addHook('onSend', async (request, reply, payload) => {
    if (reply.getHeader('content-type') !== PROBLEM_TYPE || typeof payload !== 'string' || !wantsPage(request))
      return payload
    const document = JSON.parse(payload) as Problem
    const parts = { language: languageOf(desk, request), shop, here: ownPath(request.url), method: request.method }
    reply.removeHeader('content-length')
    reply.header('content-type', 'text/html; charset=utf-8').header('vary', 'accept, accept-language, cookie')
    return `<!doctype html>${renderToString(<ProblemPage {...parts} document={document} />)}`
  })
}
