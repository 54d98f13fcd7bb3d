// A root between two places: against roots that are known, and as a property of functions made with one.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { rootBetween } from '../../src/mechanics/root.ts'

const known: ReadonlyArray<[string, (x: number) => number, number, number, number]> = [
  ['a square', (x) => x ** 2 - 2, 0, 2, Math.SQRT2],
  ['falling', (x) => 2 - x ** 2, 0, 2, Math.SQRT2],
  ['the ends the other way round', (x) => x ** 2 - 2, 2, 0, Math.SQRT2],
  ['Dottie’s number', (x) => Math.cos(x) - x, 0, 1, 0.7390851332151607], // OEIS A003957
  ['a root at an end', (x) => x * (x + 1), 0, 5, 0],
  ['flat about its root', (x) => (x - 1) ** 9, 0, 3, 1],
  ['all but a step', (x) => Math.tanh(1e6 * (x - 0.3)), 0, 1, 0.3],
]

test.each(known)('finds the root: %s', (_, f, low, high, root) => {
  expect(rootBetween(f, low, high)).toBeCloseTo(root, 2)
  expect(Math.abs(f(rootBetween(f, low, high)))).toBeLessThan(1e-9)
})

test('finds the root of any cubic that rises, in few steps', () => {
  const size = fc.double({ min: 0.01, max: 100, noNaN: true })
  const place = fc.double({ min: -50, max: 50, noNaN: true })
  fc.assert(
    fc.property(size, size, place, (cubic, linear, root) => {
      let calls = 0
      const f = (x: number): number => {
        calls += 1
        return cubic * (x - root) ** 3 + linear * (x - root)
      }
      expect(Math.abs(rootBetween(f, -60, 70) - root)).toBeLessThan(1e-12 * 60)
      expect(calls).toBeLessThan(60)
    }),
  )
})
