// What a run says as a whole: which readings lead, what was held the same, the step of the gauge, what it can see.
import { describe, expect, it } from 'vitest'
import { findingsOfRun, TAKEN_SPREAD } from '../../src/bench/findings.ts'
import { resolutionOf } from '../../src/bench/resolution.ts'
import { quantity } from '../../src/core/quantity.ts'
import { type UnitSymbol, units } from '../../src/core/unit.ts'
import { measured } from '../../src/register/parts.ts'
import { testShop } from '../support/doors.ts'
import { addReadings, beginOil, dry, oiled } from '../support/oil-run.ts'

const found = async (fill: (shop: ReturnType<typeof testShop>) => Promise<void>, planned?: number) => {
  const shop = testShop()
  await fill(shop)
  const run = await shop.runs.one('B-01')
  if (!run) throw new Error('no run')
  return findingsOfRun(run.folder, planned)
}

describe('the step of readings', () => {
  it.each<[readonly number[], UnitSymbol, number]>([
    [[80, 80], 'N·m', 1],
    [[33.1, 34], 'kN', 100],
    [[99.25, 100], 'N·m', 0.01],
    [[59], 'lbf·ft', 1.3558179483314003],
    [[], 'N·m', 0],
  ])('%j %s', (values, unit, step) => {
    expect(resolutionOf(values.map((value) => measured(quantity(value, units[unit]))))).toBeCloseTo(step, 10)
  })
})

describe('what a run says', () => {
  it('nothing before the first reading, but what five of each would see at a spread that is taken', async () => {
    const { subjects, outlook, readings } = await found((shop) => beginOil(shop))
    expect([subjects, readings]).toEqual([[], 0])
    expect(outlook).toMatchObject({ n: 5, spread: TAKEN_SPREAD, isFound: false })
    expect(outlook?.smallestSeen).toBeGreaterThan(0.05)
  })

  it('what is planned is foreseen: more see less', async () => {
    const five = await found((shop) => beginOil(shop), 5)
    const twenty = await found((shop) => beginOil(shop), 20)
    expect(twenty.outlook?.n).toBe(20)
    expect(twenty.outlook?.smallestSeen).toBeLessThan((five.outlook?.smallestSeen as number) / 1.8)
  })

  it('of torques all alike nothing is an outcome: the clamp force leads, K follows', async () => {
    const { subjects } = await found(async (shop) => {
      await beginOil(shop)
      await addReadings(shop, 'A', dry)
      await addReadings(shop, 'B', oiled)
    })
    expect(subjects.map(({ subject }) => subject)).toEqual(['clamp', 'K'])
    expect(subjects[0]?.unit).toBe('kN')
  })

  it('where torque and clamp force both moved, K leads', async () => {
    const { subjects } = await found(async (shop) => {
      await beginOil(shop)
      await addReadings(shop, 'A', { ...dry, torque: '78; 82; 80; 79; 81 N·m' })
      await addReadings(shop, 'B', oiled)
    })
    expect(subjects.map(({ subject }) => subject)).toEqual(['K', 'clamp', 'torque'])
  })

  it('readings all alike have the scatter that their step hides, and no verdict of an endless certainty', async () => {
    const { subjects } = await found(async (shop) => {
      await beginOil(shop)
      await addReadings(shop, 'A', { 'clamp-force': '33; 33 kN' })
      await addReadings(shop, 'B', { 'clamp-force': '34; 34 kN' })
    })
    const judged = subjects[0]?.judged
    const comparison = judged?.told ? judged.value.each[0]?.comparison : undefined
    if (!comparison?.told) throw new Error('not judged')
    // 1 kN/√12 = 0.289 kN each, n = 2 and 2, ν = 2, t = 4.303: ± 1.24 kN about 1 kN.
    expect(comparison.value.absolute.high - comparison.value.absolute.value).toBeCloseTo(1242, 0)
    expect(comparison.value.verdict).toBe('not-decided')
  })

  it('the spread that was found, once two of a condition are there', async () => {
    const { outlook } = await found(async (shop) => {
      await beginOil(shop)
      await addReadings(shop, 'A', dry)
    })
    expect(outlook).toMatchObject({ isFound: true, n: 5 })
    // s of 33.1 34.2 32.7 33.6 33.4 is 0.561, its mean 33.4: 1.7 %.
    expect(outlook?.spread).toBeCloseTo(0.017, 12)
  })
})
