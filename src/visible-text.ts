// What is printed on a terminal: control characters and marks of direction written out, so that no text that
// somebody kept or sent steers the screen or turns its numbers round.

const control = /[\p{Cc}\p{Cs}\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu

/** Line ends and tabs stay; everything else that is not seen is shown by its number. */
export const visible = (text: string): string =>
  text.replace(control, (char) =>
    char === '\n' || char === '\t' ? char : `\\u${(char.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`,
  )
