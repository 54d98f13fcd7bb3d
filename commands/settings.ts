// What is set for the shop where people talk: no question, so only doors that have such a place show it.
import type { Topic } from './topic.ts'

export const settings: Topic = { name: 'settings', shape: 'settings' }
