// What reading free text costs: a post of 400 characters, and 10 kB made to cost time, twice the length beside it.
import { asked } from '../support/asked-score.ts'
import { hostileTexts } from '../support/hostile-texts.ts'
import { builtReader } from './built.ts'

export interface AskingBench {
  readonly name: string
  readonly p50: number
  readonly p99: number
}

const ROUNDS = 2000
const POST = 400

const { readText } = await builtReader()

// Time of the processor, collections of garbage on other threads with it: by the clock a slow read may be another program's turn.
const worked = (): number => {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}

const timesOf = (texts: readonly string[], rounds: number, now = worked): number[] => {
  const times: number[] = []
  for (let n = 0; n < rounds; n++) {
    const before = now()
    readText(texts[n % texts.length] as string)
    times.push(now() - before)
  }
  return times.sort((one, other) => one - other)
}

const share = (times: readonly number[], part: number): number => times[Math.floor((times.length - 1) * part)] as number

/** The middle of three series by what is slow in them: one disturbance on the machine is no figure. */
const middleOf = (series: () => number[]): number[] =>
  [series(), series(), series()].sort((one, other) => share(one, 0.99) - share(other, 0.99))[1] as number[]

export const benchAsking = (): AskingBench[] => {
  // Real posts, each filled up with the next ones to 400 characters.
  const posts = asked.map((_, n) =>
    [...asked.slice(n), ...asked]
      .map(({ text }) => text)
      .join(' ')
      .slice(0, POST),
  )
  if (posts.some((text) => text.length !== POST)) throw new Error('the posts of the bench are not of the length told')
  timesOf(posts, ROUNDS)
  const post = middleOf(() => timesOf(posts, ROUNDS))
  const byClock = middleOf(() => timesOf(posts, ROUNDS, () => performance.now()))
  const names = Object.keys(hostileTexts(10))
  const cost = (name: string, length: number): number => share(timesOf([hostileTexts(length)[name] as string], 60), 0.5)
  const whole = names.map((name) => ({ name, full: cost(name, 10_000), half: cost(name, 5000) }))
  const slowest = whole.reduce((one, other) => (other.full > one.full ? other : one))
  const steepest = whole
    .filter(({ half }) => half > 0.2)
    .reduce((one, other) => (other.full / other.half > one.full / one.half ? other : one), slowest)
  return [
    { name: 'post of 400 characters, ms of processor', p50: share(post, 0.5), p99: share(post, 0.99) },
    { name: 'the same by the clock, ms', p50: share(byClock, 0.5), p99: share(byClock, 0.99) },
    { name: `10 kB, slowest (${slowest.name}), ms`, p50: slowest.full, p99: slowest.full },
    {
      name: `10 kB over 5 kB (${steepest.name})`,
      p50: steepest.full / steepest.half,
      p99: steepest.full / steepest.half,
    },
  ]
}
