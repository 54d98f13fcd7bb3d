// The weekly digest: each wrench once, where it weighs most; what needs nothing is left out.
import { describe, expect, it } from 'vitest'
import { fillDemo } from '../../src/demo/fill.ts'
import { digestOf, digestParts, isQuiet } from '../../src/register/digest.ts'
import { testShop } from '../support/doors.ts'
import { bookOf, card } from './shop.ts'

describe('the digest', () => {
  it('of the demo shop tells each wrench at most once, in its part', async () => {
    const shop = testShop('2026-11-25')
    await fillDemo(shop)
    const digest = digestOf(await shop.fleet(), shop.today())
    const tags = digestParts.flatMap((part) => digest[part].map(({ tag }) => tag))
    expect(new Set(tags).size).toBe(tags.length)
    expect(digest['check-before-use'].map(({ tag }) => tag)).toEqual(['W-02', 'W-09'])
    expect(digest['set-aside'].map(({ tag }) => tag)).toEqual(['W-06'])
    expect(digest.overdue.map(({ tag }) => tag)).toContain('W-11')
    expect(tags).not.toContain('W-12') // retired
    expect(isQuiet(digest)).toBe(false)
  })

  it('of an empty shop is quiet', () => {
    expect(isQuiet(digestOf(bookOf(), { today: '2026-06-01' }))).toBe(true)
  })

  it('a wrench that was never checked is overdue', () => {
    expect(digestOf(bookOf(card('W-1')), { today: '2026-06-01' }).overdue.map(({ tag }) => tag)).toEqual(['W-1'])
  })
})
