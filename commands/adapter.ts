// Crowfoot, offset adapter, chained spanner: what to dial, or what was reached.
import type { Topic } from './topic.ts'

export const adapter: Topic = {
  name: 'adapter',
  shape: 'find',
  offers: [
    { word: 'setting', question: 'adapter-setting' },
    { word: 'reading', question: 'adapter-reading' },
  ],
}
