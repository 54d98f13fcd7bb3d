// Registration: get what Discord has, compare, and put the whole list once if anything differs. A restart costs one GET.
import { type REST, Routes } from 'discord.js'

type Json = unknown

// Discord adds fields of its own and fills in defaults; only what we said is compared, and a default is as good as nothing said.
const isDefault = (value: Json): boolean =>
  value === null || value === undefined || value === false || (Array.isArray(value) && value.length === 0)

const asked = (ours: Json, theirs: Json): boolean => {
  if (Array.isArray(ours)) {
    if (!Array.isArray(theirs)) return isDefault(theirs) && ours.length === 0
    return ours.length === theirs.length && ours.every((one, index) => asked(one, theirs[index]))
  }
  if (ours !== null && typeof ours === 'object') {
    if (theirs === null || typeof theirs !== 'object') return false
    return Object.entries(ours).every(([name, value]) => asked(value, (theirs as Record<string, Json>)[name]))
  }
  return ours === theirs || (isDefault(ours) && isDefault(theirs))
}

// A choice or an option that only Discord's copy has is a difference too.
const extra = (ours: Json, theirs: Json): boolean => {
  if (Array.isArray(theirs) && theirs.length > 0) {
    return !Array.isArray(ours) || ours.length !== theirs.length || theirs.some((one, index) => extra(ours[index], one))
  }
  if (theirs === null || typeof theirs !== 'object' || Array.isArray(theirs)) return false
  const said = (ours ?? {}) as Record<string, Json>
  return ['options', 'choices'].some((name) => extra(said[name] ?? [], (theirs as Record<string, Json>)[name] ?? []))
}

/** What a registration would change, by command name. */
export interface RegistrationPlan {
  readonly add: readonly string[]
  readonly change: readonly string[]
  readonly remove: readonly string[]
}

type Named = { readonly name: string }

export const planRegistration = (ours: readonly Named[], theirs: readonly Named[]): RegistrationPlan => {
  const known = new Map(theirs.map((command) => [command.name, command]))
  const names = new Set(ours.map(({ name }) => name))
  return {
    add: ours.filter(({ name }) => !known.has(name)).map(({ name }) => name),
    change: ours
      .filter((one) => known.has(one.name) && (!asked(one, known.get(one.name)) || extra(one, known.get(one.name))))
      .map(({ name }) => name),
    remove: theirs.filter(({ name }) => !names.has(name)).map(({ name }) => name),
  }
}

export const changesAnything = ({ add, change, remove }: RegistrationPlan): boolean =>
  add.length + change.length + remove.length > 0

/** GET, compare, one bulk PUT if anything differs, and none where it is only tried. Throws what the REST client throws. */
export const register = async (
  rest: REST,
  applicationId: string | undefined,
  commands: readonly Named[],
  isTried = false,
): Promise<RegistrationPlan> => {
  // Without being asked for, what stands in other languages is left out, and every start would look like a change.
  const query = new URLSearchParams({ with_localizations: 'true' })
  const id = applicationId ?? ((await rest.get(Routes.currentApplication())) as { id: string }).id
  const theirs = (await rest.get(Routes.applicationCommands(id), { query })) as Named[]
  const plan = planRegistration(commands, theirs)
  if (!isTried && changesAnything(plan)) await rest.put(Routes.applicationCommands(id), { body: commands })
  return plan
}
