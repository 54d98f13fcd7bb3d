// Free text in German, French and Spanish: our own phrasings, the same answer in every language, and English left as it is.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fold } from '../../src/asking/fold.ts'
import { inEnglish } from '../../src/asking/in-english.ts'
import { languageOf } from '../../src/asking/language.ts'
import { piecesOf } from '../../src/asking/pieces.ts'
import { readText } from '../../src/asking/read-text.ts'
import { more } from '../support/asked-more.ts'
import { asked } from '../support/asked-score.ts'
import { desks } from '../support/desk.ts'
import { phrasings } from './phrasings.ts'
import { frenchPhrasings } from './phrasings-french.ts'
import { germanPhrasings } from './phrasings-german.ts'
import { spanishPhrasings } from './phrasings-spanish.ts'

const languageIn = (text: string) => languageOf(piecesOf(fold(text), text))
const ask = (text: string) => desks.metric.askText(text, { door: 'terminal' })
const foundIn = (text: string): string => {
  const { question, status, faults } = ask(text)
  return question === null ? (faults[0]?.code ?? 'choice') : `${question} ${status}`
}

const foreign = { german: germanPhrasings, french: frenchPhrasings, spanish: spanishPhrasings } as const
const all = Object.values(foreign).flat()

describe.each(Object.entries(foreign))('%s', (_name, rows) => {
  it.each(rows.map(([text, found, shown]) => ({ text, found, shown })))(
    '“$text” is $found $shown',
    ({ text, found, shown }) => {
      expect(foundIn(text)).toBe(found)
      if (shown !== undefined) expect(JSON.stringify(ask(text).results)).toContain(`"text":"${shown}"`)
    },
  )
})

describe('a text in another language', () => {
  it('is known as such by its little words and those of the trade', () => {
    for (const [name, rows] of Object.entries(foreign))
      expect(rows.filter(([text]) => languageIn(text) === name).length, name).toBeGreaterThanOrEqual(rows.length - 2)
  })

  it('gets the same results, told in whichever language', () => {
    const texts = [
      'spec 90 Nm, crowfoot 60 mm at 30 degrees, wrench 450 mm. What do I set?',
      'Vorgabe 90 Nm, Hahnenfuß 60 mm unter 30 Grad, Schlüssel 450 mm. Was stelle ich ein?',
      "Couple de 90 Nm, patte d'oie de 60 mm à 30 degrés, clé de 450 mm. Combien régler ?",
      'El manual dice 90 Nm, pata de gallo de 60 mm a 30 grados, llave de 450 mm. ¿Qué ajusto?',
    ]
    const [first, ...others] = texts.map((text) => ask(text).results)
    expect(JSON.stringify(first)).toContain('80.7')
    for (const other of others) expect(other).toEqual(first)
  })

  it.each([
    'Adapter 60 mm nicht ganz gerade, Schlüssel 350 mm, 80 Nm soll',
    'Der Adapter von 60 mm steht nicht in einer Linie, Schlüssel 350 mm, 80 Nm soll',
    'adaptateur de 60 mm pas tout à fait droit, clé de 350 mm, il faut 80 Nm',
    "l'adaptateur de 60 mm n'est pas dans l'alignement, clé de 350 mm, il faut 80 Nm",
    'adaptador de 60 mm que no está recto, llave de 350 mm, necesito 80 Nm',
    'El adaptador no va en línea, 60 mm, llave de 350 mm, necesito 80 Nm',
    "adapter 60 mm isn't really in line, wrench 350 mm, 80 Nm",
  ])('“%s” is asked for the angle', (text) => {
    const { status, missing } = ask(text)
    expect([status, missing.map(({ input }) => input)]).toEqual(['incomplete', ['angle']])
  })

  it.each([
    ['Der Adapter zeigt zurück zur Hand, 50 mm, Schlüssel 400 mm, 70 Nm soll ankommen', '80 N·m'],
    ['Adaptateur retourné vers la main, 50 mm, clé 400 mm, 70 Nm voulu', '80 N·m'],
    ['El adaptador apunta hacia la mano, 50 mm, llave de 400 mm, necesito 70 Nm', '80 N·m'],
  ])('“%s” points back', (text, shown) => expect(ask(text).headline).toContain(shown))

  it.each([
    ['german', 'Drehmomentschluessel', 'torque wrench'],
    ['german', 'HAHNENFUSS', 'Crowfoot'],
    ['german', 'Schlüssels', 'wrench'],
    ['french', 'cle dynamometrique', 'torque wrench'],
    ['french', "l'adaptateur", 'the adapter'],
    ['spanish', 'llave dinamometrica', 'torque wrench'],
    ['spanish', 'llaves', 'wrench'],
  ] as const)('%s: %s is %s', (name, typed, meant) =>
    expect(inEnglish(typed, name).text.toLowerCase()).toBe(meant.toLowerCase()),
  )

  it('is quoted as it was typed', () => {
    const text = 'Ich brauche 80 Nm, Hahnenfuß 2 Zoll gerade, Drehmomentschlüssel 16 Zoll'
    expect(readText(text).taken).toEqual([
      { span: '80 Nm', input: 'torque', text: '80 N·m' },
      { span: '16 Zoll', input: 'lever', text: '16 in' },
      { span: '2 Zoll', input: 'adapter', text: '2 in' },
      { span: 'gerade', input: 'angle', text: '0°' },
    ])
  })

  it('gives spans of itself, whatever else stands around', () => {
    const pieces = fc.oneof(
      fc.constantFrom(...all.flatMap(([text]) => text.split(' '))),
      fc.string({ maxLength: 6 }),
      fc.constantFrom("l'", 'ß', 'Ü', '¿', '\n', 'é', '½'),
    )
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 30 }), (parts) => {
        const text = parts.join(' ')
        const { taken, ignored } = readText(text)
        for (const { span } of taken) expect(text).toContain(span)
        for (const span of ignored) expect(text).toContain(span)
      }),
      { numRuns: 500, seed: 4 },
    )
  })
})

describe('an English text', () => {
  it('is taken for none of the others', () => {
    const texts = [...asked, ...more].map(({ text }) => text)
    for (const text of [...texts, ...phrasings.map(([phrasing]) => phrasing)])
      expect(languageIn(text), text).toBeUndefined()
  })

  it.each([
    'die grinder broke the stud, el camino, la la la',
    'an old man at the bar has a wrench',
    'par for the course: 80 lb-ft',
    'wrench 18 in, crowfoot 3 in, 75 lb-ft',
  ])('“%s” is one', (text) => expect(languageIn(text)).toBeUndefined())
})
