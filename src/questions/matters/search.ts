// Free text to a topic: folded to stems, matched against what people call things, scored by topic. Deterministic, one pass.
// Several topics that score the same are all handed back; who calls refuses to guess.
import { type Idea, ideas } from '../../tables/ideas.ts'
import { type Slug, slugs } from './topic.ts'
import { topicIdeas } from './weights.ts'

/** Less than this is a passing mention, not a topic. */
export const LEAST_SCORE = 3
/** An idea of this weight names its topic. */
const OWN_NAME = 4
const LONGEST_PHRASE = 4

const fillers: ReadonlySet<string> = new Set(
  (
    'a an the it its this that these those my your our his her their i im ive we you me us he she they is are was were be been ' +
    'does do did doing will would can could should shall may might must have has had of to at on by for from with and or so ' +
    'if but as than then there any some just really actually ever still also too very'
  ).split(' '),
)

const undoubled = (stem: string): string => (/([bdgmnprt])\1$/.test(stem) ? stem.slice(0, -1) : stem)

/** clicks, clicked, clicking → click; calibrate, calibration → calibrat. Rough, and the same on both sides. */
const stemOf = (word: string): string => {
  const bare = word.length > 2 && /[^siu]s$/.test(word) ? word.slice(0, -1) : word
  if (bare.length > 5 && bare.endsWith('ing')) return undoubled(bare.slice(0, -3))
  if (bare.length > 4 && bare.endsWith('ed')) return undoubled(bare.slice(0, -2))
  if (bare.length > 6 && bare.endsWith('ion')) return bare.slice(0, -3)
  return bare.length > 3 && bare.endsWith('e') ? bare.slice(0, -1) : bare
}

/** Stems in reading order: accents, apostrophes and fillers left out; 90° is 90 deg, 3/8" a drive. */
export const foldText = (text: string): readonly string[] => {
  const plain = text
    .replaceAll('º', '°')
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[\p{M}'’‘`]/gu, '')
    .replaceAll('⁄', '/')
    .replace(/(?<![\d/])(?:1\/4|3\/8|1\/2|3\/4)(?![\d/])(?: ?(?:inch|in|"))?/g, ' squaredrive ')
    .replaceAll('°', ' deg ')
    .replaceAll('%', ' percent ')
    .replaceAll('+', ' plus ')
  const words = plain.match(/[a-z]+|\d+/g) ?? []
  return words.filter((word) => !fillers.has(word)).map(stemOf)
}

const keyOf = (stems: readonly string[]): string => stems.join(' ')

/** Every spelling, folded as a question is, and the idea that it stands for. */
export const spellings: ReadonlyMap<string, Idea> = new Map(
  (Object.keys(ideas) as Idea[]).flatMap((idea) =>
    ideas[idea].map((spelling): [string, Idea] => [keyOf(foldText(spelling)), idea]),
  ),
)

/** How many words the longest spelling has that begins with a word: most words begin none. */
const longestFrom: ReadonlyMap<string, number> = [...spellings.keys()].reduce((longest, key) => {
  const stems = key.split(' ')
  const [first = ''] = stems
  return longest.set(first, Math.min(LONGEST_PHRASE, Math.max(stems.length, longest.get(first) ?? 0)))
}, new Map<string, number>())

/** The ideas in a text; of overlapping spellings the longest counts, so that a cheater bar is no bar. */
export const ideasIn = (text: string): ReadonlySet<Idea> => {
  const stems = foldText(text)
  const found = new Set<Idea>()
  for (let at = 0; at < stems.length; ) {
    let taken = 1
    const longest = longestFrom.get(stems[at] as string) ?? 0
    for (let length = Math.min(longest, stems.length - at); length > 0; length--) {
      const idea = spellings.get(keyOf(stems.slice(at, at + length)))
      if (idea === undefined) continue
      found.add(idea)
      taken = length
      break
    }
    at += taken
  }
  return found
}

const scoreOf = (slug: Slug, found: ReadonlySet<Idea>): number => {
  const weights: Readonly<Partial<Record<Idea, number>>> = topicIdeas[slug]
  let sum = 0
  for (const idea of found) sum += weights[idea] ?? 0
  return sum
}

const bare = (text: string): string => text.toLowerCase().replace(/[\s\-_]+/g, '')

/** Whether a text names a topic by something that the best one knows nothing of: then it asks of both. */
const namedBeside = (slug: Slug, best: Slug, found: ReadonlySet<Idea>): boolean => {
  const [own, other]: readonly Readonly<Partial<Record<Idea, number>>>[] = [topicIdeas[slug], topicIdeas[best]]
  return [...found].some((idea) => (own?.[idea] ?? 0) >= OWN_NAME && other?.[idea] === undefined)
}

/** The topics that fit: none, one, or several that fit as well or are named beside the best. A slug is its own topic, whatever it may score. */
export const searchTopic = (text: string): readonly Slug[] => {
  const typed = bare(text)
  const exact = slugs.find((slug) => bare(slug) === typed)
  if (exact) return [exact]
  const found = ideasIn(text)
  const scores = slugs.map((slug) => scoreOf(slug, found))
  const best = Math.max(...scores)
  if (best < LEAST_SCORE) return []
  const leaders = slugs.filter((_, place) => scores[place] === best)
  return slugs.filter((slug) => leaders.includes(slug) || leaders.every((leader) => namedBeside(slug, leader, found)))
}
