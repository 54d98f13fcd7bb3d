// The head of the wrench: interchangeable ones that are longer or shorter than the calibrated one.
import type { Topic } from './topic.ts'

export const head: Topic = {
  name: 'head',
  shape: 'parts',
  offers: [{ word: 'fitting', question: 'end-fitting' }],
}
