// `/settings`: what people set for themselves, what those who manage a server set for it, and where the shop's digest goes.
import {
  type APIApplicationCommandInteraction,
  type APIApplicationCommandOption,
  type APIApplicationCommandSubcommandOption,
  type APIInteraction,
  ApplicationCommandOptionType,
  ChannelType,
  InteractionType,
} from 'discord.js'
import { DIGEST_CHANNEL, SHOP_SCOPE } from '../../desk/digest.ts'
import type { RegisterStore } from '../../store/lazy.ts'
import type { Language, Words } from '../../words/index.ts'
import { render } from '../../words/render.ts'
import { askerOf } from './asker.ts'
import { type Likings, ownScope, serverScope } from './liking.ts'
import { describe } from './option.ts'
import { textsOf } from './reading.ts'
import { refusalFor, roleIn, type WriterRoles } from './register/rights.ts'
import { type ChatReply, escapeChat, privateLine } from './reply.ts'

const NAME = 'settings'

const channelOption = (name: string, description: string) => ({
  name,
  type: ApplicationCommandOptionType.Channel as const,
  required: false,
  description: describe(description),
  channel_types: [ChannelType.GuildText as const, ChannelType.GuildAnnouncement as const],
})

const choiceOption = (name: string, description: string, choices: Readonly<Record<string, string>>) => ({
  name,
  type: ApplicationCommandOptionType.String as const,
  required: false,
  description: describe(description),
  choices: Object.entries(choices).map(([value, text]) => ({ name: text, value })),
})

export const settingsOptions = ({ chat: { settings }, digest }: Words): APIApplicationCommandOption[] => {
  const part = (
    name: keyof typeof settings.offers,
    options: APIApplicationCommandSubcommandOption['options'] = [],
  ): APIApplicationCommandSubcommandOption => ({
    name,
    type: ApplicationCommandOptionType.Subcommand,
    description: describe(settings.offers[name]),
    ...(options.length > 0 ? { options } : {}),
  })
  const { inputs, units } = settings
  return [
    part('show'),
    part('mine', [
      choiceOption('units', inputs.units, units),
      {
        name: 'wrench',
        type: ApplicationCommandOptionType.String,
        required: false,
        description: describe(inputs.wrench),
        autocomplete: true,
      },
      choiceOption('clear', inputs.clear, { units: 'units', wrench: 'wrench' }),
    ]),
    part('server', [
      choiceOption('units', inputs.serverUnits, units),
      channelOption('quiet', inputs.quiet),
      channelOption('reports', inputs.reports),
      choiceOption('clear', inputs.clear, { units: 'units', quiet: 'quiet', reports: 'reports' }),
    ]),
    part('digest', [channelOption('channel', digest.settings.channel)]),
  ]
}

export interface SettingsParts {
  readonly store: Pick<RegisterStore, 'settings' | 'set' | 'own' | 'setOwn'>
  readonly likings: Likings
  readonly roles: WriterRoles
  /** Whether a wrench of this tag is in the register, and how it is written there. */
  readonly tagOf: (text: string) => Promise<string | undefined>
  readonly now: () => number
}

/** So many channels of a server may be quiet: the whole list is written anew each time. */
const MOST_QUIET = 50

type Texts = Readonly<Record<string, string>>

/** Which of the options name channels. */
const ofChannels = ['quiet', 'reports', 'channel'] as const

/** Whether each channel that is named is one that Discord itself says is there. */
const areChannels = ({ data }: APIApplicationCommandInteraction, texts: Texts): boolean => {
  const known = ('resolved' in data && data.resolved && 'channels' in data.resolved && data.resolved.channels) || {}
  return ofChannels.every((name) => texts[name] === undefined || Object.hasOwn(known, texts[name]))
}

const channels = (ids: readonly string[]): string => ids.map((id) => `<#${id}>`).join(' ')

const mineText = async (user: string, { store }: SettingsParts, { chat: { settings } }: Words): Promise<string> => {
  const { units = 'none', wrench } = await store.own(ownScope(user))
  const told = {
    units: (settings.units as Readonly<Record<string, string>>)[units] ?? units,
    wrench: escapeChat(wrench ?? settings.nothing),
  }
  return render(settings.mine, (place) => told[place as keyof typeof told])
}

const serverText = async (
  guild: string,
  { store }: SettingsParts,
  { chat: { settings }, digest }: Words,
): Promise<string> => {
  const { units = 'none', quiet = '', reports } = await store.settings(serverScope(guild))
  const told = {
    units: (settings.units as Readonly<Record<string, string>>)[units] ?? units,
    quiet: quiet === '' ? settings.nothing : channels(quiet.split(',')),
    reports: reports === undefined ? settings.nowhere : channels([reports]),
  }
  const channel = (await store.settings(SHOP_SCOPE))[DIGEST_CHANNEL]
  const goes = channel === undefined ? digest.settings.none : render(digest.settings.goes, () => channel)
  return `${render(settings.server, (place) => told[place as keyof typeof told])}\n${goes}`
}

const setMine = async (user: string, texts: Texts, parts: SettingsParts, words: Words): Promise<string | undefined> => {
  const owner = ownScope(user)
  const at = new Date(parts.now()).toISOString()
  const set = (name: string, value: string | null): Promise<void> => parts.store.setOwn({ owner, name, value, at })
  const { units, wrench, clear } = texts
  if (clear !== undefined) await set(clear, null)
  if (wrench !== undefined) {
    const tag = await parts.tagOf(wrench)
    if (tag === undefined) return words.chatRegister.noSuchWrench
    await set('wrench', tag)
  }
  if (units !== undefined) await set('units', units === 'none' ? null : units)
  parts.likings.changed(owner)
  return undefined
}

/** A channel that is named again is no longer quiet. */
const withQuiet = (known: string, channel: string): { readonly ids: readonly string[]; readonly isQuiet: boolean } => {
  const ids = known.split(',').filter((id) => id !== '')
  const isQuiet = !ids.includes(channel)
  const rest = ids.filter((id) => id !== channel)
  return { ids: isQuiet ? [...rest, channel] : rest, isQuiet }
}

const setServer = async (
  guild: string,
  texts: Texts,
  { store, likings, now }: SettingsParts,
  { chat: { settings } }: Words,
): Promise<readonly string[]> => {
  const scope = serverScope(guild)
  const set = (name: string, value: string | null): Promise<void> =>
    store.set({ scope, name, value, at: new Date(now()).toISOString(), by: { role: 'keeper', door: 'chat' } })
  const lines: string[] = []
  const { units, quiet, reports, clear } = texts
  if (clear !== undefined) await set(clear, null)
  if (units !== undefined) await set('units', units === 'none' ? null : units)
  if (reports !== undefined) await set('reports', reports)
  if (quiet !== undefined) {
    const { ids, isQuiet } = withQuiet((await store.settings(scope))['quiet'] ?? '', quiet)
    if (isQuiet && ids.length > MOST_QUIET) lines.push(render(settings.quietFull, () => String(MOST_QUIET)))
    else {
      await set('quiet', ids.join(','))
      lines.push(render(isQuiet ? settings.quietOn : settings.quietOff, () => channels([quiet])))
    }
  }
  likings.changed(scope)
  return lines
}

const setDigest = (channel: string | undefined, { store, now }: SettingsParts): Promise<void> =>
  store.set({
    scope: SHOP_SCOPE,
    name: DIGEST_CHANNEL,
    value: channel ?? null,
    at: new Date(now()).toISOString(),
    by: { role: 'keeper', door: 'chat' },
  })

/** The reply to `/settings`; undefined where it is another command. Told to the asker alone. */
export const handleSettings = async (
  interaction: APIInteraction,
  parts: SettingsParts,
  { words }: Language,
): Promise<ChatReply | undefined> => {
  if (interaction.type !== InteractionType.ApplicationCommand || interaction.data.name !== NAME) return undefined
  const [part] = 'options' in interaction.data ? (interaction.data.options ?? []) : []
  if (part?.type !== ApplicationCommandOptionType.Subcommand) return undefined
  const texts = textsOf(part.options)
  const { user } = askerOf(interaction)
  const guild = interaction.guild_id
  const { settings } = words.chat
  if (part.name === 'mine') {
    const wrong = await setMine(user, texts, parts, words)
    const mine = await mineText(user, parts, words)
    return privateLine(wrong ?? (Object.keys(texts).length > 0 ? `${settings.kept}\n${mine}` : mine))
  }
  if (part.name === 'show') {
    const lines = [await mineText(user, parts, words), ...(guild ? [await serverText(guild, parts, words)] : [])]
    return privateLine(lines.join('\n'))
  }
  if (guild === undefined) return privateLine(settings.onlyServer)
  if (roleIn(interaction, parts.roles) !== 'keeper')
    return privateLine(refusalFor(interaction, parts.roles, words, settings.forbidden))
  if (!areChannels(interaction, texts)) return privateLine(settings.noChannel)
  const lines = part.name === 'server' ? await setServer(guild, texts, parts, words) : []
  if (part.name === 'digest') await setDigest(texts['channel'], parts)
  return privateLine([...lines, await serverText(guild, parts, words)].join('\n'))
}
