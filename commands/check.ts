// Is this wrench still right: a check with a scale or a reference, its plan, what a tolerance means, when the next is due.
import type { Topic } from './topic.ts'

export const check: Topic = {
  name: 'check',
  shape: 'parts',
  offers: [
    { word: 'scale', question: 'scale-check' },
    { word: 'plan', question: 'scale-plan' },
    { word: 'readings', question: 'wrench-check' },
    { word: 'tolerance', question: 'tolerance-band' },
    { word: 'next', question: 'next-check' },
  ],
}
