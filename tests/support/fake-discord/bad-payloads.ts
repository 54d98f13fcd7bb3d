// Payloads that Discord (or the house) refuses, each with the reason, where the complaint must lie and its code; and
// payloads at the very edge that must pass. Read by the fake's own test.

import type { Ask } from './ask.ts'
import { interactions } from './interactions.ts'
import type { Json } from './limits.ts'

const quiet = { allowed_mentions: { parse: [] } }
const long = (length: number) => 'x'.repeat(length)
const many = <T>(count: number, make: (at: number) => T): T[] => Array.from({ length: count }, (_, at) => make(at))

export const command: Json = { name: 'adapter', description: 'What to set' }
const option = { type: 3, name: 'torque', description: 'What the fastener must get' }
const withOptions = (...options: Json[]): Json[] => [{ ...command, options }]
const withOption = (more: Json): Json[] => withOptions({ ...option, ...more })
const subcommand = { type: 1, name: 'position', description: 'Where the hand pulls' }
const group = { type: 2, name: 'more', description: 'More of them' }

interface BadCommands {
  why: string
  list: Json[]
  path: string
  code: string
}

export const badCommands: BadCommands[] = [
  {
    why: 'a capital in the name',
    list: [{ ...command, name: 'Adapter' }],
    path: '0.name',
    code: 'APPLICATION_COMMAND_INVALID_NAME',
  },
  { why: 'a space in the name', list: [{ ...command, name: 'crow foot' }], path: '0.name', code: 'STRING_TYPE_REGEX' },
  { why: 'a name of 33', list: [{ ...command, name: long(33) }], path: '0.name', code: 'BASE_TYPE_BAD_LENGTH' },
  { why: 'no description', list: [{ name: 'adapter' }], path: '0.description', code: 'BASE_TYPE_REQUIRED' },
  {
    why: 'a description of 101',
    list: [{ ...command, description: long(101) }],
    path: '0.description',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'a locale Discord has not',
    list: [{ ...command, description_localizations: { en: 'x' } }],
    path: '0.description_localizations.en',
    code: 'BASE_TYPE_CHOICES',
  },
  {
    why: 'a localized name in capitals',
    list: [{ ...command, name_localizations: { de: 'Aufsatz' } }],
    path: '0.name_localizations.de',
    code: 'APPLICATION_COMMAND_INVALID_NAME',
  },
  {
    why: '26 options',
    list: withOptions(...many(26, (at) => ({ ...option, name: `o${at}` }))),
    path: '0.options',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'one option twice',
    list: withOptions(option, option),
    path: '0.options.1.name',
    code: 'APPLICATION_COMMAND_OPTIONS_NAME_EXISTS',
  },
  {
    why: 'a required option after an optional one',
    list: withOptions(option, { ...option, name: 'lever', required: true }),
    path: '0.options.1.required',
    code: 'APPLICATION_COMMAND_OPTIONS_REQUIRED_INVALID',
  },
  {
    why: '26 choices',
    list: withOption({ choices: many(26, (at) => ({ name: `c${at}`, value: `c${at}` })) }),
    path: '0.options.0.choices',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'a choice name of 101',
    list: withOption({ choices: [{ name: long(101), value: 'a' }] }),
    path: '0.options.0.choices.0.name',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'a number as choice of a text',
    list: withOption({ choices: [{ name: 'a', value: 1 }] }),
    path: '0.options.0.choices.0.value',
    code: 'BASE_TYPE_STRING',
  },
  {
    why: 'choices beside autocomplete',
    list: withOption({ autocomplete: true, choices: [{ name: 'a', value: 'a' }] }),
    path: '0.options.0.autocomplete',
    code: 'APPLICATION_COMMAND_AUTOCOMPLETE_CHOICES',
  },
  {
    why: 'a sub-command beside a value',
    list: withOptions(subcommand, option),
    path: '0.options.1.type',
    code: 'APPLICATION_COMMAND_OPTIONS_TYPE_INVALID',
  },
  {
    why: 'a group within a group',
    list: withOptions({ ...group, options: [{ ...group, options: [subcommand] }] }),
    path: '0.options.0.options.0.type',
    code: 'APPLICATION_COMMAND_OPTIONS_TYPE_INVALID',
  },
  {
    why: 'a sub-command within a sub-command',
    list: withOptions({ ...subcommand, options: [subcommand] }),
    path: '0.options.0.options.0.type',
    code: 'APPLICATION_COMMAND_OPTIONS_TYPE_INVALID',
  },
  {
    why: 'a group without sub-commands',
    list: withOptions(group),
    path: '0.options.0.options',
    code: 'BASE_TYPE_REQUIRED',
  },
  {
    why: 'a required sub-command',
    list: withOptions({ ...subcommand, required: true }),
    path: '0.options.0.required',
    code: 'APPLICATION_COMMAND_OPTIONS_TYPE_INVALID',
  },
  {
    why: 'a text length on a number',
    list: withOption({ type: 10, max_length: 5 }),
    path: '0.options.0.max_length',
    code: 'APPLICATION_COMMAND_OPTIONS_TYPE_INVALID',
  },
  {
    why: 'more than 8000 characters, counting the longest localization',
    list: withOptions(
      ...many(25, (at) => ({
        ...option,
        name: `o${at}`,
        description_localizations: { de: long(100) },
        choices: many(5, (to) => ({ name: `${to}${long(20)}`, value: `${to}${long(24)}` })),
      })),
    ),
    path: '0',
    code: 'APPLICATION_COMMAND_TOO_LARGE',
  },
  {
    why: '101 chat commands',
    list: many(101, (at) => ({ ...command, name: `c${at}` })),
    path: '',
    code: 'APPLICATION_COMMAND_MAX',
  },
  {
    why: '16 message commands',
    list: many(16, (at) => ({ type: 3, name: `Work ${at}` })),
    path: '',
    code: 'APPLICATION_COMMAND_MAX',
  },
  { why: 'one name twice', list: [command, command], path: '1.name', code: 'APPLICATION_COMMANDS_DUPLICATE_NAME' },
  {
    why: 'a description on a message command',
    list: [{ type: 3, name: 'Work this out', description: 'no' }],
    path: '0.description',
    code: 'APPLICATION_COMMAND_INVALID_DESCRIPTION',
  },
  {
    why: 'options on a message command',
    list: [{ type: 3, name: 'Work this out', options: [option] }],
    path: '0.options',
    code: 'APPLICATION_COMMAND_OPTIONS_UNSUPPORTED',
  },
]

export const goodCommands: Json[] = [
  { ...command, name: 'schlüssel-größe', name_localizations: { de: long(32) }, description: long(100) },
  { ...command, options: many(25, (at) => ({ ...option, name: `o${at}`, required: at < 3, choices: [] })) },
  {
    ...command,
    name: 'hand',
    options: [{ ...group, options: [{ ...subcommand, options: [{ ...option, type: 10, min_value: 0.5 }] }] }],
  },
  { type: 3, name: 'Work this out' },
]

const message = (more: Json) => ({ type: 4, data: { ...quiet, ...more } })
const embed = (more: Json) => message({ embeds: [{ title: 'Set 84.9 N·m', ...more }] })
const button = { type: 2, style: 2, label: '90°', custom_id: 'angle:90' }
const row = (...components: Json[]) => ({ type: 1, components })
const rows = (...components: Json[]) => message({ content: 'a', components })
const select = { type: 3, custom_id: 's', options: [{ label: 'a', value: 'a' }] }
const text = (content: string) => ({ type: 10, content })
const layout = (...components: Json[]) => message({ flags: 32768, components })
const modal = (more: Json) => ({ type: 9, data: { title: 'Ask', custom_id: 'ask', components: [label({})], ...more } })
const input = { type: 4, custom_id: 'torque', style: 1 }
const label = (more: Json) => ({ type: 18, label: 'Torque', component: input, ...more })
const fresh = { content: 'a' }

interface BadCallback {
  why: string
  body: Json
  path: string
  code: string
  ask?: Ask
  files?: Record<string, number>
}

export const badCallbacks: BadCallback[] = [
  { why: 'a type that is none', body: { type: 3 }, path: 'type', code: 'INTERACTION_RESPONSE_TYPE_INVALID' },
  {
    why: 'an update where no message is',
    body: { type: 7, data: { ...quiet, content: 'a' } },
    path: 'type',
    code: 'INTERACTION_RESPONSE_TYPE_INVALID',
  },
  {
    why: 'a message as answer to autocomplete',
    ask: interactions.autocomplete,
    body: message(fresh),
    path: 'type',
    code: 'INTERACTION_RESPONSE_TYPE_INVALID',
  },
  {
    why: 'a modal as answer to a modal',
    ask: interactions.submit,
    body: modal({}),
    path: 'type',
    code: 'INTERACTION_RESPONSE_TYPE_INVALID',
  },
  { why: 'nothing in it', body: message({}), path: 'data', code: 'EMPTY_MESSAGE' },
  { why: 'blank content', body: message({ content: ' \n' }), path: 'data', code: 'EMPTY_MESSAGE' },
  {
    why: 'content of 2001',
    body: message({ content: long(2001) }),
    path: 'data.content',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  { why: 'no allowed_mentions', body: { type: 4, data: fresh }, path: 'data.allowed_mentions', code: 'HOUSE_NO_PINGS' },
  {
    why: 'allowed_mentions without parse',
    body: message({ ...fresh, allowed_mentions: {} }),
    path: 'data.allowed_mentions.parse',
    code: 'HOUSE_NO_PINGS',
  },
  {
    why: 'allowed_mentions of users',
    body: message({ ...fresh, allowed_mentions: { parse: ['users'] } }),
    path: 'data.allowed_mentions.parse',
    code: 'HOUSE_NO_PINGS',
  },
  {
    why: 'a flag that cannot be set',
    body: message({ ...fresh, flags: 128 }),
    path: 'data.flags',
    code: 'BASE_TYPE_CHOICES',
  },
  {
    why: 'another flag than ephemeral when deferring',
    body: { type: 5, data: { flags: 4 } },
    path: 'data.flags',
    code: 'BASE_TYPE_CHOICES',
  },
  {
    why: '11 embeds',
    body: message({ embeds: many(11, () => ({ title: 'a' })) }),
    path: 'data.embeds',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'an empty embed',
    body: message({ embeds: [{}] }),
    path: 'data.embeds.0.description',
    code: 'BASE_TYPE_REQUIRED',
  },
  {
    why: 'an embed title of 257',
    body: embed({ title: long(257) }),
    path: 'data.embeds.0.title',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'an embed description of 4097',
    body: embed({ description: long(4097) }),
    path: 'data.embeds.0.description',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: '26 fields',
    body: embed({ fields: many(26, () => ({ name: 'a', value: 'b' })) }),
    path: 'data.embeds.0.fields',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'a field name of 257',
    body: embed({ fields: [{ name: long(257), value: 'b' }] }),
    path: 'data.embeds.0.fields.0.name',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'an empty field value',
    body: embed({ fields: [{ name: 'a', value: '' }] }),
    path: 'data.embeds.0.fields.0.value',
    code: 'BASE_TYPE_REQUIRED',
  },
  {
    why: 'a field value of 1025',
    body: embed({ fields: [{ name: 'a', value: long(1025) }] }),
    path: 'data.embeds.0.fields.0.value',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'a footer of 2049',
    body: embed({ footer: { text: long(2049) } }),
    path: 'data.embeds.0.footer.text',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'an author of 257',
    body: embed({ author: { name: long(257) } }),
    path: 'data.embeds.0.author.name',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: '6001 characters in two embeds',
    body: message({ embeds: [{ description: long(4000) }, { description: long(2001) }] }),
    path: 'data.embeds',
    code: 'MAX_EMBED_SIZE_EXCEEDED',
  },
  {
    why: 'an embed image that was not uploaded',
    body: embed({ image: { url: 'attachment://a.png' } }),
    path: 'data.embeds',
    code: 'UNFURLED_MEDIA_ITEM_REFERENCED_ATTACHMENT_NOT_FOUND',
  },
  {
    why: '6 rows',
    body: rows(...many(6, (at) => row({ ...button, custom_id: `b${at}` }))),
    path: 'data.components',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: '6 buttons in a row',
    body: rows(row(...many(6, (at) => ({ ...button, custom_id: `b${at}` })))),
    path: 'data.components.0.components',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  { why: 'a button outside a row', body: rows(button), path: 'data.components.0.type', code: 'UNION_TYPE_CHOICES' },
  {
    why: 'one custom id twice',
    body: rows(row(button), row(button)),
    path: 'data.components.1.components.0.custom_id',
    code: 'COMPONENT_CUSTOM_ID_DUPLICATED',
  },
  {
    why: 'a custom id of 101',
    body: rows(row({ ...button, custom_id: long(101) })),
    path: 'data.components.0.components.0.custom_id',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'a button label of 81',
    body: rows(row({ ...button, label: long(81) })),
    path: 'data.components.0.components.0.label',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'a button without a label',
    body: rows(row({ type: 2, style: 1, custom_id: 'a' })),
    path: 'data.components.0.components.0.label',
    code: 'BUTTON_COMPONENT_LABEL_REQUIRED',
  },
  {
    why: 'a link button with a custom id',
    body: rows(row({ ...button, style: 5, url: 'https://example.org' })),
    path: 'data.components.0.components.0.custom_id',
    code: 'BUTTON_COMPONENT_CUSTOM_ID_URL_MUTUALLY_EXCLUSIVE',
  },
  {
    why: 'a select beside a button',
    body: rows(row(select, button)),
    path: 'data.components.0.components',
    code: 'COMPONENT_LAYOUT_WIDTH_EXCEEDED',
  },
  {
    why: '26 select options',
    body: rows(row({ ...select, options: many(26, (at) => ({ label: 'a', value: `${at}` })) })),
    path: 'data.components.0.components.0.options',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'a layout without its flag',
    body: rows(text('a')),
    path: 'data.components.0.type',
    code: 'UNION_TYPE_CHOICES',
  },
  {
    why: 'content beside a layout',
    body: message({ flags: 32768, content: 'a', components: [text('a')] }),
    path: 'data.content',
    code: 'MESSAGE_CANNOT_USE_LEGACY_FIELDS_WITH_COMPONENTS_V2',
  },
  {
    why: '41 components, the nested counted',
    body: layout({ type: 17, components: many(40, () => text('a')) }),
    path: 'data.components',
    code: 'COMPONENT_MAX_TOTAL_COMPONENTS_EXCEEDED',
  },
  {
    why: '4001 characters in a layout',
    body: layout(text(long(4000)), text('a')),
    path: 'data.components',
    code: 'COMPONENT_DISPLAYABLE_TEXT_SIZE_EXCEEDED',
  },
  {
    why: 'a section without its accessory',
    body: layout({ type: 9, components: [text('a')] }),
    path: 'data.components.0.accessory',
    code: 'BASE_TYPE_REQUIRED',
  },
  {
    why: 'a container within a container',
    body: layout({ type: 17, components: [{ type: 17, components: [text('a')] }] }),
    path: 'data.components.0.components.0.type',
    code: 'UNION_TYPE_CHOICES',
  },
  {
    why: 'alt text of 1025',
    body: message({ ...fresh, attachments: [{ id: 0, description: long(1025) }] }),
    files: { 'files[0]': 8 },
    path: 'data.attachments.0.description',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'an attachment without its file',
    body: message({ ...fresh, attachments: [{ id: 1 }] }),
    files: { 'files[0]': 8 },
    path: 'data.attachments.0.id',
    code: 'ATTACHMENT_NOT_FOUND',
  },
  {
    why: 'a file that is not listed',
    body: message({ ...fresh, attachments: [] }),
    files: { 'files[0]': 8 },
    path: 'data.attachments',
    code: 'ATTACHMENT_NOT_LISTED',
  },
  {
    why: 'a file under another name',
    body: message(fresh),
    files: { picture: 8 },
    path: 'data',
    code: 'FILE_FIELD_NAME',
  },
  {
    why: '10 MiB in two files',
    body: message(fresh),
    files: { 'files[0]': 6 * 2 ** 20, 'files[1]': 4 * 2 ** 20 },
    path: 'data',
    code: 'REQUEST_ENTITY_TOO_LARGE',
  },
  {
    why: '26 suggestions',
    ask: interactions.autocomplete,
    body: { type: 8, data: { choices: many(26, (at) => ({ name: `${at}`, value: `${at}` })) } },
    path: 'data.choices',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'a suggestion name of 101',
    ask: interactions.autocomplete,
    body: { type: 8, data: { choices: [{ name: long(101), value: 'a' }] } },
    path: 'data.choices.0.name',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'a suggestion value of 101',
    ask: interactions.autocomplete,
    body: { type: 8, data: { choices: [{ name: 'a', value: long(101) }] } },
    path: 'data.choices.0.value',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  { why: 'a modal title of 46', body: modal({ title: long(46) }), path: 'data.title', code: 'BASE_TYPE_BAD_LENGTH' },
  {
    why: 'a modal without inputs',
    body: modal({ components: [] }),
    path: 'data.components',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'a modal of 6 inputs',
    body: modal({ components: many(6, (at) => label({ component: { ...input, custom_id: `i${at}` } })) }),
    path: 'data.components',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'a label of 46',
    body: modal({ components: [label({ label: long(46) })] }),
    path: 'data.components.0.label',
    code: 'BASE_TYPE_BAD_LENGTH',
  },
  {
    why: 'one input id twice',
    body: modal({ components: [label({}), label({})] }),
    path: 'data.components.1.component.custom_id',
    code: 'COMPONENT_CUSTOM_ID_DUPLICATED',
  },
]

export const goodCallbacks: Omit<BadCallback, 'path' | 'code'>[] = [
  { why: 'content of 2000', body: message({ content: long(2000), flags: 64 }) },
  {
    why: '6000 characters of embed',
    body: message({ embeds: [{ description: long(4096) }, { description: long(1904) }] }),
  },
  {
    why: '5 rows of 5 buttons',
    body: rows(
      ...many(5, (y) => row(...many(5, (x) => ({ ...button, label: long(80), custom_id: `${x}${y}${long(98)}` })))),
    ),
  },
  {
    why: 'a layout of 40 components and 4000 characters',
    body: layout({ type: 17, components: many(39, (at) => text(long(at < 2 ? 1000 : 54))) }),
  },
  { why: 'a section with a button', body: layout({ type: 9, components: [text('a')], accessory: button }) },
  {
    why: 'a file with alt text in an embed',
    body: message({
      embeds: [{ image: { url: 'attachment://picture.png' } }],
      attachments: [{ id: '0', description: long(1024) }],
    }),
    files: { 'files[0]': 8 },
  },
  { why: 'a file just below 10 MiB', body: message({}), files: { 'files[0]': 10 * 2 ** 20 - 1 } },
  {
    why: '25 suggestions',
    ask: interactions.autocomplete,
    body: { type: 8, data: { choices: many(25, (at) => ({ name: long(100), value: `${at}` })) } },
  },
  { why: 'no suggestion', ask: interactions.autocomplete, body: { type: 8, data: { choices: [] } } },
  {
    why: 'a modal of 5 labelled inputs',
    body: modal({
      title: long(45),
      components: many(5, (at) => label({ label: long(45), component: { ...input, custom_id: `i${at}` } })),
    }),
  },
  { why: 'a modal of the older kind', body: modal({ components: [row({ ...input, label: 'Torque' })] }) },
  { why: 'a deferral that only the asker sees', body: { type: 5, data: { flags: 64 } } },
]
