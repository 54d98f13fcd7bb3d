// What the program does beside serving, each a verb of the command line: it does one thing and ends.
import { randomBytes } from 'node:crypto'
import { topics } from '../commands/index.ts'
import { chatSettingsOf, type Settings } from './config.ts'
import { askPin } from './faces/terminal/ask-pin.ts'
import { open } from './opening.ts'
import { typedLines } from './typed-lines.ts'

export interface Lines {
  readonly out: (text: string) => void
  readonly err: (text: string) => void
}

/** The exit code: 0 where nothing else is said. */
type Verb = (settings: Settings, argv: readonly string[], lines: Lines) => Promise<number>

const register: Verb = async (settings, _argv, { out }) => {
  const forChat = chatSettingsOf(settings)
  if (!forChat) throw new Error('DISCORD_TOKEN is not set: there is no bot to register commands for')
  const { registerCommands } = await import('./faces/chat/gateway.ts')
  const { add, change, remove } = await registerCommands(forChat, topics, open(settings).desk)
  out(`added: ${add.join(' ') || '-'}; changed: ${change.join(' ') || '-'}; removed: ${remove.join(' ') || '-'}`)
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

export const verbs: Readonly<Record<string, Verb>> = { register, ask, 'kiosk-pin': kioskPin }
