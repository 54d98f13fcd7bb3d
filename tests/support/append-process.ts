// Starts appender.ts and hears what it acknowledges.
import { spawn } from 'node:child_process'
import { join } from 'node:path'

export interface AppendProcess {
  /** The ids that it acknowledged so far. */
  readonly acknowledged: () => readonly string[]
  /** Resolves once so many were acknowledged. */
  readonly reached: (count: number) => Promise<void>
  readonly kill: () => void
  readonly ended: Promise<number | null>
  readonly complaints: () => string
}

export const startAppending = (address: string, tag: string, prefix: string, count: number): AppendProcess => {
  const args = ['--import', 'tsx', join(import.meta.dirname, 'appender.ts'), address, tag, prefix, String(count)]
  const child = spawn(process.execPath, args, { cwd: join(import.meta.dirname, '../..') })
  let out = ''
  let complaints = ''
  const waiting: Array<() => void> = []
  const wake = (): void => {
    for (const check of waiting) check()
  }
  child.stdout.on('data', (chunk: Buffer) => {
    out += chunk.toString()
    wake()
  })
  child.stderr.on('data', (chunk: Buffer) => {
    complaints += chunk.toString()
  })
  // A line that was cut by the kill was not heard.
  const acknowledged = () => out.split('\n').slice(1, -1)
  const ended = new Promise<number | null>((resolve) => {
    child.once('close', (code) => {
      resolve(code)
      wake()
    })
  })
  return {
    acknowledged,
    reached: (wanted) =>
      new Promise((resolve) => {
        const check = (): void => {
          if (acknowledged().length >= wanted || child.exitCode !== null) resolve()
        }
        waiting.push(check)
        check()
      }),
    kill: () => child.kill('SIGKILL'),
    ended,
    complaints: () => complaints,
  }
}
