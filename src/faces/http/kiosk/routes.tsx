// The kiosk's pages: server-rendered, the same inputs in the address give the same page. Blank fields are dropped here, and only here.
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { renderToString } from 'preact-render-to-string'
import { askKnowing, type Desk } from '../../../desk/desk.ts'
import type { Shop } from '../../../desk/shop.ts'
import type { Answer } from '../../../questions/answer.ts'
import { isQuestionName, type QuestionName, questions } from '../../../questions/index.ts'
import { type Language, languageFor, localeNames } from '../../../words/index.ts'
import { problem, sendProblem } from '../problem.ts'
import { AnswerView } from './answer.tsx'
import { AskLine, OtherReadings } from './ask-line.tsx'
import { QuestionForm } from './form.tsx'
import { BoardPage, WrenchPage } from './register-pages.tsx'
import { Shell } from './shell.tsx'
import { StartPage } from './start.tsx'
import { stylesheet } from './stylesheet.ts'

type Query = Readonly<Record<string, string | readonly string[]>>

const send = (reply: FastifyReply, page: Parameters<typeof renderToString>[0], keep = 'no-cache'): FastifyReply =>
  reply
    .header('content-type', 'text/html; charset=utf-8')
    .header('cache-control', keep)
    .header('vary', 'accept-language')
    .send(`<!doctype html>${renderToString(page)}`)

/** The language that the key chose, else the browser's, else the shop's. */
const languageOf = (desk: Desk, request: FastifyRequest): Language => {
  const { lang } = request.query as Query
  const chosen = typeof lang === 'string' && (localeNames as readonly string[]).includes(lang) ? lang : undefined
  return languageFor(chosen ?? request.headers['accept-language'], desk.locale)
}

/** What was filled in: blank fields and the language key left out. */
const filledIn = (query: Query): Record<string, string | readonly string[]> =>
  Object.fromEntries(
    Object.entries(query).flatMap(([name, value]) => {
      const texts = [value].flat().filter((text) => text.trim() !== '')
      if (name === 'lang' || texts.length === 0) return []
      return [[name, texts.length === 1 ? (texts[0] as string) : texts]]
    }),
  )

const addressOf = (raw: Readonly<Record<string, string | readonly string[]>>): string =>
  new URLSearchParams(
    Object.entries(raw).flatMap(([name, value]) => [value].flat().map((text): [string, string] => [name, text])),
  ).toString()

/** What was taken from free text, as the question's own inputs. */
const inputsTaken = (answer: Answer | undefined): Record<string, string | string[]> => {
  const inputs: Record<string, string | string[]> = {}
  for (const { input, text } of answer?.reading?.taken ?? []) {
    const known = inputs[input]
    inputs[input] = known === undefined ? text : [known, text].flat()
  }
  return inputs
}

// Several values of one field are shown joined as they may be typed: adapters with +, readings with ;, points with |.
const shownValues = (
  name: QuestionName,
  raw: Readonly<Record<string, string | readonly string[]>>,
): Record<string, string> =>
  Object.fromEntries(
    Object.entries(raw).map(([input, value]) => [
      input,
      [value].flat().join(questions[name].inputs[input]?.between ?? '; '),
    ]),
  )

const ROWS = 60

export const kioskRoutes = (app: FastifyInstance, desk: Desk, shop: string, register: Shop): void => {
  const hidden = { schema: { hide: true } }

  app.get('/', hidden, (request, reply) =>
    send(reply, <StartPage language={languageOf(desk, request)} shop={shop} here="/" />),
  )

  app.get('/ask', hidden, (request, reply) => {
    const language = languageOf(desk, request)
    const { words, locale } = language
    const { text } = request.query as Query
    const asked = typeof text === 'string' && text.trim() !== ''
    const answer = asked ? desk.askText(text, { door: 'kiosk', locale }) : undefined
    const inputs = inputsTaken(answer)
    const title = words.page.askTitle
    return send(
      reply,
      <Shell language={language} shop={shop} here={`/ask${asked ? `?${addressOf({ text })}` : ''}`} title={title}>
        <h1>{title}</h1>
        <AskLine words={words} text={asked ? text : ''} />
        {answer && <AnswerView answer={answer} words={words} locale={locale} query={addressOf(inputs)} />}
        {answer && <OtherReadings answer={answer} inputs={inputs} words={words} locale={locale} />}
      </Shell>,
    )
  })

  app.get('/ask/:question', hidden, async (request, reply) => {
    const { question } = request.params as { question: string }
    if (!isQuestionName(question))
      return sendProblem(reply, problem('unknown-question', 'The questions are listed at /.'))
    const language = languageOf(desk, request)
    const { words, locale } = language
    const raw = filledIn(request.query as Query)
    // A page that was just opened asks nothing; a form that was sent with nothing in it asks for what is needed.
    const asked = Object.keys(request.query as Query).some((name) => name !== 'lang')
    const answer = asked ? await askKnowing(desk, question, raw, { door: 'kiosk', locale }) : undefined
    const query = addressOf(raw)
    const title = words.questions[question]
    return send(
      reply,
      <Shell language={language} shop={shop} here={`/ask/${question}${query === '' ? '' : `?${query}`}`} title={title}>
        <h1>{title}</h1>
        <QuestionForm
          question={question}
          values={shownValues(question, raw)}
          answer={answer}
          words={words}
          locale={locale}
          system={desk.system}
        />
        {answer && <AnswerView answer={answer} words={words} locale={locale} query={query} />}
      </Shell>,
    )
  })

  app.get('/board', hidden, async (request, reply) => {
    const { after } = request.query as Query
    const page = await register.board(ROWS, typeof after === 'string' ? after : undefined)
    const parts = { language: languageOf(desk, request), shop, here: '/board', rows: page.rows, next: page.next }
    return send(reply, <BoardPage {...parts} />, 'no-store')
  })

  app.get('/wrench/:tag', hidden, async (request, reply) => {
    const { tag } = request.params as { tag: string }
    const found = await register.wrench(tag)
    if (!found) return sendProblem(reply, problem('no-such-wrench', 'The board is at /board.'))
    const here = `/wrench/${encodeURIComponent(tag)}`
    const page = <WrenchPage language={languageOf(desk, request)} shop={shop} here={here} found={found} />
    return send(reply, page, 'no-store')
  })

  app.get('/kiosk.css', hidden, (_request, reply) =>
    reply
      .header('content-type', 'text/css; charset=utf-8')
      .header('cache-control', 'public, max-age=300')
      .send(stylesheet),
  )
}
