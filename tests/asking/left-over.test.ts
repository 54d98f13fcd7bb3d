// Texts that tell more than was taken: no number hangs on what was left aside.
import { describe, expect, it } from 'vitest'
import { testDesk } from '../support/doors.ts'
import { amendedPhrasings, leftPhrasings, wholePhrasings } from './phrasings-left.ts'

const desk = testDesk()
const ask = (text = '') => desk.askText(text, { door: 'http' })

describe('free text', () => {
  it.each(leftPhrasings)('“%s” is asked for its %s', (text, input) => {
    const { status, missing, results } = ask(text)
    expect([status, results]).toEqual(['incomplete', {}])
    expect(missing.map((one) => one.input)).toContain(input)
  })

  it.each(amendedPhrasings)('“%s” is refused for “%s”', (text, words) => {
    const { status, faults, results } = ask(text)
    expect([status, results]).toEqual(['refused', {}])
    expect(faults.map(({ got }) => got)).toContain(words)
  })

  it.each(wholePhrasings)('“%s” is %s, %s', (text, became, holds) => {
    const { question, status, headline } = ask(text)
    expect(`${question} ${status}`).toBe(became)
    expect(headline).toContain(holds)
  })

  it('of two adapters none is told alone: no setting stands beside what is asked', () => {
    const text = 'first adapter 60 mm straight, then a 40 mm one at 90 degrees, lever 450 mm, target 100 Nm'
    expect(ask(text).missing.map(({ input }) => input)).toEqual(['adapter'])
    expect(ask(text)).not.toHaveProperty('ladder')
    // Where none was told, it does.
    expect(ask('crowfoot on a 450 mm lever, target 100 Nm, straight')).toHaveProperty('ladder')
  })
})
