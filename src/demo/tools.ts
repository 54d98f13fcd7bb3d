// The wrenches and gauges of the demo shop, and how each of them ages. All invented.

export interface DemoWrench {
  readonly card: Readonly<Record<string, string>>
  /** Settings at which it is checked, in its own unit. */
  readonly settings: readonly number[]
  readonly unit: string
  /** Deviation in % at the first check and what is added a year. */
  readonly start: number
  readonly perYear: number
  /** Months before today at which it was checked; none: never. */
  readonly checked: readonly number[]
}

const wrench = (
  tag: string,
  name: string,
  kind: string,
  least: number,
  most: number,
  unit: string,
  more: Readonly<Record<string, string>>,
  [start, perYear]: readonly [number, number],
  checked: readonly number[],
): DemoWrench => ({
  card: {
    tag,
    name,
    'wrench-type': kind,
    least: `${least} ${unit}`,
    most: `${most} ${unit}`,
    interval: '12 months; 5000 uses',
    ...more,
  },
  settings: [most * 0.2, most * 0.6, most],
  unit,
  start,
  perYear,
  checked,
})

const HALF_YEARLY = [30, 24, 18, 12, 6, 1]

export const wrenches: readonly DemoWrench[] = [
  wrench(
    'W-01',
    'Quarter-inch click wrench',
    'click',
    5,
    25,
    'N·m',
    { lever: '210 mm', mark: '0.25 N·m', place: 'Bay 1', tolerance: '4 %' },
    [0.8, 0.3],
    HALF_YEARLY,
  ),
  wrench(
    'W-02',
    'Three-eighths click wrench',
    'click',
    10,
    60,
    'N·m',
    { lever: '265 mm', mark: '0.5 N·m', place: 'Bay 1', tolerance: '4 %' },
    [-0.5, 0.2],
    HALF_YEARLY,
  ),
  wrench(
    'W-03',
    'Half-inch click wrench',
    'click',
    40,
    200,
    'N·m',
    { lever: '400 mm', mark: '1 N·m', place: 'Bay 1', tolerance: '4 %', pivot: '22 mm', 'pivot-found': 'measured' },
    [0.4, 1.2],
    HALF_YEARLY,
  ),
  wrench(
    'W-04',
    'Half-inch click wrench, older',
    'click',
    30,
    150,
    'lbf·ft',
    { lever: '18 in', mark: '1 lbf·ft', place: 'Bay 2' },
    [1.8, 2],
    [26, 20, 14, 8, 2],
  ),
  wrench(
    'W-05',
    'Split-beam wrench, long',
    'split-beam',
    60,
    330,
    'N·m',
    { lever: '560 mm', mark: '2 N·m', place: 'Bay 2', tolerance: '3 %' },
    [0.2, 0.1],
    [20, 8],
  ),
  wrench(
    'W-06',
    'Beam wrench for teaching',
    'beam',
    10,
    140,
    'N·m',
    { lever: '450 mm', mark: '5 N·m', place: 'Bay 3', tolerance: '6 %' },
    [-1.5, 0],
    [22, 10],
  ),
  wrench(
    'W-07',
    'Dial wrench',
    'dial',
    20,
    100,
    'N·m',
    { lever: '380 mm', mark: '1 N·m', place: 'Bay 3', tolerance: '2 %' },
    [0.3, 0.2],
    [13],
  ),
  wrench(
    'W-08',
    'Electronic wrench',
    'electronic',
    20,
    200,
    'N·m',
    { lever: '420 mm', place: 'Bay 3', tolerance: '2 %' },
    [0.1, 0],
    [9, 3],
  ),
  wrench(
    'W-09',
    'Three-quarter-inch click wrench',
    'click',
    140,
    700,
    'N·m',
    { lever: '950 mm', mark: '5 N·m', place: 'Rack by the door', tolerance: '4 %' },
    [-0.8, -0.4],
    [23, 11],
  ),
  wrench(
    'W-10',
    'Inch-pound click wrench',
    'click',
    40,
    200,
    'lbf·in',
    { lever: '9 in', mark: '1 lbf·in', place: 'Bay 1', tolerance: '6 %' },
    [1, 0.5],
    [18, 6],
  ),
  wrench(
    'W-11',
    'New half-inch click wrench',
    'click',
    40,
    200,
    'N·m',
    { lever: '395 mm', mark: '1 N·m', place: 'Bay 2', tolerance: '4 %' },
    [0, 0],
    [],
  ),
  wrench(
    'W-12',
    'Worn click wrench',
    'click',
    40,
    200,
    'N·m',
    { lever: '400 mm', mark: '1 N·m', place: 'Shelf' },
    [3, 3],
    [40, 28],
  ),
]

export const gauges: readonly Readonly<Record<string, string>>[] = [
  {
    tag: 'S-1',
    name: 'Luggage scale',
    'gauge-type': 'luggage-scale',
    'most-force': '50 kg',
    tolerance: '0.5 %',
    place: 'Drawer',
  },
  {
    tag: 'S-2',
    name: 'Force gauge',
    'gauge-type': 'force-gauge',
    'most-force': '1000 N',
    tolerance: '0.3 %',
    place: 'Drawer',
  },
  {
    tag: 'T-1',
    name: 'Bench torque tester',
    'gauge-type': 'torque-tester',
    'most-torque': '750 N·m',
    tolerance: '0.5 %',
    place: 'Bench',
  },
]
