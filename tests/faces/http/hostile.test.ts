// Bodies and headers that nobody means well with: always an answer, never a broken one, nothing dropped.
import { connect } from 'node:net'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readBody } from '../../../src/faces/http/body.ts'
import { ask } from '../../support/desk.ts'
import { testDesk, testHttp } from '../../support/doors.ts'

const deep = (depth: number): unknown => JSON.parse('['.repeat(depth) + ']'.repeat(depth))

describe('what is nested deeper than the stack', () => {
  it.each([8000, 200_000])('%d deep is refused like any other wrong body', (depth) => {
    expect(ask('pull', deep(depth) as never).faults[0]?.code).toBe('not-allowed')
    expect(ask('pull', { torque: deep(depth) } as never).faults[0]?.code).toBe('not-allowed')
    expect(ask('pull', { other: deep(depth) } as never).faults[0]?.code).toBe('unknown-input')
  })
})

it('a member said twice is kept twice, an empty list too', () => {
  expect(readBody('{"torque":"1 Nm","torque":[]}')).toMatchObject({ torque: ['1 Nm', ''] })
  expect(readBody('{"torque":[],"torque":"1 Nm"}')).toMatchObject({ torque: ['', '1 Nm'] })
  expect(readBody('{"torque":"1 Nm","torque":[["2 Nm"]]}')).toMatchObject({ torque: ['1 Nm', ['2 Nm']] })
})

describe('thousands of wrong values', () => {
  const size = (raw: Record<string, unknown>): number => JSON.stringify(ask('scale-check', raw as never)).length

  it('are told of without an answer that grows with them', () => {
    expect(size({ distance: '1 m', force: Array(7).fill('x;'.repeat(990)) })).toBeLessThan(100_000)
    expect(JSON.stringify(ask('adapter-setting', { adapter: ';'.repeat(1900) })).length).toBeLessThan(20_000)
  })
})

describe('what Node itself cannot read', () => {
  let app: Awaited<ReturnType<typeof testHttp>>
  let port = 0
  beforeAll(async () => {
    app = await testHttp(testDesk())
    await app.listen({ host: '127.0.0.1', port: 0 })
    port = (app.server.address() as { port: number }).port
  })
  afterAll(() => app.close())

  const send = (text: string): Promise<string> =>
    new Promise((resolve, reject) => {
      let got = ''
      const socket = connect(port, '127.0.0.1', () => socket.write(text))
      socket.setTimeout(5000, () => socket.destroy(new Error('not closed')))
      socket.on('data', (bytes) => {
        got += bytes
      })
      socket.on('close', () => resolve(got)).on('error', reject)
    })

  it.each([
    ['no HTTP at all', 'hello\r\n\r\n', 400],
    ['a length that is no number', 'POST /v1/pull HTTP/1.1\r\nhost: a\r\ncontent-length: -1\r\n\r\n', 400],
    ['a header without an end', `GET / HTTP/1.1\r\nhost: a\r\nx: ${'x'.repeat(20_000)}\r\n\r\n`, 431],
  ])('%s is a problem document, and the socket closes', async (_name, text, status) => {
    const told = await send(text)
    const [head = '', body = ''] = told.split('\r\n\r\n')
    expect(head).toMatch(new RegExp(`^HTTP/1.1 ${status} `))
    expect(head).toContain('content-type: application/problem+json')
    expect(JSON.parse(body)).toMatchObject({ status, type: expect.stringContaining('not-readable') })
  })
})
