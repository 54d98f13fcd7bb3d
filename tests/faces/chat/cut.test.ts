// Texts cut for Discord: never longer than it takes, never in the middle of a character.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cut } from '../../../src/faces/chat/cut.ts'

describe('a text that is cut', () => {
  it.each([
    ['fits', 'abc', 3, '', 'abc'],
    ['is longer', 'abcd', 3, '', 'abc'],
    ['is longer and says so', 'abcd', 3, '…', 'ab…'],
    ['would end in half a pair', 'ab🔧d', 3, '', 'ab'],
    ['would end in half a pair before the mark', 'ab🔧de', 4, '…', 'ab…'],
    ['would end in part of a family', 'a👩‍🔧bcdefgh', 4, '', 'a'],
    ['would lose the mark of a letter', 'abe\u0301f', 3, '', 'ab'],
    ['is one character alone, longer than all', `e${'\u0301'.repeat(9)}`, 3, '', 'e\u0301\u0301'],
    ['is pairs that make one character alone', '👩‍👩‍👧', 4, '', '👩‍'],
  ])('%s', (_name, text, most, end, expected) => {
    expect(cut(text, most, end)).toBe(expected)
  })

  it('is well formed and short enough, whatever it was', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), fc.integer({ min: 2, max: 40 }), (text, most) => {
        for (const end of ['', '…']) {
          const short = cut(text, most, end)
          expect(short.length).toBeLessThanOrEqual(most)
          expect(short).not.toMatch(/\p{Surrogate}/u)
        }
      }),
    )
  })
})
