// What the program does beside serving, each a verb of the command line: it does one thing and ends.
import { randomBytes } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { topics } from '../commands/index.ts'
import { chatSettingsOf, type Settings } from './config.ts'
import { MOST_SHEET_FAULTS } from './desk/intake.ts'
import { sayerFor } from './desk/say.ts'
import { askPin } from './faces/terminal/ask-pin.ts'
import { open, openRegister } from './opening.ts'
import { migrations } from './store/migrations/index.ts'
import { openStore, pathOf, storeKindOf } from './store/open.ts'
import { typedLines } from './typed-lines.ts'
import { languageFor } from './words/index.ts'

export interface Lines {
  readonly out: (text: string) => void
  readonly err: (text: string) => void
}

/** The exit code: 0 where nothing else is said. */
type Verb = (settings: Settings, argv: readonly string[], lines: Lines) => Promise<number>

const register: Verb = async (settings, argv, { out }) => {
  const forChat = chatSettingsOf(settings)
  if (!forChat) throw new Error('DISCORD_TOKEN is not set: there is no bot to register commands for')
  const { registerCommands } = await import('./faces/chat/door.ts')
  const isTried = argv.includes('--dry-run')
  const { add, change, remove } = await registerCommands(forChat, topics, open(settings).desk, isTried)
  const told = `added: ${add.join(' ') || '-'}; changed: ${change.join(' ') || '-'}; removed: ${remove.join(' ') || '-'}`
  out(isTried ? `tried only, nothing was written. Would be ${told}` : told)
  return 0
}

const ask: Verb = async (settings, argv, lines) => {
  const { runTerminal } = await import('./faces/terminal/terminal.ts')
  const { desk, shop, close } = open(settings)
  const code = await runTerminal(argv, desk, { ...lines, lines: typedLines(process.stdin) }, shop)
  await close()
  return code
}

const kioskPin: Verb = async (_settings, _argv, lines) => {
  const { SALT_LENGTH, weakness, writePinHash } = await import('./faces/http/kiosk/pin.ts')
  const pin = await askPin(process.stdin, process.stderr, weakness)
  if (pin === undefined) return 64
  lines.out(`KIOSK_PIN_HASH=${await writePinHash(pin, randomBytes(SALT_LENGTH))}`)
  return 0
}

const USAGE = 64
const say = (settings: Settings): ReturnType<typeof sayerFor> => sayerFor(languageFor(undefined, settings.LOCALE))

const importSheet: Verb = async (settings, argv, { out, err }) => {
  const [path] = argv.filter((word) => !word.startsWith('--'))
  if (path === undefined) {
    err('npm run import -- sheet.csv [--dry-run]')
    return USAGE
  }
  const { shop, close } = open(settings)
  const dryRun = argv.includes('--dry-run')
  const read = await shop.takeIn(readFileSync(path, 'utf8'), { role: 'import', door: 'terminal' }, dryRun)
  await close()
  if (read.kind === 'refused') {
    const told = say(settings)
    for (const { line, fault } of read.faults.slice(0, MOST_SHEET_FAULTS)) {
      const { input, got, hint } = told.fault(fault)
      err(`line ${line}${input === '' ? '' : `, ${input}`}: ${got === '' ? '' : `got “${got}”. `}${hint}`)
    }
    err(`${read.faults.length} to mend; nothing was read in`)
    return 2
  }
  if (read.kind === 'read')
    out(`${read.fresh} new, ${read.again} there already; ${read.kept ? 'kept' : 'tried only, nothing was kept'}`)
  return 0
}

const fileOf = (settings: Settings): string => {
  if (storeKindOf(settings.DATABASE_URL) === 'sqlite') return pathOf(settings.DATABASE_URL)
  throw new Error('DATABASE_URL names no file: use the tools of its server (pg_dump, pg_restore)')
}

const backup: Verb = async (settings, [path], { out, err }) => {
  if (path === undefined) {
    err('npm run backup -- COPY')
    return USAGE
  }
  fileOf(settings)
  const store = await openStore(settings.DATABASE_URL)
  const last = await store.backup(path).finally(() => store.close())
  out(`${path}: ${last} entries, looked through and sound`)
  return 0
}

const restore: Verb = async (settings, argv, { out, err }) => {
  const [path] = argv.filter((word) => !word.startsWith('--'))
  if (path === undefined) {
    err('npm run restore -- COPY [--replace]     stop the desk first')
    return USAGE
  }
  const { restoreSqlite } = await import('./store/restore.ts')
  const stamp = new Date().toISOString().replace(/[:.]/g, '')
  const { last, aside } = await restoreSqlite(path, fileOf(settings), { replace: argv.includes('--replace'), stamp })
  out(`${last} entries are in use again${aside === undefined ? '' : `; the register before is at ${aside}`}`)
  return 0
}

const migrate: Verb = async (settings, _argv, { out }) => {
  const store = await openRegister(settings)
  await store.check().finally(() => store.close())
  out(`the register has schema ${migrations.at(-1)?.number ?? 0}`)
  return 0
}

export const verbs: Readonly<Record<string, Verb>> = {
  register,
  ask,
  'kiosk-pin': kioskPin,
  import: importSheet,
  backup,
  restore,
  'db-migrate': migrate,
}
