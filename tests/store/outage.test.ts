// Which trouble of which database is told as which outage; and what is no outage stays the bug that it is.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { Outage, outageCodes } from '../../src/core/outage.ts'
import { postgresOutage } from '../../src/store/postgres-outage.ts'
import { sqliteOutage } from '../../src/store/sqlite-outage.ts'

const coded = (code: string): Error => Object.assign(new Error('said by the driver'), { code })

describe('trouble of SQLite', () => {
  it.each([
    ['SQLITE_FULL', 'disk-full'],
    ['ENOSPC', 'disk-full'],
    ['SQLITE_BUSY', 'locked'],
    ['SQLITE_BUSY_SNAPSHOT', 'locked'],
    ['SQLITE_READONLY_DIRECTORY', 'read-only'],
    ['EACCES', 'read-only'],
    ['EROFS', 'read-only'],
    ['SQLITE_CANTOPEN', 'unreachable'],
    ['SQLITE_CORRUPT_INDEX', 'broken'],
    ['SQLITE_NOTADB', 'broken'],
    ['SQLITE_IOERR_FSYNC', 'broken'],
  ])('%s is %s', (code, told) => {
    const cause = coded(code)
    expect(sqliteOutage(cause)).toMatchObject({ name: 'Outage', code: told, cause })
  })

  it.each(['SQLITE_CONSTRAINT_CHECK', 'SQLITE_ERROR', 'ERR_INVALID_ARG_TYPE'])('%s is a bug', (code) => {
    const bug = coded(code)
    expect(sqliteOutage(bug)).toBe(bug)
  })
})

describe('trouble of PostgreSQL', () => {
  it.each([
    ['53100', 'disk-full'],
    ['53300', 'unreachable'],
    ['55P03', 'locked'],
    ['57014', 'locked'],
    ['40P01', 'locked'],
    ['25006', 'read-only'],
    ['28P01', 'refused'],
    ['3D000', 'refused'],
    ['42501', 'refused'],
    ['57P01', 'unreachable'],
    ['57P03', 'unreachable'],
    ['08006', 'unreachable'],
    ['ECONNREFUSED', 'unreachable'],
    ['ENOTFOUND', 'unreachable'],
    ['XX001', 'broken'],
    ['58030', 'broken'],
  ])('%s is %s', (code, told) => {
    const cause = coded(code)
    expect(postgresOutage(cause)).toMatchObject({ name: 'Outage', code: told, cause })
  })

  it.each([
    ['Query read timeout', 'unreachable'],
    ['timeout exceeded when trying to connect', 'unreachable'],
    ['Connection terminated unexpectedly', 'unreachable'],
    ['Cannot use a pool after calling end on the pool', 'closed'],
    ['SASL: SCRAM-SERVER-FIRST-MESSAGE: client password must be a string', 'refused'],
  ])('“%s” is %s', (message, told) => {
    expect(postgresOutage(new Error(message))).toMatchObject({ code: told })
  })

  it('of a host with several addresses is told by the first', () => {
    const both = new AggregateError([coded('ECONNREFUSED'), coded('ENETUNREACH')])
    expect(postgresOutage(both)).toMatchObject({ code: 'unreachable', message: 'said by the driver (ECONNREFUSED)' })
  })

  it.each(['23505', '42601', '42P01', '22P02'])('%s is a bug', (code) => {
    const bug = coded(code)
    expect(postgresOutage(bug)).toBe(bug)
  })
})

it('an outage is told once: it is not wrapped again', () => {
  const outage = new Outage('too-new', 'a newer one')
  expect(sqliteOutage(outage)).toBe(outage)
  expect(postgresOutage(outage)).toBe(outage)
  expect(outage.cause).toBeUndefined()
})

it('every code of an outage is told by some store, and each is there once', () => {
  const folder = join(import.meta.dirname, '../../src/store')
  const source = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => readFileSync(join(folder, name), 'utf8'))
    .join('\n')
  expect(outageCodes.filter((code) => !source.includes(`'${code}'`))).toEqual([])
  expect(new Set(outageCodes).size).toBe(outageCodes.length)
})
