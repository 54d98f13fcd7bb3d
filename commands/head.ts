// The head of the wrench: interchangeable ones longer or shorter than the calibrated one, hinged ones tilted.
import type { Topic } from './topic.ts'

export const head: Topic = {
  name: 'head',
  shape: 'parts',
  offers: [
    { word: 'fitting', question: 'end-fitting' },
    { word: 'flex', question: 'flex-head' },
  ],
}
