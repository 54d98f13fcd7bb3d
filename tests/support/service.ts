// The built program as a child process: started with settings, its line awaited, ended with grace.
import { type ChildProcess, spawn } from 'node:child_process'
import { join } from 'node:path'

export interface Service {
  readonly url: string
  readonly pid: number | undefined
  /** The one line it printed once it listened. */
  readonly line: string
  /** What it wrote to its log so far. */
  readonly log: () => string
  readonly out: () => string
  readonly running: () => boolean
  /** Sends SIGTERM; the exit code. */
  readonly stop: () => Promise<number | null>
  readonly kill: () => void
}

export const root = join(import.meta.dirname, '../..')

export const startService = async (
  env: Readonly<Record<string, string>>,
  argv: readonly string[] = [],
  /** Shell words that come before it: limits of the process. */
  before = '',
  /** The tree that holds the built program. */
  tree = root,
): Promise<Service> => {
  const whole = [process.execPath, 'dist/src/main.js', ...argv]
  const [program = '', ...words] = before === '' ? whole : ['sh', '-c', `${before}; exec "$0" "$@"`, ...whole]
  const child: ChildProcess = spawn(program, words, {
    cwd: tree,
    env: { PATH: process.env.PATH ?? '', HOST: '127.0.0.1', PORT: '0', DATABASE_URL: 'memory:', ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let out = ''
  let log = ''
  let code: number | null | undefined
  const ended = new Promise<number | null>((resolve) => {
    child.once('exit', (status) => {
      code = status
      resolve(status)
    })
  })
  child.stderr?.on('data', (chunk: Buffer) => {
    log += chunk.toString()
  })
  const line = await new Promise<string>((resolve, reject) => {
    child.stdout?.on('data', (chunk: Buffer) => {
      out += chunk.toString()
      if (out.includes('\n')) resolve(out.split('\n')[0] as string)
    })
    void ended.then((status) => reject(new Error(`ended with ${status} before it listened: ${log}`)))
  })
  const url = /http:\/\/[\d.:]+/.exec(line)?.[0] ?? ''
  return {
    url,
    pid: child.pid,
    line,
    log: () => log,
    out: () => out,
    running: () => code === undefined,
    stop: () => {
      child.kill('SIGTERM')
      return ended
    },
    kill: () => child.kill('SIGKILL'),
  }
}
