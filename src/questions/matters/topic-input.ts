// The input that names a topic: its slug, or free text that is searched. Nothing is guessed: no topic, or several as good, is a fault.
import { fault, read, refuse } from '../../core/fault.ts'
import { asked, common, type Input, type Options, one, same } from '../input.ts'
import { searchTopic } from './search.ts'
import { groups, type Slug, slugs, slugsByGroup } from './topic.ts'

/** A long post fits; what is longer is no question about one topic. */
export const LONGEST_TOPIC = 500

/** What the words mean first, then what begins or holds the letters that were typed. */
const fitting = (typed: string): readonly Slug[] => {
  const letters = typed
    .slice(0, LONGEST_TOPIC)
    .toLowerCase()
    .trim()
    .replace(/[\s_]+/g, '-')
  if (letters === '') return slugs
  const meant = searchTopic(typed.slice(0, LONGEST_TOPIC))
  const begins = slugs.filter((slug) => slug.startsWith(letters))
  const holds = slugs.filter((slug) => slug.includes(letters))
  return [...new Set([...meant, ...begins, ...holds])]
}

export const topicInput = <N extends boolean = false>(options: Options<N> = {}): Input<Slug, N> => ({
  kind: 'topic',
  most: 1,
  // Offered, not enforced: choices would keep Discord from sending anything that people say in their own words.
  suggestions: slugs,
  fitting,
  ...common(options, same('extension bar')),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    if (text.value.trim() === '') return refuse(fault('empty', input, text.value))
    if (text.value.length > LONGEST_TOPIC) {
      return refuse(fault('too-long', input, text.value, { most: String(LONGEST_TOPIC) }))
    }
    const found = searchTopic(text.value)
    const [first, ...others] = found
    if (first === undefined) {
      return refuse(
        fault(
          'not-a-topic',
          input,
          text.value,
          Object.fromEntries(groups.map((group) => [group, slugsByGroup[group]])),
        ),
      )
    }
    return others.length === 0 ? read(first) : refuse(fault('several-topics', input, text.value, { topics: found }))
  },
  given: (value, input) => [asked(input, value)],
})
