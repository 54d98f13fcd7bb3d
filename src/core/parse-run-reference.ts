// A bench run that a question names: its tag, and where it has several the condition that is meant: `B-01`, `B-01 oiled`.
import { fault, type Read, read, refuse } from './fault.ts'

export interface RunReference {
  readonly tag: string
  readonly condition?: string
}

const LONGEST_TAG = 24
const LONGEST_CONDITION = 24
const pattern = /^([\p{L}\p{N}][\p{L}\p{N}._-]*)(?:\s+(\S.*))?$/u

const parseOne = (text: string, input: string): Read<RunReference> => {
  if (text === '') return refuse(fault('empty', input, text, { example: 'B-01 A' }))
  const [, tag = '', condition] = text.length <= 2 * (LONGEST_TAG + LONGEST_CONDITION) ? (pattern.exec(text) ?? []) : []
  const fits = tag !== '' && tag.length <= LONGEST_TAG && (condition?.length ?? 0) <= LONGEST_CONDITION
  if (!fits) return refuse(fault('not-a-run-reference', input, text))
  return read({ tag, ...(condition === undefined ? {} : { condition }) })
}

/** One reference or several, parted by `;`. */
export const parseRunReferences = (
  texts: readonly string[],
  input: string,
  most: number,
): Read<readonly RunReference[]> => {
  const parts = texts.flatMap((text) => text.split(';')).map((part) => part.trim())
  if (parts.length > most) return refuse(fault('too-many', input, texts.join('; '), { most: String(most) }))
  const all = parts.map((part) => parseOne(part, input))
  const faults = all.flatMap((one) => (one.ok ? [] : one.faults))
  return faults.length > 0 ? refuse(...faults) : read(all.flatMap((one) => (one.ok ? [one.value] : [])))
}

export const writeRunReference = ({ tag, condition }: RunReference): string =>
  condition === undefined ? tag : `${tag} ${condition}`
