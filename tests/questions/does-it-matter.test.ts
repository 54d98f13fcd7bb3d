// does-it-matter: every topic answers whole and says where it is from; numbers of the asker's own are worked out, and judge.
import { describe, expect, it } from 'vitest'
import { matters } from '../../src/questions/matters/index.ts'
import { links } from '../../src/questions/matters/links.ts'
import { groups, type Slug, slugs, statements } from '../../src/questions/matters/topic.ts'
import { wheelsAgain } from '../../src/tables/wheels.ts'
import { answered, ask, cautionsOf, codesOf, numberOf, quantityIn, resultOf, rowsOf } from '../support/desk.ts'

const matter = (topic: string, numbers: Readonly<Record<string, string>> = {}) =>
  answered('does-it-matter', { topic, ...numbers })
const word = (answer: ReturnType<typeof matter>, name: string): { code: string; text: string } =>
  answer.results[name] as { code: string; text: string }
const verdict = (topic: string, numbers: Readonly<Record<string, string>> = {}): string =>
  word(matter(topic, numbers), 'verdict').code

/** The table as a mechanic may check it. */
const verdicts: Readonly<Record<Slug, 'yes' | 'no' | 'depends'>> = {
  calibration: 'yes',
  dropped: 'yes',
  'loosening-with-it': 'yes',
  'stored-wound-up': 'depends',
  'under-a-fifth': 'yes',
  'anti-seize': 'yes',
  oil: 'yes',
  're-used-nut': 'depends',
  washers: 'depends',
  'wheel-re-torque': 'yes',
  'clicked-twice': 'depends',
  'hand-position': 'depends',
  jerked: 'yes',
  'pipe-on-the-handle': 'yes',
  'adapter-square': 'no',
  'adapter-straight': 'yes',
  bars: 'no',
  'changed-head': 'depends',
  'chained-spanner': 'depends',
  'flex-head': 'depends',
  'size-adapters': 'no',
  swivel: 'depends',
  'digital-or-click': 'no',
  price: 'no',
}

describe('the list of topics', () => {
  it('is 24, in five groups, each once', () => {
    expect(slugs).toHaveLength(24)
    expect(new Set(slugs).size).toBe(24)
    expect(groups).toEqual(['care', 'joint', 'pull', 'reach', 'tool'])
  })

  it('is told whole and in order to whoever asks about none of it', () => {
    const [fault] = ask('does-it-matter', { topic: 'the weather' }).faults
    expect(fault?.code).toBe('not-allowed')
    const told = (fault?.hint ?? '').matchAll(/(?:care|joint|pull|reach|tool): ([^;.]+)/g)
    expect([...told].flatMap(([, list]) => (list as string).split(/, | or /))).toEqual(slugs)
  })
})

describe.each(slugs)('%s', (slug) => {
  const answer = matter(slug)

  it('answers with its verdict, what to do, why and how much', () => {
    const { code, text } = word(answer, 'verdict')
    expect(code).toBe(verdicts[slug])
    expect(text).toMatch({ yes: /^yes, /, no: /^no, /, depends: /^it depends on \w/ }[verdicts[slug]])
    const opening = { yes: /^Yes[:,]/, no: /^No[:,]/, depends: /^It depends/ }[verdicts[slug]]
    expect(answer.headline).toMatch(opening)
    for (const name of ['what-to-do', 'mechanism', 'size-of-effect']) {
      expect(word(answer, name).code).toBe(slug)
      expect(word(answer, name).text.length, name).toBeGreaterThan(30)
    }
  })

  it('says behind every statement how far it carries, and names where each is from', () => {
    for (const statement of statements) {
      const from = matters[slug].from[statement]
      expect(from.length, statement).toBeGreaterThan(0)
      for (const { title, where, standing } of from) expect(answer.sources).toContainEqual({ title, where, standing })
      const told = / \(([a-z, ]+)\)$/.exec(word(answer, statement).text)?.[1]?.split(', ')
      expect(told, statement).toEqual([...new Set(from.map(({ standing }) => standing))])
    }
  })

  it('puts the maker first, and gives no quantity where no number was told', () => {
    expect(cautionsOf(answer).at(-1)).toBe('maker-first')
    expect(answer.pointers.length).toBeGreaterThan(0)
    expect(Object.keys(answer.results)).toEqual(['verdict', 'what-to-do', 'mechanism', 'size-of-effect'])
    expect(answer.steps).toEqual([])
  })

  it('gives no torque figure and no percentage for a lubricant', () => {
    const said = [
      answer.headline,
      ...['what-to-do', 'mechanism', 'size-of-effect'].map((name) => word(answer, name).text),
    ]
    expect(said.join(' ')).not.toMatch(/\d (N·m|lbf·ft|lbf·in|kgf)/)
    if (slug === 'oil' || slug === 'anti-seize') expect(said.join(' ')).not.toMatch(/\d ?%/)
  })

  it('links only to questions that take what is handed on', () => {
    const numbers = {
      torque: '100 N·m',
      lever: '400 mm',
      hand: '380 mm',
      adapter: '50 mm',
      tolerance: '3 %',
      most: '200 N·m',
      'fitting-change': '10 mm',
      'k-from': '0.2',
      'k-to': '0.15',
      tilt: '10',
      length: '250 mm',
      drive: '1/2',
      'run-on': '8 N·m',
    }
    for (const told of [{}, numbers, { ...numbers, angle: slug === 'swivel' ? '-15' : '30' }]) {
      const { related } = matter(slug, told)
      expect(related.map(({ question }) => question)).toEqual(links[slug])
      for (const { question, inputs, label } of related) {
        expect(label.length).toBeGreaterThan(5)
        const next = ask(question as 'pull', inputs)
        expect(next.faults, `${question} ${JSON.stringify(inputs)}`).toEqual([])
      }
    }
  })
})

describe('the cautions of a topic', () => {
  it.each<[Slug, readonly string[]]>([
    ['calibration', ['not-accredited']],
    ['dropped', ['not-accredited']],
    ['loosening-with-it', ['not-for-loosening', 'one-way']],
    ['stored-wound-up', ['store-low', 'not-accredited']],
    ['under-a-fifth', []],
    ['anti-seize', ['which-condition', 'estimate-only', 'yield-fastener', 'critical-joint', 'local-rules']],
    ['oil', ['which-condition', 'estimate-only', 'yield-fastener', 'critical-joint', 'local-rules']],
    ['re-used-nut', ['yield-fastener', 'estimate-only', 'critical-joint', 'local-rules']],
    ['washers', ['estimate-only', 'critical-joint', 'local-rules']],
    ['wheel-re-torque', ['wheels-again', 'which-condition', 'critical-joint', 'local-rules']],
    ['clicked-twice', ['click-once', 'critical-joint']],
    ['hand-position', ['critical-joint']],
    ['jerked', ['click-once', 'critical-joint']],
    ['pipe-on-the-handle', ['no-pipe', 'steady-pull', 'critical-joint']],
    ['adapter-square', ['keep-square', 'already-corrected', 'critical-joint']],
    ['adapter-straight', ['one-hand', 'already-corrected', 'critical-joint']],
    ['bars', ['support-the-bar', 'no-impact', 'critical-joint']],
    ['changed-head', ['which-fitting', 'already-corrected', 'critical-joint']],
    ['chained-spanner', ['one-hand', 'already-corrected', 'critical-joint']],
    ['flex-head', ['side-load', 'critical-joint']],
    ['size-adapters', ['critical-joint']],
    ['swivel', ['lower-still', 'no-corrected-setting', 'critical-joint']],
    ['digital-or-click', []],
    ['price', []],
  ])('of %s come in this order, and the maker last', (slug, expected) => {
    expect(cautionsOf(matter(slug))).toEqual([...expected, 'maker-first'])
  })

  it('own numbers add theirs', () => {
    const numbers = { torque: '100 N·m', lever: '400 mm', adapter: '50 mm' }
    expect(cautionsOf(matter('adapter-square', numbers))).toContain('square-assumed')
    expect(cautionsOf(matter('chained-spanner', numbers))).toContain('direction-assumed')
    expect(cautionsOf(matter('re-used-nut', { torque: '30 N·m', 'run-on': '4 N·m' }))).toContain('run-on-while-turning')
    expect(cautionsOf(matter('oil', { 'k-from': '0.2', 'k-to': '0.15' }))).toContain('one-joint')
    expect(cautionsOf(matter('loosening-with-it', { setting: '210 N·m', most: '200 N·m' }))).toContain('beyond-range')
  })

  it('a second click is told honestly, as what the trade says', () => {
    const answer = matter('clicked-twice')
    expect(answer.headline).toMatch(/slow, deliberate second click mostly adds little/)
    expect(answer.headline).toMatch(/jerked or repeated pull.*adds torque/)
    for (const statement of ['verdict', ...statements.slice(1)])
      expect(word(answer, statement).text).toMatch(/\(common practice\)$/)
    expect(answer.cautions.find(({ code }) => code === 'click-once')?.text).toMatch(/jerk.*past it.*common practice/)
  })

  it('what only some manual says, of no title, is common practice', () => {
    for (const slug of slugs) {
      for (const { title, standing } of matter(slug).sources)
        if (/torque wrench manual/i.test(title)) expect(standing, slug).toBe('common practice')
      expect(matters['stored-wound-up'].from['what-to-do'].map(({ standing }) => standing)).not.toContain('published')
      expect(matters.jerked.from['size-of-effect'].map(({ standing }) => standing)).toEqual(['common practice'])
    }
  })
})

describe('an adapter by its own numbers', () => {
  const numbers = { torque: '100 N·m', lever: '400 mm', adapter: '50 mm' }

  it('straight ahead it changes the torque by E/L, and the headline says what to dial', () => {
    const answer = matter('adapter-straight', numbers)
    expect(numberOf(answer, 'change')).toBeCloseTo(12.5, 10)
    expect(numberOf(answer, 'torque')).toBeCloseTo(112.5, 10)
    expect(numberOf(answer, 'setting')).toBeCloseTo(100 / 1.125, 10)
    expect(answer.headline).toContain('12.5 %')
    expect(answer.headline).toContain('dial 88.9 N·m')
    expect(cautionsOf(answer)).toEqual(expect.arrayContaining(['direction-assumed', 'one-hand', 'critical-joint']))
    expect(rowsOf(answer, 'directions').map(({ change }) => Math.round((change?.value ?? 9) * 100) / 100)).toEqual([
      12.5, 8.84, 0, -8.84, -12.5,
    ])
  })

  it('square it changes nothing, whatever its length; what is not quite square is told', () => {
    const answer = matter('adapter-square', numbers)
    expect(verdict('adapter-square', numbers)).toBe('no')
    expect(numberOf(answer, 'change')).toBe(0)
    expect(cautionsOf(answer)).toContain('square-assumed')
    expect(cautionsOf(answer)).not.toContain('direction-assumed')
    expect(answer.steps.find(({ formula }) => formula.startsWith('± tan'))?.value).toBeCloseTo(1.0936, 3)
  })

  it('told at another angle than its topic, it is judged at the angle that was told', () => {
    expect(verdict('adapter-square', { ...numbers, angle: '45' })).toBe('yes')
    expect(verdict('adapter-straight', { ...numbers, angle: '90' })).toBe('no')
    expect(numberOf(matter('chained-spanner', { ...numbers, adapter: '50 mm@180' }), 'change')).toBeCloseTo(-12.5, 10)
  })

  it('pointing back it warns first of the second hand', () => {
    expect(cautionsOf(matter('adapter-straight', { ...numbers, angle: '180' })).slice(0, 2)).toEqual([
      'one-hand',
      'points-back',
    ])
  })

  it('with the hand off the grip and the pivot unknown the change is a span', () => {
    const change = resultOf(matter('adapter-straight', { lever: '14 in', hand: '10 in', adapter: '2 in' }), 'change')
    expect(change.low).toBeCloseTo((12 / 10 - 1) * 100, 8)
    expect(change.high).toBeCloseTo((((14 - 1.4) / 14) * (12 / 8.6) - 1) * 100, 8)
  })

  it('a change below a quarter of the tolerance does not matter, and the tolerance decides', () => {
    const small = { lever: '400 mm', adapter: '3 mm' }
    expect(verdict('adapter-straight', small)).toBe('no')
    expect(verdict('adapter-straight', { ...small, tolerance: '2 %' })).toBe('yes')
    expect(verdict('adapter-straight', { ...small, 'wrench-type': 'beam' })).toBe('no')
  })

  it('refuses what cannot be: behind the hand, an angle for a chain, a head longer than the lever', () => {
    expect(codesOf(ask('does-it-matter', { topic: 'chained-spanner', lever: '10 in', adapter: '12 in@180' }))).toEqual([
      'behind-the-hand',
    ])
    expect(
      codesOf(ask('does-it-matter', { topic: 'adapter-square', lever: '10 in', adapter: '1 in + 2 in', angle: '90' })),
    ).toEqual(['conflict'])
    expect(
      codesOf(ask('does-it-matter', { topic: 'changed-head', lever: '10 in', 'fitting-change': '-10 in' })),
    ).toEqual(['out-of-range'])
    expect(codesOf(ask('does-it-matter', { topic: 'hand-position', lever: '400 mm', hand: '30 mm' }))).toEqual([
      'out-of-range',
    ])
    expect(codesOf(ask('does-it-matter', { topic: 'swivel', angle: '85' }))).toEqual(['out-of-range'])
    expect(codesOf(ask('does-it-matter', { topic: 'flex-head', tilt: '85' }))).toEqual(['out-of-range'])
    expect(codesOf(ask('does-it-matter', { topic: 'hand-position', lever: '10 mm' }))).toEqual(['out-of-range'])
  })

  it('refuses what slips of the rule decide, as the questions do that work it out', () => {
    for (const raw of [
      { topic: 'adapter-straight', lever: '400 mm', adapter: '395 mm@180' },
      { topic: 'hand-position', lever: '400 mm', hand: '45 mm', pivot: '44 mm' },
      { topic: 'changed-head', lever: '400 mm', 'fitting-change': '4 m' },
    ])
      expect(codesOf(ask('does-it-matter', raw)), raw.topic).toEqual(['out-of-range'])
  })

  it.each(['12 in', '20', '25 mm', '1 ft', '1/2 mm'])('a drive of %s is none', (drive) => {
    expect(codesOf(ask('does-it-matter', { topic: 'bars', torque: '100 N·m', length: '250 mm', drive }))).toEqual([
      'not-allowed',
    ])
  })
})

describe('the rest by its own numbers', () => {
  it('the hand: a wrench that senses at its drive does not care, one that trips may', () => {
    expect(verdict('hand-position', { 'wrench-type': 'dial' })).toBe('no')
    expect(verdict('hand-position', { 'wrench-type': 'electronic', lever: '400 mm', hand: '300 mm' })).toBe('no')
    expect(verdict('hand-position', { 'wrench-type': 'dial', lever: '400 mm', hand: '300 mm', adapter: '50 mm' })).toBe(
      'yes',
    )
    expect(verdict('hand-position', { pivot: '20 mm', lever: '400 mm', hand: '350 mm' })).toBe('no')
    expect(verdict('hand-position', { pivot: '30 mm', lever: '400 mm', hand: '350 mm' })).toBe('yes')
    expect(
      numberOf(matter('hand-position', { pivot: '30 mm', lever: '400 mm', hand: '350 mm' }), 'change'),
    ).toBeCloseTo(1.171875, 6)
    expect(verdict('hand-position', { 'wrench-type': 'click', lever: '400 mm', hand: '350 mm' })).toBe('depends')
  })

  it('a pipe matters even where it changes nothing', () => {
    const answer = matter('pipe-on-the-handle', {
      torque: '107 lbf·ft',
      lever: '14 in',
      hand: '30 in',
      'wrench-type': 'dial',
    })
    expect(numberOf(answer, 'change')).toBe(0)
    expect(word(answer, 'verdict').code).toBe('yes')
    expect(cautionsOf(answer).filter((code) => code === 'no-pipe')).toEqual(['no-pipe'])
  })

  it('a head: longer gives more, the same nothing', () => {
    const numbers = { torque: '75 Nm', lever: '360 mm' }
    const answer = matter('changed-head', { ...numbers, 'fitting-change': '-30 mm' })
    expect(numberOf(answer, 'setting')).toBeCloseTo(81.818, 3)
    expect(answer.headline).toContain('-8.33 %')
    expect(verdict('changed-head', { ...numbers, 'fitting-change': '0 mm' })).toBe('no')
  })

  it('a tilt of 15° lies between nothing and 3.4 % low; of a few degrees it is nothing', () => {
    const change = resultOf(matter('flex-head', { tilt: '15', setting: '100 Nm' }), 'change')
    expect(change.low).toBeCloseTo(-3.407, 3)
    expect(change.high).toBe(0)
    expect(verdict('flex-head', { tilt: '15' })).toBe('depends')
    expect(verdict('flex-head', { tilt: '5' })).toBe('no')
    expect(verdict('flex-head', { tilt: '0' })).toBe('no')
  })

  it('a swivel: slight is nothing, up to 15° two manuals allow it, steeper matters; no setting is offered', () => {
    expect(['5', '12', '15', '16', '45'].map((angle) => verdict('swivel', { angle }))).toEqual([
      'no',
      'depends',
      'depends',
      'yes',
      'yes',
    ])
    const answer = matter('swivel', { angle: '30', torque: '50 N·m' })
    expect(resultOf(answer, 'torque').low).toBeCloseTo(50 * Math.cos(Math.PI / 6), 8)
    expect(answer.results.setting).toBeUndefined()
    expect(numberOf(answer, 'change')).toBe(0)
    const own = answered('swivel', { angle: '30', torque: '50 N·m' })
    expect(resultOf(answer, 'torque')).toMatchObject({ ...resultOf(own, 'torque') })
  })

  it('a bar winds up and loses nothing; a square that is overloaded matters', () => {
    const answer = matter('bars', { torque: '100 N·m', length: '250 mm', drive: '1/2' })
    expect(numberOf(answer, 'twist')).toBeCloseTo(7.07, 2)
    expect(word(answer, 'verdict').code).toBe('no')
    expect(numberOf(answer, 'rating-share')).toBeCloseTo((100 / 512) * 100, 8)
    expect(verdict('bars', { torque: '300 N·m', length: '250 mm', drive: '3/8' })).toBe('yes')
    expect(verdict('size-adapters', { torque: '300 N·m', drive: '3/8 in' })).toBe('yes')
    expect(verdict('size-adapters', { torque: '30 N·m', drive: '3/8"' })).toBe('no')
  })

  it('a fifth of the scale is not below a fifth; above the scale is told', () => {
    expect(verdict('under-a-fifth', { setting: '20 lb-ft', most: '150 lb-ft' })).toBe('yes')
    expect(verdict('under-a-fifth', { setting: '30 lb-ft', most: '150 lb-ft' })).toBe('no')
    expect(verdict('under-a-fifth', { setting: '160 lb-ft', most: '150 lb-ft' })).toBe('yes')
    const answer = matter('under-a-fifth', { setting: '30 N·m', most: '250 N·m' })
    expect(numberOf(answer, 'full-scale-tolerance')).toBeCloseTo(33.333, 3)
    expect(cautionsOf(answer)).toContain('below-a-fifth')
  })

  it('left wound up matters only where a spring stays loaded', () => {
    for (const type of ['beam', 'dial', 'electronic', 'split-beam'])
      expect(verdict('stored-wound-up', { 'wrench-type': type })).toBe('no')
    expect(verdict('stored-wound-up', { 'wrench-type': 'click' })).toBe('depends')
  })

  it('nut factors of the asker change the clamp force, no table does', () => {
    expect(numberOf(matter('oil', { 'k-from': '0.2', 'k-to': '0.15' }), 'clamp-change')).toBeCloseTo(33.333, 3)
    expect(matter('washers', { 'k-from': '0.15', 'k-to': '0.2' }).headline).toContain('looser')
    expect(verdict('anti-seize', { 'k-from': '0.2', 'k-to': '0.2' })).toBe('no')
    expect(matter('oil', { torque: '100 N·m' }).results['clamp-change']).toBeUndefined()
  })

  it('the run-on of a locking nut is added', () => {
    const answer = matter('re-used-nut', { torque: '35 lb-in', 'run-on': '8.9 lb-in' })
    expect(quantityIn(answer.results, 'final-torque').text).toBe('43.9 lbf·in')
    expect(word(answer, 'size-of-effect').text).toContain('a third of the target')
  })

  it('wheels show the span of the sources and leave it to the maker', () => {
    const answer = matter('wheel-re-torque')
    const text = answer.cautions.find(({ code }) => code === 'wheels-again')?.text ?? ''
    for (const part of ['40 km (25 miles)', '160 km (100 miles)', '30 minutes', 'maker']) expect(text).toContain(part)
    for (const { from } of wheelsAgain) expect(answer.sources).toContainEqual(from)
  })

  it('a tolerance and a jerk make a span of the setting', () => {
    const band = resultOf(matter('calibration', { setting: '42 N·m' }), 'torque')
    expect([band.low, band.high].map((end) => Math.round((end ?? 0) * 10) / 10)).toEqual([40.3, 43.7])
    expect(resultOf(matter('jerked', { setting: '100 N·m' }), 'torque').high).toBeCloseTo(150, 10)
  })

  it('a torque that is asked for is taken as the setting, and says so; a setting that was told is not', () => {
    const taken = matter('price', { torque: '100 N·m' }).given.find(({ input }) => input === 'setting')
    expect(taken?.from).toBe('assumed')
    const both = matter('adapter-straight', { torque: '90 N·m', setting: '80 N·m', lever: '400 mm', adapter: '50 mm' })
    expect(numberOf(both, 'torque')).toBeCloseTo(90, 10)
    expect(numberOf(both, 'setting')).toBeCloseTo(80, 10)
  })
})
