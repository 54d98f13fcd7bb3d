// Answers a second in process, question by question: the desk alone, no door.
import { createDesk } from '../../src/desk/desk.ts'
import { questionNames } from '../../src/questions/index.ts'
import { cases } from '../contract/cases.ts'

export interface InProcess {
  readonly question: string
  readonly aSecond: number
  readonly p50: number
  readonly p99: number
}

const ROUNDS = 1500

export const benchDesk = (): InProcess[] => {
  const desk = createDesk({ system: 'metric', locale: 'en' })
  return questionNames.flatMap((question) => {
    const found = cases.find((one) => one.question === question && one.status === 'answered')
    if (!found) return []
    const ask = () => desk.ask(question, found.raw, { door: 'terminal' })
    if (ask().status !== 'answered') throw new Error(`${question} is not answered: nothing to time`)
    for (let n = 0; n < ROUNDS; n++) ask()
    const times: number[] = []
    const start = performance.now()
    for (let n = 0; n < ROUNDS; n++) {
      const before = performance.now()
      ask()
      times.push(performance.now() - before)
    }
    const whole = performance.now() - start
    times.sort((a, b) => a - b)
    return [
      {
        question,
        aSecond: (ROUNDS / whole) * 1000,
        p50: (times[ROUNDS / 2] as number) * 1000,
        p99: (times[Math.floor(ROUNDS * 0.99)] as number) * 1000,
      },
    ]
  })
}
