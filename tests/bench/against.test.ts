// What `npm run bench -- against` is asked, and what its table says.
import { execFileSync } from 'node:child_process'
import { existsSync, readdirSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { root } from '../support/service.ts'
import { median, ROUNDS, readAgainst, tableOf } from './against-table.ts'
import { checkOut, commitOf } from './against-tree.ts'

const left = (): string[] => readdirSync(tmpdir()).filter((name) => name.startsWith('armlength-against-'))

describe('what is asked', () => {
  it('is a commit, and how many rounds', () => {
    expect(readAgainst(['HEAD~3'])).toEqual({ commit: 'HEAD~3', rounds: ROUNDS })
    expect(readAgainst(['0.1.0', '12'])).toEqual({ commit: '0.1.0', rounds: 12 })
  })

  it.each([[[]], [['']], [['HEAD', '3', 'more']]])('%j is told how to ask', (argv) =>
    expect(() => readAgainst(argv)).toThrow(/against <commit> \[rounds\]/),
  )

  it.each(['0', '-1', '2.5', 'x', '51', ''])('%j rounds are none', (rounds) =>
    expect(() => readAgainst(['HEAD', rounds])).toThrow(/no number of rounds/),
  )
})

// A tree that was copied without its history has no commits to measure.
describe.runIf(existsSync(join(root, '.git')))('what is checked out', () => {
  it.each(['no-such-commit', '--all', 'HEAD~999999', ' '])(
    '%j is no commit: it is said, and nothing is left behind',
    async (name) => {
      const before = left()
      await expect(commitOf(name)).rejects.toThrow(`there is no commit “${name}”`)
      await expect(checkOut(name, AbortSignal.timeout(10_000))).rejects.toThrow('there is no commit')
      expect(left()).toEqual(before)
    },
  )

  it('a name is a commit by whatever name it goes', async () => {
    const head = execFileSync('git', ['-C', root, 'rev-parse', 'HEAD']).toString().trim()
    expect(await commitOf('HEAD')).toBe(head)
    expect(await commitOf(head.slice(0, 10))).toBe(head)
  })

  it('a build that is broken off takes its folder with it', async () => {
    const before = left()
    await expect(checkOut('HEAD', AbortSignal.abort(new Error('off')))).rejects.toThrow()
    expect(left()).toEqual(before)
    expect(execFileSync('git', ['-C', root, 'worktree', 'list']).toString()).not.toContain('armlength-against-')
  })
})

describe('the table', () => {
  it('the middle one, or the mean of the two in the middle', () => {
    expect(median([3, 1, 2])).toBe(2)
    expect(median([4, 1, 3, 2])).toBe(2.5)
    expect(() => median([])).toThrow()
  })

  it('compares each round with itself: a machine that is slower in one round makes no difference', () => {
    const round = (slow: number, ratio: number) => ({ old: { a: 10 * slow }, new: { a: 10 * slow * ratio } })
    const { rows, alone } = tableOf([round(1, 1.1), round(5, 1.2), round(1, 1)])
    expect(alone).toEqual([])
    expect(rows).toHaveLength(1)
    expect(rows[0]).toMatchObject({ name: 'a', old: 10 })
    expect(rows[0]?.ratio).toBeCloseTo(1.1, 9)
    expect(rows[0]?.least).toBeCloseTo(1, 9)
    expect(rows[0]?.most).toBeCloseTo(1.2, 9)
  })

  it('names what only one side could do, and shows no ratio of it', () => {
    const { rows, alone } = tableOf([
      { old: { a: 1 }, new: { a: 2, b: 3 } },
      { old: { a: 1, c: 1 }, new: { a: 4, b: 3 } },
    ])
    expect(rows).toEqual([{ name: 'a', old: 1, new: 3, ratio: 3, least: 2, most: 4 }])
    expect(alone).toEqual(['b', 'c'])
  })
})
