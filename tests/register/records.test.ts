// The record's shapes: what is kept comes back as it was, and what is no entry is refused.
import { describe, expect, it } from 'vitest'
import { quantity } from '../../src/core/quantity.ts'
import { units } from '../../src/core/unit.ts'
import { foldTag, measured, quantityOf } from '../../src/register/parts.ts'
import { entryFrom, entrySchema, kindNames, kinds, tagOf } from '../../src/register/records.ts'

const most = measured(quantity(150, units['lbf·ft']), '150 ft-lbs')
const card = { tag: 'W-07', name: 'Long click wrench', 'wrench-type': 'click', most, unit: 'lbf·ft' }
const event = { wrench: 'W-07', what: 'dropped', date: '2026-03-01' }
const point = { setting: most, readings: [measured(quantity(74, units.lbf))] }
const distance = measured(quantity(14, units.in))
const check = { wrench: 'W-07', date: '2026-03-01', way: 'pull', distance, state: 'as-found', points: [point] }

const entry = (kind: string, body: unknown, more: object = {}) => ({
  id: 'e1',
  at: '2026-03-01T09:00:00Z',
  by: { role: 'keeper', door: 'kiosk' },
  kind,
  body,
  ...more,
})

describe('an entry', () => {
  it.each([
    ['a card', entry('wrench', card)],
    ['a gauge', entry('gauge', { tag: 'S-1', name: 'Scale', 'gauge-type': 'luggage-scale' })],
    ['a check', entry('check', check)],
    [
      'a check with a tester',
      entry('check', {
        wrench: 'W-07',
        date: '2026-03-01',
        way: 'tester',
        state: 'as-left',
        points: [{ setting: most, readings: [most] }],
      }),
    ],
    ['an event', entry('event', event)],
    ['uses', entry('uses', { wrench: 'W-07', date: '2026-03-01', count: 0, since: 'check' })],
    ['a withdrawal', entry('withdrawal', {}, { supersedes: 'e0', why: 'noted twice' })],
    ['a correction', entry('event', event, { supersedes: 'e0', why: 'the day was wrong', key: 'abc/1' })],
    ['a tag of another script', entry('wrench', { ...card, tag: 'Ключ-7' })],
  ])('%s comes back as it was, through JSON as well', (_name, raw) => {
    const read = entrySchema.parse(raw)
    expect(read).toEqual(raw)
    expect(entrySchema.parse(JSON.parse(JSON.stringify(read)))).toEqual(raw)
  })

  it.each([
    ['a kind that is none', entry('song', {})],
    ['a field that is none', entry('event', { ...event, colour: 'red' })],
    ['a correction without a reason', entry('event', event, { supersedes: 'e0' })],
    ['a reason for nothing', entry('event', event, { why: 'because' })],
    ['a withdrawal of nothing', entry('withdrawal', {})],
    ['a day that is none', entry('event', { ...event, date: '2026-02-30' })],
    ['a time that is not UTC', { ...entry('event', event), at: '2026-03-01T09:00:00+01:00' }],
    ['a tag with a space', entry('wrench', { ...card, tag: 'W 07' })],
    ['a tag that leaves the address', entry('wrench', { ...card, tag: '../x' })],
    ['a largest torque in mm', entry('wrench', { ...card, most: { ...most, unit: 'mm' } })],
    ['an infinite value', entry('wrench', { ...card, most: { ...most, value: Number.POSITIVE_INFINITY } })],
    ['a force without its distance', entry('check', { ...check, distance: undefined })],
    ['a force from a tester', entry('check', { ...check, way: 'tester', distance: undefined })],
    [
      'a distance of a tester',
      entry('check', { ...check, way: 'tester', points: [{ setting: most, readings: [most] }] }),
    ],
    ['a torque at a distance', entry('check', { ...check, points: [{ setting: most, readings: [most] }] })],
    ['a check without points', entry('check', { ...check, points: [] })],
    [
      'readings in two units',
      entry('check', {
        ...check,
        points: [{ setting: most, readings: [measured(quantity(1, units.N)), measured(quantity(1, units.lbf))] }],
      }),
    ],
    ['a role that is none', { ...entry('event', event), by: { role: 'king', door: 'kiosk' } }],
    ['a key with a line break', entry('event', event, { key: 'a\nb' })],
  ])('%s is refused', (_name, raw) => {
    expect(entrySchema.safeParse(raw).success).toBe(false)
  })

  it('cannot be changed in place', () => {
    const read = entrySchema.parse(entry('event', event))
    expect(Object.isFrozen(read)).toBe(true)
    expect(Object.isFrozen(read.body)).toBe(true)
  })

  it('knows its tag, and every kind has a shape', () => {
    expect(kindNames).toEqual(Object.keys(kinds))
    expect(tagOf(entrySchema.parse(entry('wrench', card)))).toBe('W-07')
    expect(tagOf(entrySchema.parse(entry('check', check)))).toBe('W-07')
    expect(tagOf(entrySchema.parse(entry('withdrawal', {}, { supersedes: 'a', why: 'b' })))).toBeUndefined()
    expect(foldTag('W-07')).toBe(foldTag('w-07'))
  })

  it('is made from a draft by the id and the time that are handed in', () => {
    const draft = { by: { role: 'mechanic', door: 'chat' }, kind: 'event', body: event } as const
    const made = entryFrom(draft as never, 'e9', '2026-03-01T10:00:00.000Z')
    expect(entrySchema.parse(made)).toMatchObject({ id: 'e9', at: '2026-03-01T10:00:00.000Z', kind: 'event' })
  })
})

describe('a quantity as it is kept', () => {
  it.each([
    [150, 'lbf·ft'],
    [13.5, 'N·m'],
    [14.5, 'in'],
    [74.2, 'lbf'],
    [4, '%'],
    [61.9, 'lbf·ft'],
  ] as const)('%d %s comes back in its unit, to the digit', (value, unit) => {
    const kept = measured(quantity(value, units[unit]))
    expect(quantityOf(kept).value).toBe(value)
    expect(quantityOf(kept).unit).toBe(units[unit])
  })

  it('keeps the text as it was entered', () => {
    expect(most).toEqual({ value: 150 * units['lbf·ft'].factor, text: '150 ft-lbs', unit: 'lbf·ft' })
  })
})
