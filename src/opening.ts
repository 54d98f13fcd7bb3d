// Opens the desk with its register, for every verb of main.ts: the store that the settings name, the clock and the ids.
import { randomUUID } from 'node:crypto'
import { readFileSync } from 'node:fs'
import type { Settings } from './config.ts'
import { neverBack } from './core/never-back.ts'
import { type Asked, createDesk, type Desk } from './desk/desk.ts'
import { foldAnew } from './desk/fold-anew.ts'
import { lenderOf } from './desk/lend.ts'
import { tagOfIn } from './desk/named-wrench.ts'
import { createShop, type Shop } from './desk/shop.ts'
import { shopDay } from './desk/shop-day.ts'
import { createSpecs, type Specs } from './desk/specs.ts'
import type { RegisterParts } from './faces/http/api/register-parts.ts'
import { readPinHash } from './faces/http/kiosk/pin.ts'
import { readWriters, type WriterKey } from './faces/http/writers.ts'
import { lazyStore, type RegisterStore } from './store/lazy.ts'
import { openStore } from './store/open.ts'
import type { Store } from './store/store.ts'

/** Looking whether something can be written is a write: not at every question of a watchdog. */
const LOOK_MS = 10_000

const atMostEvery = <T>(ms: number, look: () => Promise<T>): (() => Promise<T>) => {
  const now = neverBack(Date.now)
  let last: { readonly at: number; readonly found: Promise<T> } | undefined
  return () => {
    if (!last || now() - last.at >= ms) last = { at: now(), found: look() }
    return last.found
  }
}

export interface Opened {
  readonly desk: Desk
  readonly shop: Shop
  readonly store: RegisterStore
  readonly specs: Specs
  /** Why the register cannot be asked; looked at again when somebody wants to know. */
  readonly trouble: () => Promise<string | undefined>
  readonly close: () => Promise<void>
}

/** The register's store, brought up to what this program keeps in it. */
export const openRegister = async ({ DATABASE_URL, SHOP_TIME_ZONE }: Settings): Promise<Store> => {
  const store = await openStore(DATABASE_URL)
  const now = new Date()
  await foldAnew(store, { today: shopDay(SHOP_TIME_ZONE)(now) }, now.toISOString())
  return store
}

export const open = (settings: Settings, record?: (asked: Asked) => void): Opened => {
  const { store, close } = lazyStore(() => openRegister(settings))
  const shop = createShop({ store, now: () => new Date(), id: randomUUID, timeZone: settings.SHOP_TIME_ZONE })
  const borrow = lenderOf(shop)
  const specs = createSpecs(store, () => new Date())
  const desk = createDesk({
    system: settings.UNITS,
    locale: settings.LOCALE,
    borrow,
    tagOf: tagOfIn(shop),
    specs,
    ...(record ? { record } : {}),
  })
  const canWrite = atMostEvery(LOOK_MS, () => store.check())
  const trouble = async (): Promise<string | undefined> => {
    const code = (error: unknown): string => (error as { code?: string }).code ?? 'unknown'
    try {
      await store.cards({ order: 'tag', limit: 1 })
    } catch (error) {
      return `the register is away (${code(error)})`
    }
    return canWrite().then(
      () => undefined,
      (error: unknown) => `the register cannot be written to (${code(error)})`,
    )
  }
  return { desk, shop, store, specs, trouble, close }
}

/** The register as the HTTP door takes it: who may write, the clock, and ids that nobody guesses. */
export const registerParts = (settings: Settings, shop: Shop): RegisterParts => ({
  shop,
  keys: writersOf(settings),
  now: () => new Date(),
  writing: { pin: readPinHash(settings.KIOSK_PIN_HASH ?? ''), id: randomUUID },
})

/** The keys of those who may write over HTTP; none where no file is named. Throws where the file cannot be read. */
const writersOf = ({ API_KEYS_FILE: path }: Settings): readonly WriterKey[] =>
  path === undefined ? [] : readWriters(readFileSync(path, 'utf8'))
