// What a sheet says beside its drawing: what may not be done, what is not known, and which way a wrench errs.
import { describe, expect, it } from 'vitest'
import { figureOf } from '../../src/figures/index.ts'
import type { QuestionName } from '../../src/questions/index.ts'
import { languages } from '../../src/words/index.ts'
import { answered } from '../support/desk.ts'

const words = languages.en.words
const altOf = (question: QuestionName, raw: Readonly<Record<string, string | readonly string[]>>): string => {
  const figure = figureOf(answered(question, raw), words, 'light')
  if (!figure) throw new Error(`no figure for ${question}`)
  return figure.alt
}
const square = { lever: '500 mm', adapter: '100 mm @ 0 deg' }

describe('a setting', () => {
  it('outside the range of the wrench is not to be used, and no band is promised for it', () => {
    const alt = altOf('adapter-setting', { ...square, torque: '100 N·m', least: '100 N·m', most: '200 N·m' })
    expect(alt).toContain('do not use it so')
    expect(alt).not.toContain('95 %')
    const back = altOf('adapter-setting', {
      lever: '500 mm',
      adapter: '100 mm @ 180 deg',
      torque: '195 N·m',
      least: '40 N·m',
      most: '200 N·m',
    })
    expect(back).toContain('do not use it so')
    expect(back).not.toContain('set HIGHER')
  })

  it('a torque in the range has its band, and no such warning', () => {
    const alt = altOf('adapter-setting', { ...square, torque: '120 N·m', least: '40 N·m', most: '200 N·m' })
    expect(alt).toContain('95 %')
    expect(alt).not.toContain('do not use it so')
  })

  it('tells a pivot nobody knows from a torque with two ends', () => {
    const open = altOf('adapter-setting', { ...square, torque: '120 N·m', hand: '450 mm' })
    expect(open).toContain('where it trips is not known')
    const ends = altOf('adapter-setting', { ...square, torque: '110 to 120 N·m' })
    expect(ends).toContain('for the ends asked')
    expect(ends).not.toContain('where it trips')
  })

  it.each([
    ['45 deg', 'to the side you pull to'],
    ['-45 deg', 'to the side away from the pull'],
    ['135 deg', 'back, on the side you pull to'],
    ['-135 deg', 'back, on the side away from the pull'],
    ['180 deg', 'straight back'],
  ])('an adapter at %s lies %s', (angle, told) => {
    const alt = altOf('adapter-setting', { lever: '500 mm', adapter: `100 mm @ ${angle}`, torque: '60 N·m' })
    expect(alt).toContain(`° ${told}`)
  })
})

describe('a check with a scale', () => {
  const scale = { distance: '0.5 m', setting: '60 N·m', 'gauge-tolerance': '1 %' }

  it.each([
    ['100 N', 'delivers LOW'],
    ['140 N', 'delivers HIGH'],
  ])('at %s the wrench %s', (force, told) => {
    expect(altOf('scale-check', { ...scale, force })).toContain(told)
  })

  it('a deviation smaller than its doubt is neither high nor low', () => {
    const alt = altOf('scale-check', { ...scale, force: '120 N' })
    expect(alt).toContain('deviation')
    expect(alt).not.toMatch(/LOW|HIGH/)
  })

  it('says where the weight of the wrench is counted in, and only there', () => {
    const weight = { 'wrench-mass': '1.4 kg', 'balance-point': '0.25 m', 'pull-direction': 'down' }
    const level = altOf('scale-check', { ...scale, force: '100 N', ...weight, lie: 'level' })
    expect(level).toContain(words.figures.ownWeight)
    const upright = altOf('scale-check', { ...scale, force: '100 N', ...weight, lie: 'upright' })
    expect(upright).not.toContain(words.figures.ownWeight)
  })
})

it('a hand past the grip is warned of', () => {
  const alt = altOf('hand-position', { lever: '500 mm', hand: '700 mm', setting: '100 N·m', pivot: '20 mm' })
  expect(alt).toContain(words.figures.warnings['no-pipe'])
})

describe('a direction', () => {
  it('that nobody told is said to be assumed, and no other', () => {
    const at = (adapter: string): string => altOf('adapter-setting', { torque: '100 N·m', lever: '400 mm', adapter })
    expect(at('50 mm')).toContain('0° straight ahead (assumed)')
    expect(at('50 mm@0')).toContain('0° straight ahead')
    expect(at('50 mm@0')).not.toContain('assumed')
    expect(at('50 mm@0 + 20 mm')).toContain('20 mm, 0° straight ahead (assumed)')
  })
})
