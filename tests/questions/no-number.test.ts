// Where no number may be given, or none may be trusted: reaches that vanish, readings that say nothing, a scale nobody checked.
import { describe, expect, it } from 'vitest'
import { answered, ask, cautionsOf, numberOf, resultOf } from '../support/desk.ts'

describe('a reach so short that slips decide over the torque', () => {
  it.each([
    ['adapter-setting', { torque: '100 N·m', lever: '400 mm', adapter: '395 mm@180' }],
    ['adapter-setting', { torque: '100 N·m', lever: '400 mm', adapter: '399.9999 mm@180' }],
    ['adapter-setting', { torque: '100 N·m', lever: '14 in', hand: '41 mm', adapter: '2 in@90' }],
    ['adapter-reading', { reading: '100 N·m', lever: '400 mm', adapter: '395 mm@180' }],
    ['hand-position', { setting: '100 N·m', lever: '400 mm', hand: '45 mm', pivot: '44 mm' }],
    ['end-fitting', { torque: '100 N·m', lever: '400 mm', 'fitting-change': '-399.9 mm' }],
    ['end-fitting', { torque: '100 N·m', lever: '400 mm', 'fitting-change': '4 m' }],
  ] as const)('%s %j is refused', (question, raw) => {
    const answer = ask(question, raw)
    expect(answer.status).toBe('refused')
    expect(answer.faults.map(({ code }) => code)).toEqual(['out-of-range'])
  })

  it('asks for the pivot where it alone decides', () => {
    const raw = { torque: '100 N·m', lever: '400 mm', hand: '60 mm', adapter: '200 mm@0' }
    expect(ask('adapter-setting', raw).faults[0]?.hint).toMatch(/give pivot/)
    expect(ask('adapter-setting', { ...raw, pivot: '0 mm' }).status).toBe('answered')
  })

  it('never shows a torque below zero, and its ladders hold none', () => {
    for (let hand = 45; hand <= 400; hand += 5) {
      const answer = ask('hand-position', { setting: '100 N·m', lever: '400 mm', hand: `${hand} mm`, pivot: '40 mm' })
      if (answer.status === 'answered') expect(resultOf(answer, 'torque').low).toBeGreaterThan(0)
    }
    const ladder = ask('hand-position', { setting: '100 N·m', lever: '400 mm', hand: '60 mm' }).ladder?.rows ?? []
    for (const { results } of ladder) expect((results['torque'] as { low?: number }).low).toBeGreaterThan(0)
  })
})

describe('a hand where the lever is measured, in another unit', () => {
  it.each([
    ['14 in', '355.6 mm'],
    ['355.6 mm', '14 in'],
    ['1.1 ft', '335.28 mm'],
  ])('%s and %s are one place', (lever, hand) => {
    const answer = answered('hand-position', { setting: '100 N·m', lever, hand, 'wrench-type': 'click' })
    expect(numberOf(answer, 'change')).toBe(0)
    expect(cautionsOf(answer)).not.toContain('no-pipe')
    expect(answer.headline).not.toMatch(/farther out/)
    expect(cautionsOf(answered('pull', { torque: '100 N·m', lever, hand }))).not.toContain('no-pipe')
    const adapter = answered('adapter-setting', { torque: '100 N·m', lever, hand, adapter: '2 in@90' })
    expect(cautionsOf(adapter)).not.toContain('no-pipe')
  })
})

describe('a check with a scale', () => {
  const two = { distance: '380 mm', force: '25; 30 kg', setting: '100 N·m' }

  it('whose readings lie far apart tells nothing, and no interval the wrong way round', () => {
    const answer = answered('scale-check', two)
    expect(answer.headline).toMatch(/^It cannot be told/)
    expect(answer.headline).not.toMatch(/HIGH|LOW/)
    expect(resultOf(answer, 'torque').low).toBe(0)
    expect(resultOf(answer, 'deviation').low).toBeUndefined()
  })

  it.each([
    ['240 N', 'LOW'],
    ['260 N', 'HIGH'],
  ])('by a scale nobody checked leads with that, at %s', (force, side) => {
    const raw = { distance: '400 mm', force, setting: '100 N·m' }
    expect(answered('scale-check', raw).headline).toMatch(new RegExp(`^As far as the scale is right: .*${side}`))
    const checked = answered('scale-check', { ...raw, 'gauge-tolerance': '0.5 %' }).headline
    expect(checked).toMatch(new RegExp(`it delivers ${side}`))
    expect(checked).not.toMatch(/As far/)
  })
})

describe('a nut factor from runs', () => {
  it.each([
    ['alike to the last digit', '20; 20 N·m'],
    ['two that scatter', '18; 24 N·m'],
  ])('%s does not promise where the next bolt lies', (_, torque) => {
    const answer = answered('nut-factor', { size: 'M10', torque, 'clamp-force': '10; 10 kN' })
    expect(answer.headline).toMatch(/make more runs/)
    expect(resultOf(answer, 'k').low ?? 0).toBeGreaterThanOrEqual(0)
  })

  it.each(['60 N·m', '0.01 N·m'])('of no known joint is warned of: %s', (torque) => {
    const odd = answered('nut-factor', { size: 'M12', torque, 'clamp-force': torque === '60 N·m' ? '2 N' : '10 kN' })
    expect(cautionsOf(odd)[0]).toBe('k-unlikely')
    const usual = answered('nut-factor', { size: 'M12', torque: '60 N·m', 'clamp-force': '25 kN' })
    expect(cautionsOf(usual)).not.toContain('k-unlikely')
  })

  it('of several does', () => {
    const raw = { size: 'M10', torque: '20; 20.5; 19.8; 20.2; 20.1 N·m', 'clamp-force': '10; 10; 10; 10; 10 kN' }
    expect(answered('nut-factor', raw).headline).toMatch(/next bolt will lie between/)
  })
})

describe('a ladder', () => {
  it('is under the cautions of what it shows', () => {
    const anti = ask('lubricant', { torque: '80 lbf·ft', from: 'dry' })
    expect(anti.ladder).toBeDefined()
    expect(cautionsOf(anti)).toEqual(expect.arrayContaining(['which-condition', 'estimate-only', 'yield-fastener']))
    expect(cautionsOf(anti).at(-1)).toBe('maker-first')
    const reach = ask('adapter-setting', { torque: '100 N·m', lever: '400 mm' })
    expect(cautionsOf(reach)).toEqual(expect.arrayContaining(['one-hand', 'critical-joint', 'maker-first']))
  })

  it('that is not shown brings none', () => {
    expect(cautionsOf(ask('adapter-setting', { torque: '100 N·m' }))).toEqual(['maker-first'])
  })
})

describe('what a ladder of most shows', () => {
  it('holds no wrench that cannot be set so high', () => {
    const raw = { setting: '30 N·m', tolerance: '4 %', of: 'full-scale' }
    const rows = ask('tolerance-band', raw).ladder?.rows ?? []
    expect(rows).toHaveLength(7)
    for (const { at } of rows) expect(at.value).toBeGreaterThanOrEqual(30)
  })
})

describe('a mark of the wrench', () => {
  it.each([
    ['0.5 N·m', '275.3 N·m', '40 mm', '250 N·m', '250.5 N·m'],
    ['0.25 N·m', '52 N·m', '40 mm', '47.25 N·m', '47.5 N·m'],
  ])('every %s is shown where it is', (mark, torque, adapter, below, above) => {
    const { results } = answered('adapter-setting', { torque, lever: '400 mm', adapter, mark })
    expect(results['mark-below']).toMatchObject({ setting: { text: below } })
    expect(results['mark-above']).toMatchObject({ setting: { text: above } })
  })
})

describe('two pulls that no wrench can give', () => {
  const pulls = (atHand: string) => ({
    lever: '400 mm',
    hand: '200 mm',
    'torque-at-lever': '100 N·m',
    'torque-at-hand': atHand,
  })

  it.each(['49 N·m', '60 N·m', '97 N·m'])('%s with the hand nearer is said to be impossible', (atHand) => {
    expect(answered('pivot-offset', pulls(atHand)).headline).toMatch(/do not fit one wrench/)
  })

  it('are refused where the formula has no end', () => {
    expect(ask('pivot-offset', pulls('50 N·m')).faults[0]?.hint).toMatch(/do not fit one wrench/)
  })

  it('a percent less is within what repeats differ by', () => {
    expect(answered('pivot-offset', pulls('99 N·m')).headline).toMatch(/cannot be told from 0/)
  })
})
