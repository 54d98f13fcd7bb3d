// Ten kilobytes of the worst that can be typed: every parser comes back in a moment, and never throws.
import { describe, expect, it } from 'vitest'
import { readNumber } from '../../src/core/number-text.ts'
import { parseDate } from '../../src/core/parse-date.ts'
import { parseEvents, parseInterval } from '../../src/core/parse-history.ts'
import { LONGEST_LIST, parseAdapters, parseReadings } from '../../src/core/parse-list.ts'
import { LONGEST_POINTS, parsePoints } from '../../src/core/parse-points.ts'
import { LONGEST_QUANTITY, parseQuantity } from '../../src/core/parse-quantity.ts'
import { parseSize } from '../../src/core/parse-size.ts'
import { hasAngleStage, isSpan, parseTarget } from '../../src/core/parse-target.ts'
import { spelledUnits } from '../../src/core/unit.ts'
import { LONGEST_SAMPLES, samples } from '../../src/questions/input-samples.ts'

const torque = { input: 'x', dimensions: ['torque'] } as const
const length = { input: 'x', dimensions: ['length'] } as const

const parsers: Readonly<Record<string, (text: string) => unknown>> = {
  readNumber,
  'parseQuantity of a torque': (text) => parseQuantity(text, torque),
  'parseQuantity of a length': (text) => parseQuantity(text, length),
  parseTarget: (text) => parseTarget(text, torque),
  isSpan: (text) => isSpan(text, torque),
  hasAngleStage,
  parseAdapters: (text) => parseAdapters([text], 'x'),
  parseReadings: (text) => parseReadings([text], torque),
  'samples of hundreds of readings': (text) => samples().read([text], 'x'),
  parsePoints: (text) => parsePoints([text], 'x'),
  parseDate: (text) => parseDate(text, 'x'),
  parseInterval: (text) => parseInterval([text], 'x'),
  parseEvents: (text) => parseEvents([text], 'x', { dropped: { spellings: [], lasts: true } }, 20),
  parseSize: (text) => parseSize(text, 'x'),
  spelledUnits,
}

const seeds = [
  '1',
  '1,',
  '1 ',
  '1/',
  '1/2 ',
  '1-',
  ' ',
  '\t',
  '@',
  '@1',
  ';',
  '; ',
  ':',
  '|',
  '1 N·m: 1 N·m | ',
  'dropped@2026-03-01..',
  ' + ',
  '½',
  "1'",
  '±',
  ' - ',
  '–',
  'to ',
  '+ 90',
  'a',
  'lb ',
  'ft-',
  '. ',
  '1 - ',
  '9 N·m ',
  '1\' 2" ',
  '1e',
  '0x',
  '🔧',
  '\u0000',
  '\u00a0',
  'M12x',
  '3/8-',
] as const
const GENEROUS = 200

const longest = {
  'ten kilobytes': 10_000,
  'the longest samples': LONGEST_SAMPLES,
  'the longest points': LONGEST_POINTS,
  'the longest list': LONGEST_LIST,
  'the longest quantity': LONGEST_QUANTITY,
}

describe.each(Object.entries(parsers))('%s', (_, parse) => {
  it.each(Object.entries(longest))(`comes back within ${GENEROUS} ms from any text of %s`, (_name, size) => {
    for (const seed of seeds) {
      for (const head of ['', '5 ', '5 N·m ', '5 in@', '5; ']) {
        const text = (head + seed.repeat(Math.ceil(size / seed.length))).slice(0, size)
        const start = performance.now()
        parse(text)
        expect(performance.now() - start, `${JSON.stringify(head + seed)} repeated`).toBeLessThan(GENEROUS)
      }
    }
  })
})
