// Answers a second in process, question by question: the built desk alone, no door.
import { questionNames } from '../../src/questions/index.ts'
import { cases } from '../contract/cases.ts'
import { builtDesk } from './built.ts'

export interface InProcess {
  readonly question: string
  readonly aSecond: number
  readonly p50: number
  readonly p99: number
}

const ROUNDS = 1500
// Of three series the middle one counts: a long collection of garbage can fall into any.
const SERIES = 3
const MOST_READINGS = 500

// Two sets as long as they may be, which differ a little and scatter.
const longSets = {
  a: `${Array.from({ length: MOST_READINGS }, (_, n) => 100 + Math.sin(n)).join(' ')} N·m`,
  b: `${Array.from({ length: MOST_READINGS }, (_, n) => 103.8 + Math.cos(n)).join(' ')} N·m`,
}

export const benchDesk = async (): Promise<InProcess[]> => {
  const desk = (await builtDesk()).createDesk({ system: 'metric', locale: 'en' })
  const asked = questionNames.flatMap((question) => {
    const found = cases.find((one) => one.question === question && one.status === 'answered')
    return found ? [{ name: question as string, question, raw: found.raw }] : []
  })
  const all = [...asked, { name: 'compare, 500 and 500', question: 'compare' as const, raw: longSets }]
  // All are asked before any is timed: what the first one warms is shared by the others.
  for (const { question, raw } of all) for (let n = 0; n < ROUNDS; n++) desk.ask(question, raw, { door: 'terminal' })
  return all.map(({ name, question, raw }) => {
    const ask = () => desk.ask(question, raw, { door: 'terminal' })
    if (ask().status !== 'answered') throw new Error(`${name} is not answered: nothing to time`)
    const series = Array.from({ length: SERIES }, () => timesOf(ask))
    const middle = (of: (times: readonly number[]) => number): number =>
      series.map(of).sort((one, other) => one - other)[(SERIES - 1) / 2] as number
    const [p50, p99] = [0.5, 0.99].map((share) => middle((times) => times[Math.floor(ROUNDS * share)] as number))
    return {
      question: name,
      aSecond: middle((times) => ROUNDS / times.reduce((sum, time) => sum + time, 0)) * 1000,
      p50: (p50 as number) * 1000,
      p99: (p99 as number) * 1000,
    }
  })
}

const timesOf = (ask: () => unknown): number[] => {
  const times = Array.from({ length: ROUNDS }, () => {
    const before = performance.now()
    ask()
    return performance.now() - before
  })
  return times.sort((one, other) => one - other)
}
