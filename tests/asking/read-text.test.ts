// The reader on our own phrasings, on what it takes and leaves aside, on claims, and on what may be several things.
import { describe, expect, it } from 'vitest'
import { readText } from '../../src/asking/read-text.ts'
import { desks } from '../support/desk.ts'
import { phrasings } from './phrasings.ts'
import { checkPhrasings } from './phrasings-checks.ts'
import { loosePhrasings } from './phrasings-loose.ts'

const ask = (text: string) => desks.inch.askText(text, { door: 'terminal' })
const foundIn = (text: string): string => {
  const { question, status, faults } = ask(text)
  return question === null ? (faults[0]?.code ?? 'choice') : `${question} ${status}`
}

describe('free text', () => {
  it.each([...phrasings, ...loosePhrasings, ...checkPhrasings].map(([text, found, shown]) => ({ text, found, shown })))(
    '“$text” is $found $shown',
    ({ text, found, shown }) => {
      expect(foundIn(text)).toBe(found)
      if (shown === undefined) return
      const { headline, results } = ask(text)
      const isLed = headline.includes(shown.startsWith('(') ? shown : ` ${shown}`)
      if (!isLed) expect(JSON.stringify(results)).toContain(`"text":"${shown}"`)
    },
  )

  it('says what was taken as what, and what was left aside', () => {
    const { taken, ignored } = readText(
      '2009 van, 4 bolts with 17mm heads: 75 lb-ft, 18 in wrench, 3 in crowfoot straight, what do I set?',
    )
    expect(taken).toEqual([
      { span: '75 lb-ft', input: 'torque', text: '75 lbf·ft' },
      { span: '18 in', input: 'lever', text: '18 in' },
      { span: '3 in', input: 'adapter', text: '3 in' },
      { span: 'straight', input: 'angle', text: '0°' },
    ])
    expect(ignored).toEqual(['2009', '4', '17mm'])
  })

  it('pounds beside a wrench are lbf·ft, shown as assumed; on a scale they are a pull', () => {
    const torque = ask('85 lbs with a 2" crowfoot straight, 15" wrench').given.find(({ input }) => input === 'torque')
    expect(torque).toMatchObject({ text: '85 lbf·ft', from: 'assumed' })
    const force = ask('fish scale 33 lbs at 15 inch, dial on 40 ft lb').given.find(({ input }) => input === 'force')
    expect(force).toMatchObject({ text: '33 lbf', from: 'asked' })
  })

  it('a bend that is only hinted at is asked, and never taken as straight', () => {
    const { status, missing } = ask('L-shaped crowfoot 2 in, wrench 18 in, 60 ft lb')
    expect([status, missing.map(({ input }) => input)]).toEqual(['incomplete', ['angle']])
    expect(ask('not the L-shaped kind: crowfoot 2 in straight, wrench 18 in, 60 ft lb').status).toBe('answered')
  })

  it('an extension that may be either is offered as both, without a number', () => {
    const { question, status, results, reading } = ask('does a 6 inch extension change my 80 ft lb setting?')
    expect([question, status, results]).toEqual([null, 'incomplete', {}])
    expect(reading?.alternatives.map((one) => one.question).sort()).toEqual(['adapter-setting', 'extension-bar'])
  })

  it('a torque without a unit is offered in each unit, and not taken', () => {
    const { status, missing, reading } = ask('crowfoot 2.5", wrench 18", want 110')
    expect(status).toBe('incomplete')
    expect(missing.map(({ input }) => input)).toEqual(['torque'])
    expect(reading?.alternatives.map(({ inputs }) => inputs['torque'])).toEqual(['110 N·m', '110 lbf·ft', '110 lbf·in'])
  })

  it('two directions in one text: the first is answered, the other is offered', () => {
    const { reading } = ask('50 lb ft, 18 in wrench, 6 in crowfoot at 90 degrees. And at 45 degrees?')
    expect(reading?.alternatives.map(({ inputs }) => inputs['angle'])).toContain('45°')
  })

  it("a maker's figure is refused with a pointer and without a number", () => {
    const { status, faults, results, pointers, headline } = ask(
      'what is the torque spec for M12 caliper bolts on a 2014 van?',
    )
    expect([status, faults[0]?.code, results]).toEqual(['refused', 'maker-figure', {}])
    expect(pointers.length).toBeGreaterThan(0)
    expect(headline).not.toMatch(/\d/)
  })
})

describe('what people quote', () => {
  const quoted = (text: string) => {
    const answer = ask(text)
    return { answer, codes: answer.cautions.map(({ code }) => code), names: Object.keys(answer.results) }
  }

  it('T (1 − A/L) is worked out as theirs, last, beside the right setting', () => {
    const { answer, codes, names } = quoted(
      '100 ft lb, 16 in wrench, 2 in crowfoot straight, my formula is T x (1 - A/L)',
    )
    expect(codes).toContain('quoted-one-minus')
    expect(names.at(-1)).toBe('as-quoted')
    expect(answer.results['as-quoted']).toMatchObject({ text: '87.5 lbf·ft' })
    expect(answer.headline).toContain('88.9')
    expect(answer.headline).not.toContain('87.5')
  })

  it('T/(1 + feet) gives no number while the lever is missing', () => {
    const { answer, codes, names } = quoted('want 100 ft lb, 9 inch crowfoot straight, I use I=A/(1+E), E in feet')
    expect([answer.status, names]).toEqual(['incomplete', []])
    expect(codes).toContain('quoted-one-foot')
  })

  it('that 90° needs no correction is said to be right, with the reason', () => {
    expect(
      quoted('crowfoot 2 in at 90 degrees, wrench 18 in, 75 ft lb, they say no correction needed').codes,
    ).toContain('quoted-square-same')
  })

  it('a percentage for anti-seize is worked out as theirs', () => {
    const { answer, codes } = quoted('anti-seize on 600 ft lb keel bolts, someone says decrease by 10%')
    expect(codes).toContain('quoted-percent-off')
    expect(answer.results['as-quoted']).toMatchObject({ text: '540 lbf·ft' })
    expect(quoted('take a quarter off for anti-seize, 120 Nm').answer.results['as-quoted']).toMatchObject({
      text: '90 N·m',
    })
    expect(quoted('with anti-seize is 80% of the dry figure of 100 Nm ok').answer.results['as-quoted']).toMatchObject({
      text: '80 N·m',
    })
  })

  it('a bar under the drive that is taken for an adapter is told so', () => {
    expect(quoted('extension bar 250mm means formula L/(L+250)? its going straight down. 35nm').codes).toContain(
      'quoted-bar-as-adapter',
    )
  })
})

describe('where several readings are offered', () => {
  it('only what none of them uses was left aside', () => {
    const { outcome, ignored, alternatives } = readText(
      'clicked at 80 ft lbs, crowfoot 3 in straight, 18 in wrench, 5 bolts',
    )
    expect(outcome).toBe('choice')
    expect(alternatives.length).toBeGreaterThan(1)
    expect(ignored).toEqual(['5'])
  })
})

describe('an extension of which nobody says where it sits', () => {
  it.each([
    'tightened to 100 Nm with an extension of 100 mm on a wrench of 400 mm, what is the actual torque?',
    'J’ai serré à 100 Nm avec une rallonge de 100 mm sur une clé de 400 mm, quel est le couple réel ?',
  ])('is asked back as both that it may be, with its numbers: %s', (text) => {
    const { outcome, alternatives } = readText(text)
    expect(outcome).toBe('choice')
    expect(alternatives).toEqual([
      { question: 'adapter-reading', inputs: { reading: '100 N·m', lever: '400 mm', adapter: '100 mm' } },
      { question: 'extension-bar', inputs: { torque: '100 N·m', length: '100 mm' } },
    ])
  })
})
