// A bench run as a row of a list: no more than is told at a glance.
import type { RunFolder } from '../register/run-folders.ts'
import type { Words } from '../words/index.ts'
import { stateOf } from './run-document.ts'

export interface RunRow {
  readonly tag: string
  readonly asked: string
  readonly date: string
  readonly state: { readonly code: string; readonly text: string }
  readonly readings: number
  /** When it is to be measured again next. */
  readonly due?: string
}

export const runRow = (run: RunFolder, words: Words): RunRow => {
  const { tag, asked, date } = run.opening.entry.body
  const code = stateOf(run)
  const due = run.again.find(({ isDone }) => !isDone)?.due
  return {
    tag,
    asked,
    date,
    state: { code, text: words.bench.states[code] },
    readings: run.readings.reduce((sum, { entry }) => sum + entry.body.readings.length, 0),
    ...(due === undefined ? {} : { due }),
  }
}
