// What a busy shop asks over HTTP, in turns that follow from the seed: pages, fragments, answers, free text as it is typed, writes.
import type { Random } from '../support/random.ts'

export const reads = ['page', 'fragment', 'answer', 'free text', 'typing', 'list'] as const
export type ReadKind = (typeof reads)[number]

export interface Read {
  readonly kind: ReadKind
  readonly path: string
}

const pick = <T>(random: Random, list: readonly T[]): T => list[Math.floor(random() * list.length)] as T
/** Five decimals: three may be a thousands mark, and are asked back. */
const amount = (random: Random): string => `${(20 + random() * 150).toFixed(5)}+N%C2%B7m`
const free = 'what do I set for 95 N·m with a 45 mm adapter on a 380 mm wrench'

const paths: Readonly<Record<ReadKind, (random: Random, tag: string) => string>> = {
  page: (random, tag) => pick(random, ['/', '/ask', '/ask/adapter-setting', '/board', `/wrench/${tag}`, '/about']),
  fragment: (random) => `/ask/adapter-setting/live?torque=${amount(random)}&lever=380+mm&adapter=45+mm%4030`,
  answer: (random) => `/v1/questions/pull?torque=${amount(random)}&hand=400+mm`,
  'free text': (random) => `/v1/ask?text=what+to+set+for+${amount(random)}+with+a+45+mm+adapter+on+a+380+mm+wrench`,
  // A text letter by letter: most of what is asked so is not answered yet.
  typing: (random) => `/v1/ask?text=${encodeURIComponent(free.slice(0, 1 + Math.floor(random() * free.length)))}`,
  list: (random, tag) => pick(random, ['/v1/wrenches?limit=20', `/v1/wrenches/${tag}`, '/v1/due.ics']),
}

export const nextRead = (random: Random, tag: string): Read => {
  const kind = pick(random, reads)
  return { kind, path: paths[kind](random, tag) }
}
