// Which language a reader gets, and how values are put into a sentence.
import { describe, expect, it } from 'vitest'
import { commaStyle, pointStyle } from '../../src/core/number-style.ts'
import { languageFor, localeNames } from '../../src/words/index.ts'
import { render } from '../../src/words/render.ts'

describe('the language of a reader', () => {
  it.each<[string | undefined, string]>([
    [undefined, 'nothing is told'],
    ['', 'nothing is told'],
    ['en', 'it is spoken'],
    ['en-GB', 'its language is spoken'],
    ['EN-us', 'its case does not matter'],
    ['xx, en;q=0.5', 'the first is not spoken, the second is'],
    ['xx-YY', 'none is spoken: the shop’s own'],
    ['en;q=0', 'it is not wanted, and there is no other'],
    [`${'x,'.repeat(5000)}en`, 'the header is longer than anyone’s list'],
  ])('for %j is English: %s', (accepted) => {
    expect(languageFor(accepted, 'en').locale).toBe('en')
  })

  it('writes its own decimal mark', () => {
    for (const name of localeNames) expect([pointStyle, commaStyle]).toContain(languageFor(name, 'en').style)
    expect(languageFor('en', 'en').style).toBe(pointStyle)
  })
})

describe('a template', () => {
  it.each([
    ['Set {setting}.', 'Set 5.'],
    ['{setting} and {setting}', '5 and 5'],
    ['no place at all', 'no place at all'],
    ['', ''],
  ])('%j becomes %j', (template, text) => {
    expect(render(template, (place) => (place === 'setting' ? '5' : undefined))).toBe(text)
  })

  it.each(['{set ting}', '{ setting }', 'a } b', '{setting'])('%j has a brace that nobody fills: a bug', (template) => {
    expect(() => render(template, () => '5')).toThrow('stray brace')
  })

  it('fills places of any letters', () => {
    expect(render('{runOn}', () => '5')).toBe('5')
  })

  it('does not look into the values that it is given', () => {
    expect(render('{a}', () => '{b}')).toBe('{b}')
  })

  it('with a place that nothing fills is a bug', () => {
    expect(() => render('Set {nothing}.', () => undefined)).toThrow('bug: nothing to put at {nothing}')
  })
})
