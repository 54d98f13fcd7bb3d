// Pairs, straight lines and analysis of variance against data that others published with their results.
import { describe, expect, it } from 'vitest'
import { changeAlong, followingOf } from '../../src/mechanics/line-verdicts.ts'
import { oneWay } from '../../src/mechanics/one-way.ts'
import { pairedChange } from '../../src/mechanics/pairs.ts'
import { tPoint } from '../../src/mechanics/student.ts'

const usual = { m: 0.04, confidence: 0.95 }
const close = (value: number, certified: number, digits: number) =>
  expect(Math.abs(value / certified - 1)).toBeLessThan(10 ** -digits)

describe('analysis of variance (NIST StRD)', () => {
  // SiRstv, resistivity of silicon wafers by five instruments; data and certified values from memory.
  const wafers = [
    [196.3052, 196.124, 196.189, 196.2569, 196.3403],
    [196.3042, 196.3825, 196.1669, 196.3257, 196.0422],
    [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
    [196.2795, 196.1748, 196.1494, 196.1485, 195.9885],
    [196.2119, 196.1051, 196.185, 196.0052, 196.209],
  ]

  it('SiRstv: F 1.18046237440255, within 2.16636560000000E-01, s 1.04076068334656E-01', () => {
    const { between, within, F, rSquared, s } = oneWay(wafers)
    expect([between.df, within.df]).toEqual([4, 20])
    close(between.ss, 5.11462616e-2, 8)
    close(within.ss, 2.1663656e-1, 9)
    close(F, 1.18046237440255, 9)
    close(rSquared, 1.90999039051129e-1, 9)
    close(s, 1.04076068334656e-1, 10)
  })
})

describe('a straight line (NIST StRD)', () => {
  // Norris, calibration of ozone monitors: x the customer's, y NIST's; as reprinted in the tests of open statistics libraries.
  const x = [
    0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777, 558.2, 0.4, 0.6, 775.5, 666.9, 338, 447.5, 11.6,
    556, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999, 779, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5,
  ]
  const y = [
    0.1, 338.8, 118.1, 888, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8,
    557.7, 228.3, 998, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2,
  ]
  const dots = x.map((at, index) => ({ x: at, y: y[index] as number }))

  it('Norris: slope 1.00211681802045 ± 0.429796848199937E-03, offset -0.262323073774029 ± 0.232818234301152', () => {
    const found = followingOf(dots, usual)
    if (!found) throw new Error('no line')
    const t = tPoint(0.975, 34)
    close(found.line.slope, 1.00211681802045, 12)
    close((found.gain.high - found.gain.value) / t, 0.429796848199937e-3, 9)
    close(found.offset.value, -0.262323073774029, 9)
    close((found.offset.high - found.offset.value) / t, 0.232818234301152, 9)
    expect(found.verdict).toBe('seen-too-small-to-matter')
  })
})

describe('pairs', () => {
  // Student 1908, hours of sleep gained by ten patients under two drugs; as reprinted with every statistics package.
  const first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2]
  const second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4]
  const pairs = first.map((before, index) => ({ before, after: second[index] as number }))

  it('Student’s sleep data: 1.58, t 4.0621, 0.7001142 to 2.4598858 with 9 degrees of freedom (published)', () => {
    const { absolute, s, n } = pairedChange(pairs, usual)
    expect(absolute.value).toBeCloseTo(1.58, 12)
    expect(absolute.low).toBeCloseTo(0.7001142, 6)
    expect(absolute.high).toBeCloseTo(2.4598858, 6)
    expect((absolute.value / s) * Math.sqrt(n)).toBeCloseTo(4.0621, 4)
  })

  it('see what two separate sets cannot, where the pieces differ more than the change', () => {
    const torn = [80, 100, 120, 140].map((before) => ({ before, after: before * 1.1 }))
    const { verdict, relative } = pairedChange(torn, usual)
    expect(verdict).toBe('a-difference-that-matters')
    expect(relative.value).toBeCloseTo(0.1, 12)
    expect(
      pairedChange(
        [
          { before: 100, after: 100 },
          { before: 90, after: 90 },
        ],
        usual,
      ).verdict,
    ).toBe('no-difference-that-matters')
  })

  it('keep the floor of a coarse gauge', () => {
    const pair = { before: 100, after: 106 }
    expect(pairedChange([pair, pair], usual).verdict).toBe('a-difference-that-matters')
    expect(pairedChange([pair, pair], usual, 5).verdict).toBe('not-decided')
  })
})

describe('a series over months', () => {
  it('tells a fall of 6 % with its interval, and that it matters or not', () => {
    const told = changeAlong(
      [100, 98.1, 96, 93.9].map((y, x) => ({ x, y })),
      usual,
    )
    expect(told?.relative.value).toBeCloseTo(-0.0611, 3)
    expect(told?.relative.low as number).toBeLessThan(-0.0611)
    expect(told?.relative.high as number).toBeGreaterThan(-0.0611)
    expect(told?.verdict).toBe('a-difference-that-matters')
    expect(
      changeAlong(
        [100, 104, 97, 101].map((y, x) => ({ x, y })),
        usual,
      )?.verdict,
    ).toBe('not-decided')
  })

  it('a line without scatter is what it is', () => {
    const told = changeAlong(
      [100, 99, 98, 97, 96.5 - 0.5].map((y, x) => ({ x, y })),
      { ...usual, m: 0.1 },
    )
    expect(told?.relative.low).toBeCloseTo(-0.04, 9)
    expect(told?.relative.high).toBeCloseTo(-0.04, 9)
    expect(told?.verdict).toBe('seen-too-small-to-matter')
  })

  it('two points are no line', () => {
    expect(
      changeAlong(
        [100, 90].map((y, x) => ({ x, y })),
        usual,
      ),
    ).toBeUndefined()
  })
})
