// Every language says the same: the numbers of an answer never depend on its words, no place is left open, decimal marks are the
// reader's own, and what must be short is.
import { describe, expect, it } from 'vitest'
import type { Answer } from '../../src/questions/answer.ts'
import { en } from '../../src/words/en/index.ts'
import { type LocaleName, languages, localeNames, type Words } from '../../src/words/index.ts'
import { inShape } from '../../src/words/shape.ts'
import { cases } from '../contract/cases.ts'
import { testDesk } from '../support/doors.ts'
import { loanFor } from '../support/fleet.ts'

const others = localeNames.filter((name) => name !== 'en')

type Tree = { readonly [name: string]: string | Tree }
const textsIn = (tree: Tree, path = ''): Array<readonly [string, string]> =>
  Object.entries(tree).flatMap(([name, part]) =>
    typeof part === 'string' ? [[`${path}${name}`, part] as const] : textsIn(part, `${path}${name}.`),
  )
const placesOf = (text: string): string[] => [...new Set(text.match(/\{[a-zA-Z]+\}/g) ?? [])].sort()

const english = textsIn(en as unknown as Tree)

// Numbers without words: all that a document holds but what people read.
const numbersOf = (answer: Answer): unknown =>
  JSON.parse(
    JSON.stringify(answer, (name, value) =>
      [
        'text',
        'headline',
        'label',
        'say',
        'numbers',
        'shown',
        'formula',
        'ask',
        'measure',
        'hint',
        'allowed',
        'span',
      ].includes(name)
        ? undefined
        : value,
    ),
  )

it('a key or a place that is missing, or one too many, does not compile', () => {
  // @ts-expect-error a section is missing
  inShape({ say: en.say })
  // @ts-expect-error a place is missing
  inShape({ ...en, digest: { ...en.digest, title: 'This week' } })
  // @ts-expect-error a place is there that nobody fills
  inShape({ ...en, digest: { ...en.digest, title: 'This week, {date}, {nobody}' } })
  expect(inShape(en)).toBe(en)
})

describe.each(others)('%s', (name: LocaleName) => {
  const { words, style } = languages[name]
  const texts = new Map(textsIn(words as unknown as Tree))

  it('has every text, with the places of the English one', () => {
    expect([...texts.keys()].sort()).toEqual(english.map(([key]) => key).sort())
    for (const [key, text] of english) {
      expect(placesOf(texts.get(key) ?? ''), key).toEqual(placesOf(text))
      if (text !== '') expect(texts.get(key), key).not.toBe('')
    }
  })

  it('writes decimals its own way in its texts', () => {
    if (style.decimal === '.') return
    for (const [key, text] of texts) {
      // Thread sizes, classes of bolts, clauses of standards and versions are names.
      const bare = text.replace(/M\d+x\d\.\d+|\b(8\.8|10\.9|12\.9|1234\.5)\b|ISO [\d:-]+/g, '')
      expect(bare, key).not.toMatch(/\d\.\d/)
    }
  })

  it('keeps what Discord shows within its limits', () => {
    const { topics, offers, chatRegister, chat, inputs } = words as Words
    const short = [topics, offers, chatRegister.offers, chat.settings.offers, chat.settings.inputs, chat.privacy.offers]
    for (const list of short) for (const text of Object.values(list)) expect(text.length, text).toBeLessThanOrEqual(100)
    for (const { ask } of Object.values(inputs)) expect(ask.length, ask).toBeLessThanOrEqual(140)
    for (const key of Object.values(chat.keys)) expect(key.length, key).toBeLessThanOrEqual(80)
    for (const label of [chat.save.wrench, chat.save.title, chat.wrong.title, chat.wrong.what])
      expect(label.length, label).toBeLessThanOrEqual(45)
    for (const command of Object.values(chat.names)) {
      expect(command).toMatch(/^[-\p{L}\p{N}]{1,32}$/u)
      expect(command).toBe(command.toLowerCase())
    }
  })

  it('answers every question of the table with the same numbers, and says all of it', () => {
    for (const { question, raw } of cases) {
      const loan = loanFor(question)
      const told = testDesk().ask(question, raw, { door: 'terminal', locale: name }, loan)
      const plain = testDesk().ask(question, raw, { door: 'terminal', locale: 'en' }, loan)
      expect(numbersOf(told), question).toEqual(numbersOf(plain))
      expect(JSON.stringify(told)).not.toMatch(/undefined|\{[a-z]+\}/)
      if (style.decimal === ',' && told.status === 'answered')
        for (const { text } of told.given)
          if (/^\d+\.\d+ (N·m|mm|lbf·ft|in)$/.test(text)) expect(text).toBe('its own mark')
    }
  })
})
