// The application's registered commands, kept and given back as Discord does: ids stay with a name, versions change
// with the content, defaults are filled in, and a plain GET leaves the localization dictionaries out.

import { isRecord, type Json } from './limits.ts'
import { snowflake } from './snowflake.ts'

const noise = new Set(['id', 'application_id', 'version'])

/** What Discord drops from an option: what is off, empty or null. */
function tidyOption(option: Json): Json {
  const entries = Object.entries(option).filter(([key, value]) => {
    if (value === null || value === undefined) return false
    if ((key === 'required' || key === 'autocomplete') && value === false) return false
    return !((key === 'options' || key === 'choices') && Array.isArray(value) && value.length === 0)
  })
  return Object.fromEntries(entries.map(([key, value]) => [key, key === 'options' ? tidyOptions(value) : value]))
}

const tidyOptions = (list: unknown): Json[] => (Array.isArray(list) ? list.filter(isRecord).map(tidyOption) : [])

function stored(command: Json, applicationId: string): Json {
  const options = tidyOptions(command['options'])
  const contexts = Array.isArray(command['contexts']) ? command['contexts'] : null
  return {
    application_id: applicationId,
    default_member_permissions: command['default_member_permissions'] ?? null,
    type: command['type'] ?? 1,
    name: command['name'],
    name_localizations: command['name_localizations'] ?? null,
    description: command['description'] ?? '',
    description_localizations: command['description_localizations'] ?? null,
    dm_permission: contexts ? contexts.includes(1) : (command['dm_permission'] ?? true),
    contexts,
    integration_types: command['integration_types'] ?? [0],
    ...(options.length > 0 && { options }),
    nsfw: command['nsfw'] ?? false,
  }
}

function withoutLocalizations(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutLocalizations)
  if (!isRecord(value)) return value
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key]) => key !== 'name_localizations' && key !== 'description_localizations')
      .map(([key, one]) => [key, withoutLocalizations(one)]),
  )
}

const content = (command: Json): string =>
  JSON.stringify(
    Object.entries(command)
      .filter(([key]) => !noise.has(key))
      .sort(),
  )

export function commandShelf(applicationId: string) {
  let list: Json[] = []
  return {
    /** Every one with its localization dictionaries. */
    all: (): readonly Json[] => list,
    replace(commands: readonly Json[]): Json[] {
      list = commands.map((command) => {
        const next = stored(command, applicationId)
        const old = list.find((one) => one['name'] === next['name'] && one['type'] === next['type'])
        const same = old !== undefined && content(old) === content(next)
        return { id: old?.['id'] ?? snowflake(), ...next, version: same ? old['version'] : snowflake() }
      })
      return list
    },
    get: (withLocalizations: boolean): unknown => (withLocalizations ? list : withoutLocalizations(list)),
  }
}
