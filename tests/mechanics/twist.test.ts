import { describe, expect, it } from 'vitest'
import { polarMoment, twistOf, twistStress } from '../../src/mechanics/twist.ts'

describe('the twist of a bar', () => {
  it('is 7.07° for 100 N·m through 250 mm of half inch, as the file says', () => {
    expect(twistOf(100, 0.25, 0.0127)).toBeCloseTo(7.07, 2)
  })

  it('doubles with length or torque and falls sixteenfold with twice the diameter', () => {
    const one = twistOf(50, 0.1, 0.01)
    expect(twistOf(100, 0.1, 0.01)).toBeCloseTo(2 * one, 12)
    expect(twistOf(50, 0.2, 0.01)).toBeCloseTo(2 * one, 12)
    expect(twistOf(50, 0.1, 0.02)).toBeCloseTo(one / 16, 12)
  })

  it('fits the stress at the surface: τ = G θ r/l', () => {
    const [T, l, d, G] = [80, 0.3, 0.016, 79.3e9]
    const theta = (twistOf(T, l, d, G) * Math.PI) / 180
    expect(twistStress(T, d)).toBeCloseTo((G * theta * d) / 2 / l, 0)
    expect(polarMoment(d)).toBeCloseTo((Math.PI * d ** 4) / 32, 20)
  })
})
