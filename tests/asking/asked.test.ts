// Questions as people ask them: no wrong number, and nine in ten right, asked back or refused rightly, in each half.
import { describe, expect, it } from 'vitest'
import { asked, goodShare, isAside, score } from '../support/asked-score.ts'

const scored = score(asked)
const halves = [
  ['tuned on', scored.filter(({ item }) => !isAside(item))],
  ['set aside', scored.filter(({ item }) => isAside(item))],
] as const

describe('questions as people ask them', () => {
  it('are there, in two halves', () => {
    expect(asked.length).toBe(91)
    expect(new Set(asked.map(({ id }) => id)).size).toBe(91)
    expect(halves.map(([, half]) => half.length)).toEqual([43, 48])
  })

  it('no wrong number is given', () => {
    expect(scored.filter(({ verdict }) => verdict === 'wrong number').map(({ item }) => item.id)).toEqual([])
  })

  it.each(halves)('nine in ten of those %s are right, asked back or refused rightly', (_name, half) => {
    expect(goodShare(half)).toBeGreaterThanOrEqual(0.9)
  })

  it('says how every text was read', () => {
    for (const { item, answer } of scored) {
      expect(answer.reading, item.id).toBeDefined()
      for (const { span } of answer.reading?.taken ?? []) expect(item.text, item.id).toContain(span)
      for (const span of answer.reading?.ignored ?? []) expect(item.text, item.id).toContain(span)
    }
  })
})
