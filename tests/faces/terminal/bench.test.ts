// Bench runs at the terminal: begun, read, finished, shown and listed, with codes that a script can tell apart.
import { describe, expect, it } from 'vitest'
import { runTerminal } from '../../../src/faces/terminal/terminal.ts'
import { testDesk, testShop } from '../../support/doors.ts'

const session = () => {
  const shop = testShop()
  const say = async (...argv: readonly string[]) => {
    const out: string[] = []
    const err: string[] = []
    const code = await runTerminal(
      ['bench', ...argv],
      testDesk(),
      { out: (one) => out.push(one), err: (one) => err.push(one) },
      shop,
    )
    return { code, out: out.join('\n'), err: err.join('\n') }
  }
  return { shop, say }
}

describe('bench runs at the terminal', () => {
  it('from the first to the last', async () => {
    const { shop, say } = session()
    expect(await say()).toMatchObject({ code: 0, out: 'No bench run is kept yet.' })
    const begun = await say('start', 'tag=B-01', 'asked=Does oil matter?', 'conditions=A: dry | B: oiled', 'size=M12')
    expect(begun).toMatchObject({ code: 0, err: '' })
    expect(begun.out).toContain('Nothing was read yet.')
    await say('add', 'run=B-01', 'condition=A', 'torque=80; 80; 80 N·m', 'clamp-force=33,1; 34; 33.6 kN')
    const read = await say('add', 'run=B-01', 'condition=B', 'torque=80; 80; 80 N·m', 'clamp-force=37; 38.2; 37.5 kN')
    expect(read.out).toContain('clamp force, B against A: ')
    expect((await say('finish', 'run=B-01')).code).toBe(0)
    expect((await say('list')).out).toBe('B-01       Does oil matter? (finished, n = 6)')
    const shown = await say('show', 'run=b-01', '--json')
    expect(JSON.parse(shown.out)).toMatchObject({ tag: 'B-01', date: '2026-06-01', state: { code: 'finished' } })
    expect(
      (await shop.runs.one('B-01'))?.entries.every(({ by }) => by.door === 'terminal' && by.role === 'keeper'),
    ).toBe(true)
  })

  it('readings are corrected and taken back by their number; what is not told stays', async () => {
    const { shop, say } = session()
    await say('start', 'tag=B-01', 'asked=Does oil matter?', 'conditions=A: dry | B: oiled', 'size=M12')
    await say('add', 'run=B-01', 'condition=A', 'torque=80; 80 N·m', 'clamp-force=33.1; 3.4 kN')
    await say('add', 'run=B-01', 'condition=A', 'torque=80 N·m', 'clamp-force=60 kN')
    expect((await say('show', 'run=B-01')).out).toContain('  2. 2026-06-01  A  80 N·m · 60 kN')
    const why = 'why=mark misread'
    const corrected = await say('correct', 'run=b-01', 'reading=1', 'clamp-force=33.1; 34 kN', why)
    expect(corrected).toMatchObject({ code: 0, err: '' })
    expect(corrected.out).toMatch(/ {2}1\. 2026-06-01 {2}A {2}80; 80 N·m · 33\.1; 34 kN/)
    expect((await say('take-back', 'run=B-01', 'reading=2', why)).code).toBe(0)
    const run = await shop.runs.one('B-01')
    expect(run?.folder.readings).toHaveLength(1)
    expect(run?.folder.readings[0]?.earlier).toHaveLength(1)
    expect(run?.withdrawn).toHaveLength(1)
    const uneven = await say('correct', 'run=B-01', 'reading=1', 'torque=80 N·m', why)
    expect(uneven).toMatchObject({ code: 2 })
    expect(uneven.err).toContain('give each list one for every turn')
    const other = await say('take-back', 'run=B-01', 'reading=2', why)
    expect(other).toMatchObject({ code: 2 })
    expect(other.err).toContain('reading: “2”. These readings are not in the run')
  })

  it.each<[readonly string[], number, string]>([
    [['correct', 'run=B-9', 'reading=1', 'why=x'], 2, 'No run has this tag'],
    [['take-back'], 2, 'why: '],
    [['add', 'run=B-9', 'condition=A', 'torque=80 N·m'], 2, 'No run has this tag'],
    [['add', 'run=B-9', 'condition=A'], 2, 'torque: the torque that was delivered'],
    [['show', 'run=B-9'], 2, 'No bench run of this tag'],
    [['show'], 64, 'npm run ask -- bench'],
    [['weigh', 'run=B-1'], 64, 'npm run ask -- bench'],
    [['list', 'run=B-1'], 64, 'npm run ask -- bench'],
  ])('%j ends with %d', async (argv, code, told) => {
    const { say } = session()
    const { code: got, err } = await say(...argv)
    expect(got).toBe(code)
    expect(err).toContain(told)
  })
})
