// Is this wrench still right: a check with a scale, its plan, and what a tolerance means.
import type { Topic } from './topic.ts'

export const check: Topic = {
  name: 'check',
  shape: 'parts',
  offers: [
    { word: 'scale', question: 'scale-check' },
    { word: 'plan', question: 'scale-plan' },
    { word: 'tolerance', question: 'tolerance-band' },
  ],
}
