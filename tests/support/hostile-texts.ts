// Texts made to cost time: each repeats what one rule of the reader looks for, to a length that is given.

const fill = (piece: string, length: number): string => piece.repeat(Math.ceil(length / piece.length)).slice(0, length)

export const hostileTexts = (length: number): Readonly<Record<string, string>> => ({
  digits: fill('1', length),
  'digits with marks': fill('1,2.', length),
  'number and space': fill('1 ', length),
  'number and dash': fill('1 - ', length),
  fractions: fill('1/2 ', length),
  letters: fill('a', length),
  'not words': fill("a'", length),
  'unit pieces': fill('1 in.-lb/', length),
  'dots and spaces': fill('. ', length),
  spaces: `5${fill(' ', length)}Nm`,
  'phrases that begin': fill('what do i what do ', length),
  'little words': fill('the a an of my ', length),
  'cues only': fill('wrench crowfoot adapter ', length),
  'cues and numbers': fill('3 in crowfoot 75 lb-ft wrench ', length),
  'bends without number': fill('straight back right angle ', length),
  'torques that rival': fill('want 50 nm want 60 nm ', length),
  'plus and minus': fill('+-/', length),
  quotes: fill('"\'', length),
  lines: fill('\n1\n', length),
  'many states': fill('oil dry grease anti-seize ', length),
  'many factors': fill('k 0.2 dry ', length),
  sizes: fill('M12x1.5 3/8-16 8.8 ', length),
  'open formula': fill('(1-a/l', length),
  'quarter without off': fill('a quarter of ', length),
  'another language': fill('Hahnenfuß mit dem Schlüssel 45 mm ', length),
  'phrases that begin, in another': fill("couple de serrage de l'", length),
  'wide signs': fill('🔧±½', length),
})
