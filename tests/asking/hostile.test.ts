// Whatever is written: an answer of the right shape, nothing that comes alive, and a work that grows with the text and no faster.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fold } from '../../src/asking/fold.ts'
import { readText } from '../../src/asking/read-text.ts'
import { renderReply } from '../../src/faces/chat/reply.ts'
import { answerSchema } from '../../src/questions/answer.ts'
import { languages } from '../../src/words/index.ts'
import { testDesk } from '../support/doors.ts'
import { hostileTexts } from '../support/hostile-texts.ts'

const desk = testDesk()
const ask = (text: unknown) => desk.askText(text, { door: 'terminal' })

describe('hostile text', () => {
  it('is folded character by character, so that every span points where it was typed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 400 }), (text) => fold(text).length === text.length),
      { numRuns: 500 },
    )
  })

  it('gives a document of the declared shape, with spans of the text itself', () => {
    const piece = fc.oneof(
      fc.string({ maxLength: 12 }),
      fc.string({ unit: 'binary', maxLength: 8 }),
      fc.constantFrom(
        '75 lb-ft',
        '3 in',
        'crowfoot',
        '18"',
        'wrench',
        '±',
        '4:1',
        '1/0',
        'M12',
        '@everyone',
        '<b>',
        '`',
        '90°',
        '+',
        '8.8',
        '10,000',
        '\u202e',
        '\n',
        '1e9',
        '½',
      ),
    )
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 30 }), (pieces) => {
        const text = pieces.join(' ')
        const answer = ask(text)
        expect(answerSchema.safeParse(answer).error).toBeUndefined()
        for (const { span } of answer.reading?.taken ?? []) expect(text).toContain(span)
        for (const span of answer.reading?.ignored ?? []) expect(text).toContain(span)
      }),
      { numRuns: 1000, seed: 1 },
    )
  })

  it.each(Object.entries(hostileTexts(2000)))('%s is read and answered', (_name, text) => {
    expect(answerSchema.safeParse(ask(text)).error).toBeUndefined()
  })

  // Counting pieces is no clock: a text of twice the length may give no more than about twice the pieces, cues and alternatives.
  it.each(Object.keys(hostileTexts(10)))('%s gives no more than its length in what is handed on', (name) => {
    const [small, large] = [2000, 4000].map((size) => readText(hostileTexts(size)[name as never] as string))
    expect((large?.ignored.length ?? 0) + (large?.taken.length ?? 0)).toBeLessThanOrEqual(
      2 * ((small?.ignored.length ?? 0) + (small?.taken.length ?? 0)) + 10,
    )
    expect(large?.alternatives.length ?? 0).toBeLessThanOrEqual(8)
  })

  it('no markup or mention comes alive in chat', () => {
    const text =
      '@everyone <@123> **bold** `code` [x](http://x) 75 lb-ft@everyone, 18 in wrench, 3 in crowfoot straight || 5 `in` pipe <b>'
    const { data } = renderReply(ask(text), languages.en.words)
    const shown = JSON.stringify(data.embeds)
    expect(data.allowed_mentions).toEqual({ parse: [] })
    expect(shown).not.toMatch(/(?<!\\)(?:@everyone|<@123>|\*\*bold|`code|\]\()/)
  })

  it.each([
    [undefined, 'empty'],
    ['', 'empty'],
    ['   \n', 'empty'],
    [7, 'not-allowed'],
    [null, 'not-allowed'],
    [['a', 'b'], 'not-allowed'],
    ['ü'.repeat(5001), 'too-long'],
  ])('%s is refused: %s', (text, code) => {
    const answer = ask(text)
    expect([answer.status, answer.question, answer.faults[0]?.code]).toEqual(['refused', null, code])
  })

  it('10 kB exactly is read', () => expect(ask('a '.repeat(5000)).faults[0]?.code).toBe('out-of-scope'))
})
