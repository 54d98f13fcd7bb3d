// The input that names a square drive: a size off a list. A length is none, and a foot is never half an inch.
import { parseDrive } from '../core/parse-drive.ts'
import { type SquareDrive, squareDrives } from '../tables/square-drives.ts'
import { common, type Input, type Options, one, same } from './input.ts'

export const drive = <N extends boolean = false>(options: Options<N> = {}): Input<SquareDrive, N> => ({
  kind: 'choice',
  most: 1,
  choices: squareDrives,
  ...common(options, same('1/2'), { metric: squareDrives, inch: squareDrives }),
  read: (texts, input) => {
    const text = one(texts, input)
    return text.ok ? parseDrive(text.value, input, squareDrives) : text
  },
  given: (value, input) => [{ input, value, from: 'asked' }],
})
