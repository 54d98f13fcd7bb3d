// Which of the shop's wrenches, asked in free text: the register is looked up, and every door hands on what was found.
import { describe, expect, it } from 'vitest'
import { askTextKnowing, createDesk } from '../../src/desk/desk.ts'
import { runTerminal } from '../../src/faces/terminal/terminal.ts'
import type { Answer } from '../../src/questions/answer.ts'
import { isQuestionName } from '../../src/questions/index.ts'
import { ask } from '../support/desk.ts'
import { testHttp } from '../support/doors.ts'
import { loanFor } from '../support/fleet.ts'

const looked: string[] = []
const desk = createDesk({
  system: 'metric',
  locale: 'en',
  borrow: (name) => {
    const loan = isQuestionName(name) ? loanFor(name) : undefined
    if (loan) looked.push(name)
    return loan && Promise.resolve(loan)
  },
})
const text = 'which of our wrenches does 120 N·m with a 45 mm crowfoot'
const truth = ask('which-wrench', { torque: '120 N·m', adapter: '45 mm' })

describe('free text that asks for a wrench of the shop', () => {
  it('gets what the question gets', async () => {
    const answer = await askTextKnowing(desk, text, { door: 'terminal' })
    expect([answer.question, answer.status]).toEqual(['which-wrench', 'answered'])
    expect(answer.results).toEqual(truth.results)
    expect(answer.reading?.taken.map(({ input, span }) => [input, span])).toEqual([
      ['torque', '120 N·m'],
      ['adapter', '45 mm'],
    ])
  })

  it('is looked up for that alone', () => {
    looked.length = 0
    expect(desk.borrowForText('75 lb-ft, 18 in wrench, 3 in crowfoot straight')).toBeUndefined()
    expect(desk.borrowForText('a'.repeat(20_000))).toBeUndefined()
    expect(desk.borrowForText(7)).toBeUndefined()
    expect(looked).toEqual([])
  })

  it('gets it over HTTP, on the page and in the terminal', async () => {
    const http = await testHttp(desk)
    const reply = await http.inject(`/v1/ask?${new URLSearchParams({ text })}`)
    expect(reply.json<Answer>().results).toEqual(JSON.parse(JSON.stringify(truth.results)))
    const page = await http.inject(`/ask?${new URLSearchParams({ text })}`)
    expect(page.body).toContain(truth.headline)
    await http.close()
    const lines: string[] = []
    const io = { out: (line: string) => lines.push(line), err: (line: string) => lines.push(line) }
    expect(await runTerminal([text], desk, io)).toBe(0)
    expect(lines).toContain(truth.headline)
  })

  it('is told that no register is here where none is', () => {
    const alone = createDesk({ system: 'metric', locale: 'en' })
    const { status, faults } = alone.askText(text, { door: 'terminal' })
    expect([status, faults[0]?.code]).toEqual(['refused', 'not-allowed'])
  })

  it.each([
    'which wrench is right, one clicks at 60 and the other shows 66 ft lb',
    'which torque wrench should I buy for 100 Nm',
    'which wrench setting for 100 Nm with a 3 in crowfoot on 18 in',
  ])('“%s” is no such text', (other) => expect(alone(other)).not.toBe('which-wrench'))
})

const alone = (other: string): string | null =>
  createDesk({ system: 'metric', locale: 'en' }).askText(other, { door: 'terminal' }).question
