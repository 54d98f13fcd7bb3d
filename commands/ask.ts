// In the asker's own words: free text, from which the question is found.
import type { Topic } from './topic.ts'

export const ask: Topic = { name: 'ask', shape: 'text' }
