// Clamp force and torque of metric fine threads, 8.8, 10.9 and 12.9 at 90 % of yield, against a whole printed table.
// Source: supplier catalogue reprint of the VDI 2230:2001 guideline tables, fine threads, catalogue p. 685 (published).
import { describe, expect, it } from 'vitest'
import { flatRadius } from '../../src/mechanics/seat.ts'
import { clampAtYieldShare } from '../../src/mechanics/strength.ts'
import { metricThread, threadLever } from '../../src/mechanics/thread-friction.ts'
import { tighteningLever } from '../../src/mechanics/torque-split.ts'
import { findHead, hexagonHeads } from '../../src/tables/heads.ts'
import { findHole, metricHoles } from '../../src/tables/holes.ts'
import { findClass } from '../../src/tables/property-classes.ts'
import { findThread } from '../../src/tables/threads.ts'

type Three = readonly [string, string, string]
// d, P [mm], μ in thread and seat, clamp forces [kN], torques [N·m], as printed.
const table: ReadonlyArray<readonly [number, number, number, Three, Three]> = [
  [8, 1, 0.1, ['20.7', '30.4', '35.6'], ['22.8', '33.5', '39.2']],
  [8, 1, 0.12, ['20.2', '29.7', '34.7'], ['26.1', '38.3', '44.9']],
  [8, 1, 0.14, ['19.7', '28.9', '33.9'], ['29.2', '42.8', '50.1']],
  [10, 1.25, 0.1, ['32.4', '47.5', '55.6'], ['44', '65', '76']],
  [10, 1.25, 0.12, ['31.6', '46.4', '54.3'], ['51', '75', '87']],
  [10, 1.25, 0.14, ['30.8', '45.2', '52.9'], ['57', '83', '98']],
  [12, 1.25, 0.1, ['49.1', '72.1', '84.4'], ['79', '116', '135']],
  [12, 1.25, 0.12, ['48.0', '70.5', '82.5'], ['90', '133', '155']],
  [12, 1.25, 0.14, ['46.8', '68.7', '80.4'], ['101', '149', '174']],
  [14, 1.5, 0.1, ['66.4', '97.5', '114.1'], ['124', '182', '213']],
  [14, 1.5, 0.12, ['64.8', '95.2', '111.4'], ['142', '209', '244']],
  [14, 1.5, 0.14, ['63.2', '92.9', '108.7'], ['159', '234', '274']],
  [16, 1.5, 0.1, ['89.6', '131.6', '154.0'], ['189', '278', '325']],
  [16, 1.5, 0.12, ['87.6', '128.7', '150.6'], ['218', '320', '374']],
  [16, 1.5, 0.14, ['85.5', '125.5', '146.9'], ['244', '359', '420']],
  [18, 1.5, 0.1, ['120', '171', '200'], ['283', '403', '472']],
  [18, 1.5, 0.12, ['117', '167', '196'], ['327', '465', '544']],
  [18, 1.5, 0.14, ['115', '163', '191'], ['368', '523', '613']],
  [20, 1.5, 0.1, ['151', '215', '252'], ['392', '558', '653']],
  [20, 1.5, 0.12, ['148', '211', '246'], ['454', '646', '756']],
  [20, 1.5, 0.14, ['144', '206', '241'], ['511', '728', '852']],
  [22, 1.5, 0.1, ['186', '264', '309'], ['529', '754', '882']],
  [22, 1.5, 0.12, ['182', '259', '303'], ['613', '873', '1022']],
  [22, 1.5, 0.14, ['178', '253', '296'], ['692', '985', '1153']],
  [24, 2, 0.1, ['213', '304', '355'], ['666', '949', '1110']],
  [24, 2, 0.12, ['209', '297', '348'], ['769', '1095', '1282']],
  [24, 2, 0.14, ['204', '290', '339'], ['865', '1232', '1442']],
]
const classes = ['8.8', '10.9', '12.9'] as const

/** Cells past half of their last digit: all by less than a tenth of it. */
const gaps: ReadonlySet<string> = new Set([
  'M8x1 0.12 12.9 kN',
  'M14x1.5 0.12 12.9 kN',
  'M20x1.5 0.12 8.8 N·m',
  'M24x2 0.12 12.9 N·m',
])

const misses = (printed: string, value: number): boolean => {
  const digit = printed.includes('.') ? 0.1 : 1
  return Math.abs(value - Number(printed)) > digit / 2 + 1e-9
}

const cells = table.flatMap(([d, P, mu, forces, torques]) =>
  classes.flatMap((name, index) => {
    const row = findThread('metric', d / 1000, P / 1000)
    const head = findHead(hexagonHeads, d / 1000)
    const hole = findHole(metricHoles, d / 1000)
    const strength = findClass(name, d / 1000)
    if (!row || !head || !hole || !strength) throw new Error(`M${d} ${name} is in no table`)
    const thread = metricThread(row.d, row.P, 'micrometre')
    const lever = threadLever(thread, mu, 'wedge')
    const F = clampAtYieldShare(0.9, strength.yield, thread, lever, 'plastic')
    const T = F * tighteningLever(thread, { thread: mu, seat: mu }, flatRadius(head.dw, hole.hole.medium), 'wedge')
    return [
      { name: `${row.name} ${mu} ${name} kN`, printed: forces[index] as string, value: F / 1000 },
      { name: `${row.name} ${mu} ${name} N·m`, printed: torques[index] as string, value: T },
    ]
  }),
)

describe('the printed table of fine threads (published)', () => {
  it('has 27 rows of six cells', () => {
    expect(table).toHaveLength(27)
    expect(cells).toHaveLength(162)
  })

  it('comes out of sizes, classes, heads and holes of our own tables, but for four cells', () => {
    const missed = cells.filter(({ printed, value }) => misses(printed, value)).map(({ name }) => name)
    expect(new Set(missed)).toEqual(gaps)
  })

  it('is missed in those four by less than a tenth of the last digit', () => {
    for (const { name, printed, value } of cells) {
      const digit = printed.includes('.') ? 0.1 : 1
      expect(Math.abs(value - Number(printed)), name).toBeLessThan(0.6 * digit)
    }
  })
})
