// The terminal door: exit codes, usage, the document with --json, and nothing that moves a cursor.
import { describe, expect, it } from 'vitest'
import { exitCodes, runTerminal } from '../../../src/faces/terminal/terminal.ts'
import { questionNames, questions } from '../../../src/questions/index.ts'
import { testDesk } from '../../support/doors.ts'

const run = async (...argv: string[]) => {
  const out: string[] = []
  const err: string[] = []
  const code = await runTerminal(argv, testDesk(), { out: (line) => out.push(line), err: (line) => err.push(line) })
  return { code, out: out.join('\n'), err: err.join('\n') }
}

describe('the terminal', () => {
  it.each([
    [['pull', 'torque=100 N·m', 'hand=1 m'], exitCodes.answered, 'answered'],
    [['pull', 'torque=100', 'hand=1 m'], exitCodes.refused, 'a fault'],
    [['pull', 'torque=100 N·m'], exitCodes.incomplete, 'something missing'],
    [[], exitCodes.usage, 'no question'],
    [['nope'], exitCodes.usage, 'no such question'],
    [['pull', '100'], exitCodes.usage, 'no name before the value'],
    [['pull', '--loud'], exitCodes.usage, 'no such flag'],
    [['--help'], 0, 'help was asked for'],
    [['pull', '--help'], 0, 'help was asked for'],
  ])('%j exits with %i: %s', async (argv, code) => {
    expect((await run(...argv)).code).toBe(code)
  })

  it('what is asked for goes to out, what is wrong with the call to err', async () => {
    expect((await run('pull', 'torque=100')).err).toBe('')
    expect(await run('nope')).toMatchObject({ out: '', err: expect.stringContaining('“nope”') })
    expect((await run('pull', '100')).err).toContain('torque=')
  })

  it('usage lists every question; help lists every input with an example', async () => {
    for (const name of questionNames) {
      expect((await run('--help')).out).toContain(name)
      for (const input of Object.keys(questions[name].inputs))
        expect((await run(name, '--help')).out).toContain(`${input}="`)
    }
  })

  it('an input that is given twice is a list, not the last one', async () => {
    const { out } = await run(
      'adapter-setting',
      'torque=33 Nm',
      'lever=30 cm',
      'adapter=10 cm@0',
      'adapter=5 cm@60',
      '--json',
    )
    expect(JSON.parse(out).results.setting.text).toBe('23.3 N·m')
    expect((await run('pull', 'torque=1 Nm', 'torque=2 Nm', 'hand=1 m')).out).toContain('Give this input once')
  })

  it('a value may hold an equals sign, and a name of every object is just unknown', async () => {
    expect((await run('convert', 'quantity=a=b')).code).toBe(exitCodes.refused)
    expect((await run('convert', '__proto__=1')).out).toContain('__proto__')
  })

  it('what was typed cannot move the cursor or turn the line', async () => {
    expect((await run('convert', 'quantity=\u001b[2J\u202ex')).out).not.toMatch(/\p{Cc}(?<!\n)|\p{Bidi_Control}/u)
  })
})
