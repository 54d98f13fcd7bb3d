// Callbacks that Discord refuses for their files, suggestions or modals, each with the reason, where the complaint must
// lie and its code.

import { interactions } from './interactions.ts'
import type { Json } from './limits.ts'
import {
  fresh,
  input,
  label,
  long,
  many,
  message,
  modal,
  type RefusedCallback,
  refused,
  row,
  suggestions,
} from './payload-parts.ts'

const ask = interactions.autocomplete
const files = { 'files[0]': 8 }
const mebibyte = 2 ** 20
const huge = { files: { 'files[0]': 6 * mebibyte, 'files[1]': 4 * mebibyte } }
const listed = (...attachments: unknown[]) => message({ ...fresh, attachments })
const inputs = many(6, (at) => label({ component: { ...input, custom_id: `i${at}` } }))
const choices = many(26, (at) => ({ name: `${at}`, value: `${at}` }))
const inner = 'data.components.0'
const form = (more: Json) => modal({ components: [label(more)] })
const asking = (more: Json) => form({ component: { ...input, ...more } })
const twice = 'COMPONENT_CUSTOM_ID_DUPLICATED'

export const badFilesAndForms: RefusedCallback[] = [
  refused(
    'alt text of 1025',
    listed({ id: 0, description: long(1025) }),
    'data.attachments.0.description',
    'BASE_TYPE_BAD_LENGTH',
    { files },
  ),
  refused(
    'an attachment without its file',
    listed({ id: 0 }, { id: 1 }),
    'data.attachments.1.id',
    'ATTACHMENT_NOT_FOUND',
    { files },
  ),
  refused('a file that is not listed', listed(), 'data.attachments', 'ATTACHMENT_NOT_LISTED', { files }),
  refused('a file under another name', message(fresh), 'data', 'FILE_FIELD_NAME', { files: { picture: 8 } }),
  refused('10 MiB in two files', message(fresh), 'data', 'REQUEST_ENTITY_TOO_LARGE', huge),
  refused('26 suggestions', suggestions(...choices), 'data.choices', 'BASE_TYPE_BAD_LENGTH', { ask }),
  refused(
    'a suggestion name of 101',
    suggestions({ name: long(101), value: 'a' }),
    'data.choices.0.name',
    'BASE_TYPE_BAD_LENGTH',
    { ask },
  ),
  refused(
    'a suggestion value of 101',
    suggestions({ name: 'a', value: long(101) }),
    'data.choices.0.value',
    'BASE_TYPE_BAD_LENGTH',
    { ask },
  ),
  refused('a modal title of 46', modal({ title: long(46) }), 'data.title', 'BASE_TYPE_BAD_LENGTH'),
  refused('a modal without a custom id', modal({ custom_id: '' }), 'data.custom_id', 'BASE_TYPE_REQUIRED'),
  refused('a modal id of 101', modal({ custom_id: long(101) }), 'data.custom_id', 'BASE_TYPE_BAD_LENGTH'),
  refused(
    'a label description of 101',
    form({ description: long(101) }),
    `${inner}.description`,
    'BASE_TYPE_BAD_LENGTH',
  ),
  refused(
    'a placeholder of 101',
    asking({ placeholder: long(101) }),
    `${inner}.component.placeholder`,
    'BASE_TYPE_BAD_LENGTH',
  ),
  refused('a value of 4001', asking({ value: long(4001) }), `${inner}.component.value`, 'BASE_TYPE_BAD_LENGTH'),
  refused(
    'an input longer than 4000',
    asking({ max_length: 4001 }),
    `${inner}.component.max_length`,
    'NUMBER_TYPE_RANGE',
  ),
  refused('a label on a labelled input', asking({ label: 'a' }), `${inner}.component.label`, 'TEXT_INPUT_LABEL'),
  refused(
    'an older label of 46',
    modal({ components: [row({ ...input, label: long(46) })] }),
    `${inner}.components.0.label`,
    'BASE_TYPE_BAD_LENGTH',
  ),
  refused('a modal of 6 inputs', modal({ components: inputs }), 'data.components', 'BASE_TYPE_BAD_LENGTH'),
  refused(
    'a modal without inputs',
    modal({ components: [{ type: 10, content: 'a' }] }),
    'data.components',
    'BASE_TYPE_BAD_LENGTH',
  ),
  refused(
    'a label of 46',
    modal({ components: [label({ label: long(46) })] }),
    'data.components.0.label',
    'BASE_TYPE_BAD_LENGTH',
  ),
  refused(
    'one input id twice',
    modal({ components: [label(), label()] }),
    'data.components.1.component.custom_id',
    twice,
  ),
]
