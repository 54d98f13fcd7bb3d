// The settings, read once from the environment: one schema, frozen; or every fault at once, by name, without the value.
// An empty variable is one that is not set, as compose files and env files leave them.
import { z } from 'zod'
import { readPinHash } from './faces/http/kiosk/pin.ts'
import { storeKindOf } from './store/open.ts'
import { type LocaleName, localeNames } from './words/index.ts'

const logLevels = ['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent'] as const

const port = z
  .string()
  .regex(/^\d{1,5}$/)
  .transform(Number)
  .refine((value) => value <= 65535)
const snowflake = z.string().regex(/^\d{1,20}$/)
const httpUrl = z
  .string()
  .refine((text) => URL.canParse(text) && /^https?:$/.test(new URL(text).protocol))
  .transform((text) => text.replace(/\/+$/, ''))

export interface Shards {
  readonly ids: readonly number[]
  readonly count: number
}

// auto, or the shards of this process and how many there are in all: 0,1/4
const shards = z
  .string()
  .regex(/^(auto|\d{1,4}(,\d{1,4})*\/\d{1,4})$/)
  .transform((text): 'auto' | Shards => {
    if (text === 'auto') return 'auto'
    const [ids = '', count = ''] = text.split('/')
    return { ids: ids.split(',').map(Number), count: Number(count) }
  })
  .refine(
    (value) =>
      value === 'auto' || (new Set(value.ids).size === value.ids.length && value.ids.every((id) => id < value.count)),
  )

const snowflakes = z
  .string()
  .regex(/^\d{1,20}(,\s*\d{1,20})*$/)
  .transform((text): readonly string[] => text.split(',').map((one) => one.trim()))

const proxies = z
  .string()
  .transform((text): boolean | string[] =>
    text === 'true' || text === 'false' ? text === 'true' : text.split(',').map((one) => one.trim()),
  )
  .refine(
    (value) =>
      typeof value === 'boolean' ||
      value.every((one) => /^[0-9a-fA-F.:]+(\/\d{1,3})?$|^(loopback|linklocal|uniquelocal)$/.test(one)),
  )

const isTimeZone = (text: string): boolean => {
  try {
    new Intl.DateTimeFormat('en', { timeZone: text })
    return true
  } catch {
    return false
  }
}

/** Every setting: what it may be, what it is without being set, and what is said when it is wrong. */
export const settings = {
  HOST: {
    schema: z.string().regex(/^[\w.:-]+$/),
    without: '127.0.0.1',
    allowed: 'an address to listen on: 127.0.0.1, 0.0.0.0, ::',
  },
  PUBLIC_URL: {
    schema: httpUrl,
    without: undefined,
    allowed:
      'the http or https address by which browsers and phones reach this desk: for the codes on its pages, and the one name of the wide world under which forms are taken',
  },
  PORT: { schema: port, without: '8080', allowed: 'a whole number from 0 to 65535' },
  DISCORD_TOKEN: { schema: z.string().min(1), without: undefined, allowed: "the bot's token; without it chat is off" },
  DISCORD_APPLICATION_ID: {
    schema: snowflake,
    without: undefined,
    allowed: '1 to 20 digits; without it the one that the token belongs to',
  },
  DISCORD_SERVERS: {
    schema: snowflakes,
    without: undefined,
    allowed: "the ids of the shop's own servers, with commas between; in no other does anybody write",
  },
  DISCORD_KEEPER_ROLE: {
    schema: snowflake,
    without: undefined,
    allowed: 'the id of the role whose members keep the register, beside those who manage the server',
  },
  DISCORD_MECHANIC_ROLE: {
    schema: snowflake,
    without: undefined,
    allowed: 'the id of the role whose members note checks and events',
  },
  DISCORD_API_URL: {
    schema: httpUrl,
    without: 'https://discord.com/api',
    allowed: 'an http or https address, without the version',
  },
  DISCORD_TRANSPORT: {
    schema: z.enum(['gateway', 'http']),
    without: 'gateway',
    allowed: 'gateway, or http where Discord posts interactions to /discord/interactions',
  },
  DISCORD_PUBLIC_KEY: {
    schema: z.string().regex(/^[0-9a-fA-F]{64}$/),
    without: undefined,
    allowed: "the application's public key, 64 hex digits; needed where the transport is http",
  },
  DISCORD_SHARDS: {
    schema: shards,
    without: 'auto',
    allowed: 'auto, or the shards of this process and the number of all: 0,1/4',
  },
  DATABASE_URL: {
    schema: z.string().refine((text) => storeKindOf(text) !== undefined),
    without: 'file:./data/armlength.db',
    allowed: 'file:./data/armlength.db, postgres://… or memory: (nothing is kept)',
  },
  SHOP_TIME_ZONE: {
    schema: z.string().refine((text) => isTimeZone(text)),
    without: 'UTC',
    allowed: 'an IANA time zone: Europe/London',
  },
  KIOSK_PIN_HASH: {
    schema: z.string().refine((text) => readPinHash(text) !== undefined),
    without: undefined,
    allowed: 'what npm run kiosk:pin prints; without it nobody writes at the kiosk',
  },
  API_KEYS_FILE: {
    schema: z.string().min(1),
    without: undefined,
    allowed: 'a file of keys, a line each: role, name, SHA-256 in hex; without it nobody writes over HTTP',
  },
  SHOP_NAME: { schema: z.string().max(80), without: 'the shop', allowed: 'a name of at most 80 characters' },
  UNITS: { schema: z.enum(['metric', 'inch']), without: 'metric', allowed: 'metric or inch' },
  LOCALE: {
    schema: z.enum(localeNames as [LocaleName, ...LocaleName[]]),
    without: 'en',
    allowed: localeNames.join(', '),
  },
  TRUST_PROXY: {
    schema: proxies,
    without: 'false',
    allowed:
      'false, the addresses of the proxies (10.0.0.0/8, loopback), or true where nobody but a proxy reaches the port',
  },
  RETENTION_DAYS: {
    schema: z
      .string()
      .regex(/^\d{1,5}$/)
      .transform(Number)
      .refine((days) => days >= 1),
    without: '400',
    allowed: 'whole days, 1 or more, after which settings of people that nobody used are erased',
  },
  LOG_LEVEL: { schema: z.enum(logLevels), without: 'info', allowed: logLevels.join(', ') },
} as const

export type SettingName = keyof typeof settings
export type Settings = { readonly [Name in SettingName]: Read<(typeof settings)[Name]> }
type Read<S extends { schema: z.ZodType; without: string | undefined }> =
  | z.infer<S['schema']>
  | (S['without'] extends string ? never : undefined)

/** Every wrong setting with what is allowed; the value stays out, it may be a secret. */
export class SettingsFault extends Error {
  readonly faults: ReadonlyArray<{ readonly name: SettingName; readonly allowed: string }>
  constructor(faults: SettingsFault['faults']) {
    super(faults.map(({ name, allowed }) => `${name} is not usable; allowed: ${allowed}`).join('\n'))
    this.name = 'SettingsFault'
    this.faults = faults
  }
}

/** The settings of an environment, frozen. Throws SettingsFault with all faults together. */
export const loadSettings = (env: Readonly<Record<string, string | undefined>>): Settings => {
  const faults: Array<{ name: SettingName; allowed: string }> = []
  const read = Object.entries(settings).map(([name, { schema, without, allowed }]) => {
    const text = env[name] === undefined || env[name] === '' ? without : env[name]
    if (text === undefined) return [name, undefined]
    const parsed = schema.safeParse(text)
    if (!parsed.success) faults.push({ name: name as SettingName, allowed })
    return [name, parsed.data]
  })
  const all = Object.fromEntries(read)
  const { DISCORD_TRANSPORT: transport, DISCORD_PUBLIC_KEY: key } = all
  if (transport === 'http' && key === undefined && !faults.some(({ name }) => name === 'DISCORD_PUBLIC_KEY'))
    faults.push({ name: 'DISCORD_PUBLIC_KEY', allowed: settings.DISCORD_PUBLIC_KEY.allowed })
  if (faults.length > 0) throw new SettingsFault(faults)
  return Object.freeze(all) as Settings
}

/** What the chat door needs; undefined where it stays shut. */
export const chatSettingsOf = (all: Settings) => {
  const { DISCORD_KEEPER_ROLE: keeperRole, DISCORD_MECHANIC_ROLE: mechanicRole, DISCORD_SERVERS: servers } = all
  const { DISCORD_TOKEN: token, DISCORD_APPLICATION_ID: applicationId, DISCORD_API_URL: apiUrl, DISCORD_SHARDS } = all
  const { DISCORD_TRANSPORT: transport, DISCORD_PUBLIC_KEY: publicKey } = all
  return token === undefined
    ? undefined
    : { token, applicationId, apiUrl, transport, publicKey, shards: DISCORD_SHARDS, keeperRole, mechanicRole, servers }
}
