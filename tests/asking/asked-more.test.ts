// The second set of questions as people ask them: each with its outcome and number written down first.
import { describe, expect, it } from 'vitest'
import { more, scoreMore } from '../support/asked-more.ts'

const scored = scoreMore(more)
const ids = (verdict: string): string[] =>
  scored.filter((one) => one.verdict === verdict).map(({ item }) => `${item.id} ${item.text}`)

describe('a second set of questions as people ask them', () => {
  it('is there, each text once', () => {
    expect(more.length).toBe(69)
    expect(new Set(more.map(({ text }) => text)).size).toBe(69)
  })

  it('gets no wrong number', () => expect(ids('wrong number')).toEqual([]))

  it('is taken for what it is about', () => expect(ids('wrong topic')).toEqual([]))

  it('is asked back without need once at most', () => expect(ids('asked without need').length).toBeLessThanOrEqual(1))
})
