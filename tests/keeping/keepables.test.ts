// What can be kept, from typed texts to entries: every example makes a whole entry, every slip a fault, all at once.
import { describe, expect, it } from 'vitest'
import { readQuestion } from '../../src/desk/read.ts'
import { keepables } from '../../src/keeping/index.ts'
import { admissionFaults } from '../../src/register/admit.ts'
import { type Draft, type Kind, kindNames, kinds } from '../../src/register/records.ts'
import { bookOf, by, card, gauge } from '../register/shop.ts'

type Raw = Readonly<Record<string, string | readonly string[]>>

const make = (kind: Kind, raw: Raw) => {
  const keepable = keepables[kind]
  const { values, faults, missing } = readQuestion(keepable, raw)
  const told = faults.map(({ tell, input }) => `${tell} ${input}`)
  if (told.length > 0 || missing.length > 0) return { faults: told, missing }
  return { faults: told, missing, body: keepable.body(values, raw) }
}

const wrench = {
  tag: 'W-07',
  name: 'Half-inch click wrench',
  'wrench-type': 'click',
  most: '150 ft-lbs',
} as const
const check = {
  wrench: 'W-07',
  date: '2026-03-01',
  way: 'pull',
  state: 'as-found',
  points: '50 lbf·ft: 49.4; 51 lb',
  distance: '12 in',
} as const
const { distance: _none, ...noDistance } = check
const onTester = { ...noDistance, way: 'tester', points: '50 lbf·ft: 49.4; 51 lbf·ft' }
const event = { wrench: 'W-07', what: 'dropped', date: '2026-03-01' } as const

describe('a text', () => {
  it.each<[string, string, string]>([
    ['NUL', 'a\0b', 'text-hidden'],
    ['an escape', '\u001b[31mred', 'text-hidden'],
    ['half a character', 'x\ud800', 'text-hidden'],
    ['what is no character', 'x\uffff', 'text-hidden'],
    ['a line end', 'Bay\n2', 'text-one-line'],
    ['a tab', 'Bay\t2', 'text-one-line'],
    ['a line separator', 'Bay\u20282', 'text-one-line'],
  ])('with %s is refused where it is one line', (_name, text, tell) => {
    for (const input of ['name', 'serial', 'place']) {
      expect(make('wrench', { ...wrench, [input]: text }).faults).toEqual([`${tell} ${input}`])
    }
    const note = make('event', { ...event, note: text }).faults
    expect(note).toEqual(tell === 'text-hidden' ? ['text-hidden note'] : [])
    const notes = make('check', { ...onTester, notes: text }).faults
    expect(notes).toEqual(tell === 'text-hidden' ? ['text-hidden notes'] : [])
  })

  it('of any script, with pictures and marks, is taken', () => {
    for (const name of ['Schlüssel ½″', 'مفتاح', '👩🏽‍🔧🇩🇪', 'e\u0301', '<b>&"'])
      expect(make('wrench', { ...wrench, name }).faults).toEqual([])
  })

  it('of a quantity over two lines is kept as it would be typed', () => {
    const { body } = make('wrench', { ...wrench, lever: '14\nin' })
    expect(body).toMatchObject({ lever: { text: '14 in', unit: 'in' } })
  })
})

describe('typed texts become what is kept', () => {
  it('a card, its quantities in SI beside the text that was entered', () => {
    const { body } = make('wrench', {
      ...wrench,
      least: '30 ft-lbs',
      lever: '14 in',
      pivot: '0.5 in',
      'pivot-found': 'told',
      tolerance: '4 % of full scale',
      interval: '6 months; 3000 uses',
      place: ' Bay 2 ',
    })
    expect(body).toEqual({
      ...wrench,
      least: { value: 30 * 1.3558179483314003, text: '30 ft-lbs', unit: 'lbf·ft' },
      most: { value: 150 * 1.3558179483314003, text: '150 ft-lbs', unit: 'lbf·ft' },
      lever: { value: 14 * 0.0254, text: '14 in', unit: 'in' },
      pivot: { value: { value: 0.0127, text: '0.5 in', unit: 'in' }, found: 'told' },
      tolerance: { share: { value: 4, text: '4 % of full scale', unit: '%' }, of: 'full-scale' },
      interval: { months: 6, uses: 3000 },
      place: 'Bay 2',
      unit: 'lbf·ft',
    })
  })

  it('a check with a scale, each reading as it was typed', () => {
    const { body } = make('check', { ...check, gauge: 'S-1', temperature: '70 °F', notes: 'cold morning' })
    expect(body).toMatchObject({
      way: 'pull',
      distance: { text: '12 in' },
      conditions: { 'temperature-c': 21.1, notes: 'cold morning' },
      points: [
        {
          setting: { text: '50 lbf·ft' },
          readings: [
            { text: '49.4 lbf', unit: 'lbf' },
            { text: '51 lbf', unit: 'lbf' },
          ],
        },
      ],
    })
  })

  it('a check with the wrench’s own weight', () => {
    const own = { lie: 'level', 'wrench-mass': '1.5 kg', 'balance-point': '250 mm', 'pull-direction': 'down' }
    expect(make('check', { ...check, ...own }).body).toMatchObject({
      'own-weight': { lie: 'level', mass: { value: 1.5 }, 'balance-point': { value: 0.25 }, 'pull-direction': 'down' },
    })
  })

  it('the rest', () => {
    const left = { ...event, what: 'left wound up', from: '2026-01-01', setting: '0 N·m', date: '2026-05-01' }
    expect(make('event', left).body).toMatchObject({ what: 'wound-up', from: '2026-01-01', setting: { value: 0 } })
    expect(make('uses', { wrench: 'W-07', date: '2026-03-01', count: '120', since: 'check' }).body).toEqual({
      wrench: 'W-07',
      date: '2026-03-01',
      count: 120,
      since: 'check',
    })
    expect(make('withdrawal', { supersedes: 'e1', why: 'noted twice' }).body).toEqual({})
    const tested = { tag: 'T-1', name: 'Tester', 'gauge-type': 'torque-tester', 'most-torque': '200 N·m' }
    expect(make('gauge', { ...tested, tolerance: '1 % fs' }).body).toMatchObject({
      most: { unit: 'N·m' },
      tolerance: { of: 'full-scale' },
    })
  })
})

describe('slips', () => {
  it.each<[string, Kind, Raw, readonly string[]]>([
    ['a tag with a space', 'wrench', { ...wrench, tag: 'W 07' }, ['not-a-tag tag']],
    ['a tag with a letter that nobody sees', 'wrench', { ...wrench, tag: 'W-07\u3164' }, ['not-a-tag tag']],
    ['a name that turns the writing round', 'wrench', { ...wrench, name: 'Bay \u202e' }, ['text-hidden name']],
    ['a place that turns the writing round', 'wrench', { ...wrench, place: '\u2067 Bay' }, ['text-hidden place']],
    ['a tag that is too long', 'wrench', { ...wrench, tag: 'W'.repeat(25) }, ['too-long tag']],
    ['no name in the name', 'wrench', { ...wrench, name: '  ' }, ['empty name']],
    ['a range the wrong way', 'wrench', { ...wrench, least: '200 N·m', most: '100 N·m' }, ['least-above-most least']],
    [
      'a tolerance of nothing known',
      'wrench',
      { ...wrench, tolerance: '4 % of Tuesday' },
      ['not-a-tolerance tolerance'],
    ],
    ['a tolerance without %', 'wrench', { ...wrench, tolerance: '4' }, ['not-a-tolerance tolerance']],
    ['a tolerance past belief', 'wrench', { ...wrench, tolerance: '60 %' }, ['above-limit tolerance']],
    ['an input that is none', 'wrench', { ...wrench, colour: 'red' }, ['unknown-input colour']],
    [
      'a most of the wrong kind',
      'gauge',
      { tag: 'S-1', name: 'S', 'gauge-type': 'weights', 'most-torque': '5 N·m' },
      ['most-not-of-gauge most-torque'],
    ],
    ['torque read with a scale', 'check', { ...check, points: '50 N·m: 50 N·m' }, ['readings-not-of-way points']],
    ['force read on a tester', 'check', { ...onTester, points: '50 N·m: 50 N' }, ['readings-not-of-way points']],
    ['a distance on a tester', 'check', { ...onTester, distance: '12 in' }, ['distance-not-of-way distance']],
    ['two units at one point', 'check', { ...check, points: '50 N·m: 50 N; 11 lbf' }, ['units-differ points']],
    ['a temperature without its scale', 'check', { ...check, temperature: '21' }, ['not-a-temperature temperature']],
    ['a temperature past belief', 'check', { ...check, temperature: '210 °C' }, ['not-a-temperature temperature']],
    ['a drop that lasts', 'event', { ...event, from: '2026-01-01' }, ['event-one-day from']],
    ['a drop with a setting', 'event', { ...event, setting: '50 N·m' }, ['event-without-setting setting']],
    ['days reversed', 'event', { ...event, what: 'wound-up', from: '2026-04-01' }, ['days-reversed from']],
    ['a day that is none', 'event', { ...event, date: '2026-02-30' }, ['no-such-day date']],
    ['half a use', 'uses', { wrench: 'W-07', date: '2026-03-01', count: '1.5', since: 'check' }, ['not-whole count']],
    [
      'several at once',
      'check',
      { ...onTester, wrench: 'W 07', date: 'today', distance: '12 in' },
      ['not-a-tag wrench', 'not-a-date date', 'distance-not-of-way distance'],
    ],
  ])('%s', (_name, kind, raw, faults) => {
    expect(make(kind, raw).faults).toEqual(faults)
  })

  it.each<[string, Kind, Raw, readonly string[]]>([
    ['a force without its distance', 'check', noDistance, ['distance']],
    ['a weight without its lie', 'check', { ...check, 'wrench-mass': '1 kg' }, ['lie']],
    [
      'a level pull without its weight',
      'check',
      { ...check, lie: 'level' },
      ['wrench-mass', 'balance-point', 'pull-direction'],
    ],
    ['a pivot that nobody found', 'wrench', { ...wrench, pivot: '10 mm' }, ['pivot-found']],
    ['a class without its kind', 'wrench', { ...wrench, 'iso-class': 'A' }, ['iso-type']],
    [
      'full scale without that scale',
      'gauge',
      { tag: 'S-1', name: 'S', 'gauge-type': 'weights', tolerance: '1 % fs' },
      ['most-force'],
    ],
    ['a correction without a reason', 'event', { ...event, supersedes: 'e1' }, ['why']],
    ['a reason for nothing', 'event', { ...event, why: 'because' }, ['supersedes']],
    ['a withdrawal of nothing', 'withdrawal', { why: 'because' }, ['supersedes']],
  ])('what is missing is asked for: %s', (_name, kind, raw, missing) => {
    expect(make(kind, raw).missing).toEqual(missing)
  })
})

describe('the list of what can be kept', () => {
  it('has every kind of the record', () => {
    expect(Object.keys(keepables).sort()).toEqual([...kindNames].sort())
    for (const kind of kindNames) expect(keepables[kind].kind).toBe(kind)
  })

  it.each(kindNames)('%s: every example and every choice is read, in both systems', (kind) => {
    for (const [name, input] of Object.entries(keepables[kind].inputs)) {
      for (const text of [input.example.metric, input.example.inch, ...(input.choices ?? [])]) {
        expect(input.read([text], name).ok, `${name} ${text}`).toBe(true)
      }
    }
  })

  it.each(['metric', 'inch'] as const)(
    'its %s examples, the needed ones alone, make whole entries that are taken',
    (system) => {
      const book = bookOf(card(), card('W-08'), gauge())
      for (const kind of ['wrench', 'gauge', 'check', 'event', 'uses'] as const) {
        const { inputs } = keepables[kind]
        const needed = Object.entries(inputs).filter(([, { needed: is }]) => is)
        const raw = Object.fromEntries(needed.map(([name, { example }]) => [name, example[system]]))
        if (kind === 'wrench') raw['tag'] = 'W-99'
        if (kind === 'gauge') raw['tag'] = 'S-99'
        if (kind === 'check')
          Object.assign(raw, system === 'metric' ? { way: 'tester' } : { way: 'pull', distance: '12 in' })
        const { body, faults, missing } = make(kind, raw)
        expect([faults, missing], kind).toEqual([[], []])
        expect(kinds[kind].safeParse(body).error, kind).toBeUndefined()
        expect(admissionFaults(book, { by, kind, body } as Draft, '2026-12-31'), kind).toEqual([])
      }
    },
  )
})
