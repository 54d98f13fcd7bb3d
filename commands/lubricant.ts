// Oil, grease or anti-seize on threads and seat.
import type { Topic } from './topic.ts'

export const lubricant: Topic = { name: 'lubricant', shape: 'alone', question: 'lubricant' }
