// Every store for one suite: whoever adds a store adds its runner here, or nothing compiles.
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { openStore, type storeKindOf } from '../../src/store/open.ts'
import type { Store } from '../../src/store/store.ts'
import { type Cluster, hasPostgres, mustHavePostgres, startCluster } from './postgres.ts'

type StoreKind = NonNullable<ReturnType<typeof storeKindOf>>

interface Runner {
  readonly runs: boolean
  readonly begin: () => Promise<void>
  /** The address of a new, empty store. */
  readonly address: () => Promise<string>
  readonly end: () => Promise<void>
}

const nothing = async (): Promise<void> => undefined

const memory = (): Runner => ({ runs: true, begin: nothing, address: async () => 'memory:', end: nothing })

const sqlite = (): Runner => {
  const folder = mkdtempSync(join(tmpdir(), 'armlength-store-'))
  let files = 0
  return {
    runs: true,
    begin: nothing,
    address: async () => `file:${join(folder, 'shop', `${files++}.db`)}`,
    end: async () => rmSync(folder, { recursive: true, force: true }),
  }
}

const postgres = (): Runner => {
  let cluster: Cluster | undefined
  return {
    runs: hasPostgres,
    begin: async () => {
      cluster = await startCluster()
    },
    address: async () => (cluster as Cluster).database(),
    end: async () => cluster?.remove(),
  }
}

const runners: Readonly<Record<StoreKind, () => Runner>> = { memory, sqlite, postgres }

/** Declares the cases once for each store. `open` gives a new one; with an address, the one there. */
export const onEveryStore = (
  title: string,
  cases: (open: (address?: string) => Promise<Store>, kind: StoreKind, address: () => Promise<string>) => void,
): void => {
  it('PostgreSQL is there where it must be', () => {
    expect(hasPostgres || !mustHavePostgres).toBe(true)
  })
  for (const [kind, make] of Object.entries(runners) as Array<[StoreKind, () => Runner]>) {
    const runner = make()
    describe.runIf(runner.runs)(`${title}, in ${kind}`, () => {
      const opened: Store[] = []
      beforeAll(runner.begin, 60_000)
      afterEach(async () => {
        await Promise.all(opened.splice(0).map((store) => store.close().catch(() => undefined)))
      })
      afterAll(runner.end)
      const open = async (address?: string): Promise<Store> => {
        const store = await openStore(address ?? (await runner.address()))
        opened.push(store)
        return store
      }
      cases(open, kind, runner.address)
    })
  }
}
