// Finding a topic in what people say: every topic is reached, nothing is guessed, and the worst text comes back in a moment.
import { describe, expect, it } from 'vitest'
import { foldText, searchTopic, spellings } from '../../src/questions/matters/search.ts'
import { groups, slugs, slugsByGroup } from '../../src/questions/matters/topic.ts'
import { LONGEST_TOPIC } from '../../src/questions/matters/topic-input.ts'
import { topicIdeas } from '../../src/questions/matters/weights.ts'
import { type Idea, ideas } from '../../src/tables/ideas.ts'
import { answered, ask, codesOf } from '../support/desk.ts'
import { phrasings } from './matters-phrasings.ts'

const topicOf = (text: string): unknown =>
  answered('does-it-matter', { topic: text }).given.find(({ input }) => input === 'topic')?.value

describe('what people say', () => {
  it('is tried in at least five ways for every topic, none of them its slug', () => {
    for (const slug of slugs) {
      expect(phrasings[slug].length, slug).toBeGreaterThanOrEqual(5)
      expect(phrasings[slug]).not.toContain(slug)
    }
  })

  it.each(slugs.flatMap((slug) => phrasings[slug].map((text) => ({ slug, text }))))(
    '“$text” is $slug',
    ({ slug, text }) => {
      expect(topicOf(text)).toBe(slug)
    },
  )

  it.each(slugs)('%s is found by its slug, however it is spaced or written', (slug) => {
    for (const text of [slug, slug.toUpperCase(), slug.replaceAll('-', ' '), ` ${slug.replaceAll('-', '_')} `])
      expect(topicOf(text)).toBe(slug)
  })

  // Posts as they are written: reworded, with the numbers and the noise that people leave in.
  it.each([
    [
      'crow foot is sat at 90 degrees so no correction right? 55 ft-lbs, 2 inch crowfoot, 17 inch wrench',
      'adapter-square',
    ],
    [
      'crowfoot for a brake line, 13 lb ft, 1 1/8 hole to hole, wrench is 11in. straight, worth correcting?',
      'adapter-straight',
    ],
    ['is the setting changed by a 9" vertical extension under the torque wrench to clear the floor', 'bars'],
    ['they say extention 250mm needs L/(L+250) but its going down not out, nonsense isnt it', 'bars'],
    [
      'recommended 107 ft.-lbs. on the keel nuts, wrench is just a foot long, anybody place a pipe over it?',
      'pipe-on-the-handle',
    ],
    ['my wrench has a flexy head, do i keep it dead straight or does a bit of angle matter', 'flex-head'],
    ['is a wobble extension the same as a normal one for torque? only a few degrees', 'swivel'],
    ['swapped the ratchet head on my 9x12 wrench for an open end insert, same stamped size', 'changed-head'],
    ['Two hands, one on the grip one near the ratchet head, does that spoil the reading', 'hand-position'],
    ['threads wire brushed, lightly anti-seized fastener, 80% of the dry figure ok?', 'anti-seize'],
    ['I lube them so the stainless nuts dont gall', 'oil'],
    ['dropped it off the bench onto concrete yesterday, sticker says good till march. still valid?', 'dropped'],
    ['we do 60 pulls a day, 5000 cycles lasts how long', 'calibration'],
    ['was taught the lowest 20% of the range is the least accurate', 'under-a-fifth'],
    ['should i use antiseize on lug nuts', 'anti-seize'],
    ['does holding the handle low matter', 'hand-position'],
    ['left my wrench wound up over winter', 'stored-wound-up'],
    ['can I use a swivel on a spark plug', 'swivel'],
    ['do universal joints mess up the torque', 'swivel'],
    ['my torque wrench fell out of the truck', 'dropped'],
    ['dropped it, does it need calibrating', 'dropped'],
    ['cheap vs expensive torque wrench', 'price'],
    ['are cheap torque wrenches accurate', 'price'],
    ['is a beam wrench better than a click wrench', 'digital-or-click'],
    ['how often should I have it tested', 'calibration'],
    ['do electronic torque wrenches need calibration', 'calibration'],
    ['wheel nuts 50 miles later check again?', 'wheel-re-torque'],
    ['do I have to retighten wheels after a tyre change', 'wheel-re-torque'],
    ['use torque wrench to loosen lug nuts', 'loosening-with-it'],
    ['backing off a bolt with a torque wrench', 'loosening-with-it'],
    ['do I have to back it off after each use', 'stored-wound-up'],
    ['unwinding past zero', 'stored-wound-up'],
    ['can I use the same lug nuts again', 're-used-nut'],
    ['torque to yield bolts reuse', 're-used-nut'],
    ['jack handle over the torque wrench for more leverage', 'pipe-on-the-handle'],
    ['extension on the handle', 'pipe-on-the-handle'],
    ['do I pull fast or slow', 'jerked'],
    ['clicked it three times to be sure', 'clicked-twice'],
    ['can you over tighten by clicking twice', 'clicked-twice'],
    ['clicked twice on wheel nuts', 'clicked-twice'],
    ['choking up on the handle', 'hand-position'],
    ['grip in the middle or the end', 'hand-position'],
    ['extension with a crowfoot at 90', 'adapter-square'],
    ['adapter pointing back toward handle', 'adapter-straight'],
    ['extension straight out', 'adapter-straight'],
    ['an extension straight down', 'bars'],
    ['deep socket vs shallow', 'bars'],
    ['3/8 to 1/2 adapter affect torque', 'size-adapters'],
    ['does a step down adapter change the reading', 'size-adapters'],
    ['flexible head ratchet tilted 15 degrees', 'flex-head'],
    ['open end attachment on my torque wrench head', 'changed-head'],
    ['does a ring spanner on the end need a correction', 'chained-spanner'],
    ['hooking two wrenches together', 'chained-spanner'],
    ['lock washer or flat washer', 'washers'],
    ['wheel studs dry or lubed', 'oil'],
    ['brake caliper bolts lubricated?', 'oil'],
  ] as const)('“%s” is %s', (text, slug) => {
    expect(topicOf(text)).toBe(slug)
  })

  it('reads accents, capitals, typographic marks and degrees', () => {
    expect(topicOf('CROW’S  FOOT  at 90º!!')).toBe('adapter-square')
    expect(topicOf('swível sockét')).toBe('swivel')
    expect(topicOf('½" to ⅜" adaptor')).toBe('size-adapters')
  })
})

describe('nothing is guessed', () => {
  it.each([
    ['extension', ['adapter-square', 'adapter-straight', 'bars']],
    ['crowfoot', ['adapter-square', 'adapter-straight']],
    ['oil or anti-seize on the studs', ['anti-seize', 'oil']],
    ['washer under a chained spanner', ['washers', 'chained-spanner']],
    ['does a 10 inch extension change the torque', ['adapter-square', 'adapter-straight', 'bars']],
    ['does it matter which way the adapter points', ['adapter-square', 'adapter-straight']],
    ['is it ok to use an extension bar and crowfoot', ['adapter-square', 'adapter-straight', 'bars']],
    ['crowfoot and a pipe on the handle', ['pipe-on-the-handle', 'adapter-square', 'adapter-straight']],
    ['reused wheel bolts with antiseize', ['anti-seize', 're-used-nut']],
    ['a drop of oil on the swivel joint', ['oil', 'swivel']],
    ['swivel on an extension bar', ['bars', 'swivel']],
    ['pulling fast with two clicks', ['clicked-twice', 'jerked']],
    ['cheap digital torque wrench ok?', ['digital-or-click', 'price']],
  ] as const)('“%s” fits several alike, and they are named', (text, names) => {
    const answer = ask('does-it-matter', { topic: text })
    expect(answer.status).toBe('refused')
    expect(codesOf(answer)).toEqual(['two-readings'])
    for (const name of names) expect(answer.faults[0]?.hint).toContain(name)
    expect(searchTopic(text)).toEqual(names)
  })

  it.each([
    'hi',
    'torque for the front caliper bolts of a 2014 hatchback',
    'what is the torque for my wheel nuts',
    'head bolts 20Nm + 90° + 90°, can you confirm',
    '300 kg-cm = ? Nm',
    'crowbar',
    'my torque wrench got wet',
    'oil the wrench mechanism',
    'dropped my socket',
    'dropped wheel nut',
    'does the order of tightening matter',
    'can I use an impact gun first, then torque',
    'does the unheated shed in winter matter for my beam wrench',
    'bolt snapped off flush, how do I get it out with heat',
    'wanted 90 Nm',
    '🔧',
    '…',
    '日本語',
  ])('“%s” is no topic: all are listed by group', (text) => {
    const answer = ask('does-it-matter', { topic: text })
    expect(codesOf(answer)).toEqual(['not-allowed'])
    const hint = answer.faults[0]?.hint ?? ''
    for (const slug of slugs) expect(hint).toContain(slug)
    for (const group of groups) expect(hint).toContain(`${group}: ${slugsByGroup[group][0]}`)
  })

  it('a torque of 90 is no angle of 90', () => {
    expect(searchTopic('crowfoot, want 90 Nm')).toEqual(['adapter-square', 'adapter-straight'])
    expect(searchTopic('washers at 90 ft lbs')).toEqual(['washers'])
  })

  it('nothing typed, several typed and too much typed are faults', () => {
    expect(codesOf(ask('does-it-matter', { topic: '  ' }))).toEqual(['empty'])
    expect(codesOf(ask('does-it-matter', { topic: ['oil', 'bars'] }))).toEqual(['repeated'])
    expect(codesOf(ask('does-it-matter', { topic: 'o'.repeat(LONGEST_TOPIC + 1) }))).toEqual(['too-long'])
    expect(ask('does-it-matter', {}).missing.map(({ input }) => input)).toEqual(['topic'])
  })
})

describe('the worst that can be typed', () => {
  const seeds = [
    'a',
    'oil ',
    'extension ',
    '90 ',
    '90°',
    '1/2',
    '1/2 in',
    '3/8" ',
    "'",
    ' ',
    '\u0000',
    '🔧',
    'é',
    '½',
    'ss',
    'ing',
    '%+',
    'ﬁ',
    '<@1>',
  ]

  it.each(seeds)('ten kilobytes of %j come back in a moment, as a fault', (seed) => {
    const text = seed.repeat(Math.ceil(10_000 / seed.length)).slice(0, 10_000)
    const start = performance.now()
    searchTopic(text)
    expect(performance.now() - start).toBeLessThan(200)
    expect(['too-long', 'empty']).toContain(codesOf(ask('does-it-matter', { topic: text }))[0])
  })

  it('is searched in time that grows with its length, no faster', () => {
    const time = (size: number): number => {
      const text = '1/2 in extension at 90° on the wheel '.repeat(size)
      const start = performance.now()
      searchTopic(text)
      return performance.now() - start
    }
    time(200)
    expect(time(4000)).toBeLessThan(40 * Math.max(time(400), 5))
  })

  it('finds the same topic whatever the order of other words and however often it is asked', () => {
    const text = 'please tell me, on a cold morning, whether a swivel joint matters'
    expect(new Set(Array.from({ length: 20 }, () => searchTopic(text).join()))).toEqual(new Set(['swivel']))
  })
})

describe('the spellings', () => {
  const all = (Object.keys(ideas) as Idea[]).flatMap((idea) => ideas[idea].map((spelling) => ({ idea, spelling })))

  it('each stands for one idea, is not all fillers, and is short enough to be matched', () => {
    for (const { idea, spelling } of all) {
      const stems = foldText(spelling)
      expect(stems.length, spelling).toBeGreaterThan(0)
      expect(stems.length, spelling).toBeLessThanOrEqual(4)
      expect(spellings.get(stems.join(' ')), spelling).toBe(idea)
    }
  })

  it('every idea weighs for some topic, but for the ones that are kept from misleading', () => {
    const weighed = new Set(Object.values(topicIdeas).flatMap((weights) => Object.keys(weights)))
    expect(Object.keys(ideas).filter((idea) => !weighed.has(idea))).toEqual(['nothing'])
  })
})
