// Free text made even for reading: lower case, one kind of quote, dash and space. Every character keeps its place, so that spans
// point into the text as it was typed.

const even = new Map<string, string>([
  ...[...'“”„″〃«»'].map((mark): [string, string] => [mark, '"']),
  ...[...'‘’′´`‚'].map((mark): [string, string] => [mark, "'"]),
  ...[...'‐‑‒–—−'].map((mark): [string, string] => [mark, '-']),
  ...[...'\u00a0\u2007\u2009\u202f\u3000'].map((space): [string, string] => [space, ' ']),
  ['×', 'x'],
  ['∙', '·'],
  ['⋅', '·'],
  ['•', '·'],
  ['º', '°'],
  ['˚', '°'],
  ['⁄', '/'],
  ['İ', 'i'],
  ['μ', 'µ'],
  ['…', '.'],
])

const lower = (char: string): string => {
  const small = char.toLowerCase()
  return small.length === 1 ? small : char
}

/** The same length as what was given, always. */
export const fold = (text: string): string =>
  text.replace(/[^\x20-\x7e]/g, (char) => even.get(char) ?? lower(char)).toLowerCase()
