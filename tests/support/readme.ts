// What README shows, worked out by the program itself: its examples, its tables. The test compares; `npm run docs` writes.
import { type Settings, settings } from '../../src/config.ts'
import { renderReply } from '../../src/faces/chat/reply.ts'
import { runTerminal } from '../../src/faces/terminal/terminal.ts'
import type { QuestionName } from '../../src/questions/index.ts'
import { languages } from '../../src/words/index.ts'
import { testDesk, testHttp } from './doors.ts'

/** What people type that is refused or asked back, and how it is written in the table. */
export const badTorques: ReadonlyArray<{ readonly shown: string; readonly torque: string; readonly adapter?: string }> =
  [
    { shown: '`100`', torque: '100' },
    { shown: '`1,234 lb-ft`', torque: '1,234 lb-ft' },
    { shown: '`100 lb`', torque: '100 lb' },
    { shown: '`-5 N·m`', torque: '-5 N·m' },
    { shown: '`1e3 Nm`', torque: '1e3 Nm' },
    { shown: '`14 in`', torque: '14 in' },
    { shown: '`100 lb-ft` with an adapter of `15 in@180`', torque: '100 lb-ft', adapter: '15 in@180' },
    { shown: 'nothing', torque: '' },
    { shown: '`🔧`', torque: '🔧' },
    { shown: '10 kB of text', torque: 'torque '.repeat(1463) },
    { shown: '`20 Nm + 90°`', torque: '20 Nm + 90°' },
    { shown: '`120 Nm please`', torque: '120 Nm please' },
  ]

export const badRaw = ({ torque, adapter }: (typeof badTorques)[number]) => ({
  torque,
  lever: '14 in',
  adapter: adapter ?? '2 in',
})

const badTable = (): string[] =>
  badTorques.map((row) => {
    const [fault] = testDesk().ask('adapter-setting', badRaw(row), { door: 'terminal' }).faults
    return `| ${row.shown} | refused: \`${fault?.code}\` | ${fault?.hint} |`
  })

const settingTable = (): string[] =>
  Object.entries(settings).map(
    ([name, { without, allowed }]) =>
      `| \`${name satisfies string as keyof Settings}\` | ${without === undefined ? '–' : `\`${without}\``} | ${allowed} |`,
  )

const rawOf = (text: string): Record<string, string> =>
  Object.fromEntries(
    [...text.matchAll(/([a-z-]+)="([^"]*)"/g)].map((match) => [match[1] as string, match[2] as string]),
  )

const terminal = async (command: string): Promise<string[]> => {
  const lines: string[] = []
  const [, question = ''] = /-- ([a-z-]+)/.exec(command) ?? []
  const [, text] = /-- "([^"]*)"/.exec(command) ?? []
  const argv =
    text === undefined
      ? [question, ...Object.entries(rawOf(command)).map(([name, value]) => `${name}=${value}`)]
      : [text]
  await runTerminal(argv, testDesk(), { out: (line) => lines.push(line), err: (line) => lines.push(line) })
  return lines.join('\n').split('\n')
}

const curl = async (command: string): Promise<string[]> => {
  const [, path = ''] = /http:\/\/127\.0\.0\.1:8080(\S+)/.exec(command) ?? []
  const query = new URLSearchParams(
    [...command.matchAll(/--data-urlencode "([^=]+)=([^"]*)"/g)].map((match): [string, string] => [
      match[1] as string,
      match[2] as string,
    ]),
  )
  const http = await testHttp(testDesk())
  const { body } = await http.inject(`${path}?${query}`)
  await http.close()
  // The document is long: README shows how it begins, and that it goes on.
  return [`${body.slice(0, 400)}…`]
}

const chat = (call: string): string[] => {
  const [, question = ''] = /^([a-z-]+)/.exec(call) ?? []
  const answer = testDesk().ask(question as QuestionName, rawOf(call), { door: 'chat' })
  const { data } = renderReply(answer, languages.en.words)
  const [embed] = data.embeds ?? []
  return [
    embed?.title ?? '',
    embed?.description ?? '',
    ...(embed?.fields ?? []).flatMap(({ name, value }) => ['', name, ...value.split('\n')]),
  ]
}

const fence = '```'

const example = async (info: string, first: string): Promise<string[]> => {
  if (info === 'text chat') return [`<!-- ${first} -->`, `${fence}text`, ...chat(first), fence]
  const shown = first.includes('curl') ? await curl(first) : await terminal(first)
  return [`${fence}console`, first, ...shown, fence]
}

const withTable = (lines: string[], heading: string, rows: readonly string[]): string[] => {
  const at = lines.findIndex((line) => line.startsWith(heading))
  let end = at + 2
  while (lines[end]?.startsWith('|')) end++
  return [...lines.slice(0, at + 2), ...rows, ...lines.slice(end)]
}

/** README with every example and every table as the program makes them now. */
export const rewrite = async (text: string): Promise<string> => {
  const lines = text.split('\n')
  const out: string[] = []
  for (let at = 0; at < lines.length; at++) {
    const line = lines[at] as string
    const call = /^<!-- ([a-z-]+ .*) -->$/.exec(line)?.[1]
    const chatStart = line === `${fence}text chat` ? lines[at + 1] : call
    if (chatStart !== undefined) {
      out.push(...(await example('text chat', chatStart)))
      at = lines.indexOf(fence, at + 1)
    } else if (line === `${fence}console`) {
      out.push(...(await example('console', lines[at + 1] as string)))
      at = lines.indexOf(fence, at + 1)
    } else out.push(line)
  }
  const first = withTable(out, '| typed |', badTable())
  return withTable(first, '| setting |', settingTable()).join('\n')
}
