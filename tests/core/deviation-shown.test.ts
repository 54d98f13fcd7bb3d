// A deviation as people are told it: the side in a word, two figures, and never on the other side of its limit than it is.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { deviationShown } from '../../src/core/deviation-shown.ts'
import { deviation } from '../../src/mechanics/deviation.ts'
import { deviationText, signedText } from '../../src/words/deviation-text.ts'
import { languages } from '../../src/words/index.ts'
import { SEED } from '../support/random.ts'

const { words, style } = languages.en
const told = (percent: number, limit?: number): string => deviationText(percent, words.deviation, style, limit)

describe('a deviation in words', () => {
  it.each([
    [3.35, '3.4 % low (gives less)'],
    [-0.244, '0.24 % high (gives more)'],
    [0.1686, '0.17 % low (gives less)'],
    [1.009, '1 % low (gives less)'],
    [-0.00667, '0.01 % high (gives more)'],
    [0.004, 'on the mark'],
    [0, 'on the mark'],
    [-21.95, '22 % high (gives more)'],
  ])('tells %d as %s', (percent, text) => expect(told(percent)).toBe(text))

  it.each([
    [4.04, '4.04 % low (gives less)'],
    [-4.004, '4.004 % high (gives more)'],
    [4, '4 % low (gives less)'],
    [3.96, '4 % low (gives less)'],
    [3.94, '3.9 % low (gives less)'],
  ])('beside a limit of 4 tells %d as %s', (percent, text) => expect(told(percent, 4)).toBe(text))

  it('a wrench that gives less than it says is low, one that gives more is high (ISO 6789, the sign of the deviation)', () => {
    expect(deviationShown(deviation(100, 96)).side).toBe('low')
    expect(deviationShown(deviation(100, 104)).side).toBe('high')
  })

  it('is near what it is, and lies on the side of its limit on which it is', () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 60, noNaN: true }), fc.constantFrom(3, 4, 6), (percent, limit) => {
        const { side, size } = deviationShown(percent, limit)
        expect(size > limit).toBe(Math.abs(percent) > limit)
        expect(Math.abs(size - Math.abs(percent))).toBeLessThanOrEqual(Math.max(0.0051, Math.abs(percent) * 0.05))
        if (side !== 'right') expect(side).toBe(percent > 0 ? 'low' : 'high')
      }),
      { seed: SEED },
    )
  })

  it.each(Object.keys(languages) as (keyof typeof languages)[])('%s tells low, high and right apart', (name) => {
    const { words: own, style: mark } = languages[name]
    const all = [2.5, -2.5, 0].map((percent) => deviationText(percent, own.deviation, mark))
    expect(new Set(all).size).toBe(3)
    expect(all[0]).toMatch(/^2[.,]5 %/)
  })
})

it('beside the number of a document the word agrees with its sign, and the number stays as it is', () => {
  const { deviation: own } = words
  expect(signedText({ value: -0.772, text: '-0.772 %' }, own)).toBe('-0.772 % (gives more)')
  expect(signedText({ value: 1.523, text: '1.523 %' }, own)).toBe('1.523 % (gives less)')
  expect(signedText({ value: 0, text: '0 %' }, own)).toBe('0 %')
})
