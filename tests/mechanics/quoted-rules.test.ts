// Rules that people quote: each as it is quoted, and how far it is from the lever.
import { describe, expect, it } from 'vitest'
import { asAdapter, lessBy, oneFoot, oneMinus } from '../../src/mechanics/quoted-rules.ts'
import { settingFor } from '../support/lever-by-hand.ts'

const INCH = 0.0254
const FOOT = 0.3048

describe('quoted rules', () => {
  it('T (1 − E/L): 100 with 2 on 16 in is 87.5 where the lever gives 88.9', () => {
    expect(oneMinus(100, 2 * INCH, 16 * INCH)).toBeCloseTo(87.5, 9)
    expect(settingFor(100, 16 * INCH, 2 * INCH)).toBeCloseTo(88.888_889, 5)
  })

  it('T (1 − E/L) is low by the share (E/L)² of what the lever gives', () => {
    for (const [E, L] of [
      [0.05, 0.4],
      [0.1, 0.3],
      [0.02, 0.5],
    ] as const) {
      expect(1 - oneMinus(70, E, L) / settingFor(70, L, E)).toBeCloseTo((E / L) ** 2, 12)
    }
  })

  it('T/(1 + feet): right for a lever of one foot, and for that one only', () => {
    expect(oneFoot(100, 9 * INCH)).toBeCloseTo(57.142_857, 5)
    expect(oneFoot(100, 9 * INCH)).toBeCloseTo(settingFor(100, FOOT, 9 * INCH), 9)
    expect(Math.abs(oneFoot(100, 9 * INCH) - settingFor(100, 1.5 * FOOT, 9 * INCH))).toBeGreaterThan(5)
  })

  it('a percentage off, and a bar taken for an adapter', () => {
    expect(lessBy(600, 10)).toBeCloseTo(540, 9)
    expect(asAdapter(35, 0.25, 0.5)).toBeCloseTo(23.333, 3)
  })
})
