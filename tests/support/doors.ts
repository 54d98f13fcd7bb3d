// Every door of the desk, each as one function: raw inputs in, what a person gets out. Leaving a door out does not compile.
import type { FastifyInstance } from 'fastify'
import { topics } from '../../commands/index.ts'
import { offersOf } from '../../commands/topic.ts'
import { createDesk, type Desk } from '../../src/desk/desk.ts'
import { createShop, type Shop } from '../../src/desk/shop.ts'
import { handleInteraction } from '../../src/faces/chat/handler.ts'
import { buildHttp } from '../../src/faces/http/server.ts'
import type { Pictures } from '../../src/faces/pictures.ts'
import { runTerminal } from '../../src/faces/terminal/terminal.ts'
import type { Answer } from '../../src/questions/answer.ts'
import { type QuestionName, questions } from '../../src/questions/index.ts'
import { memoryStore } from '../../src/store/memory.ts'

export type RawTexts = Readonly<Record<string, string | readonly string[]>>

/** What a door showed: the document where it hands one out, and all the text that a person sees. */
export interface Shown {
  readonly text: string
  readonly document?: Answer
  readonly status: Answer['status']
}

export type DoorName = 'http get' | 'http post' | 'terminal' | 'terminal --json' | 'chat'
export type Doors = Readonly<Record<DoorName, (question: QuestionName, raw: RawTexts) => Promise<Shown>>>

export const testDesk = (): Desk => createDesk({ system: 'metric', locale: 'en' })

/** A register that nothing outlives; its days and ids are told. */
export const testShop = (today = '2026-06-01'): Shop => {
  let count = 0
  const now = (): Date => new Date(`${today}T10:00:00Z`)
  return createShop({ store: memoryStore(), now, id: () => `e-${++count}`, timeZone: 'UTC' })
}

export const testHttp = (desk: Desk, mostASecond = 100_000, pictures = noPictures): Promise<FastifyInstance> =>
  buildHttp({
    desk,
    pictures,
    shop: 'Kiln Lane Garage',
    trustProxy: false,
    mostASecond,
    failed: (_reference, error) => {
      throw error
    },
    register: { shop: testShop(), keys: [], now: () => new Date('2026-06-01T10:00:00Z') },
    readiness: async () => [],
    metrics: async () => ({ type: 'text/plain', text: '' }),
  })

/** Words only: what is drawn is tested where it is drawn. */
export const noPictures: Pictures = { png: () => Promise.reject(new Error('no pictures here')) }

const statusOfExit: Readonly<Record<number, Answer['status']>> = { 0: 'answered', 2: 'refused', 3: 'incomplete' }

const throughTerminal = async (desk: Desk, question: QuestionName, raw: RawTexts, json: boolean): Promise<Shown> => {
  const lines: string[] = []
  const words = Object.entries(raw).flatMap(([name, value]) => [value].flat().map((text) => `${name}=${text}`))
  const code = await runTerminal([question, ...words, ...(json ? ['--json'] : [])], desk, {
    out: (line) => lines.push(line),
    err: (line) => lines.push(line),
  })
  const status = statusOfExit[code]
  if (status === undefined) throw new Error(`exit ${code}: ${lines.join('\n')}`)
  const text = lines.join('\n')
  return json ? { text, status, document: JSON.parse(text) as Answer } : { text, status }
}

const documentOf = (body: string): Answer => {
  const parsed = JSON.parse(body) as Answer & { answer?: Answer }
  return parsed.answer ?? parsed
}

/** A slash command as Discord would send it for a question. */
export const commandFor = (question: QuestionName, raw: RawTexts): Record<string, unknown> => {
  const topic = topics.find((one) => offersOf(one).includes(question))
  if (!topic || topic.shape === 'text' || topic.shape === 'settings') throw new Error(`no topic offers ${question}`)
  const options = Object.entries(raw).map(([name, value]) => ({
    type: 3,
    name,
    value: typeof value === 'string' ? value : value.join(questions[question].inputs[name]?.between ?? '; '),
  }))
  const word = topic.shape === 'alone' ? '' : (topic.offers.find((offer) => offer.question === question)?.word ?? '')
  if (topic.shape === 'alone') return { id: '1', type: 1, name: topic.name, options }
  if (topic.shape === 'find')
    return { id: '1', type: 1, name: topic.name, options: [...options, { type: 3, name: 'find', value: word }] }
  return { id: '1', type: 1, name: topic.name, options: [{ type: 1, name: word, options }] }
}

const throughChat = async (desk: Desk, question: QuestionName, raw: RawTexts): Promise<Shown> => {
  const interaction = {
    id: '1',
    application_id: '2',
    type: 2,
    token: 't',
    version: 1,
    locale: 'en-US',
    user: { id: '3', username: 'bay-2' },
    data: commandFor(question, raw),
  }
  const reply = await handleInteraction(interaction as never, {
    desk,
    topics,
    pictures: noPictures,
    failed: (error) => {
      throw error
    },
  })
  if (!reply) throw new Error('no reply')
  const embed = reply.data.embeds?.[0]
  const text = [
    embed?.description ?? '',
    ...(embed?.fields ?? []).map(({ name, value }) => `${name}\n${value}`),
    ...reply.files.map(({ data }) => data.toString('utf8')),
  ].join('\n')
  const refused = text.includes('Mend this')
  const status = reply.data.flags === undefined ? 'answered' : refused ? 'refused' : 'incomplete'
  return { text, status }
}

export const openDoors = async (): Promise<{ doors: Doors; close: () => Promise<void> }> => {
  const desk = testDesk()
  const http = await testHttp(desk)
  const doors: Doors = {
    'http get': async (question, raw) => {
      const query = new URLSearchParams(
        Object.entries(raw).flatMap(([name, value]) => [value].flat().map((text): [string, string] => [name, text])),
      )
      const { body, statusCode } = await http.inject(`/v1/questions/${question}?${query}`)
      const document = documentOf(body)
      if (statusCode !== (document.status === 'refused' ? 422 : 200)) throw new Error(`HTTP ${statusCode}: ${body}`)
      return { text: body, document, status: document.status }
    },
    'http post': async (question, raw) => {
      const { body } = await http.inject({ method: 'POST', url: `/v1/questions/${question}`, payload: raw })
      const document = documentOf(body)
      return { text: body, document, status: document.status }
    },
    terminal: async (question, raw) => throughTerminal(desk, question, raw, false),
    'terminal --json': async (question, raw) => throughTerminal(desk, question, raw, true),
    chat: async (question, raw) => throughChat(desk, question, raw),
  }
  return { doors, close: () => http.close() }
}
