// Lists of commands that Discord refuses, each with the reason, where the complaint must lie and its code.

import type { Json } from './limits.ts'
import { command, group, long, many, option, sized, subcommand, withOption, withOptions } from './payload-parts.ts'

interface RefusedCommands {
  why: string
  list: Json[]
  path: string
  code: string
}

const row = (why: string, list: Json[], path: string, code: string): RefusedCommands => ({ why, list, path, code })

const localized = sized(8000).map((one) => ({ ...one, description_localizations: { de: long(12) } }))
const messageCommand = { type: 3, name: 'Work this out' }
const nested = { ...group, options: [{ ...group, options: [subcommand] }] }
const lateRequired = [option, { ...option, name: 'lever', required: true }]
const choiceOf = (choice: Json) => withOption({ choices: [choice] })

export const badCommands: RefusedCommands[] = [
  row('a capital in the name', [{ ...command, name: 'Adapter' }], '0.name', 'APPLICATION_COMMAND_INVALID_NAME'),
  row('a space in the name', [{ ...command, name: 'crow foot' }], '0.name', 'STRING_TYPE_REGEX'),
  row('a name of 33', [{ ...command, name: long(33) }], '0.name', 'BASE_TYPE_BAD_LENGTH'),
  row('no description', [{ name: 'adapter' }], '0.description', 'BASE_TYPE_REQUIRED'),
  row('a description of 101', [{ ...command, description: long(101) }], '0.description', 'BASE_TYPE_BAD_LENGTH'),
  row(
    'a locale Discord has not',
    [{ ...command, description_localizations: { en: 'x' } }],
    '0.description_localizations.en',
    'BASE_TYPE_CHOICES',
  ),
  row(
    'a localized name in capitals',
    [{ ...command, name_localizations: { de: 'Aufsatz' } }],
    '0.name_localizations.de',
    'APPLICATION_COMMAND_INVALID_NAME',
  ),
  row(
    '26 options',
    withOptions(...many(26, (at) => ({ ...option, name: `o${at}` }))),
    '0.options',
    'BASE_TYPE_BAD_LENGTH',
  ),
  row('one option twice', withOptions(option, option), '0.options.1.name', 'APPLICATION_COMMAND_OPTIONS_NAME_EXISTS'),
  row(
    'a required option after an optional one',
    withOptions(...lateRequired),
    '0.options.1.required',
    'APPLICATION_COMMAND_OPTIONS_REQUIRED_INVALID',
  ),
  row(
    '26 choices',
    withOption({ choices: many(26, (at) => ({ name: `c${at}`, value: `c${at}` })) }),
    '0.options.0.choices',
    'BASE_TYPE_BAD_LENGTH',
  ),
  row(
    'a choice name of 101',
    choiceOf({ name: long(101), value: 'a' }),
    '0.options.0.choices.0.name',
    'BASE_TYPE_BAD_LENGTH',
  ),
  row(
    'a number as choice of a text',
    choiceOf({ name: 'a', value: 1 }),
    '0.options.0.choices.0.value',
    'BASE_TYPE_STRING',
  ),
  row(
    'a choice value of 101',
    choiceOf({ name: 'a', value: long(101) }),
    '0.options.0.choices.0.value',
    'BASE_TYPE_BAD_LENGTH',
  ),
  row(
    'an option description of 101',
    withOption({ description: long(101) }),
    '0.options.0.description',
    'BASE_TYPE_BAD_LENGTH',
  ),
  row(
    'choices beside autocomplete',
    withOption({ autocomplete: true, choices: [{ name: 'a', value: 'a' }] }),
    '0.options.0.autocomplete',
    'APPLICATION_COMMAND_AUTOCOMPLETE_CHOICES',
  ),
  row(
    'a sub-command beside a value',
    withOptions(subcommand, option),
    '0.options.1.type',
    'APPLICATION_COMMAND_OPTIONS_TYPE_INVALID',
  ),
  row(
    'a group within a group',
    withOptions(nested),
    '0.options.0.options.0.type',
    'APPLICATION_COMMAND_OPTIONS_TYPE_INVALID',
  ),
  row(
    'a sub-command within a sub-command',
    withOptions({ ...subcommand, options: [subcommand] }),
    '0.options.0.options.0.type',
    'APPLICATION_COMMAND_OPTIONS_TYPE_INVALID',
  ),
  row('a group without sub-commands', withOptions(group), '0.options.0.options', 'BASE_TYPE_REQUIRED'),
  row(
    'a required sub-command',
    withOptions({ ...subcommand, required: true }),
    '0.options.0.required',
    'APPLICATION_COMMAND_OPTIONS_TYPE_INVALID',
  ),
  row(
    'a text length on a number',
    withOption({ type: 10, max_length: 5 }),
    '0.options.0.max_length',
    'APPLICATION_COMMAND_OPTIONS_TYPE_INVALID',
  ),
  row('8001 characters', sized(8001), '0', 'APPLICATION_COMMAND_TOO_LARGE'),
  row('8001 characters in a longer localization', localized, '0', 'APPLICATION_COMMAND_TOO_LARGE'),
  row(
    '101 chat commands',
    many(101, (at) => ({ ...command, name: `c${at}` })),
    '',
    'APPLICATION_COMMAND_MAX',
  ),
  row(
    '16 message commands',
    many(16, (at) => ({ type: 3, name: `Work ${at}` })),
    '',
    'APPLICATION_COMMAND_MAX',
  ),
  row('one name twice', [command, command], '1.name', 'APPLICATION_COMMANDS_DUPLICATE_NAME'),
  row(
    'a description on a message command',
    [{ ...messageCommand, description: 'no' }],
    '0.description',
    'APPLICATION_COMMAND_INVALID_DESCRIPTION',
  ),
  row(
    'options on a message command',
    [{ ...messageCommand, options: [option] }],
    '0.options',
    'APPLICATION_COMMAND_OPTIONS_UNSUPPORTED',
  ),
]
