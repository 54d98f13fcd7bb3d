// Which language a reader gets, and how values are put into a sentence.
import { describe, expect, it } from 'vitest'
import { commaStyle, pointStyle } from '../../src/core/number-style.ts'
import { type LocaleName, languageFor, localeNames } from '../../src/words/index.ts'
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

  it.each<[string, LocaleName, LocaleName, string]>([
    ['de', 'en', 'de', 'a language without a region'],
    ['de-AT', 'en', 'de', 'a region that writes as the language does at home'],
    ['de-CH', 'en', 'de-CH', 'a region with another decimal mark'],
    ['de-LI', 'en', 'de-CH', 'one that writes as that region does'],
    ['de', 'de-CH', 'de-CH', 'a language without a region: as the shop writes it'],
    ['es-ES', 'en', 'es', 'at home'],
    ['es-MX', 'en', 'es-419', 'a point between units and tenths'],
    ['es-419', 'en', 'es-419', 'as Discord calls it'],
    ['es-AR', 'en', 'es', 'a comma between units and tenths'],
    ['en-ZA', 'en', 'en', 'another mark, but no words of its own'],
    ['de-!!', 'en', 'de', 'no tag at all behind the language'],
    ['xx, es-MX;q=0.8, de', 'en', 'de', 'the one that is wanted most of those that are spoken'],
  ])('for %j in a shop that speaks %s is %s: %s', (accepted, shop, locale) => {
    expect(languageFor(accepted, shop).locale).toBe(locale)
  })

  it('a flood of tags costs no memory and changes nothing', () => {
    for (let n = 0; n < 3000; n++) languageFor(`de-x-${n}`, 'en')
    expect(languageFor('de-CH', 'en').locale).toBe('de-CH')
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
