// Inputs that name something of the shop's own: a wrench of the register, a bench run. What they lend is filled in by the desk.
import { fault, read, refuse } from '../core/fault.ts'
import { parseRunReferences, type RunReference, writeRunReference } from '../core/parse-run-reference.ts'
import { asked, common, type Input, type Options, one, same } from './input.ts'

const LONGEST_TAG = 24
const tagPattern = /^[\p{L}\p{N}][\p{L}\p{N}._-]*$/u

/** The tag of a wrench that the shop keeps. */
export const wrenchTag = <N extends boolean = false>(options: Options<N> = {}): Input<string, N> => ({
  kind: 'wrench',
  most: 1,
  ...common(options, same('W-07')),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    const tag = text.value.trim()
    if (tag === '') return refuse(fault('empty', input, text.value, { example: 'W-07' }))
    if (tag.length > LONGEST_TAG) return refuse(fault('too-long', input, text.value, { most: String(LONGEST_TAG) }))
    return tagPattern.test(tag)
      ? read(tag)
      : refuse(fault('not-a-tag', input, text.value, { most: String(LONGEST_TAG) }))
  },
  given: (value, input) => [asked(input, value)],
})

/** Finished bench runs that the shop keeps, each with the condition that is meant; as many as the question takes numbers from. */
export const benchRuns = (example = 'B-01 A', most = 1): Input<readonly RunReference[], false> => ({
  kind: 'bench',
  most,
  ...common({}, same(example)),
  read: (texts, input) => parseRunReferences(texts, input, Math.max(most, 2)),
  given: (all, input) => [asked(input, all.map(writeRunReference).join('; '))],
})
