// A torque multiplier: what to put in.
import type { Topic } from './topic.ts'

export const multiplier: Topic = { name: 'multiplier', shape: 'alone', question: 'multiplier' }
