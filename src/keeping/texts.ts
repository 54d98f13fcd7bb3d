// An entry back to texts: what somebody would type to keep the same again. For forms that correct, and for sheets that are read in.
import { writeNumber } from '../core/number-style.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import { writeReadings } from '../core/readings-text.ts'
import { type Measured, quantityOf, type Tolerance } from '../register/parts.ts'
import type { BodyOf, Check, Entry, Kind } from '../register/records.ts'
import { PART_MARK } from './run-inputs.ts'

export type Texts = Readonly<Record<string, string>>

const filled = (fields: Readonly<Record<string, string | undefined>>): Texts =>
  Object.fromEntries(Object.entries(fields).filter((field): field is [string, string] => field[1] !== undefined))

// What was entered says already what it is of, but where it was kept without its text.
const toleranceText = (tolerance: Tolerance | undefined): string | undefined => {
  if (!tolerance) return undefined
  const { share, of } = tolerance
  return of === 'reading' || /%.*f/i.test(share.text) ? share.text : `${share.text} of full scale`
}

// Such that it is read as exactly this number: 4.9710, as 4.971 might be thousands.
const written = (one: Measured): string => writeQuantity(quantityOf(one))

const pointsText = (points: Check['points']): string =>
  points.map(({ setting, readings }) => `${written(setting)}: ${readings.map(written).join('; ')}`).join(' | ')

/** A list of a run's readings; none where they hold no such reading. */
const listText = (list: ReadonlyArray<Measured | undefined>): string | undefined => {
  const all = list.filter((one) => one !== undefined)
  return all.length === 0 ? undefined : writeReadings(all.map(quantityOf))
}

type Writers = { readonly [K in Kind]: (body: BodyOf<K>) => Texts }

const writers: Writers = {
  wrench: ({ least, most, mark, lever, pivot, tolerance, interval, unit: _, ...rest }) =>
    filled({
      ...rest,
      least: least?.text,
      most: most.text,
      mark: mark?.text,
      lever: lever?.text,
      pivot: pivot?.value.text,
      'pivot-found': pivot?.found,
      tolerance: toleranceText(tolerance),
      interval:
        interval &&
        [
          ...(interval.months === undefined ? [] : [`${interval.months} months`]),
          ...(interval.uses === undefined ? [] : [`${interval.uses} uses`]),
        ].join('; '),
    }),
  gauge: ({ most, tolerance, ...rest }) =>
    filled({
      ...rest,
      [rest['gauge-type'] === 'torque-tester' ? 'most-torque' : 'most-force']: most?.text,
      tolerance: toleranceText(tolerance),
    }),
  check: ({ distance, 'own-weight': own, 'gauge-uncertainty': stated, conditions, points, ...rest }) =>
    filled({
      ...rest,
      distance: distance?.text,
      lie: own?.lie,
      'wrench-mass': own?.mass?.text,
      'balance-point': own?.['balance-point']?.text,
      'pull-direction': own?.['pull-direction'],
      'gauge-uncertainty': stated?.text,
      temperature:
        conditions?.['temperature-c'] === undefined ? undefined : `${writeNumber(conditions['temperature-c'])} °C`,
      notes: conditions?.notes,
      points: pointsText(points),
    }),
  event: ({ setting, ...rest }) => filled({ ...rest, setting: setting?.text }),
  uses: ({ count, ...rest }) => filled({ ...rest, count: String(count) }),
  run: ({ conditions, same, 'property-class': strength, diameter, again, margin, confidence, ...rest }) =>
    filled({
      ...rest,
      margin: margin?.text,
      confidence: confidence?.text,
      conditions: conditions.map(({ name, what }) => `${name}: ${what}`).join(PART_MARK),
      same: same.length === 0 ? undefined : same.join(PART_MARK),
      class: strength,
      diameter: diameter?.text,
      again: again && `${again.join('; ')} months`,
    }),
  'run-reading': ({ readings, again, ...rest }) =>
    filled({
      ...rest,
      torque: listText(readings.map(({ torque }) => torque)),
      'clamp-force': listText(readings.map(({ clamp }) => clamp)),
      angle: listText(readings.map(({ angle }) => angle)),
      'wrench-reading': listText(readings.map(({ wrench }) => wrench)),
      piece: readings.every(({ piece }) => piece === undefined)
        ? undefined
        : readings.map(({ piece }) => piece).join('; '),
      again: again === undefined ? undefined : `${again} months`,
    }),
  'run-finish': (body) => filled(body),
  withdrawal: () => ({}),
}

/** The inputs that give this entry's body again, by their names; without the correction that it may be. */
export const textsOf = <K extends Kind>({ kind, body }: Pick<Entry<K>, 'kind' | 'body'>): Texts =>
  (writers[kind] as (body: BodyOf<K>) => Texts)(body)
