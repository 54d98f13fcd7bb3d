// Where the statements of does-it-matter are from, besides what citation.ts holds, and the few numbers that sources print for it.
// Where nobody published it, it says so: common practice is what the trade says, not what was measured.
import type { Citation, Standing } from './citation.ts'

const from = (title: string, where: string, standing: Standing): Citation => ({ title, where, standing })

/** What the trade says, with no published source, and what it is said of. */
export const practiceOn = (what: string): Citation =>
  from('Common practice, no published source', what, 'common practice')

/** What follows from statics or plain reasoning, and can be checked with a pencil. */
export const workedOn = (what: string): Citation => from('Worked out here', what, 'worked out')

/** Half as much again: what the trade says that a jerked pull may add, as a fraction of the setting. */
export const JERK_AT_MOST = 0.5

export const matterCitations = {
  lastFifth: from('ISO 6789-1:2017', 'how fast the last fifth of the torque is brought on', 'from memory'),
  belowAFifth: from('US Army TM 1-1500-204-23-9', 'table 8-1: no accuracy asked below 20 % of full scale', 'published'),
  gripWithAdapter: from(
    "Aviation Machinist's Mate training (NAVEDTRA 14008)",
    'figure 2-12: where the grip is held counts with an adapter on',
    'published',
  ),
} as const satisfies Record<string, Citation>
