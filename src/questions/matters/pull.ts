// The pull: a second click, where the hand is, a jerk, a pipe on the handle.
import { pivotShareByType } from '../../mechanics/pivot-range.ts'
import { citations } from '../../tables/citation.ts'
import { JERK_AT_MOST, matterCitations, practiceOn } from '../../tables/matters.ts'
import { caution } from '../outcome.ts'
import { phrase } from '../phrase.ts'
import { percentOf } from '../reach-doubt.ts'
import type { MattersOf } from './topic.ts'
import { workHand, workPipe, workSensesAtDrive } from './work-lever.ts'
import { workJerk, workShare } from './work-scale.ts'

const { gripWithAdapter, lastFifth } = matterCitations
const { click, beam } = pivotShareByType

export const pull: MattersOf<'pull'> = {
  'clicked-twice': {
    code: 'depends',
    depends: phrase('matter.clicked-twice.depends'),
    size: phrase('matter.clicked-twice.size'),
    from: {
      verdict: [practiceOn('a second click')],
      'what-to-do': [practiceOn('a second click')],
      mechanism: [practiceOn('a nut at rest needs more to start than to go on')],
      'size-of-effect': [practiceOn('a second click')],
    },
    cautions: [caution('click-once'), caution('critical-joint')],
    pointers: ['torque-figure', 'wrench-manual'],
    works: [],
  },
  'hand-position': {
    code: 'depends',
    depends: phrase('matter.hand-position.depends'),
    size: phrase('matter.hand-position.size', {
      low: percentOf(click.low),
      high: percentOf(click.high),
      beamlow: percentOf(beam.low),
      beamhigh: percentOf(beam.high),
    }),
    from: {
      verdict: [citations.statics, gripWithAdapter],
      'what-to-do': [practiceOn('how a wrench is held')],
      mechanism: [citations.statics],
      'size-of-effect': [citations.statics, citations.pivotPractice],
    },
    cautions: [caution('critical-joint')],
    pointers: ['wrench-manual'],
    works: [workHand, workSensesAtDrive],
  },
  jerked: {
    code: 'yes',
    size: phrase('matter.jerked.size', { more: percentOf(JERK_AT_MOST) }),
    from: {
      verdict: [practiceOn('a jerked pull')],
      'what-to-do': [lastFifth],
      mechanism: [practiceOn('a jerked pull')],
      'size-of-effect': [practiceOn('a jerked pull: up to half as much again')],
    },
    cautions: [caution('click-once'), caution('critical-joint')],
    pointers: ['wrench-manual'],
    works: [workJerk],
  },
  'pipe-on-the-handle': {
    code: 'yes',
    size: phrase('matter.pipe-on-the-handle.size', { high: percentOf(click.high), beam: percentOf(beam.high) }),
    from: {
      verdict: [practiceOn('a pipe on the handle')],
      'what-to-do': [practiceOn('a pipe on the handle')],
      mechanism: [citations.statics],
      'size-of-effect': [citations.statics, citations.pivotPractice],
    },
    cautions: [caution('no-pipe'), caution('steady-pull'), caution('critical-joint')],
    pointers: ['wrench-manual'],
    works: [workPipe, workShare],
  },
}
