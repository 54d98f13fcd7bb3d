// A throw-away PostgreSQL server for tests: a cluster in a temporary folder, on loopback, gone at the end. PostgreSQL refuses to
// run as root, so it is run as its own user where tests are root.
import { type ChildProcess, execFileSync, spawn } from 'node:child_process'
import { chownSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import pg from 'pg'

const installed = '/usr/lib/postgresql'
const bin = (existsSync(installed) ? readdirSync(installed) : [])
  .map((version) => join(installed, version, 'bin'))
  .filter((folder) => existsSync(join(folder, 'initdb')))
  .at(-1)

/** False on a desk without PostgreSQL; CI installs it and says so, and then it must be there. */
export const hasPostgres = bin !== undefined
export const mustHavePostgres = process.env.CI_POSTGRES === '1'

export interface Cluster {
  readonly port: number
  /** A new, empty database; its address. */
  readonly database: () => Promise<string>
  readonly start: () => Promise<void>
  /** At once and without goodbye, as a machine that loses its power; or with one. */
  readonly stop: (how: 'crash' | 'orderly') => Promise<void>
  /** Holds every process of the server still, so that it is there and does not answer. */
  readonly freeze: () => () => void
  readonly remove: () => Promise<void>
}

const idOf = (flag: '-u' | '-g'): number => Number(execFileSync('id', [flag, 'postgres'], { encoding: 'utf8' }))

const asRoot = process.getuid?.() === 0
const asUser = (program: string, args: readonly string[]): [string, string[]] => {
  const whole = [join(bin as string, program), ...args]
  // Should the test be killed, the server ends with it.
  const death = '--pdeathsig=INT'
  return asRoot
    ? ['setpriv', ['--reuid=postgres', '--regid=postgres', '--clear-groups', death, ...whole]]
    : ['setpriv', [death, ...whole]]
}

const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const address = server.address()
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0))
    })
  })

const ask = async (port: number, sql: string): Promise<void> => {
  const client = new pg.Client({ host: '127.0.0.1', port, user: 'armlength', database: 'postgres' })
  client.on('error', () => undefined)
  try {
    await client.connect()
    await client.query(sql)
  } finally {
    await client.end().catch(() => undefined)
  }
}

const untilAnswers = async (port: number): Promise<void> => {
  for (let left = 200; ; left--) {
    try {
      return await ask(port, 'select 1')
    } catch (error) {
      if (left === 0) throw error
      await new Promise((resolve) => setTimeout(resolve, 50))
    }
  }
}

const childrenOf = (pid: number): number[] =>
  readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8').split(' ').map(Number).filter(Boolean)

/** `safely`: every commit reaches the disk, as in a shop; tests need not wait for that. */
export const startCluster = async ({ safely = false } = {}): Promise<Cluster> => {
  const folder = mkdtempSync(join(tmpdir(), 'armlength-pg-'))
  if (asRoot) chownSync(folder, idOf('-u'), idOf('-g'))
  const data = join(folder, 'data')
  const quiet = { cwd: '/', stdio: 'ignore' } as const
  // A locale of its own language would put texts in another order: the store must not mind.
  const [program, args] = asUser('initdb', ['-D', data, '-U', 'armlength', '-A', 'trust', '-E', 'UTF8', '--no-sync'])
  execFileSync(program, args, quiet)
  const port = await freePort()
  let server: ChildProcess | undefined
  let ended: Promise<unknown> = Promise.resolve()
  let databases = 0
  const start = async (): Promise<void> => {
    const settings = {
      listen_addresses: '127.0.0.1',
      unix_socket_directories: '',
      fsync: safely ? 'on' : 'off',
      max_connections: '40',
    }
    const given = Object.entries(settings).flatMap(([name, value]) => ['-c', `${name}=${value}`])
    const [command, rest] = asUser('postgres', ['-D', data, '-p', String(port), ...given])
    const child = spawn(command, rest, quiet)
    server = child
    ended = new Promise((resolve) => child.once('exit', resolve))
    await untilAnswers(port)
  }
  const stop = async (how: 'crash' | 'orderly'): Promise<void> => {
    server?.kill(how === 'crash' ? 'SIGQUIT' : 'SIGINT')
    await ended
    server = undefined
  }
  await start()
  return {
    port,
    start,
    stop,
    database: async () => {
      databases += 1
      const name = `shop${databases}`
      await ask(port, `create database ${name}`)
      return `postgres://armlength@127.0.0.1:${port}/${name}`
    },
    freeze: () => {
      const pid = server?.pid as number
      const all = [pid, ...childrenOf(pid)]
      for (const one of all) process.kill(one, 'SIGSTOP')
      return () => {
        for (const one of all) process.kill(one, 'SIGCONT')
      }
    },
    remove: async () => {
      await stop('crash')
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
