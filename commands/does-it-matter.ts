// Does it matter: short verdicts on what people ask over the bench.
import type { Topic } from './topic.ts'

export const doesItMatter: Topic = { name: 'does-it-matter', shape: 'alone', question: 'does-it-matter' }
