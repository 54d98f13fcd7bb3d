// How far a wrench is off, beside a number of %: which way, in words that nobody has to turn round.

export const deviation = {
  low: '{size} en dessous (donne moins)',
  high: '{size} au-dessus (donne plus)',
  /** Nearer than anybody reads. */
  right: 'juste',
  /** Beside the signed number of a document. */
  less: '{shown} (donne moins)',
  more: '{shown} (donne plus)',
} as const
