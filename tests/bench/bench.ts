// What is measured, in one table: ratios to the bare library in the same run. Nothing is asserted on speed; inputs are checked first.
import { createDesk } from '../../src/desk/desk.ts'
import { createPictures } from '../../src/faces/pictures.ts'
import { figureOf } from '../../src/figures/index.ts'
import { languages } from '../../src/words/index.ts'
import { benchAgainst } from './against.ts'
import { readAgainst } from './against-table.ts'
import { benchAsking } from './asking.ts'
import { benchChat } from './chat.ts'
import { benchLoad } from './chat-load.ts'
import { benchFragment } from './fragment.ts'
import { benchHttp } from './http.ts'
import { benchDesk } from './in-process.ts'
import { benchPaint } from './paint.ts'
import { benchStart } from './start.ts'
import { benchSteady, STEADY_SECONDS } from './steady.ts'
import { benchStore } from './store.ts'

const line = (...cells: readonly (string | number)[]): void => {
  const shown = cells.map((cell, n) =>
    typeof cell === 'number' ? cell.toFixed(cell < 10 ? 2 : 0).padStart(10) : cell.padEnd(n === 0 ? 34 : 12),
  )
  process.stdout.write(`${shown.join(' ')}\n`)
}

const failed = (error: unknown): never => {
  process.stderr.write(`${(error as Error).message}\n`)
  process.exit(1)
}

// Takes minutes, and so is done only when asked for.
const [what, wrenches = '10000', checks = '1000000'] = process.argv.slice(2)
if (what === 'against') {
  try {
    await benchAgainst(readAgainst(process.argv.slice(3)), line)
  } catch (error) {
    failed(error)
  }
  process.exit(0)
}
if (what === 'store') {
  await benchStore(line, Number(wrenches), Number(checks))
  process.exit(0)
}

const fragments = async (): Promise<void> => {
  const { rows, bytes, packed } = await benchFragment()
  line(`kiosk fragment, ${bytes} bytes (${packed} packed)`, 'p50 ms', 'p99 ms')
  for (const { name, p50, p99 } of rows) line(`  ${name}`, p50, p99)
  const [alone, beside] = rows
  if (alone && beside) line('  ratio', beside.p50 / alone.p50, beside.p99 / alone.p99)
  line('first paint, ms', 'p50', 'most')
  for (const { name, p50, most } of await benchPaint()) line(`  ${name}`, p50, most)
}
if (what === 'kiosk') {
  await fragments()
  process.exit(0)
}

if (what === 'load') {
  const { rows, cpu, loads } = await benchSteady().catch(failed)
  line(`for ${STEADY_SECONDS} s`, 'wanted/s', 'reached/s', 'p50 ms', 'p99 ms', 'failed')
  for (const { name, wanted, reached, p50, p99, failed } of rows) line(`  ${name}`, wanted, reached, p50, p99, failed)
  line('processor of the server, %', cpu)
  line('load of the machine before', loads)
  process.exit(0)
}

const loads = async (): Promise<void> => {
  line('chat by the clock, busy kiosk', 'p50 ms', 'p99 ms', 'lost')
  const rows = await benchLoad()
  for (const { name, p50, p99, lost } of rows) line(`  ${name}`, p50, p99, String(lost))
  for (const [n, ours] of rows.entries()) {
    const bare = rows[n + 1]
    if (n % 2 === 0 && bare) line(`  ratio,${ours.name.slice(5)}`, ours.p50 / bare.p50, ours.p99 / bare.p99)
  }
}
if (what === 'chat') {
  await loads()
  process.exit(0)
}

line('in process', 'a second', 'p50 µs', 'p99 µs')
for (const { question, aSecond, p50, p99 } of await benchDesk()) line(`  ${question}`, aSecond, p50, p99)

line('free text', 'p50', 'p99')
for (const { name, p50, p99 } of benchAsking()) line(`  ${name}`, p50, p99)

// The doors take minutes more.
if (what === 'desk') process.exit(0)

const answer = createDesk({ system: 'metric', locale: 'en' }).ask(
  'adapter-setting',
  { torque: '100.00000 N·m', lever: '380 mm', adapter: '45 mm@30' },
  { door: 'http' },
)
if (answer.status !== 'answered') throw new Error('the inputs of the bench are not answered')

line('HTTP, requests a second', 'ours', 'bare', 'ratio')
for (const { name, ours, bare, ratio } of await benchHttp(answer)) line(`  ${name}`, ours, bare, ratio)

line('chat, interaction to callback', 'p50 ms', 'p99 ms')
const chat = await benchChat()
for (const { name, p50, p99 } of chat) line(`  ${name}`, p50, p99)
for (const part of ['without a picture', 'with the same ready picture']) {
  const [ours, bare] = [
    chat.find(({ name }) => name === `ours ${part}`),
    chat.find(({ name }) => name === `bare ${part}`),
  ]
  if (ours && bare) line(`  ratio ${part}`, ours.p50 / bare.p50, ours.p99 / bare.p99)
}

await fragments()
await loads()

const pictures = createPictures()
const draw = async (n: number): Promise<number> => {
  const asked = createDesk({ system: 'metric', locale: 'en' }).ask(
    'adapter-setting',
    { torque: `${n + 20} N·m`, lever: '380 mm', adapter: '45 mm@30' },
    { door: 'http' },
  )
  const before = performance.now()
  await pictures.png(figureOf(asked, languages.en.words, 'dark')?.svg ?? '')
  return performance.now() - before
}
await draw(0)
const drawn: number[] = []
for (let n = 1; n <= 20; n++) drawn.push(await draw(n))
line('a fresh picture, ms', drawn.sort((a, b) => a - b)[10] as number)

const { startMs, rssMiB } = await benchStart()
line('start to ready, ms', startMs)
line('memory after load, MiB', rssMiB)
process.exit(0)
