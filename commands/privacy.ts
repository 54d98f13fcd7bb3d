// What is kept of who asks where people talk, and its erasing: no question, so only doors that have such a place show it.
import type { Topic } from './topic.ts'

export const privacy: Topic = { name: 'privacy', shape: 'settings' }
