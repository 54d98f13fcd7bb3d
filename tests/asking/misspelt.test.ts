// Which misspelt words are read as a word of the trade, and which are left as they are.
import { describe, expect, it } from 'vitest'
import { meantBy } from '../../src/asking/misspelt.ts'

describe('a misspelt word', () => {
  it.each([
    ['crowfot', 'crowfoot', 'a letter left out'],
    ['crowfooot', 'crowfoot', 'a letter put in'],
    ['stright', 'straight', 'a letter left out'],
    ['straihgt', 'straight', 'two letters turned about'],
    ['wrencch', 'wrench', 'a letter twice'],
    ['wremch', 'wrench', 'another letter'],
    ['seting', 'setting', 'a double letter once'],
    ['extention', 'extension', 'another letter'],
    ['multiplyer', 'multiplier', 'another letter'],
  ])('%s is %s: %s', (typed, meant) => expect(meantBy(typed)).toBe(meant))

  it.each([
    ['wrench', 'spelled well'],
    ['adapted', 'its end is another'],
    ['wretch', 'a word of its own'],
    ['treads', 'a word of its own'],
    ['trench', 'its first letter is another'],
    ['wrnh', 'too short'],
    ['crwfot', 'two slips'],
  ])('%s is left: %s', (typed) => expect(meantBy(typed)).toBeUndefined())

  it('gives the same answer as one that is spelled well', async () => {
    const { readText } = await import('../../src/asking/read-text.ts')
    const { inputs, question } = readText('seting for 55 ftlbs w/ 3in crowfot stright on 15 in torqe wremch')
    expect(question).toBe('adapter-setting')
    expect(inputs).toEqual({ torque: '55 lbf·ft', lever: '15 in', adapter: '3 in', angle: '0°' })
  })
})
