// When a worked-out value agrees with print: within half of the last printed digit, lists item by item.

export type Cell = number | null | readonly number[] | string | readonly string[]
export type Cells = Readonly<Record<string, Cell | undefined>>

// The last bits of a double may not turn 42.85 ± 0.05 into a miss.
const near = (value: number, printed: number, digit: number): boolean =>
  Math.abs(value - printed) <= digit / 2 + 1e-9 * Math.max(1, Math.abs(printed))

/** Whether a value agrees with print; `digit` is the step of the last printed digit, 0 where the print is exact. */
export const agrees = (value: Cell | undefined, printed: Cell, digit: number): boolean => {
  if (value === undefined) return false
  if (typeof value === 'number' && typeof printed === 'number') return near(value, printed, digit)
  if (Array.isArray(value) && Array.isArray(printed)) {
    return (
      value.length === printed.length &&
      printed.every((item, index) => near(value[index] as number, item as number, digit))
    )
  }
  return value === printed
}

export const told = (value: Cell | undefined): string => (value === undefined ? 'nothing' : JSON.stringify(value))
