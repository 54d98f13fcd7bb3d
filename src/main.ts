// The composition root: reads the environment, wires the doors to one desk, listens, and closes with grace.
import { randomUUID } from 'node:crypto'
import closeWithGrace from 'close-with-grace'
import { topics } from '../commands/index.ts'
import { chatSettingsOf, loadSettings, type Settings } from './config.ts'
import { DEMO_SHOP, fillDemo } from './demo/fill.ts'
import type { Chat } from './faces/chat/door.ts'
import { errorForLog } from './log-errors.ts'
import { open, registerParts } from './opening.ts'
import { loadStore } from './store/open.ts'
import { tellSystemd, withSecrets } from './systemd.ts'
import { engineVersion } from './tables/version.ts'
import { verbs } from './verbs.ts'
import { visible } from './visible-text.ts'

// What the register's file, its log and its copies hold is not for others on this machine; what is set more narrowly stays so.
process.umask(process.umask(0o027) | 0o027)

const line = (text: string): void => void process.stdout.write(`${visible(text)}\n`)
const complain = (text: string): void => void process.stderr.write(`${visible(text)}\n`)

// Whoever reads our lines may stop reading: `npm run ask -- … | head` is no failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? 0 : 1))

const serve = async (settings: Settings, isDemo: boolean): Promise<void> => {
  const { pino } = await import('pino')
  const { createCounters } = await import('./counters.ts')
  const { buildHttp } = await import('./faces/http/server.ts')
  const { createPictures } = await import('./faces/pictures.ts')
  const log = pino({ level: settings.LOG_LEVEL, serializers: { err: errorForLog } }, pino.destination(2))
  const counters = createCounters({ process: true })
  const { desk, shop, store, specs, trouble: registerTrouble, close } = open(settings, counters.asked)
  if (isDemo) await fillDemo(shop)
  const pictures = createPictures()
  const forChat = chatSettingsOf(settings)
  let chat: Chat | undefined
  const chatTroubles = () => (forChat ? (chat?.troubles() ?? ['chat is starting']) : [])
  const http = await buildHttp({
    desk,
    pictures,
    ...{ shop: settings.SHOP_NAME, publicUrl: settings.PUBLIC_URL },
    trustProxy: settings.TRUST_PROXY,
    mostASecond: 1000,
    seen: counters.http,
    failed: (reference, error) => log.error({ err: error, reference }, 'an HTTP answer failed'),
    readiness: async () => [...chatTroubles(), await registerTrouble()].filter((reason) => reason !== undefined),
    register: registerParts(settings, shop),
    ...(forChat?.transport === 'http' ? { interactions: (posted) => chat?.posted?.(posted) } : {}),
    metrics: async () => ({ type: counters.registry.contentType, text: await counters.registry.metrics() }),
  })
  const address = await http.listen({ host: settings.HOST, port: settings.PORT })
  await loadStore(settings.DATABASE_URL)
  const watched = tellSystemd(process.env)
  closeWithGrace({ delay: 8000, logger: false }, async ({ err }) => {
    if (err) log.fatal({ err }, 'closing after a bug')
    watched.stopping()
    await Promise.all([http.close(), chat?.close()]).then(close)
  })
  if (forChat) {
    const { openChat } = await import('./faces/chat/door.ts')
    chat = openChat({
      settings: forChat,
      desk,
      topics,
      ...{ shop, store, specs, timeZone: settings.SHOP_TIME_ZONE, retentionDays: settings.RETENTION_DAYS },
      pictures,
      now: Date.now,
      reference: randomUUID,
      ...{ count: counters.chat, countMessage: counters.message },
      ...{ shard: counters.shard, shardsUp: counters.shards },
      log,
    })
  }
  line(`Armlength ${engineVersion}: HTTP open at ${address}; chat ${forChat ? 'on' : 'off (DISCORD_TOKEN is not set)'}`)
}

const [verb = 'serve', ...argv] = process.argv.slice(2)
try {
  const settings = loadSettings(withSecrets(process.env))
  const run = verbs[verb]
  if (verb === 'serve') await serve(settings, false)
  else if (verb === 'demo') await serve({ ...settings, DATABASE_URL: 'memory:', SHOP_NAME: DEMO_SHOP }, true)
  else if (run) process.exitCode = await run(settings, argv, { out: line, err: complain })
  else throw new Error(`there is no verb “${verb}”; there are: ${['serve', 'demo', ...Object.keys(verbs)].join(', ')}`)
} catch (error) {
  complain(`Armlength could not start: ${(error as Error).message}`)
  process.exitCode = 1
}
