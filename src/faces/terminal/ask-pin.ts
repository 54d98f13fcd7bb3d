// Asks for a new PIN, twice, without showing it; from a pipe one line is enough. Says why one is refused.
import { createInterface } from 'node:readline'
import type { Readable, Writable } from 'node:stream'

const refusals = {
  'not-digits': 'A PIN is 4 to 12 digits.',
  alike: 'All its digits are alike: take another.',
  'a-run': 'Its digits run up or down: take another.',
} as const

export type Weakness = keyof typeof refusals

/** A terminal that can be told not to echo. */
type Input = Readable & { readonly isTTY?: boolean; readonly setRawMode?: (on: boolean) => unknown }

const CONTROL_C = '\u0003'

/** A line that is typed and not shown; undefined where it was given up. */
const hiddenLine = (input: Input, told: Writable, prompt: string): Promise<string | undefined> =>
  new Promise((resolve) => {
    let typed = ''
    told.write(prompt)
    input.setRawMode?.(true)
    const end = (line: string | undefined): void => {
      input.off('data', hear)
      input.setRawMode?.(false)
      input.pause()
      told.write('\n')
      resolve(line)
    }
    const hear = (chunk: Buffer): void => {
      for (const char of chunk.toString()) {
        if (char === CONTROL_C || char === '\r' || char === '\n') {
          end(char === CONTROL_C ? undefined : typed)
          return
        }
        typed = char === '\u007f' || char === '\b' ? typed.slice(0, -1) : typed + char
      }
    }
    input.on('data', hear)
    input.resume()
  })

const firstLine = async (input: Readable): Promise<string | undefined> => {
  for await (const line of createInterface({ input })) return line.trim()
  return undefined
}

/** The PIN, or undefined where there is none to take; what is wrong was told then. */
export const askPin = async (
  input: Input,
  told: Writable,
  weakness: (pin: string) => Weakness | undefined,
): Promise<string | undefined> => {
  const pin = input.isTTY ? await hiddenLine(input, told, 'New PIN: ') : await firstLine(input)
  if (pin === undefined) return undefined
  const weak = weakness(pin)
  if (weak) {
    told.write(`${refusals[weak]}\n`)
    return undefined
  }
  if (input.isTTY && (await hiddenLine(input, told, 'The same again: ')) !== pin) {
    told.write('The two are not alike.\n')
    return undefined
  }
  return pin
}
