// adapter-setting: what leads, what is warned of, what is assumed, what is beside the setting.
import { describe, expect, it } from 'vitest'
import type { Answer } from '../../src/questions/answer.ts'
import { answered } from '../support/desk.ts'
import { testDesk } from '../support/doors.ts'

type Raw = Readonly<Record<string, string | readonly string[]>>
const base: Raw = { torque: '100 lb-ft', lever: '14 in', adapter: '2 in@0' }
const ask = (raw: Raw): Answer => testDesk().ask('adapter-setting', { ...base, ...raw }, { door: 'terminal' })
const codes = (answer: Answer): string[] => answer.cautions.map(({ code }) => code)
const value = (
  answer: Answer,
  name: string,
): { value: number; low?: number; high?: number; unit: string; text: string } => answer.results[name] as never

describe('a direction that nobody told', () => {
  const base = { torque: '100 N·m', lever: '400 mm' }
  const said = 'With the adapter straight ahead, which was not told: '
  it.each([
    [{ adapter: '50 mm' }, true],
    [{ adapter: '50 mm + 20 mm@90' }, true],
    [{ adapter: '50 mm@0' }, false],
    [{ adapter: '50 mm', angle: '0°' }, false],
    [{ adapter: '50 mm@90' }, false],
  ])('of %j is said before the number: %s', (more, assumed) => {
    expect(answered('adapter-setting', { ...base, ...more }).headline.startsWith(said)).toBe(assumed)
    const { torque: reading, lever } = base
    expect(answered('adapter-reading', { reading, lever, ...more }).headline.startsWith(said)).toBe(assumed)
    expect(answered('which-wrench', { torque: base.torque, ...more }).headline.startsWith(said)).toBe(assumed)
  })
})

describe('what leads', () => {
  it('the setting, in the unit of the torque, lengths in the unit of the lever', () => {
    const answer = ask({ lever: '355.6 mm', torque: '1200 in-lb' })
    expect(value(answer, 'setting')).toMatchObject({ unit: 'lbf·in', text: '1050 lbf·in' })
    expect(value(answer, 'effective-lever').unit).toBe('mm')
  })

  it('square, the setting is the torque to the last digit, whatever the lengths', () => {
    for (const angle of ['90', '-90']) expect(value(ask({ adapter: `3.7 in@${angle}` }), 'setting').value).toBe(100)
  })

  it('a span is answered at both ends and the middle, and says whether the doubt stays inside', () => {
    const wide = ask({ torque: '80–120 lb-ft' })
    expect(value(wide, 'setting').low).toBeCloseTo(70, 9)
    expect(value(wide, 'setting').high).toBeCloseTo(105, 9)
    expect(value(wide, 'setting').value).toBeCloseTo(87.5, 9)
    expect(wide.steps.some(({ say }) => say.startsWith('The doubt stays inside'))).toBe(true)
    expect(
      ask({ torque: '100 ± 1 lb-ft' }).steps.some(({ say }) => say.startsWith('The doubt does NOT stay inside')),
    ).toBe(true)
  })

  it('with the hand off the grip and the pivot unknown the lowest setting leads, with both ends', () => {
    const answer = ask({ torque: '40 lbf·ft', hand: '10 in', adapter: '2 in' })
    expect(value(answer, 'setting').value).toBeCloseTo(31.85, 2)
    expect(value(answer, 'setting').high).toBeCloseTo(33.33, 2)
    expect(answer.headline).toMatch(
      /^With the adapter straight ahead, which was not told: Set 31.9 lbf·ft .* 33.3 lbf·ft\.$/,
    )
    const out = ask({ torque: '40 lbf·ft', hand: '20 in', adapter: '2 in' })
    expect(value(out, 'setting').value).toBeCloseTo((40 * 20) / 22, 6)
    expect(
      value(ask({ torque: '40 lbf·ft', hand: '10 in', adapter: '2 in', pivot: '0 in' }), 'setting').value,
    ).toBeCloseTo(33.333, 3)
    expect(
      value(ask({ torque: '40 lbf·ft', hand: '10 in', adapter: '2 in', 'wrench-type': 'dial' }), 'setting').high,
    ).toBeUndefined()
  })

  it('a setting outside the range leads with that, and asks whether another unit was meant', () => {
    const above = ask({ most: '80 lb-ft', least: '20 lb-ft' })
    expect(above.headline).toContain('Do not use this wrench so')
    expect(codes(above).slice(0, 1)).toEqual(['beyond-range'])
    const unit = ask({ torque: '60 lb-in', most: '80 lb-ft', least: '20 lb-ft' })
    expect(codes(unit).slice(0, 2)).toEqual(['beyond-range', 'factor-twelve'])
    expect(unit.cautions[1]?.text).toContain('60 lbf·ft')
    expect(codes(ask({ torque: '9 N·m', most: '80 lb-ft' }))).not.toContain('beyond-range')
    expect(codes(ask({ torque: '9 N·m', most: '80 lb-ft' }))).toContain('below-a-fifth')
  })
})

describe('what is warned of', () => {
  it('pointing back, one hand comes first, then the direction', () => {
    const answer = ask({ adapter: '2 in@180' })
    expect(codes(answer).slice(0, 2)).toEqual(['one-hand', 'points-back'])
    expect(value(answer, 'setting').value).toBeGreaterThan(100)
    expect(codes(ask({ adapter: '8 in@180' }))).toContain('far-back')
  })

  it('no angle is shown as assumed, and the other directions are at hand', () => {
    const answer = ask({ adapter: '2 in' })
    expect(codes(answer)).toContain('direction-assumed')
    expect(answer.given.find(({ input }) => input === 'angle')).toMatchObject({
      value: 0,
      unit: '°',
      from: 'assumed',
      index: 0,
    })
    const rows = answer.results.directions as unknown as Array<{
      angle: { value: number }
      setting: { value: number; text: string; unit: string }
    }>
    expect(rows.map(({ angle }) => angle.value)).toEqual([0, 45, 90, 135, 180])
    expect(rows.map(({ setting }) => setting.text)).toEqual([
      '87.5 lbf·ft',
      '90.8 lbf·ft',
      '100 lbf·ft',
      '111.2 lbf·ft',
      '116.7 lbf·ft',
    ])
    expect(
      answer.related.filter(({ question }) => question === 'adapter-setting').map(({ inputs }) => inputs.adapter),
    ).toEqual(['2 in@90°', '2 in@180°'])
  })

  it('the angle may be told beside a lone adapter, and then once only', () => {
    expect(value(ask({ adapter: '2 in', angle: '90' }), 'setting').value).toBe(100)
    expect(codes(ask({ adapter: '2 in', angle: '90' }))).not.toContain('direction-assumed')
    expect(ask({ adapter: '2 in@0', angle: '90' }).faults.map(({ code }) => code)).toEqual(['conflict'])
    expect(ask({ adapter: ['2 in', '3 in'], angle: '90' }).faults.map(({ code }) => code)).toEqual(['conflict'])
  })

  it('to the side it wants a square pull, and the sign of the side does not change the setting', () => {
    expect(codes(ask({ adapter: '2 in@45' }))).toContain('keep-square')
    expect(value(ask({ adapter: '2 in@45' }), 'setting').value).toBe(
      value(ask({ adapter: '2 in@-45' }), 'setting').value,
    )
  })

  it('a hand past the grip is a pipe', () => {
    expect(codes(ask({ hand: '30 in' }))).toContain('no-pipe')
  })
})

describe('what is refused', () => {
  it.each([
    [{ adapter: '14 in@180' }, 'behind-the-hand'],
    [{ adapter: '13 in@180', hand: '12 in' }, 'behind-the-hand'],
    [{ pivot: '14 in' }, 'out-of-range'],
    [{ pivot: '11 in', hand: '10 in' }, 'out-of-range'],
    [{ pivot: '-1 in' }, 'negative'],
    [{ adapter: '2 in@181' }, 'out-of-range'],
    [{ adapter: ['1 in', '1 in', '1 in', '1 in', '1 in'] }, 'too-many'],
    [{ least: '50 lb-ft', most: '40 lb-ft' }, 'conflict'],
    [{ torque: '20 Nm + 90°' }, 'angle-stage'],
    [{ tolerance: '0 %' }, 'out-of-range'],
    [{ tolerance: '4' }, 'unit-missing'],
  ])('%j', (raw, code) => {
    expect(ask(raw as Raw).faults.map((fault) => fault.code)).toEqual([code])
  })

  it('some way ahead of the hand it is still answered, and warned of', () => {
    expect(codes(ask({ adapter: '12.5 in@180' }))).toContain('far-back')
  })
})

describe('marks', () => {
  const around = (raw: Raw): [string | undefined, string | undefined] => {
    const { results } = ask(raw)
    const text = (name: string): string | undefined =>
      (results[name] as unknown as { setting: { text: string } } | undefined)?.setting.text
    return [text('mark-below'), text('mark-above')]
  }

  it.each([
    [{ mark: '2 lb-ft' }, ['86 lbf·ft', '88 lbf·ft']],
    [{ mark: '0.5 lb-ft' }, ['87.5 lbf·ft', '87.5 lbf·ft']],
    [{ mark: '10 lb-ft', least: '5 lb-ft' }, ['85 lbf·ft', '95 lbf·ft']],
    [{ mark: '10 lb-ft', most: '88 lb-ft' }, ['80 lbf·ft', undefined]],
    [{}, [undefined, undefined]],
  ])('%j', (raw, marks) => {
    expect(around(raw as Raw)).toEqual(marks)
  })

  it('each says what the fastener gets there', () => {
    const below = ask({ mark: '2 lb-ft' }).results['mark-below'] as unknown as { torque: { value: number } }
    expect(below.torque.value).toBeCloseTo((86 * 16) / 14, 9)
  })
})

describe('doubt', () => {
  it('is ±4.0 % for 2 in straight on 14 in, listed with what was assumed', () => {
    const answer = ask({})
    const { low = 0, high = 0 } = value(answer, 'torque')
    expect((high - low) / 2).toBeCloseTo(4.01, 2)
    expect(answer.given.filter(({ from }) => from === 'assumed').map(({ input }) => input)).toEqual([
      'hand',
      'tolerance',
      'length-doubt',
      'hand-doubt',
      'angle-doubt',
      'square-doubt',
    ])
  })

  it('is wider for a deflecting beam and for a small wrench, narrower for a better one', () => {
    const width = (raw: Raw): number => (value(ask(raw), 'torque').high ?? 0) - 100
    expect(width({ 'wrench-type': 'beam' })).toBeGreaterThan(5.5)
    expect(width({ torque: '100 lb-in', most: '88 lb-in' })).toBeGreaterThan(5.5)
    expect(width({ tolerance: '1 %' })).toBeLessThan(2)
  })
})
