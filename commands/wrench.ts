// The wrenches of the shop: which of them can do a torque. What is kept of them is shown and added to beside it.
import type { Topic } from './topic.ts'

export const wrench: Topic = {
  name: 'wrench',
  shape: 'parts',
  offers: [{ word: 'which', question: 'which-wrench' }],
  register: ['add', 'show', 'list', 'event', 'checks', 'due', 'retire'],
}
