// The bench runs of the demo shop, all invented: what oil does to the clamp force of an M12, which of three lubricants to take for
// an M10, and one still under way, of a click wrench that is left wound up. Their scatter is what careful hands show.
import { createChance, round, type TimedEntry } from './made.ts'

type Texts = Readonly<Record<string, string>>

/** So many readings about a middle, each so far off by chance (a fraction), in one unit. */
type Draw = (n: number, middle: number, spread: number, unit: string) => string

const alike = (n: number, value: number, unit: string): string => `${Array(n).fill(round(value)).join('; ')} ${unit}`

const at = (months: number, kind: TimedEntry['entry']['kind'], raw: Texts): TimedEntry => ({
  months,
  entry: { kind, raw },
})

type Ago = (months: number) => string

const OIL_READ = 8
const oilOnM12 = (draw: Draw, ago: Ago): TimedEntry[] => {
  const date = ago(5)
  const read = (condition: string, clamp: number, spread: number): TimedEntry =>
    at(5, 'run-reading', {
      run: 'B-01',
      condition,
      date,
      torque: alike(OIL_READ, 80, 'N·m'),
      'clamp-force': draw(OIL_READ, clamp, spread, 'kN'),
    })
  return [
    at(5, 'run', {
      tag: 'B-01',
      date,
      asked: 'What does oil do to the clamp force of an M12 at 80 N·m?',
      conditions: 'dry: as delivered, zinc plated | oil: a drop of engine oil on thread and seat',
      same: 'new bolts and nuts of one box | the same hardened washer',
      wrench: 'W-03',
      size: 'M12',
      class: '8.8',
      seat: 'flat 18 mm x 13 mm',
    }),
    read('dry', 32.4, 0.07),
    read('oil', 43.1, 0.045),
    at(5, 'run-finish', { run: 'B-01', date, note: 'sheets for dry bolts are not for oiled ones' }),
  ]
}

const PASTE_READ = 6
const pasteOnM10 = (draw: Draw, ago: Ago): TimedEntry[] => {
  const date = ago(2.5)
  const read = (condition: string, clamp: number): TimedEntry =>
    at(2.5, 'run-reading', {
      run: 'B-02',
      condition,
      date,
      torque: alike(PASTE_READ, 40, 'N·m'),
      'clamp-force': draw(PASTE_READ, clamp, 0.04, 'kN'),
    })
  return [
    at(2.5, 'run', {
      tag: 'B-02',
      date,
      asked: 'Is wax or paste any different from oil on an M10 at 40 N·m?',
      conditions: 'oil | wax: dry film, as delivered | paste: copper paste on thread and seat',
      same: 'bolts of one box | the same washer | one hand',
      wrench: 'W-02',
      size: 'M10',
      seat: 'flat 16 mm x 11 mm',
      margin: '10 %',
    }),
    read('oil', 26.2),
    read('wax', 26.9),
    read('paste', 31.6),
    at(2.4, 'run-finish', { run: 'B-02', date: ago(2.4), note: 'wax as oil; paste is another sheet' }),
  ]
}

const WOUND_READ = 6
const woundUp = (draw: Draw, ago: Ago): TimedEntry[] => {
  const read = (condition: string, months: number, n: number, middle: number): TimedEntry =>
    at(months, 'run-reading', {
      run: 'B-03',
      condition,
      date: ago(months),
      'wrench-reading': alike(n, 100, 'N·m'),
      torque: draw(n, middle, 0.006, 'N·m'),
    })
  return [
    at(0.9, 'run', {
      tag: 'B-03',
      date: ago(0.9),
      asked: 'Does it matter to a click wrench that it is left wound up?',
      conditions: 'wound down: a week at its lowest setting first | wound up: a week at 160 N·m first',
      same: 'set to 100 N·m | five clicks before the first reading | T-1',
      wrench: 'W-11',
      again: '3 months',
      note: 'left at 160 N·m from here on; again after three months wound up',
    }),
    read('wound down', 0.9, WOUND_READ, 100.4),
    read('wound up', 0.6, WOUND_READ, 98.4),
  ]
}

/** In the order in which they happened; `ago` gives the day so many months before today. */
export const benchRuns = (ago: Ago): readonly TimedEntry[] => {
  const chance = createChance(12_080)
  const draw: Draw = (n, middle, spread, unit) =>
    `${Array.from({ length: n }, () => round(middle * (1 + spread * chance()))).join('; ')} ${unit}`
  return [...oilOnM12(draw, ago), ...pasteOnM10(draw, ago), ...woundUp(draw, ago)]
}
