// Points of a wrench check: `100 N·m: 99.5; 101; 100.2 N·m`, left what the wrench says, right what the reference showed.
import { type Fault, fault, type Read, read, refuse } from './fault.ts'
import { parseReadings } from './parse-list.ts'
import { parseQuantity } from './parse-quantity.ts'
import type { Quantity } from './quantity.ts'

export interface Point {
  readonly setting: Quantity
  readonly references: readonly Quantity[]
}

export const pointExample = '100 N·m: 99.5; 101; 100.2 N·m'

const parsePoint = (text: string, input: string): Read<Point> => {
  const at = text.indexOf(':')
  if (at === -1) return refuse(fault('not-a-point', input, text, { example: pointExample }))
  const setting = parseQuantity(text.slice(0, at), { input, dimensions: ['torque'] })
  const references = parseReadings([text.slice(at + 1)], { input, dimensions: ['torque'] })
  if (setting.ok && references.ok) return read({ setting: setting.value, references: references.value })
  return refuse(...(setting.ok ? [] : setting.faults), ...(references.ok ? [] : references.faults))
}

/** Points from one text or several; in one text `|` or a new line stands between them. All faults of all points. */
export const parsePoints = (texts: readonly string[], input: string): Read<readonly Point[]> => {
  const faults: Fault[] = []
  const points: Point[] = []
  for (const text of texts.flatMap((one) => one.slice(0, 4000).split(/\s*[|\n]\s*/))) {
    const point = parsePoint(text, input)
    if (point.ok) points.push(point.value)
    else faults.push(...point.faults)
  }
  return faults.length > 0 ? refuse(...faults) : read(points)
}
