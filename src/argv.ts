// What stands behind a verb on the command line: so many words and the flags that the verb knows. A flag that is mistyped is no
// flag left out: the verb would do in earnest what was only to be tried.

export interface Argv {
  readonly words: readonly string[]
  readonly flags: ReadonlySet<string>
}

/** Undefined where a flag is not known or there are more words than are wanted. */
export const readArgv = (argv: readonly string[], known: readonly string[], most: number): Argv | undefined => {
  const isFlag = (word: string): boolean => word.startsWith('-') && word !== '-'
  const flags = argv.filter(isFlag)
  const words = argv.filter((word) => !isFlag(word))
  if (words.length > most || flags.some((flag) => !known.includes(flag))) return undefined
  return { words, flags: new Set(flags) }
}
