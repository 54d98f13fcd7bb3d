// How far a wrench is off, beside a number of %: which way, in words that nobody has to turn round.

export const deviation = {
  low: '{size} low (gives less)',
  high: '{size} high (gives more)',
  /** Nearer than anybody reads. */
  right: 'on the mark',
  /** Beside the signed number of a document. */
  less: '{shown} (gives less)',
  more: '{shown} (gives more)',
} as const
