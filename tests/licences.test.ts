// What comes with the program may be used in a shop and given on: every package has a licence of this list, and none is without one.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'

interface Locked {
  readonly license?: string
  readonly dev?: boolean
  readonly resolved?: string
  readonly integrity?: string
  readonly link?: boolean
}

const lock = JSON.parse(readFileSync(join(import.meta.dirname, '../package-lock.json'), 'utf8')) as {
  readonly packages: Readonly<Record<string, Locked>>
}
const shipped = Object.entries(lock.packages).filter(([path, { dev }]) => path !== '' && !dev)

const allowed = ['MIT', 'ISC', '0BSD', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', 'OFL-1.1']

const isFine = (licence: string): boolean =>
  licence
    .replace(/[()]/g, '')
    .split(' OR ')
    .some((choice) => choice.split(' AND ').every((one) => allowed.includes(one)))

it('every package that is shipped has a licence that lets it be', () => {
  expect(shipped.length).toBeGreaterThan(100)
  const others = shipped.filter(([, { license }]) => license === undefined || !isFine(license))
  expect(others.map(([path, { license }]) => `${path}: ${license}`)).toEqual([])
})

it.each([
  ['GPL-3.0', false],
  ['MIT AND GPL-3.0', false],
  ['(GPL-3.0 OR MIT)', true],
  ['LGPL-3.0-or-later', false],
])('%s is %s', (licence, fine) => {
  expect(isFine(licence)).toBe(fine)
})

it('every package is pinned to its content', () => {
  const loose = shipped.filter(([, { integrity, link }]) => integrity === undefined && !link)
  expect(loose.map(([path]) => path)).toEqual([])
})
