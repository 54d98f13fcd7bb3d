// tolerance-band: what a setting may deliver by the wrench's tolerance alone, and whether that fits what is asked.
import { describe, expect, it } from 'vitest'
import { answered, ask, cautionsOf, codesOf, resultOf } from '../support/desk.ts'

const band = (inputs: Record<string, string>) => resultOf(answered('tolerance-band', inputs), 'torque')

describe('the band', () => {
  it('of 42 at 4 % is 40.3 to 43.7', () => {
    const answer = answered('tolerance-band', { setting: '42 lbf·ft', tolerance: '4 %' })
    expect(answer.headline).toBe('Set to 42 lbf·ft the wrench may deliver 40.3 lbf·ft to 43.7 lbf·ft.')
    expect(resultOf(answer, 'torque')).toMatchObject({ low: expect.closeTo(40.32, 9), high: expect.closeTo(43.68, 9) })
  })

  it('of full scale is the same everywhere: 4 % of 250 is 33 % at 30', () => {
    const inputs = { setting: '30 N·m', tolerance: '4 %', of: 'full-scale', most: '250 N·m' }
    expect(band(inputs)).toMatchObject({ low: expect.closeTo(20, 9), high: expect.closeTo(40, 9) })
    const share = answered('tolerance-band', inputs).steps.find(({ unit }) => unit === '%')
    expect(share?.value).toBeCloseTo(33.333, 3)
  })

  it('of full scale at full scale is that of the reading', () => {
    const whole = { setting: '250 N·m', tolerance: '4 %', most: '250 N·m' }
    expect(band({ ...whole, of: 'full-scale' })).toEqual(band({ ...whole, of: 'reading' }))
  })

  it('never goes below nothing', () => {
    expect(band({ setting: '5 N·m', tolerance: '4 %', of: 'full-scale', most: '250 N·m' }).low).toBe(0)
  })

  it('of full scale asks for the highest mark', () => {
    const answer = ask('tolerance-band', { setting: '30 N·m', tolerance: '4 %', of: 'full-scale' })
    expect(answer.missing.map(({ input }) => input)).toEqual(['most'])
    expect(answer.ladder?.by).toBe('most')
  })
})

describe('a span that is asked for', () => {
  it.each([
    ['40–47 lbf·ft', 'inside', /^Yes: /],
    ['40.32–43.68 lbf·ft', 'inside', /^Yes: /],
    ['41–47 lbf·ft', 'partly-outside', /^Not surely: /],
    ['41–43 lbf·ft', 'partly-outside', /^Not surely: /],
    ['30–42 lbf·ft', 'partly-outside', /^Not surely: /],
    ['50–60 lbf·ft', 'outside', /^No: /],
    ['20–30 lbf·ft', 'outside', /^No: /],
    ['54–64 N·m', 'inside', /^Yes: /],
    ['42 ± 2 lbf·ft', 'inside', /^Yes: /],
    ['42 lbf·ft ± 4 %', 'inside', /^Yes: /],
  ])('of %s holds 42 at 4 %%: %s', (spec, code, headline) => {
    const answer = answered('tolerance-band', { setting: '42 lbf·ft', tolerance: '4 %', spec })
    expect(answer.results['inside']).toMatchObject({ code })
    expect(answer.headline).toMatch(headline)
  })

  it('is two ends, never one value', () => {
    const { faults } = ask('tolerance-band', { setting: '42 lbf·ft', tolerance: '4 %', spec: '42 lbf·ft' })
    expect(faults.map(({ input, code }) => [input, code])).toEqual([['spec', 'too-few']])
  })

  it('that is not told has no verdict', () => {
    expect(answered('tolerance-band', { setting: '42 lbf·ft', tolerance: '4 %' }).results['inside']).toBeUndefined()
  })
})

describe('what it warns of and refuses', () => {
  it.each([
    ['49.9 N·m', ['below-a-fifth', 'tolerance-is-not-all', 'maker-first']],
    ['50 N·m', ['tolerance-is-not-all', 'maker-first']],
    ['250 N·m', ['tolerance-is-not-all', 'maker-first']],
    ['251 N·m', ['beyond-range', 'tolerance-is-not-all', 'maker-first']],
  ])('at %s of 250: %j', (setting, expected) => {
    expect(cautionsOf(answered('tolerance-band', { setting, tolerance: '4 %', most: '250 N·m' }))).toEqual(expected)
  })

  it('a setting above the highest mark is told first', () => {
    const inputs = { setting: '251 N·m', tolerance: '4 %', most: '250 N·m', spec: '200–300 N·m' }
    expect(answered('tolerance-band', inputs).headline).toMatch(/^Do not set this wrench so: 251 N·m lies above/)
  })

  it.each([
    ['0 %', 'out-of-range'],
    ['51 %', 'out-of-range'],
    ['4', 'unit-missing'],
    ['-4 %', 'negative'],
    ['4 N·m', 'unit-wrong-kind'],
  ])('a tolerance of %s is refused as %s', (tolerance, code) => {
    expect(codesOf(ask('tolerance-band', { setting: '42 lbf·ft', tolerance }))).toEqual([code])
  })
})
