// How far a wrench is off, beside a number of %: which way, in words that nobody has to turn round.

export const deviation = {
  low: '{size} zu niedrig (liefert weniger)',
  high: '{size} zu hoch (liefert mehr)',
  /** Nearer than anybody reads. */
  right: 'richtig',
  /** Beside the signed number of a document. */
  less: '{shown} (liefert weniger)',
  more: '{shown} (liefert mehr)',
} as const
