// Care of the wrench: checks, drops, loosening with it, storing it wound up, using it at the bottom of its scale.
import { citations } from '../../tables/citation.ts'
import { matterCitations, practiceOn, workedOn } from '../../tables/matters.ts'
import { caution } from '../outcome.ts'
import { phrase } from '../phrase.ts'
import type { MattersOf } from './topic.ts'
import { workFifth, workNoSpring, workShare, workTolerance } from './work-scale.ts'

const { checkInterval, plan, woundUp } = citations
const { belowAFifth } = matterCitations

export const care: MattersOf<'care'> = {
  calibration: {
    code: 'yes',
    size: phrase('matter.calibration.size'),
    from: {
      verdict: [practiceOn('why wrenches drift')],
      'what-to-do': [checkInterval],
      mechanism: [practiceOn('why wrenches drift')],
      'size-of-effect': [workedOn('a tolerance at a setting')],
    },
    cautions: [caution('not-accredited')],
    pointers: ['calibration-lab', 'wrench-manual'],
    works: [workTolerance],
  },
  dropped: {
    code: 'yes',
    size: phrase('matter.dropped.size'),
    from: {
      verdict: [checkInterval],
      'what-to-do': [plan, practiceOn('joints that were tightened since a drop')],
      mechanism: [practiceOn('what a blow does to a wrench')],
      'size-of-effect': [practiceOn('what a blow does to a wrench')],
    },
    cautions: [caution('not-accredited')],
    pointers: ['calibration-lab', 'wrench-manual'],
    works: [],
  },
  'loosening-with-it': {
    code: 'yes',
    size: phrase('matter.loosening-with-it.size'),
    from: {
      verdict: [practiceOn('loosening with a torque wrench')],
      'what-to-do': [practiceOn('loosening with a torque wrench'), checkInterval],
      mechanism: [practiceOn('loosening with a torque wrench')],
      'size-of-effect': [practiceOn('loosening with a torque wrench')],
    },
    cautions: [caution('not-for-loosening'), caution('one-way')],
    pointers: ['wrench-manual'],
    works: [workShare],
  },
  'stored-wound-up': {
    code: 'depends',
    depends: phrase('matter.stored-wound-up.depends'),
    size: phrase('matter.stored-wound-up.size'),
    from: {
      verdict: [woundUp],
      'what-to-do': [practiceOn('storing at the lowest mark, not below'), woundUp],
      mechanism: [woundUp],
      'size-of-effect': [woundUp],
    },
    cautions: [caution('store-low'), caution('not-accredited')],
    pointers: ['wrench-manual', 'calibration-lab'],
    works: [workNoSpring, workShare],
  },
  'under-a-fifth': {
    code: 'yes',
    size: phrase('matter.under-a-fifth.size'),
    from: {
      verdict: [belowAFifth, plan],
      'what-to-do': [practiceOn('choosing a wrench by its range')],
      mechanism: [practiceOn('friction and play inside a wrench')],
      'size-of-effect': [workedOn('a tolerance of full scale, at a setting'), citations.limits],
    },
    cautions: [],
    pointers: ['wrench-manual'],
    works: [workFifth],
  },
}
