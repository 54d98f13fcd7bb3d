// What is put between wrench and fastener: adapters, bars, heads, spanners, flex heads, size adapters, swivels.
import { SWIVEL_LOSS } from '../../mechanics/swivel.ts'
import { citations } from '../../tables/citation.ts'
import { practiceOn, workedOn } from '../../tables/matters.ts'
import { driveTable } from '../../tables/square-drives.ts'
import { caution } from '../outcome.ts'
import { phrase } from '../phrase.ts'
import { percentOf } from '../reach-doubt.ts'
import type { MattersOf } from './topic.ts'
import { workAdapter, workHead } from './work-lever.ts'
import { workBar, workBend, workSizes, workTilt } from './work-line.ts'

const { statics, adapterRule, aviationRule, swivelManuals, swivelPractice, cardan, twist } = citations

export const reach: MattersOf<'reach'> = {
  'adapter-square': {
    code: 'no',
    size: phrase('matter.adapter-square.size'),
    from: {
      verdict: [adapterRule, aviationRule],
      'what-to-do': [statics],
      mechanism: [statics],
      'size-of-effect': [statics],
    },
    cautions: [caution('keep-square'), caution('already-corrected'), caution('critical-joint')],
    pointers: ['torque-figure', 'adapter-rating'],
    works: [workAdapter(90)],
  },
  'adapter-straight': {
    code: 'yes',
    size: phrase('matter.adapter-straight.size'),
    from: {
      verdict: [adapterRule, aviationRule],
      'what-to-do': [adapterRule],
      mechanism: [statics],
      'size-of-effect': [statics],
    },
    cautions: [caution('one-hand'), caution('already-corrected'), caution('critical-joint')],
    pointers: ['torque-figure', 'adapter-rating', 'wrench-manual'],
    works: [workAdapter(0)],
  },
  bars: {
    code: 'no',
    size: phrase('matter.bars.size'),
    from: {
      verdict: [statics],
      'what-to-do': [practiceOn('bars held in line')],
      mechanism: [statics, practiceOn('bars that lean, sag or are hammered')],
      'size-of-effect': [twist],
    },
    cautions: [caution('support-the-bar'), caution('no-impact'), caution('critical-joint')],
    pointers: ['torque-figure', 'adapter-rating'],
    works: [workBar],
  },
  'changed-head': {
    code: 'depends',
    depends: phrase('matter.changed-head.depends'),
    size: phrase('matter.changed-head.size'),
    from: { verdict: [statics], 'what-to-do': [statics], mechanism: [statics], 'size-of-effect': [statics] },
    cautions: [caution('which-fitting'), caution('already-corrected'), caution('critical-joint')],
    pointers: ['torque-figure', 'wrench-manual'],
    works: [workHead],
  },
  'chained-spanner': {
    code: 'depends',
    depends: phrase('matter.chained-spanner.depends'),
    size: phrase('matter.chained-spanner.size'),
    from: {
      verdict: [statics],
      'what-to-do': [practiceOn('measuring and holding a chained spanner')],
      mechanism: [statics],
      'size-of-effect': [statics],
    },
    cautions: [caution('one-hand'), caution('already-corrected'), caution('critical-joint')],
    pointers: ['torque-figure', 'adapter-rating'],
    works: [workAdapter(0)],
  },
  'flex-head': {
    code: 'depends',
    depends: phrase('matter.flex-head.depends'),
    size: phrase('matter.flex-head.size'),
    from: {
      verdict: [statics],
      'what-to-do': [practiceOn('holding a flex head')],
      mechanism: [statics],
      'size-of-effect': [statics],
    },
    cautions: [caution('side-load'), caution('critical-joint')],
    pointers: ['wrench-manual', 'torque-figure'],
    works: [workTilt],
  },
  'size-adapters': {
    code: 'no',
    size: phrase('matter.size-adapters.size'),
    from: {
      verdict: [statics, driveTable['1/2'].from],
      'what-to-do': [practiceOn('size adapters in a stack')],
      mechanism: [statics],
      'size-of-effect': [workedOn('strength of a square by the third power of its width')],
    },
    cautions: [caution('critical-joint')],
    pointers: ['adapter-rating', 'torque-figure'],
    works: [workSizes],
  },
  swivel: {
    code: 'depends',
    depends: phrase('matter.swivel.depends'),
    size: phrase('matter.swivel.size'),
    from: {
      verdict: [swivelManuals, cardan],
      'what-to-do': [swivelManuals, swivelPractice],
      mechanism: [cardan, swivelPractice],
      'size-of-effect': [cardan, swivelPractice],
    },
    cautions: [
      caution('lower-still', { loss: percentOf(SWIVEL_LOSS) }),
      caution('no-corrected-setting'),
      caution('critical-joint'),
    ],
    pointers: ['torque-figure', 'adapter-rating'],
    works: [workBend],
  },
}
