// Where the wrench is held, where it trips, how hard to pull.
import type { Topic } from './topic.ts'

export const hand: Topic = {
  name: 'hand',
  shape: 'parts',
  offers: [
    { word: 'position', question: 'hand-position' },
    { word: 'pivot', question: 'pivot-offset' },
    { word: 'pull', question: 'pull' },
  ],
}
