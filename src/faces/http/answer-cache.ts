// Answers that were made before, as the text that was sent: the same address and language give the same bytes. Bounded, oldest out.
import type { Asked } from '../../desk/desk.ts'

export interface KeptAnswer {
  readonly text: string
  readonly tag: string
  /** What it counts as, each time that it is given again. */
  readonly asked: Asked
}

const KEPT = 500

export interface AnswerCache {
  readonly get: (address: string, locale: string) => KeptAnswer | undefined
  readonly keep: (address: string, locale: string, answer: KeptAnswer) => void
}

export const createAnswerCache = (): AnswerCache => {
  const kept = new Map<string, KeptAnswer>()
  const keyOf = (address: string, locale: string): string => `${locale} ${address}`
  return {
    get: (address, locale) => kept.get(keyOf(address, locale)),
    keep: (address, locale, answer) => {
      kept.set(keyOf(address, locale), answer)
      if (kept.size <= KEPT) return
      for (const oldest of kept.keys()) {
        kept.delete(oldest)
        break
      }
    },
  }
}
