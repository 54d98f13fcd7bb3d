// What somebody types or pipes in, line by line. Nothing is read before the first line is wanted, so that a question which asks
// for none never waits for an input that nobody ends.
import { createInterface } from 'node:readline'
import type { Readable } from 'node:stream'

export const typedLines = (input: Readable): AsyncIterable<string> => ({
  [Symbol.asyncIterator]: () => createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY })[Symbol.asyncIterator](),
})
