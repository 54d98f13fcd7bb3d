// Numbers that are written as words: one foot, half an inch, ten inch. Only in front of a unit; else `one` is just a word.

const values: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  fifteen: 15,
  eighteen: 18,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  ninety: 90,
  hundred: 100,
}

const parts: ReadonlyArray<readonly [RegExp, number]> = [
  [/three[\s-]quarters?(?:[\s-]of)?(?:[\s-]an?)?(?![a-z])/y, 0.75],
  [/half(?:[\s-]of)?(?:[\s-]an?)?(?![a-z])/y, 0.5],
  [/quarter(?:[\s-]of)?(?:[\s-]an?)?(?![a-z])/y, 0.25],
]
const whole =
  /(an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|eighteen|twenty|thirty|forty|fifty|sixty|ninety|hundred)(?![a-z])/y

/** The number that a word at `at` may be, and where it ends. */
// Most words begin with none of these, and are not looked at further.
const FIRST = /[aofstenhq]/

export const numberWordAt = (
  text: string,
  at: number,
): { value: number; end: number; article: boolean } | undefined => {
  const char = text[at] as string
  if (!FIRST.test(char)) return undefined
  for (const [pattern, value] of char === 't' || char === 'h' || char === 'q' ? parts : []) {
    pattern.lastIndex = at
    if (pattern.test(text)) return { value, end: pattern.lastIndex, article: false }
  }
  whole.lastIndex = at
  const word = whole.exec(text)?.[1]
  const value = word === undefined ? undefined : values[word]
  return value === undefined ? undefined : { value, end: whole.lastIndex, article: word === 'a' || word === 'an' }
}
