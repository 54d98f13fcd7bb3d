// The stores with many wrenches and checks: `npm run bench -- store`, or with other numbers `-- store 1000 50000`.
import { execFile } from 'node:child_process'
import { mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { hasPostgres, startCluster } from '../support/postgres.ts'

const run = promisify(execFile)

interface Measured {
  readonly importMs: number
  readonly importMiB: number
  readonly before: number
  readonly fillMs: number
  readonly peakMiB: number
  readonly kept: number
  /** The first look at the lists after a start: every card folded. */
  readonly fleetMs: number
  readonly rows: ReadonlyArray<{ readonly name: string; readonly p50: number; readonly p99: number }>
}

type Line = (...cells: ReadonlyArray<string | number>) => void

const measure = async (address: string, wrenches: number, checks: number): Promise<Measured> => {
  const args = ['--import', 'tsx', join(import.meta.dirname, 'store-run.ts'), address, String(wrenches), String(checks)]
  const { stdout } = await run(process.execPath, args, { maxBuffer: 1e8 })
  return JSON.parse(stdout) as Measured
}

const tell = (line: Line, name: string, wrenches: number, measured: Measured): void => {
  const { importMs, importMiB, before, fillMs, peakMiB, kept, fleetMs, rows } = measured
  line(`${name}, ${kept} entries`, 'p50 ms', 'p99 ms')
  for (const { name: what, p50, p99 } of rows) line(`  ${what}`, p50, p99)
  line(`  import of ${wrenches} rows, ms`, importMs)
  line('  the lists, made anew, ms', fleetMs)
  line('  peak memory before, after, MiB', before, importMiB)
  line('  the rest, entries a second', ((kept - wrenches) / fillMs) * 1000)
  line('  peak memory at the end, MiB', peakMiB)
}

export const benchStore = async (line: Line, wrenches: number, checks: number): Promise<void> => {
  const folder = mkdtempSync(join(tmpdir(), 'armlength-bench-'))
  try {
    const path = join(folder, 'shop.db')
    tell(line, 'SQLite', wrenches, await measure(`file:${path}`, wrenches, checks))
    line('  file, MiB', statSync(path).size / 2 ** 20)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
  if (!hasPostgres) return line('PostgreSQL is not on this machine')
  const cluster = await startCluster({ safely: true })
  try {
    tell(line, 'PostgreSQL', wrenches, await measure(await cluster.database(), wrenches, checks))
  } finally {
    await cluster.remove()
  }
}
