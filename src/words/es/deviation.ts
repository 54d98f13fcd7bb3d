// How far a wrench is off, beside a number of %: which way, in words that nobody has to turn round.

export const deviation = {
  low: '{size} por debajo (da de menos)',
  high: '{size} por encima (da de más)',
  /** Nearer than anybody reads. */
  right: 'en su valor',
  /** Beside the signed number of a document. */
  less: '{shown} (da de menos)',
  more: '{shown} (da de más)',
} as const
