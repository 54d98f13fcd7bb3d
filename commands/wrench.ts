// The wrenches of the shop: which of them can do a torque. What is kept of them is each door's own (add, show, list, event).
import type { Topic } from './topic.ts'

export const wrench: Topic = {
  name: 'wrench',
  shape: 'parts',
  offers: [{ word: 'which', question: 'which-wrench' }],
}
