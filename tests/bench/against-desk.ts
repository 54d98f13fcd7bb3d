// One side in process: the built desk of a tree, in a process of its own that measures whenever it is told to.
import { pathToFileURL } from 'node:url'
import { cases } from '../contract/cases.ts'
import type { Measures } from './against-table.ts'

const WARM = 300
const ROUNDS = 1500
const asked = ['adapter-setting', 'bolt-torque', 'wrench-check', 'convert', 'does-it-matter'] as const

const [, , tree = ''] = process.argv
const { createDesk } = (await import(
  pathToFileURL(`${tree}/dist/src/desk/desk.js`).href
)) as typeof import('../../src/desk/desk.ts')
const desk = createDesk({ system: 'metric', locale: 'en' })

const timed = (work: () => unknown): number => {
  for (let n = 0; n < WARM; n++) work()
  const times = Array.from({ length: ROUNDS }, () => {
    const before = performance.now()
    work()
    return performance.now() - before
  })
  return (times.sort((one, other) => one - other)[ROUNDS / 2] as number) * 1000
}

const measure = (): Measures =>
  Object.fromEntries(
    asked.flatMap((question) => {
      const found = cases.find((one) => one.question === question && one.status === 'answered')
      const ask = () => desk.ask(question, found?.raw ?? {}, { door: 'terminal' })
      // What a tree does not answer yet is not measured in it.
      return found && ask().status === 'answered' ? [[`${question}, µs`, timed(ask)]] : []
    }),
  )

process.on('message', () => process.send?.(measure()))
process.on('disconnect', () => process.exit(0))
process.send?.('ready')
