// Where the torque of a joint goes: the shares add up, agree with the formula's own example, and follow the place that is lubricated.
import { describe, expect, it } from 'vitest'
import { answered, rowOf } from '../support/desk.ts'

const shares = (answer: Parameters<typeof rowOf>[0], name: string): Record<'stretch' | 'thread' | 'seat', number> => {
  const row = rowOf(answer, name)
  return { stretch: row.stretch?.value ?? 0, thread: row.thread?.value ?? 0, seat: row.seat?.value ?? 0 }
}
const m10 = { size: 'M10', seat: 'flat 14.63 mm x 11 mm', 'mu-threads': '0.12', 'mu-seat': '0.12' }
const oiled = { torque: '100 N·m', from: 'dry', to: 'oiled', size: 'M12x1.5', seat: 'cone 60° 18 mm x 13 mm' }

describe('the split of the torque', () => {
  it.each([
    ['clamp-force', { ...m10, torque: '45 N·m' }],
    ['bolt-torque', { ...m10, class: '8.8' }],
  ] as const)('%s: that of M10 at μ 0.12 by ISO 16047 (worked out by hand beside the formula)', (question, raw) => {
    const { stretch, thread, seat } = shares(answered(question, raw), 'torque-split')
    expect([stretch, thread, seat].map((one) => Math.round(one * 10) / 10)).toEqual([14.6, 38.3, 47.1])
    expect(stretch + thread + seat).toBeCloseTo(100, 9)
  })

  it('is not told by a nut factor or a state', () => {
    const raw = { size: 'M10', torque: '45 N·m' }
    expect(answered('clamp-force', { ...raw, k: '0.2' }).results['torque-split']).toBeUndefined()
    expect(answered('clamp-force', { ...raw, condition: 'dry' }).results['torque-split']).toBeUndefined()
  })

  it.each([
    ['threads', 'seat', 'thread'],
    ['seat', 'thread', 'seat'],
  ] as const)('with a lubricant on the %s alone the %s keeps its size against the stretch', (where, kept, changed) => {
    const answer = answered('lubricant', { ...oiled, where })
    const [before, after] = [shares(answer, 'split-before'), shares(answer, 'split-after')]
    expect(after[kept] / after.stretch).toBeCloseTo(before[kept] / before.stretch, 9)
    expect(after[changed] / after.stretch).toBeLessThan(before[changed] / before.stretch)
    expect(after.stretch + after.thread + after.seat).toBeCloseTo(100, 9)
  })

  it('without a place is not told: one nut factor stands for both', () => {
    const { results } = answered('lubricant', { torque: '100 N·m', from: 'dry', to: 'oiled', size: 'M12' })
    expect(results['split-before']).toBeUndefined()
  })
})
