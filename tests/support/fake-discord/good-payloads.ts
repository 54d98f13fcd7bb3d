// Payloads at the very edge of what Discord takes: none of them may be refused.

import { interactions } from './interactions.ts'
import type { Json } from './limits.ts'
import {
  box,
  button,
  type CallbackRow,
  command,
  group,
  input,
  label,
  layout,
  long,
  many,
  message,
  modal,
  option,
  row,
  rows,
  sized,
  subcommand,
  suggestions,
  text,
} from './payload-parts.ts'

const ask = interactions.autocomplete
const half = { ...option, type: 10, min_value: 0.5 }

export const goodCommands: Json[] = [
  { ...command, name: 'schlüssel-größe', name_localizations: { de: long(32) }, description: long(100) },
  { ...command, options: many(25, (at) => ({ ...option, name: `o${at}`, required: at < 3, choices: [] })) },
  { ...command, name: 'hand', options: [{ ...group, options: [{ ...subcommand, options: [half] }] }] },
  ...sized(8000).map((one) => ({ ...one, name: 'longest', description: 'What to set' })),
  { type: 3, name: 'Work this out' },
]

const wide = { ...button, label: long(80) }
const inputs = many(5, (at) => label({ label: long(45), component: { ...input, custom_id: `i${at}` } }))
const drawn = {
  embeds: [{ image: { url: 'attachment://picture.png' } }],
  attachments: [{ id: '0', description: long(1024) }],
}
const choices = many(25, (at) => ({ name: long(100), value: `${at}` }))

export const goodCallbacks: CallbackRow[] = [
  { why: 'content of 2000', body: message({ content: long(2000), flags: 64 }) },
  {
    why: '6000 characters of embed',
    body: message({ embeds: [{ description: long(4096) }, { description: long(1904) }] }),
  },
  {
    why: '5 rows of 5 buttons',
    body: rows(...many(5, (y) => row(...many(5, (x) => ({ ...wide, custom_id: `${x}${y}${long(98)}` }))))),
  },
  {
    why: '40 components and 4000 characters',
    body: layout(box(...many(39, (at) => text(long(at === 0 ? 200 : 100))))),
  },
  { why: 'a section with a button', body: layout({ type: 9, components: [text('a')], accessory: button }) },
  { why: 'a file with alt text in an embed', body: message(drawn), files: { 'files[0]': 8 } },
  { why: 'a file just below 10 MiB', body: message({}), files: { 'files[0]': 10 * 2 ** 20 - 1 } },
  { why: '25 suggestions', ask, body: suggestions(...choices) },
  { why: 'no suggestion', ask, body: suggestions() },
  { why: 'a modal of 5 labelled inputs', body: modal({ title: long(45), components: inputs }) },
  { why: 'a modal of the older kind', body: modal({ components: [row({ ...input, label: 'Torque' })] }) },
  { why: 'a deferral that only the asker sees', body: { type: 5, data: { flags: 64 } } },
]
