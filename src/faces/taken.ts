// What was taken from free text, as the question's own inputs: for doors that let people go on from there.
import type { Answer } from '../questions/answer.ts'

export const inputsTaken = (answer: Answer | undefined): Record<string, string | string[]> => {
  const inputs: Record<string, string | string[]> = {}
  for (const { input, text } of answer?.reading?.taken ?? []) {
    const known = inputs[input]
    inputs[input] = known === undefined ? text : [known, text].flat()
  }
  return inputs
}
