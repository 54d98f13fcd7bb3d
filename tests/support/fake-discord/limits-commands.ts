// Discord's documented limits on application commands, as one bulk PUT has to keep them. Complains of everything at
// once; knows nothing of what the commands are for.
// Source: Discord's developer documentation, 'Application Commands' (structure, naming, registering, localization).

import { Check, type Complaint, isAbsent, isRecord, type Json } from './limits-check.ts'

const chatName = /^[-_'\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]{1,32}$/u
const locales = new Set(
  (
    'id da de en-GB en-US es-ES es-419 fr hr it lt hu nl no pl pt-BR ro fi sv-SE vi tr cs el bg ru uk hi th ' +
    'zh-CN ja zh-TW ko'
  ).split(' '),
)
const mostOfType: Record<number, number> = { 1: 100, 2: 15, 3: 15 }
const mostCharacters = 8000

function checkName(check: Check, of: Json, key: string, chat: boolean): void {
  const name = check.text(of, key, { max: 32, needed: true, ...(chat && { pattern: chatName }) })
  if (chat && name !== name.toLowerCase())
    check.at(key).say('APPLICATION_COMMAND_INVALID_NAME', 'Command name is invalid: use the lower case of each letter')
}

function checkLocalized(check: Check, of: Json, key: 'name' | 'description', most: number, chat: boolean) {
  const map = of[`${key}_localizations`]
  if (isAbsent(map)) return
  const here = check.at(`${key}_localizations`)
  if (!isRecord(map)) return here.say('DICT_TYPE_CONVERT', 'Only dictionaries may be used in a DictType')
  for (const locale of Object.keys(map)) {
    if (!locales.has(locale)) here.at(locale).say('BASE_TYPE_CHOICES', `Discord has no locale ${locale}`)
    if (isAbsent(map[locale])) continue
    if (key === 'name' && chat) checkName(here, map, locale, true)
    else here.text(map, locale, { min: 1, max: most })
  }
}

function checkChoices(check: Check, option: Json, type: number): void {
  const seen = { name: new Set<unknown>(), value: new Set<unknown>() }
  for (const { item, check: here } of check.list(option, 'choices', { max: 25 })) {
    here.text(item, 'name', { max: 100, needed: true })
    checkLocalized(here, item, 'name', 100, false)
    if (type === 3) here.text(item, 'value', { max: 100, needed: true })
    else if (typeof item['value'] !== 'number' || (type === 4 && !Number.isInteger(item['value'])))
      here
        .at('value')
        .say('NUMBER_TYPE_COERCE', `Value "${String(item['value'])}" is not ${type === 4 ? 'int' : 'float'}.`)
    for (const key of ['name', 'value'] as const) {
      if (seen[key].has(item[key]))
        here.at(key).say('APPLICATION_COMMAND_OPTIONS_CHOICE_EXISTS', `Choice ${key} is there already`)
      seen[key].add(item[key])
    }
  }
}

function checkValueOption(check: Check, option: Json, type: number): void {
  const completes = check.flag(option, 'autocomplete')
  const has = (key: string) => !isAbsent(option[key])
  const wrong = (key: string) => check.at(key).say('APPLICATION_COMMAND_OPTIONS_TYPE_INVALID', `Not for type ${type}`)
  check.flag(option, 'required')
  if (has('options')) wrong('options')
  if (has('choices')) {
    if ([3, 4, 10].includes(type)) checkChoices(check, option, type)
    else wrong('choices')
    if (completes)
      check
        .at('autocomplete')
        .say('APPLICATION_COMMAND_AUTOCOMPLETE_CHOICES', 'Choices and autocomplete exclude each other')
  }
  if (completes && ![3, 4, 10].includes(type)) wrong('autocomplete')
  for (const key of ['min_length', 'max_length']) {
    if (has(key) && type !== 3) wrong(key)
    check.whole(option, key, { min: key === 'min_length' ? 0 : 1, max: 6000 })
  }
  for (const key of ['min_value', 'max_value']) if (has(key) && type !== 4 && type !== 10) wrong(key)
}

/** Depth 0: the command's own options; 1: those of a sub-command or a group; 2: those of a sub-command in a group. */
function checkOptions(check: Check, of: Json, holder: 'command' | 'group' | 'subcommand', depth: number): void {
  const names = new Set<unknown>()
  const list = check.list(of, 'options', { max: 25, min: holder === 'group' ? 1 : 0, needed: holder === 'group' })
  const nests = list.some(({ item }) => item['type'] === 1 || item['type'] === 2)
  let optional = false
  for (const { item, check: here } of list) {
    const type = here.whole(item, 'type', { min: 1, max: 11, needed: true })
    checkName(here, item, 'name', true)
    here.text(item, 'description', { max: 100, needed: true })
    checkLocalized(here, item, 'name', 32, true)
    checkLocalized(here, item, 'description', 100, false)
    if (names.has(item['name']))
      here.at('name').say('APPLICATION_COMMAND_OPTIONS_NAME_EXISTS', 'Option name already exists')
    names.add(item['name'])
    if (type === undefined) continue
    const nested = type === 1 || type === 2
    const fits = holder === 'command' ? nested === nests : holder === 'group' ? type === 1 : !nested
    if (!fits || depth > 2)
      here
        .at('type')
        .say(
          'APPLICATION_COMMAND_OPTIONS_TYPE_INVALID',
          'Sub-command and sub-command group option types are mutually exclusive to all other types',
        )
    if (nested) {
      if (!isAbsent(item['required'])) here.at('required').say('APPLICATION_COMMAND_OPTIONS_TYPE_INVALID', 'Not here')
      if (fits) checkOptions(here, item, type === 2 ? 'group' : 'subcommand', depth + 1)
      continue
    }
    checkValueOption(here, item, type)
    if (item['required'] !== true) optional = true
    else if (optional)
      here
        .at('required')
        .say(
          'APPLICATION_COMMAND_OPTIONS_REQUIRED_INVALID',
          'Required options must be placed before non-required options',
        )
  }
}

const longest = (of: Json, key: string): number => {
  const localized = of[`${key}_localizations`]
  const texts = [of[key], ...(isRecord(localized) ? Object.values(localized) : [])]
  return Math.max(...texts.map((text) => (isAbsent(text) ? 0 : String(text).length)))
}

/** Name, description and value of a command and of everything in it, each in its longest localization. */
export function charactersOf(of: unknown): number {
  if (!isRecord(of)) return 0
  const inner = [of['options'], of['choices']].flatMap((list): unknown[] => (Array.isArray(list) ? list : []))
  const own = longest(of, 'name') + longest(of, 'description') + longest(of, 'value')
  return own + inner.reduce((sum: number, one) => sum + charactersOf(one), 0)
}

function checkCommand(check: Check, command: Json): void {
  const type = isAbsent(command['type']) ? 1 : check.whole(command, 'type', { min: 1, max: 3 })
  const chat = type === 1
  checkName(check, command, 'name', chat)
  checkLocalized(check, command, 'name', 32, chat)
  if (chat) {
    check.text(command, 'description', { max: 100, needed: true })
    checkLocalized(check, command, 'description', 100, false)
    checkOptions(check, command, 'command', 0)
  } else {
    if (!isAbsent(command['description']) && command['description'] !== '')
      check.at('description').say('APPLICATION_COMMAND_INVALID_DESCRIPTION', 'Context menu commands have none')
    if (!isAbsent(command['options']))
      check.at('options').say('APPLICATION_COMMAND_OPTIONS_UNSUPPORTED', 'Context menu commands have none')
  }
  check.text(command, 'default_member_permissions', { max: 32, pattern: /^\d+$/ })
  check.flag(command, 'nsfw')
  check.flag(command, 'dm_permission')
  for (const [key, most] of [
    ['contexts', 2],
    ['integration_types', 1],
  ] as const) {
    const list = command[key]
    if (isAbsent(list)) continue
    const known = Array.isArray(list) && list.every((one) => Number.isInteger(one) && one >= 0 && one <= most)
    if (!known || new Set(list).size !== list.length) check.at(key).say('BASE_TYPE_CHOICES', `Each of 0–${most}, once`)
  }
  const characters = charactersOf(command)
  if (characters > mostCharacters)
    check.say('APPLICATION_COMMAND_TOO_LARGE', `Command exceeds maximum size (${mostCharacters}): ${characters}`)
}

export function checkCommandList(list: unknown): Complaint[] {
  const check = new Check()
  if (!Array.isArray(list)) {
    check.say('LIST_TYPE_CONVERT', 'Only iterables may be used in a ListType')
    return check.complaints
  }
  const seen = new Set<string>()
  const counts: Record<number, number> = {}
  for (const { item, check: here } of check.list({ list }, 'list', { max: Number.POSITIVE_INFINITY })) {
    const type = typeof item['type'] === 'number' ? item['type'] : 1
    const key = `${type} ${String(item['name'])}`
    counts[type] = (counts[type] ?? 0) + 1
    if (seen.has(key))
      here.at('name').say('APPLICATION_COMMANDS_DUPLICATE_NAME', 'Application command names must be unique')
    seen.add(key)
    checkCommand(here, item)
  }
  for (const [type, most] of Object.entries(mostOfType))
    if ((counts[Number(type)] ?? 0) > most)
      check.say('APPLICATION_COMMAND_MAX', `Maximum number of application commands of type ${type} reached (${most})`)
  return check.complaints.map((one) => ({ ...one, path: one.path.replace(/^list\.?/, '') }))
}
