import { describe, expect, it } from 'vitest'
import { boltLength, gripParts, threadedLength } from '../../src/mechanics/bolt-length.ts'

const IN = 0.0254

describe('a bolt for a grip', () => {
  it('of 3 in with a 1/2 in nut is 3 1/2 in long with 2 1/4 in of shank, as the file says', () => {
    const L = boltLength(3 * IN, (7 / 16) * IN, 0.25 * IN)
    expect(L / IN).toBeCloseTo(3.5, 9)
    const threaded = threadedLength(0.5 * IN, L, 'inch')
    expect(threaded / IN).toBeCloseTo(1.25, 9)
    const parts = gripParts(3 * IN, L, threaded)
    expect(parts.shank / IN).toBeCloseTo(2.25, 9)
    expect(parts.threaded / IN).toBeCloseTo(0.75, 9)
  })

  it('is not a step longer than it must be', () => {
    expect(boltLength(0.03, 0.01, 0.005)).toBeCloseTo(0.04, 12)
    expect(boltLength(0.0301, 0.01, 0.005)).toBeCloseTo(0.045, 12)
  })

  it('is threaded 2d and 6, 12 or 25 mm by its length', () => {
    expect(threadedLength(0.012, 0.08, 'metric')).toBeCloseTo(0.03, 12)
    expect(threadedLength(0.012, 0.125, 'metric')).toBeCloseTo(0.03, 12)
    expect(threadedLength(0.012, 0.13, 'metric')).toBeCloseTo(0.036, 12)
    expect(threadedLength(0.012, 0.22, 'metric')).toBeCloseTo(0.049, 12)
    expect(threadedLength(0.5 * IN, 7 * IN, 'inch') / IN).toBeCloseTo(1.5, 9)
  })

  it('shorter than its thread has no shank in the grip; with a long shank no thread is in it', () => {
    expect(gripParts(0.02, 0.025, 0.03)).toEqual({ shank: 0, threaded: 0.02 })
    expect(gripParts(0.02, 0.06, 0.03)).toEqual({ shank: 0.02, threaded: 0 })
  })
})
