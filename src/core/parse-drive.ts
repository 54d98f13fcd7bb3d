// Square drives as people write them: 1/2, 1/2 in, 1/2", 0.5. A drive is a size off a list, not a length of its own.
import { fault, type Read, read, refuse } from './fault.ts'
import { readNumber } from './number-text.ts'
import { spelledUnits, units } from './unit.ts'

const LONGEST_DRIVE = 24

/** The drive of a list (`1/4`, `3/8`, …: inches) that a text names. Faults: empty, not-a-choice. */
export const parseDrive = <D extends string>(text: string, input: string, drives: readonly D[]): Read<D> => {
  const trimmed = text.trim()
  if (trimmed === '') return refuse(fault('empty', input, text, { options: drives }))
  const number = trimmed.length > LONGEST_DRIVE ? undefined : readNumber(trimmed)
  const inches =
    number?.ok === true &&
    (number.rest.trim() === '' || spelledUnits(number.rest).some(({ unit }) => unit === units.in))
  const found = number?.ok && inches ? drives.find((drive) => sizeOf(drive) === number.value) : undefined
  return found
    ? read(found)
    : refuse(fault('not-a-choice', input, text, { options: drives.map((drive) => `${drive} in`) }))
}

const sizeOf = (drive: string): number | undefined => {
  const size = readNumber(drive)
  return size.ok ? size.value : undefined
}
