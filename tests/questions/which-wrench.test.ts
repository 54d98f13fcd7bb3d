// which-wrench: the setting of every wrench by hand, which fits and why, best first; by a small fleet.
import { describe, expect, it } from 'vitest'
import { answered, ask } from '../support/desk.ts'

type Cell = { code?: string; text: string; value?: number; unit?: string }
const rows = (raw: Record<string, string>): Array<Record<string, Cell>> =>
  answered('which-wrench', raw).results['wrenches'] as unknown as Array<Record<string, Cell>>

describe('which wrench', () => {
  it('sets each by its own lever, S = T L/(L + X), and leads with the one that fits', () => {
    const [first, ...others] = rows({ torque: '120 N·m', adapter: '45 mm' })
    expect(first?.['wrench']).toEqual({ code: 'W-07', text: 'W-07, Half-inch click wrench' })
    expect(first?.['setting']?.value).toBeCloseTo((120 * 380) / 425, 9)
    const small = others.find((row) => row['wrench']?.code === 'W-02')
    expect(small?.['setting']?.value).toBeCloseTo((120 * 260) / 305, 9)
    expect(small?.['fit']?.code).toBe('no')
    expect(small?.['why']?.code).toBe('above-most')
  })

  it('without adapters a wrench whose lever nobody knows can do it as well', () => {
    const long = (raw: Record<string, string>) => rows(raw).find((row) => row['wrench']?.code === 'W-11')
    expect(long({ torque: '200 N·m' })?.['setting']?.value).toBe(200)
  })

  it('speaks the unit of the torque', () => {
    expect(rows({ torque: '88.5 lbf·ft' })[0]?.['setting']?.text).toBe('88.5 lbf·ft')
  })

  it('none that fits is said, and no setting leads', () => {
    const { headline } = answered('which-wrench', { torque: '900 N·m' })
    expect(headline).toBe('No wrench of the shop can do 900 N·m today; why stands beside each.')
  })

  it('a wrench that was never checked is offered with care, and that leads the cautions', () => {
    const answer = answered('which-wrench', { torque: '120 N·m', adapter: '45 mm@30' })
    expect(answer.headline).toContain('W-07, with care: set 108.8 N·m')
    expect(answer.cautions[0]?.code).toBe('check-due')
    expect(answer.related[0]).toMatchObject({ question: 'adapter-setting', inputs: { wrench: 'W-07' } })
  })

  it('shows twelve and counts the rest', () => {
    const answer = answered('which-wrench', { torque: '120 N·m' })
    expect(rows({ torque: '120 N·m' })).toHaveLength(12)
    expect(answer.results['more-wrenches']).toMatchObject({ value: 4 })
  })

  it.each([
    [{ torque: '120' }, 'unit-missing'],
    [{ torque: '120 N·m', adapter: '45 mm + 20 mm', angle: '30°' }, 'conflict'],
  ])('%j is refused: %s', (raw, code) => {
    expect(ask('which-wrench', raw).faults[0]?.code).toBe(code)
  })
})
