// What a kept check found at one of its points, as it is told in a list of checks: how far off and which way.
import { type CardLimit, limitAt } from '../register/limit.ts'
import { deviationText } from '../words/deviation-text.ts'
import type { Language } from '../words/index.ts'

export const pointText = (
  point: { readonly deviation: number; readonly mean: number },
  limit: CardLimit,
  { words, style }: Pick<Language, 'words' | 'style'>,
): string => deviationText(point.deviation * 100, words.deviation, style, limitAt(limit, point.mean) * 100)
