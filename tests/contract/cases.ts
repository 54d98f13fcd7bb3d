// One table of questions that every door must answer alike: digits, cautions, fault codes. Own numbers, no source needed.
import type { QuestionName } from '../../src/questions/index.ts'

export interface Case {
  readonly name: string
  readonly question: QuestionName
  readonly raw: Readonly<Record<string, string | readonly string[]>>
  readonly status: 'answered' | 'incomplete' | 'refused'
  /** Shown texts of results that must be seen at every door. */
  readonly shows?: readonly string[]
  readonly faults?: readonly string[]
}

export const cases: readonly Case[] = [
  {
    name: 'a crowfoot straight ahead',
    question: 'adapter-setting',
    raw: { torque: '100 lb-ft', lever: '14 in', adapter: '2 in' },
    status: 'answered',
    shows: ['87.5 lbf·ft', '1.143'],
  },
  {
    name: 'a chain of two adapters',
    question: 'adapter-setting',
    raw: { torque: '33 Nm', lever: '30 cm', adapter: ['10 cm@0', '5 cm@60'] },
    status: 'answered',
    shows: ['23.3 N·m'],
  },
  {
    name: 'a chain in one text',
    question: 'adapter-setting',
    raw: { torque: '33 Nm', lever: '30 cm', adapter: '10 cm@0 + 5 cm@60' },
    status: 'answered',
    shows: ['23.3 N·m'],
  },
  {
    name: 'an adapter that points back',
    question: 'adapter-setting',
    raw: { torque: '135 in-lb', lever: '10 in', adapter: '1.5 in@180' },
    status: 'answered',
    shows: ['158.8 lbf·in'],
  },
  {
    name: 'a span with a comma',
    question: 'adapter-setting',
    raw: { torque: '19,5–24 lb-ft', lever: '11 1/2"', adapter: '1-1/8 in' },
    status: 'answered',
    shows: ['19.81 lbf·ft'],
  },
  {
    name: 'a wrench with marks and a range',
    question: 'adapter-setting',
    raw: { torque: '60 N·m', lever: '380 mm', adapter: '50 mm', mark: '1 N·m', least: '20 N·m', most: '100 N·m' },
    status: 'answered',
    shows: ['53 N·m'],
  },
  {
    name: 'a setting outside the range',
    question: 'adapter-setting',
    raw: { torque: '60 lb-in', lever: '380 mm', adapter: '50 mm', least: '20 N·m', most: '100 N·m' },
    status: 'answered',
    shows: ['53 lbf·in'],
  },
  {
    name: 'the hand off the grip',
    question: 'adapter-setting',
    raw: { torque: '40 lbf·ft', lever: '14 in', adapter: '2 in', hand: '10 in' },
    status: 'answered',
    shows: ['31.9 lbf·ft'],
  },
  {
    name: 'a reading through an adapter',
    question: 'adapter-reading',
    raw: { reading: '101 lbf·ft', lever: '14 in', adapter: '2 in' },
    status: 'answered',
    shows: ['115.4 lbf·ft'],
  },
  {
    name: 'a hand near the middle',
    question: 'hand-position',
    raw: { setting: '75 lbf·ft', lever: '14 in', hand: '7 in', 'wrench-type': 'click' },
    status: 'answered',
    shows: ['80.1 lbf·ft', '6.82 %'],
  },
  {
    name: 'two pulls that tell the pivot',
    question: 'pivot-offset',
    raw: { lever: '400 mm', hand: '200 mm', 'torque-at-lever': '100 N·m', 'torque-at-hand': '108 N·m' },
    status: 'answered',
  },
  {
    name: 'a shorter head',
    question: 'end-fitting',
    raw: { torque: '75 Nm', lever: '360 mm', 'fitting-change': '-30 mm' },
    status: 'answered',
    shows: ['81.8 N·m'],
  },
  {
    name: 'a pull',
    question: 'pull',
    raw: { torque: '107 ft.-lbs.', hand: '2 ft' },
    status: 'answered',
    shows: ['53.5 lbf'],
  },
  {
    name: 'a conversion',
    question: 'convert',
    raw: { quantity: '300 kg-cm', to: 'Nm' },
    status: 'answered',
    shows: ['29.4 N·m'],
  },
  {
    name: 'known nut factors',
    question: 'lubricant',
    raw: { torque: '100 ft lb', from: 'dry', to: 'anti sieze', 'k-from': '0.2', 'k-to': '0,13' },
    status: 'answered',
    shows: ['65 lbf·ft', '53.8 %'],
  },
  {
    name: 'a table that is too wide for a number',
    question: 'lubricant',
    raw: { torque: '100 ft lb', from: 'dry', to: 'oiled' },
    status: 'answered',
    shows: ['90 lbf·ft'],
  },
  {
    name: 'one run on a load washer',
    question: 'nut-factor',
    raw: { size: 'M12', torque: '60 Nm', 'clamp-force': '24 kN' },
    status: 'answered',
    shows: ['0.208'],
  },
  {
    name: 'a luggage scale',
    question: 'scale-check',
    raw: { distance: '36 cm', force: '14,2 kg', setting: '50 Nm' },
    status: 'answered',
    shows: ['50.1 N·m', '-0.262 %'],
  },
  {
    name: 'three pulls in one text',
    question: 'scale-check',
    raw: { distance: '15 in', force: '33; 32.5, 33.2 lb', setting: '40 ft lb' },
    status: 'answered',
    shows: ['41.1 lbf·ft'],
  },
  {
    name: 'a plan',
    question: 'scale-plan',
    raw: { most: '150 ft-lb', distance: '18 in', 'gauge-limit': '110 lb' },
    status: 'answered',
    shows: ['100 lbf'],
  },
  {
    name: 'a tolerance inside a span',
    question: 'tolerance-band',
    raw: { setting: '42 Nm', tolerance: '4 %', spec: '40–47 Nm' },
    status: 'answered',
    shows: ['40.3 to 43.7 N·m'],
  },
  { name: 'no lever', question: 'adapter-setting', raw: { torque: '75 lb-ft', adapter: '3 in' }, status: 'incomplete' },
  {
    name: 'no pivot and no kind',
    question: 'hand-position',
    raw: { setting: '75 lbf·ft', lever: '14 in', hand: '7 in' },
    status: 'incomplete',
  },
  {
    name: 'a mass without a lie',
    question: 'scale-check',
    raw: { distance: '36 cm', force: '14.2 kg', 'wrench-mass': '1 kg' },
    status: 'incomplete',
  },
  { name: 'nothing at all', question: 'convert', raw: {}, status: 'incomplete' },
  {
    name: 'many faults at once',
    question: 'adapter-setting',
    raw: { torque: '100 lb', lever: '1,234 in', adapter: '-2 in', hand: '' },
    status: 'refused',
    faults: ['unit-wrong-kind', 'two-readings', 'negative', 'empty'],
  },
  {
    name: 'behind the hand',
    question: 'adapter-setting',
    raw: { torque: '100 lb-ft', lever: '14 in', adapter: '15 in@180' },
    status: 'refused',
    faults: ['behind-the-hand'],
  },
  {
    name: 'an angle said twice',
    question: 'adapter-setting',
    raw: { torque: '100 lb-ft', lever: '14 in', adapter: '2 in@90', angle: '45' },
    status: 'refused',
    faults: ['conflict'],
  },
  {
    name: 'a torque with a turn',
    question: 'adapter-setting',
    raw: { torque: '20 Nm + 90°', lever: '14 in', adapter: '2 in' },
    status: 'refused',
    faults: ['angle-stage'],
  },
  {
    name: 'hostile text',
    question: 'convert',
    raw: { quantity: '@everyone **x** [y](http://z) `q` <@1>' },
    status: 'refused',
    faults: ['not-a-number'],
  },
]
