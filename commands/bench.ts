// What was measured on the bench: runs that are kept, and two sets of readings against each other.
import type { Topic } from './topic.ts'

export const bench: Topic = {
  name: 'bench',
  shape: 'parts',
  offers: [{ word: 'compare', question: 'compare' }],
  runs: ['start', 'add', 'correct', 'take-back', 'show', 'finish', 'list'],
}
