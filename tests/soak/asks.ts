// What people send, all kinds of it: commands with and without pictures, offers while typing, keys that were under earlier answers,
// and the forms that those opened.
import type { Ask } from '../support/fake-discord/ask.ts'
import type { CallbackRecord } from '../support/fake-discord/books.ts'
import { isRecord, type Json } from '../support/fake-discord/limits.ts'
import type { Random } from '../support/random.ts'

export type Kind = NonNullable<Ask['kind']>

/** Something that can be pressed or sent, and by whom. */
interface Open {
  readonly ask: Ask
}

const MOST_OPEN = 300

const pick = <T>(random: Random, list: readonly T[]): T => list[Math.floor(random() * list.length)] as T

const commands: ReadonlyArray<(random: Random) => Ask> = [
  (random) => ({
    command: 'adapter',
    options: { torque: `${20 + Math.floor(random() * 40)} N·m`, lever: '380 mm', adapter: '45 mm@30' },
  }),
  (random) => ({
    command: 'adapter',
    options: { torque: `${(20 + random() * 100).toFixed(2)} N·m`, lever: '14 in', adapter: '2 in' },
  }),
  () => ({ command: 'adapter', options: { torque: '95', lever: '1,234 in', adapter: '45 mm' } }),
  () => ({ command: 'adapter', options: { torque: '95 N·m', lever: '380 mm' } }),
  (random) => ({ command: 'convert', options: { quantity: `${Math.ceil(random() * 900)} kg-cm`, to: 'Nm' } }),
  () => ({ command: 'hand', subcommand: 'pull', options: { torque: '107 ft.-lbs.', hand: '2 ft' } }),
  () => ({ command: 'bolt', subcommand: 'clamp', options: { size: 'M12', torque: '60 Nm', condition: 'dry' } }),
  () => ({ command: 'check', subcommand: 'plan', options: { most: '200 Nm', distance: '45 cm' } }),
  () => ({ command: 'does-it-matter', options: { topic: 'antiseize on lugs' } }),
  () => ({ command: 'ask', options: { text: 'what do I set for 95 Nm with a 45 mm crowfoot on a 380 mm wrench?' } }),
  () => ({ command: 'settings', subcommand: 'show' }),
  () => ({ command: 'privacy', subcommand: 'show' }),
  () => ({ command: 'wrench', subcommand: 'list' }),
  () => ({ command: 'wrench', subcommand: 'due' }),
  (random) => ({
    command: 'wrench',
    subcommand: 'show',
    options: { wrench: `K-${Math.ceil(random() * 9)}` },
  }),
  () => ({ kind: 'message-command', command: 'Work this out', message: '120 Nm with a 2 in extension straight ahead' }),
  () => ({ kind: 'message-command', command: 'Work this out', message: '@everyone '.repeat(150) }),
]

const typing: ReadonlyArray<(random: Random) => Ask> = [
  (random) => ({
    kind: 'autocomplete',
    command: 'does-it-matter',
    options: { topic: 'anti-seize on the lugs'.slice(0, 1 + Math.floor(random() * 20)) },
    focused: 'topic',
  }),
  () => ({ kind: 'autocomplete', command: 'adapter', options: { torque: '95' }, focused: 'torque' }),
  () => ({ kind: 'autocomplete', command: 'wrench', subcommand: 'show', options: { wrench: 'k' }, focused: 'wrench' }),
]

const partsOf = (value: unknown): Json[] =>
  (Array.isArray(value) ? value : [value])
    .filter(isRecord)
    .flatMap((one) => [
      one,
      ...(one['components'] === undefined ? [] : partsOf(one['components'])),
      ...(one['component'] === undefined ? [] : partsOf(one['component'])),
    ])

const keysOf = (message: Json, user: Json): Open[] =>
  partsOf(message['components'] ?? []).flatMap((part) => {
    if (typeof part['custom_id'] !== 'string' || part['disabled'] === true) return []
    const press: Ask = { kind: 'component', customId: part['custom_id'], message, user }
    const options = Array.isArray(part['options']) ? part['options'].filter(isRecord) : []
    if (part['type'] === 2) return [{ ask: press }]
    return options.map(({ value }) => ({ ask: { ...press, componentType: 3, values: [String(value)] } }))
  })

const formOf = ({ data }: CallbackRecord, message: unknown, user: Json): Open => {
  const inputs = partsOf(data['components'] ?? []).filter((part) => part['type'] === 4)
  const fields = Object.fromEntries(
    inputs.map((input) => [String(input['custom_id']), String(input['value'] ?? input['placeholder'] ?? '95 N·m')]),
  )
  const on = isRecord(message) ? { message } : {}
  return { ask: { kind: 'modal', customId: String(data['custom_id']), fields, user, ...on } }
}

export const newAsks = (random: Random) => {
  const keys: Open[] = []
  const forms: Open[] = []
  const add = (list: Open[], more: readonly Open[]): void => {
    list.push(...more)
    list.splice(0, Math.max(list.length - MOST_OPEN, 0))
  }
  const taken = (list: Open[]): Ask | undefined => list.splice(Math.floor(random() * list.length), 1)[0]?.ask
  const where = (): Partial<Ask> => {
    const n = BigInt(Math.floor(random() * 5000))
    const user = { id: String(330_000_000_000_000_000n + n), username: `hand-${n}` }
    // Servers spread over the shards.
    const guild = random() < 0.1 ? null : String(((1000n + (n % 400n)) << 22n) + 1n)
    return { user, guild, locale: pick(random, ['en-US', 'de', 'fr', 'ja']) }
  }
  return {
    next(): Ask {
      const roll = random()
      const pressed = roll < 0.25 ? taken(keys) : roll < 0.35 ? taken(forms) : undefined
      if (pressed) return pressed
      return { ...pick(random, roll < 0.5 ? typing : commands)(random), ...where() }
    },
    /** What an answer opened: its keys, or its form. */
    learn(record: CallbackRecord, asked: Ask): void {
      if (!(record.status >= 200 && record.status < 300)) return
      const from = { user: asked.user ?? {}, guild: asked.guild ?? null }
      const told = (one: Open): Open => ({ ask: { ...one.ask, guild: from.guild } })
      if (record.type === 9) add(forms, [told(formOf(record, asked.message, from.user))])
      if (record.type === 4 && record.message && random() < 0.3) add(keys, keysOf(record.message, from.user).map(told))
    },
  }
}
