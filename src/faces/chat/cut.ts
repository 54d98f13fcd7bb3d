// Texts cut to what Discord takes, never in the middle of a character: half an emoji would be no text at all.

const characters = new Intl.Segmenter(undefined, { granularity: 'grapheme' })

/** Where the character begins that would be cut, or where the text may be cut as it stands. */
const placeFor = (text: string, most: number): number => {
  // What is cut away needs no look, but for the character that the cut is in.
  const { index } = characters.segment(text).containing(most) ?? { index: most }
  // A letter under a heap of marks may be longer than all that fits: then a mark may go, but no half of a pair.
  if (index > 0) return index
  return /[\ud800-\udbff]/.test(text.charAt(most - 1)) ? most - 1 : most
}

/** At most so long, in the units that Discord counts at most; where it is cut, `end` stands for the rest. */
export const cut = (text: string, most: number, end = ''): string =>
  text.length <= most ? text : `${text.slice(0, placeFor(text, most - end.length))}${end}`
