// Where the shop finds makers' figures: a list of its own, never a figure. No question, so only doors that have such a place show it.
import type { Topic } from './topic.ts'

export const spec: Topic = { name: 'spec', shape: 'settings' }
