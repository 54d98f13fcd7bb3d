// What questions about adapters warn of and refuse: directions, ranges, hands, pivots. Order counts: what can hurt most comes first.
import { describe, expect, it } from 'vitest'
import { answered, ask, cautionsOf, codesOf, resultOf } from '../support/desk.ts'

const base = { torque: '100 N·m', lever: '400 mm' }
const cautions = (more: Record<string, string>): string[] =>
  cautionsOf(answered('adapter-setting', { ...base, ...more }))
const text = (code: string, more: Record<string, string>): string =>
  answered('adapter-setting', { ...base, ...more }).cautions.find((one) => one.code === code)?.text ?? ''

describe('a span of which one end is out of range', () => {
  const span = { adapter: '50 mm@90', torque: '90–110 N·m' }
  it.each<[string, Record<string, string>, string]>([
    ['above', { most: '105 N·m' }, '110 N·m, where it ends at 105 N·m'],
    ['below', { least: '95 N·m' }, '90 N·m, where it ends at 95 N·m'],
  ])('%s is told first', (_, range, told) => {
    expect(cautions({ ...span, ...range })[0]).toBe('end-beyond-range')
    expect(text('end-beyond-range', { ...span, ...range })).toContain(told)
  })

  it('is no word where the middle is out of range as well: that leads', () => {
    expect(cautions({ ...span, most: '95 N·m' })).not.toContain('end-beyond-range')
    expect(cautions({ ...span, least: '80 N·m', most: '120 N·m' })).not.toContain('end-beyond-range')
  })
})

it('a span with the hand off the grip and an unknown pivot tells the settings that keep inside it at either pivot', () => {
  const inputs = { torque: '36–44 lbf·ft', lever: '14 in', hand: '10 in', adapter: '2 in@0' }
  expect(answered('adapter-setting', inputs).headline).toMatch(
    /^Set 30 lbf·ft to 35 lbf·ft on the wrench: .* wherever the wrench trips\.$/,
  )
  // By hand: T/S = 12/10 at p = 0, (12.6/14)(12/8.6) at p = 1.4 in.
  const { low, high } = resultOf(answered('adapter-setting', inputs), 'setting')
  expect(low).toBeCloseTo(36 / 1.2, 9)
  expect(high).toBeCloseTo((44 * 14 * 8.6) / (12.6 * 12), 9)
  const narrow = answered('adapter-setting', { ...inputs, torque: '39.9–40.1 lbf·ft' })
  expect(narrow.headline).toMatch(/^No setting is sure/)
  expect(resultOf(narrow, 'setting').low).toBeCloseTo(31.85, 2)
})

it('a hand nearer than a wrench of its kind may trip is told so', () => {
  const inputs = { setting: '100 N·m', lever: '400 mm', hand: '35 mm', 'wrench-type': 'click' }
  const [told] = ask('hand-position', inputs).faults
  expect([told?.input, told?.allowed]).toEqual(['hand', 'a hand farther from the drive than 40 mm'])
})

describe('an adapter', () => {
  it.each<[string, Record<string, string>, readonly string[]]>([
    ['straight', { adapter: '50 mm@0' }, ['one-hand', 'already-corrected', 'critical-joint', 'maker-first']],
    ['square', { adapter: '50 mm@90' }, ['keep-square', 'already-corrected', 'critical-joint', 'maker-first']],
    [
      'of unknown direction',
      { adapter: '50 mm' },
      ['direction-assumed', 'one-hand', 'already-corrected', 'critical-joint', 'maker-first'],
    ],
    [
      'at an angle',
      { adapter: '50 mm@45' },
      ['one-hand', 'keep-square', 'already-corrected', 'critical-joint', 'maker-first'],
    ],
    [
      'that points back',
      { adapter: '50 mm@180' },
      ['one-hand', 'points-back', 'already-corrected', 'critical-joint', 'maker-first'],
    ],
    [
      'that points far back',
      { adapter: '250 mm@180' },
      ['one-hand', 'points-back', 'far-back', 'already-corrected', 'critical-joint', 'maker-first'],
    ],
    [
      'with a pipe on the handle',
      { adapter: '50 mm@0', hand: '600 mm' },
      ['one-hand', 'already-corrected', 'no-pipe', 'critical-joint', 'maker-first'],
    ],
  ])('%s has its cautions, in order', (_, more, expected) => {
    expect(cautions(more)).toEqual(expected)
  })

  it('held closer in than its grip is no pipe', () => {
    expect(cautions({ adapter: '50 mm@0', hand: '300 mm' })).not.toContain('no-pipe')
    expect(cautions({ adapter: '50 mm@0', hand: '400 mm' })).not.toContain('no-pipe')
  })

  it('that points back is told by how much, and that the setting is higher', () => {
    expect(text('points-back', { adapter: '50 mm@180' })).toMatch(/by 50 mm: the setting is HIGHER than the torque/)
  })

  it('far back begins beyond half the hand', () => {
    expect(cautions({ adapter: '200 mm@180' })).not.toContain('far-back')
    expect(cautions({ adapter: '201 mm@180' })).toContain('far-back')
  })

  it.each<[string, Record<string, string>, string]>([
    ['400 mm@180', {}, 'as far back as the hand'],
    ['500 mm@180', {}, 'past the hand'],
    ['250 mm@180 + 150 mm@180', {}, 'past the hand by two'],
    ['300 mm@180', { hand: '300 mm' }, 'as far back as the hand, which is closer in'],
    ['800 mm@135', {}, 'past the hand at an angle'],
  ])('%s with %j is refused: it ends %s', (adapter, more) => {
    const answer = ask('adapter-setting', { ...base, adapter, ...more })
    expect(codesOf(answer)).toEqual(['behind-the-hand'])
    expect(answer.faults[0]?.input).toBe('adapter')
  })

  it('as long as the lever is no harm straight ahead or square', () => {
    expect(answered('adapter-setting', { ...base, adapter: '400 mm@90' }).status).toBe('answered')
    expect(answered('adapter-setting', { ...base, adapter: '400 mm@0' }).status).toBe('answered')
  })

  it.each<[string, Record<string, string>, string, string]>([
    ['an angle said twice', { adapter: '50 mm@45', angle: '45' }, 'angle', 'conflict'],
    ['an angle beside a chain', { adapter: '50 mm + 30 mm', angle: '45' }, 'angle', 'conflict'],
    ['a negative length', { adapter: '-50 mm' }, 'adapter', 'negative'],
    ['an angle of 181°', { adapter: '50 mm@181' }, 'adapter', 'out-of-range'],
    ['an angle of −181°', { adapter: '50 mm', angle: '-181' }, 'angle', 'out-of-range'],
    ['no length at all', { adapter: '0 mm' }, 'adapter', 'out-of-range'],
    ['eleven metres', { adapter: '11 m' }, 'adapter', 'out-of-range'],
    ['a pivot at the lever', { adapter: '50 mm', pivot: '400 mm' }, 'pivot', 'out-of-range'],
    ['a pivot past the hand', { adapter: '50 mm', hand: '100 mm', pivot: '150 mm' }, 'pivot', 'out-of-range'],
    ['a negative pivot', { adapter: '50 mm', pivot: '-5 mm' }, 'pivot', 'negative'],
    ['a hand within a click wrench’s head', { adapter: '50 mm', hand: '40 mm' }, 'hand', 'out-of-range'],
    [
      'a hand within a beam’s flex',
      { adapter: '50 mm', hand: '120 mm', 'wrench-type': 'beam' },
      'hand',
      'out-of-range',
    ],
    ['a range that ends before it begins', { adapter: '50 mm', least: '200 N·m', most: '40 N·m' }, 'least', 'conflict'],
    ['a range of nothing', { adapter: '50 mm', least: '40 N·m', most: '40 N·m' }, 'least', 'conflict'],
    ['a tolerance above half', { adapter: '50 mm', tolerance: '51 %' }, 'tolerance', 'out-of-range'],
    ['a tolerance without its mark', { adapter: '50 mm', tolerance: '4' }, 'tolerance', 'unit-missing'],
    ['a kind of wrench that is none', { adapter: '50 mm', 'wrench-type': 'big' }, 'wrench-type', 'not-allowed'],
  ])('with %s is refused', (_, more, input, code) => {
    expect(ask('adapter-setting', { ...base, ...more }).faults.map((one) => [one.input, one.code])).toEqual([
      [input, code],
    ])
  })

  it('with a pivot of 0 is a wrench that senses at its drive', () => {
    expect(answered('adapter-setting', { ...base, adapter: '50 mm@0', pivot: '0 mm' }).status).toBe('answered')
  })
})

describe('a setting outside the range', () => {
  const small = { adapter: '50 mm@180', least: '20 N·m', most: '110 N·m' }

  it('is led with, in headline and cautions, with square as the way out', () => {
    const answer = answered('adapter-setting', { ...base, ...small })
    expect(cautionsOf(answer)[0]).toBe('beyond-range')
    expect(answer.headline).toMatch(/^Do not use this wrench so: .* 114\.3 N·m, outside its range; .*square \(90°\)/)
  })

  it('is judged by the setting, not by the torque', () => {
    expect(cautions({ adapter: '50 mm@0', most: '90 N·m' })).not.toContain('beyond-range')
    expect(cautions({ adapter: '50 mm@180', most: '105 N·m' })).toContain('beyond-range')
  })

  it('below the lowest mark is outside as well', () => {
    expect(cautions({ adapter: '50 mm@0', least: '95 N·m', most: '500 N·m' })[0]).toBe('beyond-range')
  })

  it('exactly at its ends is inside', () => {
    expect(cautions({ adapter: '50 mm@90', least: '100 N·m', most: '200 N·m' })).not.toContain('beyond-range')
    expect(cautions({ adapter: '50 mm@90', least: '20 N·m', most: '100 N·m' })).not.toContain('beyond-range')
  })

  it('but inside in another unit asks whether that was meant', () => {
    const inch = { torque: '100 lbf·ft', lever: '10 in', adapter: '1 in@0', least: '30 lbf·in', most: '200 lbf·in' }
    const answer = answered('adapter-setting', inch)
    expect(cautionsOf(answer).slice(0, 2)).toEqual(['beyond-range', 'factor-twelve'])
    expect(answer.cautions[1]?.text).toMatch(/100 lbf·ft asks for a setting outside .*, 100 lbf·in would be inside/)
  })

  it('and outside in every unit asks nothing', () => {
    const far = { torque: '5000 lbf·ft', adapter: '1 in@0', least: '30 lbf·in', most: '200 lbf·in' }
    expect(cautions(far)).toContain('beyond-range')
    expect(cautions(far)).not.toContain('factor-twelve')
  })
})

describe('a setting below a fifth of the range', () => {
  it('is warned of by the setting, though the torque is above', () => {
    expect(cautions({ torque: '105 N·m', adapter: '50 mm@0', most: '500 N·m' })[0]).toBe('below-a-fifth')
  })

  it('is not warned of where the setting is above, though the torque is below', () => {
    expect(cautions({ torque: '95 N·m', adapter: '50 mm@180', most: '500 N·m' })).not.toContain('below-a-fifth')
  })

  it('names the fifth in the unit of the wrench', () => {
    expect(text('below-a-fifth', { torque: '20 N·m', adapter: '50 mm@90', most: '250 lbf·ft' })).toMatch(
      /\(50 lbf·ft\)/,
    )
  })
})
