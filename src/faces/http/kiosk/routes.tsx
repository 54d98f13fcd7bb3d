// The kiosk's pages: server-rendered, the same inputs in the address give the same page. Blank fields are dropped here, and only here.
import type { FastifyInstance } from 'fastify'
import { inTime } from '../../../core/in-time.ts'
import { askKnowing, askTextKnowing, type Desk } from '../../../desk/desk.ts'
import type { Shop } from '../../../desk/shop.ts'
import type { Answer } from '../../../questions/answer.ts'
import { isQuestionName, type QuestionName, questions } from '../../../questions/index.ts'
import type { FleetRow } from '../../../register/fleet.ts'
import { hangs, usable } from '../../../register/status-rules.ts'
import type { Language } from '../../../words/index.ts'
import { marks } from '../../status-marks.ts'
import { inputsTaken } from '../../taken.ts'
import { isShow, pageOf } from '../api/wrench-lists.ts'
import { problem, sendProblem } from '../problem.ts'
import { AnswerView } from './answer.tsx'
import { AskLine, OtherReadings } from './ask-line.tsx'
import { BoardPage } from './board-page.tsx'
import { FieldNotes, type FormParts, QuestionForm } from './form.tsx'
import { isKeptOf } from './kept-pages.ts'
import { AngleDialog, AnswerLine, Keypad } from './keypad.tsx'
import { addressOf, filledIn, languageOf, type Query, send } from './page.ts'
import { WrenchPage } from './register-pages.tsx'
import { Shell } from './shell.tsx'
import { StartPage } from './start.tsx'
import { TopicKeys } from './topic-keys.tsx'
import { baseOf, TakeAlong } from './ways-out.tsx'

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
const AT_HAND = 12
const MOST_WRENCHES = 60
const MOST_PAGES = 4
const PATIENCE_MS = 300

/** The first wrenches that hang here, as they hang; those that are gone are passed over, in a few pages at most. */
const hangingIn = async (register: Shop, most: number): Promise<readonly FleetRow[]> => {
  const rows: FleetRow[] = []
  let after: string | undefined
  for (let page = 0; page < MOST_PAGES && rows.length < most; page += 1) {
    const { rows: found, next } = await register.board(MOST_WRENCHES, after)
    rows.push(...found.filter(({ status }) => hangs(status.status)))
    after = next
    if (after === undefined) break
  }
  return rows.slice(0, most)
}

/** The wrenches that may be picked on a page; a register that is away or slow is no reason to show no page. */
const rowsIn = (register: Shop, most: number): Promise<readonly FleetRow[]> =>
  inTime(hangingIn(register, most), PATIENCE_MS, [])

export interface KioskParts {
  readonly desk: Desk
  readonly shop: string
  readonly register: Shop
  /** The address by which other devices reach this desk; what the browser itself used where it is not told. */
  readonly publicUrl: string | undefined
}

export const kioskRoutes = (app: FastifyInstance, { desk, shop, register, publicUrl }: KioskParts): void => {
  const hidden = { schema: { hide: true } }

  app.get('/', hidden, async (request, reply) => {
    const rows = await rowsIn(register, AT_HAND)
    return send(reply, <StartPage language={languageOf(desk, request)} shop={shop} here="/" rows={rows} />)
  })

  app.get('/ask', hidden, async (request, reply) => {
    const language = languageOf(desk, request)
    const { words, locale } = language
    const { text } = request.query as Query
    const asked = typeof text === 'string' && text.trim() !== ''
    const answer = asked ? await askTextKnowing(desk, text, { door: 'kiosk', locale }) : undefined
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
    const here = `/ask/${question}${query === '' ? '' : `?${query}`}`
    const rows = 'wrench' in questions[question].inputs ? await rowsIn(register, MOST_WRENCHES) : []
    return send(
      reply,
      <Shell language={language} shop={shop} here={here} title={title}>
        <h1>{title}</h1>
        <div class="bench">
          <QuestionForm {...formOf(question, raw, answer, language, rows)} />
          <div>
            <p id="said" class="unseen" role="status" />
            <div id="answer-slot">
              {answer && (
                <AnswerView
                  answer={answer}
                  words={words}
                  locale={locale}
                  query={query}
                  out={<TakeAlong words={words} base={baseOf(request, publicUrl)} here={here} />}
                />
              )}
            </div>
          </div>
        </div>
        {question === 'does-it-matter' && <TopicKeys words={words} locale={locale} />}
        <AnswerLine />
        <Keypad words={words} />
        <AngleDialog words={words} />
      </Shell>,
    )
  })

  // What changes on that page while it is typed on: the notes of its fields and the answer, without the shell.
  app.get('/ask/:question/live', hidden, async (request, reply) => {
    const { question } = request.params as { question: string }
    if (!isQuestionName(question))
      return sendProblem(reply, problem('unknown-question', 'The questions are listed at /.'))
    const language = languageOf(desk, request)
    const { words, locale } = language
    const raw = filledIn(request.query as Query)
    const asked = Object.keys(raw).length > 0
    const answer = asked ? await askKnowing(desk, question, raw, { door: 'kiosk', locale }) : undefined
    const query = addressOf(raw)
    const out = <TakeAlong words={words} base={baseOf(request, publicUrl)} here={`/ask/${question}?${query}`} />
    return send(
      reply,
      <>
        <FieldNotes {...formOf(question, raw, answer, language, [])} />
        {answer && <AnswerView answer={answer} words={words} locale={locale} query={query} out={out} />}
      </>,
      'no-store',
    )
  })

  const formOf = (
    question: QuestionName,
    raw: Readonly<Record<string, string | readonly string[]>>,
    answer: Answer | undefined,
    { words, locale }: Language,
    rows: readonly FleetRow[],
  ): FormParts => ({
    question,
    values: shownValues(question, raw),
    answer,
    words,
    locale,
    system: desk.system,
    wrenches: rows.map(({ folder, status: { status } }) => {
      const { tag, name } = folder.card.entry.body
      const held = usable(status) ? '' : ` ${marks[status]} ${words.register.statuses[status]}`
      return { tag, label: `${tag}${held}: ${name}` }
    }),
  })

  app.get('/board', hidden, async (request, reply) => {
    const { after, show: wanted } = request.query as Query
    const show = isShow(wanted) ? wanted : undefined
    const [page, counts] = await Promise.all([
      pageOf(register, { show, limit: ROWS, after: typeof after === 'string' ? after : undefined }),
      register.lists.counts(),
    ])
    const here = show === undefined ? '/board' : `/board?show=${show}`
    const parts = { language: languageOf(desk, request), shop, here, rows: page.rows, next: page.next, show, counts }
    return send(reply, <BoardPage {...parts} />, 'no-store')
  })

  app.get('/wrench/:tag', hidden, async (request, reply) => {
    const { tag } = request.params as { tag: string }
    const found = await register.wrench(tag)
    if (!found) return sendProblem(reply, problem('no-such-wrench', 'The board is at /board.'))
    const parts = { language: languageOf(desk, request), shop, here: `/wrench/${encodeURIComponent(tag)}` }
    const isKept = await isKeptOf(register, (request.query as Query)['kept'], tag)
    const page = <WrenchPage {...parts} found={found} isKept={isKept} />
    return send(reply, page, 'no-store')
  })
}
