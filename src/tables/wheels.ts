// Wheels: when to torque again, and what goes on the threads. Sources differ by system: show the span, the maker decides.
import type { Citation } from './citation.ts'

export interface WheelAgain {
  readonly source: string
  /** Distance [km] and time [min] within, or between, which to torque again; as printed. */
  readonly km?: readonly [number, number]
  readonly miles?: readonly [number, number]
  readonly minutes?: number
  readonly from: Citation
}

const published = (title: string, where: string): Citation => ({ title, where, standing: 'published' })

export const wheelsAgain: readonly WheelAgain[] = [
  {
    source: 'car-manual',
    km: [0, 160],
    miles: [0, 100],
    from: published("Car maker's owner's manual, wheel lug nut torque", 'within 100 miles of any work on the wheel'),
  },
  {
    source: 'truck-manual',
    km: [80, 160],
    miles: [50, 100],
    from: published('Truck maintenance manual 40.01', 'after the first 50 to 100 miles; torques stated as oiled'),
  },
  {
    source: 'uk-practice',
    km: [40, 80],
    miles: [25, 50],
    minutes: 30,
    from: published('BS AU 50 Part 2 Section 7a:1995 as cited', 'after 30 min standing, or after 40 to 80 km'),
  },
  {
    source: 'tyre-trade',
    miles: [25, 50],
    from: published('Training note of the tyre trade', 'at 25 and again at 50 miles'),
  },
]

export interface WheelLubrication {
  readonly system: string
  readonly threads: 'dry' | 'oil' | 'paste'
  readonly seat: 'dry' | 'oil'
  readonly from: Citation
}

const seen = (where: string): Citation => ({
  title: 'Wheel and vehicle makers, as quoted by the trade',
  where,
  standing: 'common practice',
})

/** No rule fits every wheel: these are the answers of different makers, to be shown as such. */
export const wheelLubrication: readonly WheelLubrication[] = [
  { system: 'car-studs-dry', threads: 'dry', seat: 'dry', from: seen('studs clean and dry') },
  { system: 'car-paste-on-threads', threads: 'paste', seat: 'dry', from: seen('one paste on the threads, seat dry') },
  { system: 'truck-hub-piloted', threads: 'oil', seat: 'oil', from: seen('oil on threads and between flange and nut') },
  { system: 'truck-stud-piloted', threads: 'oil', seat: 'dry', from: seen('oil on threads only') },
]
