// Entries back to texts: what was kept, typed again, is kept alike; for every kind, with whatever of it is there.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { writeNumber } from '../../src/core/number-style.ts'
import { readQuestion } from '../../src/desk/read.ts'
import { keepables } from '../../src/keeping/index.ts'
import { textsOf } from '../../src/keeping/texts.ts'
import { type BodyOf, type Kind, kinds } from '../../src/register/records.ts'

type Raw = Record<string, string>

const bodyOf = (kind: Kind, raw: Raw): BodyOf<Kind> => {
  const { values, faults, missing } = readQuestion(keepables[kind], raw)
  if (faults.length > 0 || missing.length > 0) throw new Error(JSON.stringify({ raw, faults, missing }))
  return keepables[kind].body(values, raw)
}

const number = fc.integer({ min: 1, max: 999_999 }).map((n) => writeNumber(n / 1000))
const torque = fc
  .tuple(number, fc.constantFrom('N·m', 'lbf·ft', 'ft-lbs', 'in-lb', 'kgf·m'))
  .map((parts) => parts.join(' '))
const length = fc
  .tuple(fc.integer({ min: 21, max: 900 }), fc.constantFrom('mm', 'mm '))
  .map(([n, unit]) => `${n} ${unit}`)
const name = fc.constantFrom('Half-inch click wrench', 'Drehmomentschlüssel', '"quoted", and; parted')
const optional = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined })
const raws = (fields: Record<string, fc.Arbitrary<string | undefined>>) =>
  fc
    .record(fields)
    .map((raw) => Object.fromEntries(Object.entries(raw).filter(([, value]) => value !== undefined)) as Raw)

const wrenches = raws({
  tag: fc.constantFrom('W-07', 'w.8', 'Ä-1'),
  name,
  'wrench-type': fc.constantFrom('click', 'beam', 'dial'),
  most: fc.integer({ min: 100, max: 999 }).map((n) => `${n} kgf·m`),
  mark: optional(torque),
  lever: optional(length),
  serial: optional(name),
  place: optional(name),
  tolerance: optional(fc.constantFrom('4 %', '3% of full scale', '±2 % FS', '6 percent of reading')),
  interval: optional(fc.constantFrom('12 months', '5000 uses', '6 months; 3000 uses')),
})
const checks = raws({
  wrench: fc.constant('W-07'),
  date: fc.constantFrom('2026-03-01', '2025-12-31'),
  way: fc.constant('pull'),
  state: fc.constantFrom('as-found', 'as-left'),
  distance: length,
  gauge: optional(fc.constant('S-1')),
  temperature: optional(fc.constantFrom('21 °C', '70 °F', '0.0000001 °C', '21.1250 °C', '-5 °C')),
  notes: optional(name),
  'gauge-uncertainty': optional(fc.constant('0.5 %')),
  points: fc
    .array(fc.tuple(torque, fc.array(number, { minLength: 1, maxLength: 5 }), fc.constantFrom('kg', 'N', 'lb')), {
      minLength: 1,
      maxLength: 3,
    })
    .map((points) =>
      points.map(([setting, readings, unit]) => `${setting}: ${readings.join('; ')} ${unit}`).join(' | '),
    ),
})

const same = (kind: Kind, raw: Raw): void => {
  const body = bodyOf(kind, raw)
  expect(kinds[kind].safeParse(body).error).toBeUndefined()
  const texts = textsOf({ kind, body })
  expect(bodyOf(kind, { ...texts })).toEqual(body)
}

describe('typed again, an entry is the same', () => {
  it('a wrench', () => fc.assert(fc.property(wrenches, (raw) => same('wrench', raw))))
  it('a check by force', () => fc.assert(fc.property(checks, (raw) => same('check', raw))))

  it.each<[Kind, Raw]>([
    [
      'wrench',
      { tag: 'W-1', name: 'a', 'wrench-type': 'click', most: '200 N·m', pivot: '0 mm', 'pivot-found': 'told' },
    ],
    [
      'wrench',
      { tag: 'W-1', name: 'a', 'wrench-type': 'click', most: '200 N·m', 'iso-type': 'setting', 'iso-class': 'A' },
    ],
    [
      'gauge',
      {
        tag: 'S-1',
        name: 'Luggage scale',
        'gauge-type': 'luggage-scale',
        'most-force': '50 kg',
        checked: '2026-01-05',
      },
    ],
    [
      'gauge',
      {
        tag: 'T-1',
        name: 'Tester',
        'gauge-type': 'torque-tester',
        'most-torque': '200 N·m',
        tolerance: '1 % of full scale',
      },
    ],
    ['check', { wrench: 'W-1', date: '2026-01-05', way: 'tester', state: 'as-left', points: '100 N·m: 99.5; 101 N·m' }],
    [
      'check',
      {
        wrench: 'W-1',
        date: '2026-01-05',
        way: 'hang',
        state: 'as-found',
        distance: '400 mm',
        lie: 'level',
        'wrench-mass': '1.2 kg',
        'balance-point': '180 mm',
        'pull-direction': 'down',
        points: '40 N·m: 10.2 kg',
      },
    ],
    [
      'event',
      { wrench: 'W-1', what: 'wound-up', date: '2026-06-01', from: '2026-01-01', setting: '180 N·m', note: 'x' },
    ],
    ['event', { wrench: 'W-1', what: 'retired', date: '2026-06-01' }],
    ['uses', { wrench: 'W-1', date: '2026-06-01', count: '1200', since: 'check' }],
  ])('%s %j', same)

  it('a share kept without its text says what it is of', () => {
    const tolerance = { share: { value: 4, text: '4 %', unit: '%' }, of: 'full-scale' } as const
    const body = bodyOf('gauge', { tag: 'T-1', name: 'T', 'gauge-type': 'torque-tester', 'most-torque': '9 N·m' })
    expect(textsOf({ kind: 'gauge', body: { ...(body as BodyOf<'gauge'>), tolerance } })['tolerance']).toBe(
      '4 % of full scale',
    )
  })
})
