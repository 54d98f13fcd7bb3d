// The same in another unit.
import type { Topic } from './topic.ts'

export const convert: Topic = { name: 'convert', shape: 'alone', question: 'convert' }
