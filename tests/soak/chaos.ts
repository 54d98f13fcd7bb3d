// What befalls the connection itself, one thing after another: torn sockets, ended sessions, nonsense, a Discord that is not there.
// Each thing is written down with its beginning and its end.
import { setTimeout as pause } from 'node:timers/promises'
import type { FakeDiscord } from '../support/fake-discord/fake-discord.ts'
import { faults } from '../support/fake-discord/faults.ts'
import type { Random } from '../support/random.ts'

export interface Spell {
  readonly name: string
  readonly from: number
  to: number
}

export const nonsense: ReadonlyArray<readonly [string, unknown]> = [
  ['INTERACTION_CREATE', null],
  ['INTERACTION_CREATE', 5],
  ['INTERACTION_CREATE', { id: 'x', token: null, type: 2 }],
  ['INTERACTION_CREATE', { id: '1', type: 99, token: 't', application_id: '9' }],
  ['INTERACTION_CREATE', { type: 3, data: { custom_id: 5 } }],
  ['GUILD_CREATE', { id: '400000000000000001', unavailable: true }],
  ['MESSAGE_CREATE', { id: '1', channel_id: '2' }],
  ['NEVER_HEARD_OF', { a: [1, 2, 3] }],
]

type Deed = (discord: FakeDiscord, random: Random) => unknown

const deeds: ReadonlyArray<readonly [string, Deed]> = [
  ['the sockets are torn', (discord) => discord.dropSockets()],
  ['one socket is torn', (discord) => discord.dropSockets(0)],
  ['Discord asks to reconnect', (discord) => discord.askToReconnect()],
  ['the sockets are closed with 4000', (discord) => discord.closeSockets(4000)],
  ['a session has timed out', (discord) => discord.closeSockets(4009)],
  [
    'nobody is there for two seconds',
    async (discord) => {
      await discord.refuseConnections(true)
      discord.dropSockets(1)
      await pause(2000)
      await discord.refuseConnections(false)
    },
  ],
  [
    'nonsense comes',
    (discord, random) => {
      for (let n = 0; n < 20; n++) {
        const [event, data] = nonsense[Math.floor(random() * nonsense.length)] as (typeof nonsense)[number]
        discord.dispatch(event, data)
      }
      discord.babble(JSON.stringify({ op: 11, d: null, s: null, t: null }))
      discord.babble(JSON.stringify({ op: 77, d: {}, s: null, t: null }))
    },
  ],
  ['the whole address is told to wait', (discord) => discord.fail('callback', faults.rateLimited(2, true))],
  ['edits are refused for a moment', (discord) => discord.fail('message-patch', faults.broken(502), 5)],
]

export const runChaos = async (discord: FakeDiscord, random: Random, isOver: () => boolean): Promise<Spell[]> => {
  const spells: Spell[] = []
  let lastEnd = performance.now()
  while (!isOver()) {
    await pause(5000 + random() * 6000)
    if (isOver()) break
    const spell: Spell = { name: '', from: performance.now(), to: Number.POSITIVE_INFINITY }
    // Ending sessions costs logins; it happens some times in ten minutes.
    const isEnd = performance.now() - lastEnd > 100_000
    const [name, deed] = isEnd
      ? (['the sessions are ended', (one: FakeDiscord) => one.endSessions(true)] as const)
      : (deeds[Math.floor(random() * deeds.length)] as (typeof deeds)[number])
    if (isEnd) lastEnd = performance.now()
    spells.push(spell)
    Object.assign(spell, { name })
    await deed(discord, random)
    await pause(name.includes('wait') ? 2500 : 300)
    await discord.ready(2, 90_000)
    // What was told to wait waits for those that were not taken in the meantime, too.
    await pause(200)
    spell.to = performance.now()
  }
  return spells
}
