// Does it matter: the topic that a text is about, with the asker's own numbers where they belong to it.

import { questions } from '../../questions/index.ts'
import { searchTopic } from '../../questions/matters/search.ts'
import type { Slug } from '../../questions/matters/topic.ts'
import { bendAngles, type Facts } from '../facts.ts'
import { type Entry, entry, otherwise, type Proposal, proposal } from '../proposal.ts'
import type { TopicName } from '../topics.ts'

const LONGEST_SEARCHED = 1200

/** The topics that a text may be about, by the search of the question itself. */
export const topicsIn = (facts: Facts): readonly Slug[] => searchTopic(facts.scene.text.slice(0, LONGEST_SEARCHED))

const takes: ReadonlySet<string> = new Set(Object.keys(questions['does-it-matter'].inputs))

const pastes: ReadonlySet<string> = new Set(['anti-seize', 'moly'])

/** The topic that a question's own text is about, where what it names decides that. */
export const topicOf = (topic: TopicName, facts: Facts): Slug | undefined => {
  const { scene, states } = facts
  const square =
    bendAngles(facts).some(({ measure }) => measure.value === 90) || facts.bends.known.some(({ angle }) => angle === 90)
  const named: Readonly<Partial<Record<TopicName, Slug>>> = {
    reach: square
      ? 'adapter-square'
      : scene.has('crowfoot', 'adapter', 'extension')
        ? 'adapter-straight'
        : 'chained-spanner',
    bar: 'bars',
    swivel: 'swivel',
    'flex-head': 'flex-head',
    fitting: 'changed-head',
    hand: scene.has('pipe') ? 'pipe-on-the-handle' : 'hand-position',
    lubricant: pastes.has(states.to?.name ?? '') || /\b(?:anti|copper|paste)/.test(scene.folded) ? 'anti-seize' : 'oil',
    interval: 'calibration',
  }
  return named[topic]
}

/** The topic with those entries of another proposal that belong to it. */
export const composeMatter = (
  slug: Slug,
  entries: readonly (Entry | undefined)[],
  rivals: readonly Slug[] = [],
): Proposal => {
  const kept = entries.filter((one): one is Entry => one !== undefined && takes.has(one.input) && one.input !== 'topic')
  const all = [entry('topic', slug), ...kept]
  return proposal('does-it-matter', all, {
    others: rivals.filter((other) => other !== slug).map((other) => otherwise('does-it-matter', all, { topic: other })),
  })
}
