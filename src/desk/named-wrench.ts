// A wrench of the shop that a free text names by its tag. What the register does not know is no tag, and changes nothing; nor does a
// register that is away, or two wrenches in one text, of which neither is the one.
import type { Alternative } from '../asking/proposal.ts'
import { readText, type TextReading } from '../asking/read-text.ts'
import { type TagWord, tagWordsIn, withoutWords } from '../asking/tag-words.ts'
import { inTime } from '../core/in-time.ts'
import { type QuestionName, questions } from '../questions/index.ts'
import { foldTag } from '../register/parts.ts'
import type { Shop } from './shop.ts'

/** The tag as it stands on the card, where there is a wrench of it. */
export type TagOf = (text: string) => Promise<string | undefined>

export const tagOfIn =
  (shop: Pick<Shop, 'wrench'>): TagOf =>
  async (text) =>
    (await shop.wrench(text))?.row.folder.tag

// Most words that look like a tag are none: an answer does not wait long to know.
const LONGEST_MS = 300

const takesWrench = (question: QuestionName): boolean => questions[question].inputs['wrench']?.kind === 'wrench'

const ofWrench = (one: Alternative, wrench: string): Alternative =>
  takesWrench(one.question) && one.inputs['wrench'] === undefined ? { ...one, inputs: { ...one.inputs, wrench } } : one

interface Known {
  readonly tag: string
  readonly words: readonly TagWord[]
}

/** The one wrench that the words name, be it once or again and again. */
const onlyOne = async (words: readonly TagWord[], tagOf: TagOf): Promise<Known | undefined> => {
  const byTag = new Map<string, TagWord[]>()
  for (const word of words) {
    const key = foldTag(word.plain)
    byTag.set(key, [...(byTag.get(key) ?? []), word])
  }
  const known = await Promise.all(
    [...byTag].map(async ([key, same]): Promise<Known[]> => {
      const tag = await tagOf(key)
      return tag === undefined ? [] : [{ tag, words: same }]
    }),
  )
  const [one, other] = known.flat()
  return other === undefined ? one : undefined
}

const readWith = (text: string, { tag, words }: Known): TextReading | undefined => {
  // A number in a tag is none of the question.
  const reading = readText(withoutWords(text, words))
  const { question, inputs, alternatives, taken } = reading
  const others = alternatives.map((one) => ofWrench(one, tag))
  if (question === null) {
    const isOneOfWrench = reading.outcome === 'choice' && alternatives.some((one) => takesWrench(one.question))
    return isOneOfWrench ? { ...reading, alternatives: others } : undefined
  }
  if (!takesWrench(question) || inputs['wrench'] !== undefined) return undefined
  const span = (words[0] as TagWord).text
  return {
    ...reading,
    inputs: { ...inputs, wrench: tag },
    taken: [{ span, input: 'wrench', text: tag }, ...taken],
    alternatives: others,
  }
}

/** The text read with the wrench that it names; undefined at once where nothing in it could be a tag, or later where nothing is. */
export const readNamed = (text: unknown, tagOf: TagOf): Promise<TextReading | undefined> | undefined => {
  const words = typeof text === 'string' ? tagWordsIn(text) : []
  if (words.length === 0) return undefined
  return inTime(onlyOne(words, tagOf), LONGEST_MS, undefined).then((known) => known && readWith(String(text), known))
}
