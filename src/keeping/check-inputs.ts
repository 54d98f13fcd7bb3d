// A check while it is still being made, as it is typed: the inputs of a check, of which only the wrench and the way are needed;
// and one reading more. What is kept in the end is a check like any other (`check.ts`).
import { refuse } from '../core/fault.ts'
import { parseReadings } from '../core/parse-list.ts'
import { parseQuantity, type Wanted } from '../core/parse-quantity.ts'
import type { Quantity } from '../core/quantity.ts'
import { writeReadings } from '../core/readings-text.ts'
import { asked, common, type Input, one, within } from '../questions/input.ts'
import { checkRecord } from './check.ts'

/** A bare number is let through: it is in the unit of the reading before it, where there is one. */
const nextReading = (): Input<Quantity, false> => ({
  kind: 'reading',
  most: 1,
  ...common({}, { metric: '265 N', inch: '60 lbf' }),
  read: (texts, input) => {
    const text = one(texts, input)
    if (!text.ok) return text
    const wanted: Wanted = { input, dimensions: ['force', 'torque'] }
    const bare = parseQuantity(text.value, { input, dimensions: ['number'] })
    const found = bare.ok ? bare : parseQuantity(text.value, wanted)
    const wrong = found.ok ? within(found.value, wanted, text.value, {}) : undefined
    return wrong ? refuse(wrong) : found
  },
  given: (value, input) => [asked(input, value)],
})

const MOST_SURE = 60

/** Readings that look like a slip and stand as they are typed. */
const standing = (): Input<readonly Quantity[], false> => ({
  kind: 'readings',
  most: MOST_SURE,
  ...common({}, { metric: '30.6 N', inch: '7 lbf' }),
  read: (texts, input) => parseReadings(texts, { input, dimensions: ['force', 'torque'] }, { most: MOST_SURE }),
  given: (all, input) => [{ ...asked(input, writeReadings(all)), values: all }],
})

const optional = <T>(input: Input<T>): Input<T> => ({ ...input, needed: false })
const { date, state, points, ...rest } = checkRecord.inputs as Readonly<Record<string, Input<unknown>>>

export const growingInputs = {
  inputs: {
    ...rest,
    date: optional(date as Input<unknown>),
    state: optional(state as Input<unknown>),
    points: optional(points as Input<unknown>),
    reading: nextReading(),
    sure: standing(),
  },
  oneOf: checkRecord.oneOf,
  alsoNeeded: checkRecord.alsoNeeded,
  check: checkRecord.check,
}
