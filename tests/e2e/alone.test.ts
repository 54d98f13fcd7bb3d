// The built program with nothing: no token, no network, no database. It opens HTTP, says so in one line, and ends with grace.
import { execFile } from 'node:child_process'
import { mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Service, startService } from '../support/service.ts'

const run = promisify(execFile)
const root = join(import.meta.dirname, '../..')

let service: Service
beforeAll(async () => {
  service = await startService({})
})
afterAll(() => service.kill())

describe('the program alone', () => {
  it('says in one line which doors are open, and why one is not', () => {
    expect(service.line).toMatch(
      /^Armlength \d+\.\d+\.\d+: HTTP open at http:\/\/127\.0\.0\.1:\d+; chat off \(DISCORD_TOKEN is not set\)$/,
    )
    expect(service.out().trim().split('\n')).toHaveLength(1)
    expect(service.log()).toBe('')
  })

  it('answers over a real socket', async () => {
    const reply = await fetch(
      `${service.url}/v1/questions/adapter-setting?${new URLSearchParams({ torque: '100 lb-ft', lever: '14 in', adapter: '2 in' })}`,
    )
    expect(reply.status).toBe(200)
    expect(((await reply.json()) as { results: { setting: { text: string } } }).results.setting.text).toBe(
      '87.5 lbf·ft',
    )
  })

  it('is ready and counts what it answers, without a log line for it', async () => {
    expect(await (await fetch(`${service.url}/readyz`)).json()).toEqual({ status: 'ok', reasons: [] })
    const metrics = await (await fetch(`${service.url}/metrics`)).text()
    expect(metrics).toContain('armlength_answers_total{question="adapter-setting",status="answered",door="http"} 1')
    expect(metrics).toMatch(
      /armlength_http_request_seconds_count\{route="\/v1\/questions\/adapter-setting",status="200"\} 1/,
    )
    expect(service.log()).toBe('')
  })

  it('takes many askers at once', async () => {
    const asks = Array.from({ length: 200 }, (_, n) =>
      fetch(`${service.url}/v1/questions/pull?torque=${n + 1}+N%C2%B7m&hand=1+m`),
    )
    const replies = await Promise.all(asks)
    expect(replies.map(({ status }) => status)).toEqual(Array(200).fill(200))
  })

  it('the terminal gives the same document', async () => {
    const { stdout } = await run(
      process.execPath,
      ['dist/src/main.js', 'ask', 'pull', 'torque=100 N·m', 'hand=1 m', '--json'],
      { cwd: root },
    )
    const reply = await fetch(`${service.url}/v1/questions/pull?torque=100+N%C2%B7m&hand=1+m`)
    expect(JSON.parse(stdout)).toEqual(await reply.json())
  })

  it.each([
    [['ask', 'pull', 'torque=100'], {}, 2],
    [['ask', 'pull', 'torque=100 N·m'], {}, 3],
    [['ask'], {}, 64],
    [['dance'], {}, 1],
    [[], { PORT: 'x', UNITS: 'y' }, 1],
    [['register'], {}, 1],
  ])('%j with %j exits with %i', async (argv, env, code) => {
    const failure = await run(process.execPath, ['dist/src/main.js', ...argv], {
      cwd: root,
      env: { PATH: process.env.PATH, ...env },
    }).then(
      () => ({ code: 0, stderr: '' }),
      (error: { code: number; stderr: string }) => error,
    )
    expect(failure.code).toBe(code)
    for (const name of Object.keys(env)) expect(failure.stderr).toContain(`${name} is not usable`)
  })

  it('a port that is taken is said, and nothing is left running', async () => {
    const port = new URL(service.url).port
    await expect(startService({ PORT: port })).rejects.toThrow(/EADDRINUSE/)
  })

  it('leaves nothing behind of a picture that it drew', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'pictures-'))
    const drawing = await startService({ TMPDIR: folder })
    const picture = await fetch(
      `${drawing.url}/v1/questions/adapter-setting/figure.png?${new URLSearchParams({ torque: '100 lb-ft', lever: '14 in', adapter: '2 in' })}`,
    )
    expect(picture.status).toBe(200)
    await drawing.stop()
    expect(readdirSync(folder)).toEqual([])
    rmSync(folder, { recursive: true })
  })

  it('ends with grace and 0 on SIGTERM', async () => {
    expect(await service.stop()).toBe(0)
  })
})
