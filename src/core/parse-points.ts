// Check points as people type them: `100 N·m: 99.5; 101; 100.2 N·m`. Left what the wrench says, right what the reference showed.
// A `;` parts the readings of a point, so several points in one text are parted by `|` or a new line.
import { type Fault, fault, type Read, read, refuse } from './fault.ts'
import { parseReadings } from './parse-list.ts'
import { parseQuantity, type Wanted } from './parse-quantity.ts'
import { isSpan } from './parse-target.ts'
import type { Quantity } from './quantity.ts'
import type { Dimension } from './unit.ts'

/** What the wrench said, and what the reference showed each time; each in the unit in which it was typed. */
export interface Point {
  readonly setting: Quantity
  readonly readings: readonly Quantity[]
}

export const LONGEST_POINTS = 6000
export const MOST_POINTS = 12
export const MOST_READINGS = 30
/** Between points that are put into one text again. */
export const POINT_MARK = ' | '

// Empty lines are how text is laid out and say nothing; an empty place between two marks is a slip.
const piecesOf = (text: string): string[] =>
  text
    .split(/[\r\n]/)
    .filter((line) => line.trim() !== '')
    .flatMap((line) => line.split('|'))
    .map((piece) => piece.trim())

const parseSetting = (text: string, piece: string, wanted: Wanted): Read<Quantity> => {
  if (text === '') return refuse(fault('point-without-setting', wanted.input, piece))
  const setting = parseQuantity(text, wanted)
  return !setting.ok && isSpan(text, wanted) ? refuse(fault('one-value-only', wanted.input, text)) : setting
}

const parsePoint = (piece: string, input: string, readIn: readonly Dimension[]): Read<Point> => {
  const wanted: Wanted = { input, dimensions: ['torque'] }
  const shown: Wanted = { input, dimensions: readIn }
  if (piece === '') return refuse(fault('point-empty', input, piece))
  const [left = '', right, ...more] = piece.split(':').map((side) => side.trim())
  if (right === undefined) return refuse(fault('point-without-colon', input, piece))
  if (more.length > 0) return refuse(fault('point-two-colons', input, piece))
  const setting = parseSetting(left, piece, wanted)
  const readings =
    right === ''
      ? refuse(fault('point-without-readings', input, piece))
      : parseReadings([right], shown, { longest: LONGEST_POINTS, most: MOST_READINGS, tooMany: 'too-many-in-point' })
  if (setting.ok && readings.ok) return read({ setting: setting.value, readings: readings.value })
  return refuse(...(setting.ok ? [] : setting.faults), ...(readings.ok ? [] : readings.faults))
}

/**
 * The points of one text or several. All faults of all points; each names the point or the reading that is wrong.
 * `readIn`: what the reference shows, torque unless told otherwise (a scale shows force).
 */
export const parsePoints = (
  texts: readonly string[],
  input: string,
  readIn: readonly Dimension[] = ['torque'],
): Read<readonly Point[]> => {
  const faults: Fault[] = []
  const pieces: string[] = []
  for (const text of texts) {
    if (text.length > LONGEST_POINTS) faults.push(fault('too-long', input, text, { most: String(LONGEST_POINTS) }))
    else if (text.trim() === '') faults.push(fault('empty', input, text, { kind: 'torque' }))
    else pieces.push(...piecesOf(text))
  }
  if (pieces.length > MOST_POINTS) {
    return refuse(...faults, fault('too-many', input, pieces.join(POINT_MARK), { most: String(MOST_POINTS) }))
  }
  const points: Point[] = []
  for (const piece of pieces) {
    const point = parsePoint(piece, input, readIn)
    if (point.ok) points.push(point.value)
    else faults.push(...point.faults)
  }
  return faults.length > 0 ? refuse(...faults) : read(points)
}
