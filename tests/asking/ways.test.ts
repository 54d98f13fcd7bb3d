// Texts that hold a direction, a place of a hand or rows of readings: the right number, or none.
import { describe, expect, it } from 'vitest'
import { testDesk } from '../support/doors.ts'
import {
  backPhrasings,
  drivePhrasings,
  handPhrasings,
  otherPhrasings,
  type Phrasing,
  rowPhrasings,
  turnedPhrasings,
  unclearPhrasings,
} from './phrasings-ways.ts'

const desk = testDesk()
const ask = (text = '') => desk.askText(text, { door: 'http' })

describe('free text', () => {
  it.each<Phrasing>([...backPhrasings, ...unclearPhrasings, ...drivePhrasings, ...rowPhrasings, ...otherPhrasings])(
    '“%s” is %s',
    (text, became, holds = '') => {
      const { question, status, headline, results } = ask(text)
      expect(`${question} ${status}`).toBe(became)
      expect(headline).toContain(holds)
      if (status !== 'answered') expect(results).toEqual({})
    },
  )

  it.each(handPhrasings)('“%s” is refused for “%s”', (text, words) => {
    const { status, faults, results } = ask(text)
    expect([status, results]).toEqual(['refused', {}])
    expect(faults.map(({ got }) => got)).toContain(words)
  })

  it.each(turnedPhrasings)('“%s” is the maker’s', (text) => {
    const { status, faults } = ask(text)
    expect([status, faults.map(({ code }) => code)]).toEqual(['refused', ['maker-figure']])
  })
})
