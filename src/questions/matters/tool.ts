// The tool: which kind it is, and what it cost.
import { citations } from '../../tables/citation.ts'
import { practiceOn, workedOn } from '../../tables/matters.ts'
import { findScatter, type ScatterRow } from '../../tables/scatter.ts'
import { phrase } from '../phrase.ts'
import { percentOf } from '../reach-doubt.ts'
import type { MattersOf } from './topic.ts'
import { workTolerance } from './work-scale.ts'

const rows = [findScatter('handbook', 'torque_wrench'), findScatter('nasa', 'torque_unlubricated')] as const

/** How far the clamp force spreads with a wrench that is right: both lists, the smaller first. */
const scatter = () => {
  const known = rows.filter((row): row is ScatterRow => row !== undefined)
  const halves = known.map(({ half }) => half)
  return {
    span: { low: percentOf(Math.min(...halves)), high: percentOf(Math.max(...halves)) },
    from: known.map(({ from }) => from),
  }
}
const { span, from } = scatter()
const size = phrase('matter.tool.size', span)

export const tool: MattersOf<'tool'> = {
  'digital-or-click': {
    code: 'no',
    size,
    from: {
      verdict: [citations.classLimits],
      'what-to-do': [practiceOn('choosing a wrench')],
      mechanism: [citations.classLimits, citations.statics],
      'size-of-effect': [workedOn('a tolerance at a setting'), ...from],
    },
    cautions: [],
    pointers: ['wrench-manual', 'calibration-lab'],
    works: [workTolerance],
  },
  price: {
    code: 'no',
    size,
    from: {
      verdict: [practiceOn('what a dear wrench buys')],
      'what-to-do': [practiceOn('choosing a wrench')],
      mechanism: [practiceOn('what a dear wrench buys')],
      'size-of-effect': [workedOn('a tolerance at a setting'), ...from],
    },
    cautions: [],
    pointers: ['wrench-manual', 'calibration-lab'],
    works: [workTolerance],
  },
}
