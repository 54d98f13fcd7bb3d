// The `data` of a raw interaction. Where commands are registered it refuses what Discord's client could not send: an
// unknown command or option, a required one left out, a choice that is none, a press on a button that is not there.

import { type Ask, people, places } from './ask.ts'
import { isRecord, type Json } from './limits.ts'
import { snowflake } from './snowflake.ts'

const typeOfValue = (value: string | number | boolean): number =>
  typeof value === 'string' ? 3 : typeof value === 'boolean' ? 5 : Number.isInteger(value) ? 4 : 10

const optionsOf = (of: Json | undefined): Json[] =>
  Array.isArray(of?.['options']) ? of['options'].filter(isRecord) : []

function impossible(ask: Ask, why: string): never {
  throw new Error(`Discord could not send /${ask.command ?? ''}: ${why}`)
}

function enter(ask: Ask, from: Json | undefined, name: string | undefined): Json | undefined {
  const nested = optionsOf(from).filter((one) => one['type'] === 1 || one['type'] === 2)
  const next = nested.find((one) => one['name'] === name)
  if (from && name !== undefined && !next) impossible(ask, `it has no sub-command ${name}`)
  return name === undefined ? from : next
}

function valuesOf(ask: Ask, from: Json | undefined): Json[] {
  const declared = optionsOf(from)
  const given = ask.options ?? {}
  if (from) {
    const needed = declared.filter((one) => one['required'] === true && !(String(one['name']) in given))
    if (ask.kind !== 'autocomplete' && needed.length > 0)
      impossible(ask, `it requires ${needed.map((one) => one['name']).join(', ')}`)
    if (declared.some((one) => one['type'] === 1 || one['type'] === 2)) impossible(ask, 'it needs a sub-command')
  }
  return Object.entries(given).map(([name, value]) => {
    const option = declared.find((one) => one['name'] === name)
    if (from && !option) impossible(ask, `it has no option ${name}`)
    const choices = option?.['choices']
    if (
      ask.focused !== name &&
      Array.isArray(choices) &&
      !choices.some((one) => isRecord(one) && one['value'] === value)
    )
      impossible(ask, `${name} has no choice ${value}`)
    return { name, type: option?.['type'] ?? typeOfValue(value), value, ...(ask.focused === name && { focused: true }) }
  })
}

/** The channels that options name, as Discord tells of them beside; of its own making, whatever somebody typed. */
function resolvedOf(values: readonly Json[], ask: Ask): Json {
  const channels = values
    .filter(({ type }) => type === 7)
    .map(({ value }) => [
      String(value),
      { id: value, name: 'torque', type: 0, permissions: '0', parent_id: null, guild_id: ask.guild ?? places.shop },
    ])
  return channels.length > 0 ? { resolved: { channels: Object.fromEntries(channels) } } : {}
}

function commandData(ask: Ask, commands: readonly Json[]): Json {
  const type = ask.kind === 'message-command' ? 3 : 1
  const known = commands.find((one) => one['name'] === ask.command && one['type'] === type)
  const check = commands.length > 0 && !ask.stale
  if (check && !known) impossible(ask, 'no such command is registered')
  const head = { id: known?.['id'] ?? '200000000000000001', name: ask.command, type }
  if (type === 3) {
    const target = messageOf(ask)
    return { ...head, target_id: target['id'], resolved: { messages: { [String(target['id'])]: target } } }
  }
  let at = check ? known : undefined
  if (ask.group !== undefined) at = enter(ask, at, ask.group)
  if (ask.subcommand !== undefined) at = enter(ask, at, ask.subcommand)
  const values = valuesOf(ask, at)
  let options = values
  if (ask.subcommand !== undefined) options = [{ name: ask.subcommand, type: 1, options }]
  if (ask.group !== undefined) options = [{ name: ask.group, type: 2, options }]
  const resolved = resolvedOf(values, ask)
  return options.length > 0 ? { ...head, options, ...resolved } : head
}

export function messageOf(ask: Ask): Json {
  if (isRecord(ask.message)) return ask.message
  return {
    id: snowflake(),
    channel_id: ask.channel ?? places.channel,
    author: people.other,
    content: ask.message ?? '',
    type: 0,
    timestamp: new Date().toISOString(),
    edited_timestamp: null,
    attachments: [],
    embeds: [],
    components: [],
    mentions: [],
    mention_roles: [],
    mention_everyone: false,
    pinned: false,
    tts: false,
    flags: 0,
  }
}

function pressable(value: unknown, customId: string | undefined): Json | undefined {
  for (const one of Array.isArray(value) ? value : []) {
    if (!isRecord(one)) continue
    if (one['custom_id'] === customId && one['disabled'] !== true) return one
    const inner = pressable(one['components'], customId) ?? pressable([one['accessory']], customId)
    if (inner) return inner
  }
  return undefined
}

function componentData(ask: Ask): Json {
  const on = isRecord(ask.message) ? pressable(ask.message['components'], ask.customId) : undefined
  if (isRecord(ask.message) && !on && !ask.stale)
    throw new Error(`Discord could not send the press: the message has no live component ${ask.customId}`)
  const type = ask.componentType ?? on?.['type'] ?? (ask.values ? 3 : 2)
  return { id: 1, custom_id: ask.customId, component_type: type, ...(ask.values && { values: [...ask.values] }) }
}

function modalData(ask: Ask): Json {
  const inputs = Object.entries(ask.fields ?? {}).map(([custom_id, value], at) => ({
    id: at * 2 + 2,
    custom_id,
    value,
  }))
  const components = inputs.map((input, at) => ({ type: 18, id: at * 2 + 1, component: { type: 4, ...input } }))
  return { custom_id: ask.customId, components }
}

export function buildData(ask: Ask, commands: readonly Json[]): Json {
  if (ask.kind === 'component') return componentData(ask)
  return ask.kind === 'modal' ? modalData(ask) : commandData(ask, commands)
}
