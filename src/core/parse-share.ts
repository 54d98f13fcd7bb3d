// How much of its strength a bolt may use, as people write it: `75 % of proof`, `90 % of yield`.
import { fault, type Read, read, refuse } from './fault.ts'
import { parseQuantity } from './parse-quantity.ts'
import type { Quantity } from './quantity.ts'

export interface Share {
  readonly percent: Quantity
  readonly of: 'proof' | 'yield'
}

export const shareExamples = ['75 % of proof', '90 % of yield'] as const

/** A share of proof or of yield. Faults: empty, not-a-share, those of a percentage. */
export const parseShare = (text: string, input: string): Read<Share> => {
  const trimmed = text.trim()
  if (trimmed === '') return refuse(fault('empty', input, text, { options: shareExamples }))
  const match = /^(.{1,24}?)\s*(?:of\s+)?(?:the\s+)?(proof|yield)(?:\s+(?:load|stress|strength|point))?$/i.exec(trimmed)
  if (!match) return refuse(fault('not-a-share', input, text, { options: shareExamples }))
  const percent = parseQuantity(match[1] as string, { input, dimensions: ['percent'] })
  return percent.ok
    ? read({ percent: percent.value, of: (match[2] as string).toLowerCase() as 'proof' | 'yield' })
    : percent
}
