// A word with one letter wrong, left out, put in or turned about, as the word of the trade that it can only mean. Long words alone,
// whose first and last letters are right: what is bent by its end (adapted, adapter) is another word, no slip.

const SHORTEST = 6

/** Long nouns of the trade; verbs and short words stand too near to others. */
const vocabulary: ReadonlySet<string> = new Set(
  (
    'crowfoot crowsfoot crowfeet adapter adapters adaptor adaptors wrench wrenches spanner spanners clicker torque setting settings ' +
    'straight perpendicular inline extension extensions multiplier multipliers universal swivel offset handle lubricant lubricated ' +
    'antiseize preload tension threads fastener calibration calibrated tolerance accuracy degrees newton newtons metres meters inches'
  ).split(' '),
)

// Words of everyday English that stand one letter from one of ours.
const everyday: ReadonlySet<string> = new Set(
  (
    'adopter adopters sitting sittings multiplies scanner scanners spinner spinners threats treads wretch wretches mitres ' +
    'decrees itches'
  ).split(' '),
)

const without = (word: string, at: number): string => word.slice(0, at) + word.slice(at + 1)

/** Each word of ours with one inner letter left out, and the words that give it: two that differ by one letter share one of these. */
const shortened = new Map<string, string[]>()
const note = (key: string, word: string): void => {
  const known = shortened.get(key)
  if (known === undefined) shortened.set(key, [word])
  else if (!known.includes(word)) known.push(word)
}
for (const word of vocabulary) {
  note(word, word)
  for (let at = 1; at < word.length - 1; at++) note(without(word, at), word)
}

const sameEnds = (one: string, other: string): boolean =>
  one[0] === other[0] && one[one.length - 1] === other[other.length - 1]

/** One letter put in, left out or changed, or two neighbours turned about. */
const isOneSlip = (typed: string, meant: string): boolean => {
  let start = 0
  while (start < typed.length && typed[start] === meant[start]) start++
  let [end, last] = [typed.length, meant.length]
  while (end > start && last > start && typed[end - 1] === meant[last - 1]) {
    end--
    last--
  }
  const [left, right] = [end - start, last - start]
  if (left <= 1 && right <= 1) return true
  return left === 2 && right === 2 && typed[start] === meant[start + 1] && typed[start + 1] === meant[start]
}

/** The one word of the trade that a misspelt one can mean; undefined where it is spelled well, means none, or may mean two. */
export const meantBy = (typed: string): string | undefined => {
  if (typed.length < SHORTEST || vocabulary.has(typed) || everyday.has(typed)) return undefined
  let meant: string | undefined
  for (let at = 0; at < typed.length - 1; at++) {
    const known = shortened.get(at === 0 ? typed : without(typed, at))
    if (known === undefined) continue
    for (const word of known) {
      if (word === meant || !sameEnds(word, typed) || !isOneSlip(typed, word)) continue
      if (meant !== undefined) return undefined
      meant = word
    }
  }
  return meant
}
