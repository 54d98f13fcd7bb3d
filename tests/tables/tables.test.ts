// The published tables, audited as lists: unique, complete against each other, every row with its standing, orders that must hold.
import { describe, expect, it } from 'vitest'
import { inchThread, metricThread } from '../../src/mechanics/thread-friction.ts'
import type { Citation } from '../../src/tables/citation.ts'
import { conditions } from '../../src/tables/conditions.ts'
import { frictionClassTable, frictionTable } from '../../src/tables/friction.ts'
import { findHead, hexagonHeads, inchHexagonHeads, socketHeads } from '../../src/tables/heads.ts'
import { findHole, inchHoles, metricHoles } from '../../src/tables/holes.ts'
import { nutFactorSources } from '../../src/tables/nut-factors.ts'
import { inchNuts, metricNuts } from '../../src/tables/nuts.ts'
import { classNames, classTable, findClass } from '../../src/tables/property-classes.ts'
import { scatterTable } from '../../src/tables/scatter.ts'
import { driveTable, squareDrives, weakestDrive } from '../../src/tables/square-drives.ts'
import { findStructuralTurn, structuralTurns } from '../../src/tables/structural-turns.ts'
import { findThread, threadTable } from '../../src/tables/threads.ts'
import { wheelLubrication, wheelsAgain } from '../../src/tables/wheels.ts'

const STANDINGS = ['published', 'common practice', 'from memory']

const cited: Readonly<Record<string, readonly Citation[]>> = {
  threads: threadTable.map(({ from }) => from),
  'hexagon heads': hexagonHeads.map(({ from }) => from),
  'inch heads': inchHexagonHeads.map(({ from }) => from),
  'socket heads': socketHeads.map(({ from }) => from),
  holes: metricHoles.map(({ from }) => from),
  'inch holes': inchHoles.map(({ from }) => from),
  nuts: [...metricNuts, ...inchNuts].map(({ from }) => from),
  classes: classTable.map(({ source }) => source),
  friction: Object.values(frictionTable).flatMap((rows) => rows.map(({ from }) => from)),
  'friction classes': Object.values(frictionClassTable).map(({ from }) => from),
  'nut factors': Object.values(nutFactorSources).flatMap((rows) => rows.map(({ from }) => from)),
  scatter: scatterTable.map(({ from }) => from),
  'structural turns': structuralTurns.flatMap(({ from, slopedFrom }) => [from, slopedFrom]),
  drives: Object.values(driveTable).map(({ from }) => from),
  wheels: [...wheelsAgain, ...wheelLubrication].map(({ from }) => from),
}

describe('every table', () => {
  for (const [name, citations] of Object.entries(cited)) {
    it(`says on each row of ${name} where it is from and how far that carries`, () => {
      expect(citations.length).toBeGreaterThan(0)
      for (const { title, where, standing } of citations) {
        expect(title).not.toBe('')
        expect(where).not.toBe('')
        expect(STANDINGS).toContain(standing)
      }
    })
  }
})

describe('threads', () => {
  it('are each there once, M3 to M48 and #4 to 1 1/2', () => {
    expect(new Set(threadTable.map(({ name }) => name)).size).toBe(threadTable.length)
    expect(threadTable[0]?.name).toBe('M3x0.5')
    expect(threadTable.filter(({ series }) => series === 'coarse').at(-1)?.name).toBe('M48x5')
    expect(threadTable.at(-1)?.name).toBe('1-1/2-12')
  })

  it('are found by diameter and pitch; without a pitch the coarse one, and none that is not made', () => {
    expect(findThread('metric', 0.012)?.name).toBe('M12x1.75')
    expect(findThread('metric', 0.012, 0.0015)?.name).toBe('M12x1.5')
    expect(findThread('inch', 0.375 * 0.0254)?.name).toBe('3/8-16')
    expect(findThread('inch', 0.19 * 0.0254, 0.0254 / 32)?.name).toBe('#10-32')
    expect(findThread('metric', 0.012, 0.002)).toBeUndefined()
    expect(findThread('metric', 0.0127)).toBeUndefined()
  })

  it('of one diameter have a larger stress area the finer they are', () => {
    for (const row of threadTable) {
      const coarse = findThread(row.system, row.d)
      const area = ({ d, P }: { d: number; P: number }) =>
        (row.system === 'metric' ? metricThread : inchThread)(d, P).As
      if (coarse && coarse !== row) expect(area(row), row.name).toBeGreaterThan(area(coarse))
    }
  })

  it('each have a head, a hole and a nut of their diameter where the standards have one', () => {
    for (const { system, d, series, name } of threadTable) {
      if (series === 'fine' || series === 'UNF') continue
      if (system === 'metric') {
        expect(findHead(hexagonHeads, d), name).toBeDefined()
        expect(findHole(metricHoles, d), name).toBeDefined()
      } else if (d >= 0.25 * 0.0254) expect(findHead(inchHexagonHeads, d), name).toBeDefined()
    }
  })
})

describe('heads and holes', () => {
  it('grow with the size, and every bearing face reaches beyond its coarse hole up to the head', () => {
    for (const table of [hexagonHeads, socketHeads, inchHexagonHeads]) {
      const sizes = table.map(({ d }) => d)
      expect(sizes).toEqual([...sizes].sort((one, other) => one - other))
      for (const [index, row] of table.entries()) {
        expect(row.dw).toBeLessThan(row.s)
        if (index > 0) expect(row.dw).toBeGreaterThan(table[index - 1]?.dw as number)
      }
    }
    for (const { d, hole } of metricHoles) {
      expect(hole.fine).toBeGreaterThan(d)
      expect(hole.medium).toBeGreaterThan(hole.fine)
      expect(hole.coarse).toBeGreaterThan(hole.medium)
      expect(findHead(hexagonHeads, d)?.dw as number).toBeGreaterThan(hole.coarse)
    }
  })
})

describe('property classes', () => {
  it('do not overlap in size within one name, and keep proof below yield below tensile', () => {
    for (const name of classNames) {
      const rows = classTable.filter((row) => row.name === name)
      for (const [index, row] of rows.entries()) {
        expect(row.to).toBeGreaterThan(row.from)
        if (index > 0) expect(row.from).toBeGreaterThan(rows[index - 1]?.to as number)
        if (row.proof !== undefined) expect(row.proof).toBeLessThan(row.yield)
        expect(row.yield).toBeLessThan(row.tensile)
      }
    }
  })

  it('stop at the sizes that their standard stops at', () => {
    expect(findClass('9.8', 0.016)).toBeDefined()
    expect(findClass('9.8', 0.018)).toBeUndefined()
    expect(findClass('SAE 5', 0.0254)?.proof).toBeCloseTo(85 * 6_894_757.293168361, 0)
    expect(findClass('SAE 5', 1.125 * 0.0254)?.proof).toBeCloseTo(74 * 6_894_757.293168361, 0)
    expect(findClass('8.8', 0.042)).toBeUndefined()
    expect(findClass('11.9', 0.01)).toBeUndefined()
  })

  it('give stainless no proof stress', () => {
    for (const row of classTable) expect('proof' in row, row.name).toBe(row.standard !== 'ISO 3506-1')
  })
})

describe('friction', () => {
  it('is there for every condition, low below high, and slippery ones are not above dry', () => {
    expect(Object.keys(frictionTable)).toEqual([...conditions])
    for (const rows of Object.values(frictionTable)) {
      for (const { low, high } of rows) {
        expect(low).toBeGreaterThan(0)
        if (high !== undefined) expect(high).toBeGreaterThan(low)
      }
    }
    for (const slippery of ['moly', 'wax', 'anti-seize', 'greased'] as const) {
      expect(frictionTable[slippery][0].low).toBeLessThanOrEqual(frictionTable.dry[0].low)
      expect(frictionTable[slippery][0].high as number).toBeLessThan(frictionTable.dry[0].high as number)
    }
  })

  it('has an upper end on the first row of every condition, so that a safe torque can be given', () => {
    for (const [condition, rows] of Object.entries(frictionTable)) expect(rows[0].high, condition).toBeDefined()
  })
})

describe('small tables', () => {
  it('of drives rise with the size, and the weakest of a stack is named', () => {
    const ratings = squareDrives.map((drive) => driveTable[drive].rating)
    expect(ratings).toEqual([...ratings].sort((one, other) => one - other))
    expect(weakestDrive('1/2', '3/4', '3/8', '1/2').drive).toBe('3/8')
    expect(weakestDrive('1/2').drive).toBe('1/2')
  })

  it('of structural turns join without gap or overlap and end at twelve diameters', () => {
    expect([4, 4.1, 8, 8.1, 12].map((ratio) => findStructuralTurn(ratio)?.square)).toEqual([120, 180, 180, 240, 240])
    expect(findStructuralTurn(12.1)).toBeUndefined()
  })

  it('name each method, state, source and system once', () => {
    const once = (names: readonly string[]) => expect(new Set(names).size).toBe(names.length)
    once(scatterTable.map(({ list, method }) => `${list} ${method}`))
    for (const rows of Object.values(nutFactorSources)) once(rows.map(({ state }) => state))
    once(wheelsAgain.map(({ source }) => source))
    once(wheelLubrication.map(({ system }) => system))
  })
})
