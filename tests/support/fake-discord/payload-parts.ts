// The pieces that the refused and the passing payloads of the fake's own test are put together from.

import type { Ask } from './ask.ts'
import { charactersOf, type Json } from './limits.ts'

export const long = (length: number): string => 'x'.repeat(length)
export const many = <T>(count: number, make: (at: number) => T): T[] =>
  Array.from({ length: count }, (_, at) => make(at))

export const command: Json = { name: 'adapter', description: 'What to set' }
export const option = { type: 3, name: 'torque', description: 'What the fastener must get' }
export const subcommand = { type: 1, name: 'position', description: 'Where the hand pulls' }
export const group = { type: 2, name: 'more', description: 'More of them' }
export const withOptions = (...options: Json[]): Json[] => [{ ...command, options }]
export const withOption = (more: Json): Json[] => withOptions({ ...option, ...more })

/** One command of so many characters in all (7802 to 8200), in choices of two options. */
export function sized(characters: number): Json[] {
  const options = many(2, (at) => ({ ...option, name: `o${at}`, choices: [] as Json[] }))
  const left = characters - charactersOf({ ...command, options })
  const full = (at: number, length: number) => `${at}`.padEnd(length, 'x')
  const choices = many(40, (at) => ({ name: full(at, 100), value: full(at, at < 39 ? 100 : left - 39 * 200 - 100) }))
  return [
    { ...command, options: options.map((one, at) => ({ ...one, choices: choices.slice(at * 25, at * 25 + 25) })) },
  ]
}

export const fresh = { content: 'a' }
export const message = (more: Json): Json => ({ type: 4, data: { allowed_mentions: { parse: [] }, ...more } })
export const embed = (more: Json): Json => message({ embeds: [{ title: 'Set 84.9 N·m', ...more }] })
export const field = (more: Json): Json => embed({ fields: [{ name: 'a', value: 'b', ...more }] })

export const button = { type: 2, style: 2, label: '90°', custom_id: 'angle:90' }
export const select = { type: 3, custom_id: 's', options: [{ label: 'a', value: 'a' }] }
export const row = (...components: Json[]): Json => ({ type: 1, components })
export const rows = (...components: Json[]): Json => message({ content: 'a', components })
export const text = (content: string): Json => ({ type: 10, content })
export const box = (...components: Json[]): Json => ({ type: 17, components })
export const layout = (...components: Json[]): Json => message({ flags: 32768, components })

export const input = { type: 4, custom_id: 'torque', style: 1 }
export const label = (more: Json = {}): Json => ({ type: 18, label: 'Torque', component: input, ...more })
export const modal = (more: Json): Json => ({
  type: 9,
  data: { title: 'Ask', custom_id: 'ask', components: [label()], ...more },
})
export const suggestions = (...choices: Json[]): Json => ({ type: 8, data: { choices } })

/** A callback, what it answers (a slash command if not said), and its files by part name and size. */
export interface CallbackRow {
  why: string
  body: Json
  ask?: Ask
  files?: Record<string, number>
}

export interface RefusedCallback extends CallbackRow {
  path: string
  code: string
}

export const refused = (
  why: string,
  body: Json,
  path: string,
  code: string,
  more: Pick<CallbackRow, 'ask' | 'files'> = {},
): RefusedCallback => ({ why, body, path, code, ...more })
