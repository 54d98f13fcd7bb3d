// Bolt and joint: what torque makes of clamp force.
import type { Topic } from './topic.ts'

export const bolt: Topic = {
  name: 'bolt',
  shape: 'parts',
  offers: [
    { word: 'clamp', question: 'clamp-force' },
    { word: 'torque', question: 'bolt-torque' },
    { word: 'turn', question: 'turn-angle' },
    { word: 'nut-factor', question: 'nut-factor' },
    { word: 'prevailing', question: 'prevailing' },
  ],
}
