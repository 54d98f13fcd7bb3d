// The same question through every door: the same digits, the same cautions, the same fault codes.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { escapeChat } from '../../src/faces/chat/reply.ts'
import { answerSchema } from '../../src/questions/answer.ts'
import { questionNames } from '../../src/questions/index.ts'
import { type DoorName, type Doors, openDoors, testDesk } from '../support/doors.ts'
import { cases } from './cases.ts'

let doors: Doors
let close: () => Promise<void>
beforeAll(async () => {
  const opened = await openDoors()
  doors = opened.doors
  close = opened.close
})
afterAll(() => close())

const names: readonly DoorName[] = ['http get', 'http post', 'terminal', 'terminal --json', 'chat']

describe('one table of cases through every door', () => {
  it('asks every question at least once', () => {
    expect([...new Set(cases.map(({ question }) => question))].sort()).toEqual([...questionNames].sort())
  })

  it.each(cases)('$name', async ({ question, raw, status, shows = [], faults = [] }) => {
    const truth = testDesk().ask(question, raw, { door: 'terminal' })
    expect(answerSchema.safeParse(truth).error).toBeUndefined()
    expect(truth.status).toBe(status)
    expect(truth.faults.map(({ code }) => code)).toEqual(faults)
    for (const name of names) {
      const shown = await doors[name](question, raw)
      expect(shown.status, name).toBe(status)
      if (shown.document) expect(shown.document, name).toEqual(JSON.parse(JSON.stringify(truth)))
      const said = [
        truth.headline,
        ...truth.cautions.map(({ text }) => text),
        ...shows,
        ...truth.faults.map(({ hint }) => hint),
      ]
      const inJson = shown.document !== undefined
      for (const text of said) {
        const expected = name === 'chat' ? escapeChat(text) : inJson ? JSON.stringify(text).slice(1, -1) : text
        expect(shown.text.includes(expected) || shown.text.includes(text), `${name} does not say “${text}”`).toBe(true)
      }
    }
  })
})
