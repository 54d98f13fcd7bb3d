// Numbers that are not read whole: the last part alone would be a wrong number, and is never taken.
import { describe, expect, it } from 'vitest'
import { createDesk } from '../../src/desk/desk.ts'

const desk = createDesk({ system: 'metric', locale: 'en' })
const ask = (text: string) => desk.askText(text, { door: 'terminal' })

describe('a number of which only the last part could be read', () => {
  it.each([
    ...['twenty-five', 'one hundred and twenty', 'one hundred twenty', 'fifty-five and a half', '100 and a half'],
    ...['1 234,5', '1\u00a0234,5', '1\u202f234.5', '12..5', '12,,5', '12·5', '10^2', '1.2*10^2', '10*12'],
    ...['100+20', '100 + 20', '120-20', '1\u200b20', '12_5', '1\\20'],
  ])('“%s Nm” gives no setting', (number) => {
    const answer = ask(`400 mm wrench, 50 mm crowfoot straight, ${number} Nm, what do I set?`)
    expect(answer.status).not.toBe('answered')
    expect(answer.results).toEqual({})
  })

  it.each([
    'wrench twenty-four inches, crowfoot two inches, straight, 75 ft-lb, what do I set?',
    '400 mm wrench, 50 mm crowfoot at forty-five degrees, 100 Nm, what do I set?',
    'twenty-five ft-lb in Nm',
    'M10 8.8 bolt, twenty-five Nm, k 0.2, clamp force?',
  ])('“%s” gives none either', (text) => {
    expect(ask(text).status).not.toBe('answered')
  })

  it('what is whole is read as before', () => {
    for (const number of ['120', 'twenty', '110-130', '120 ± 5'])
      expect(ask(`400 mm wrench, 50 mm crowfoot straight, ${number} Nm, what do I set?`).status).toBe('answered')
    expect(ask(',5 Nm in in-lb').headline).toContain('0.5 N·m')
  })
})
