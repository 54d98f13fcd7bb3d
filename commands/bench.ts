// Readings against readings: does what was changed matter?
import type { Topic } from './topic.ts'

export const bench: Topic = { name: 'bench', shape: 'parts', offers: [{ word: 'compare', question: 'compare' }] }
