// What somebody types or pipes in, line by line. Nothing is read before the first line is wanted, so that a question which asks
// for none never waits; and whoever has heard enough lets go of the input, so that the program can end while a pipe stays open.
import { createInterface } from 'node:readline'
import type { Readable } from 'node:stream'

export const typedLines = (input: Readable): AsyncIterable<string> => ({
  [Symbol.asyncIterator]: () => {
    const lines = createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY })
    const typed = lines[Symbol.asyncIterator]()
    return {
      next: () => typed.next(),
      return: async () => {
        lines.close()
        input.destroy()
        return { done: true, value: undefined }
      },
    }
  },
})
