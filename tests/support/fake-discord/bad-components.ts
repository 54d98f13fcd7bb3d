// Callbacks that Discord refuses for their buttons, selects or layout, each with the reason, where the complaint must
// lie and its code.

import type { Json } from './limits.ts'
import {
  box,
  button,
  layout,
  long,
  many,
  message,
  type RefusedCallback,
  refused,
  row,
  rows,
  select,
  text,
} from './payload-parts.ts'

const first = 'data.components.0.components.0'
const buttons = (count: number) => many(count, (at) => ({ ...button, custom_id: `b${at}` }))
const alone = (component: Json) => rows(row(component))
const options = many(26, (at) => ({ label: 'a', value: `${at}` }))
const only = (one: Json) => ({ ...select, options: [one] })
const link = { type: 2, style: 5, label: 'a' }
const section = { type: 9, accessory: button }
const gallery = (count: number) => ({
  type: 12,
  items: many(count, () => ({ media: { url: 'https://example.org/a.png' } })),
})
const urlOrId = 'BUTTON_COMPONENT_CUSTOM_ID_URL_MUTUALLY_EXCLUSIVE'
const beside = message({ flags: 32768, content: 'a', components: [text('a')] })

export const badComponents: RefusedCallback[] = [
  refused('6 rows', rows(...buttons(6).map((one) => row(one))), 'data.components', 'BASE_TYPE_BAD_LENGTH'),
  refused('6 buttons in a row', rows(row(...buttons(6))), 'data.components.0.components', 'BASE_TYPE_BAD_LENGTH'),
  refused('a button outside a row', rows(button), 'data.components.0.type', 'UNION_TYPE_CHOICES'),
  refused(
    'one custom id twice',
    rows(row(button), row(button)),
    'data.components.1.components.0.custom_id',
    'COMPONENT_CUSTOM_ID_DUPLICATED',
  ),
  refused(
    'a custom id of 101',
    alone({ ...button, custom_id: long(101) }),
    `${first}.custom_id`,
    'BASE_TYPE_BAD_LENGTH',
  ),
  refused('a button label of 81', alone({ ...button, label: long(81) }), `${first}.label`, 'BASE_TYPE_BAD_LENGTH'),
  refused(
    'a button without a label',
    alone({ ...button, label: '' }),
    `${first}.label`,
    'BUTTON_COMPONENT_LABEL_REQUIRED',
  ),
  refused(
    'a link with a custom id',
    alone({ ...button, style: 5, url: 'https://example.org' }),
    `${first}.custom_id`,
    urlOrId,
  ),
  refused('a url on a plain button', alone({ ...button, url: 'https://example.org' }), `${first}.url`, urlOrId),
  refused(
    'a select beside a button',
    rows(row(select, button)),
    'data.components.0.components',
    'COMPONENT_LAYOUT_WIDTH_EXCEEDED',
  ),
  refused('26 select options', alone({ ...select, options }), `${first}.options`, 'BASE_TYPE_BAD_LENGTH'),
  refused(
    'a select placeholder of 151',
    alone({ ...select, placeholder: long(151) }),
    `${first}.placeholder`,
    'BASE_TYPE_BAD_LENGTH',
  ),
  refused(
    'a select label of 101',
    alone(only({ label: long(101), value: 'a' })),
    `${first}.options.0.label`,
    'BASE_TYPE_BAD_LENGTH',
  ),
  refused(
    'a select value of 101',
    alone(only({ label: 'a', value: long(101) })),
    `${first}.options.0.value`,
    'BASE_TYPE_BAD_LENGTH',
  ),
  refused('a url of 513', alone({ ...link, url: `https://${long(505)}` }), `${first}.url`, 'BASE_TYPE_BAD_LENGTH'),
  refused('a layout without its flag', rows(text('a')), 'data.components.0.type', 'UNION_TYPE_CHOICES'),
  refused('content beside a layout', beside, 'data.content', 'MESSAGE_CANNOT_USE_LEGACY_FIELDS_WITH_COMPONENTS_V2'),
  refused(
    '41 components, nested ones counted',
    layout(box(...many(40, () => text('a')))),
    'data.components',
    'COMPONENT_MAX_TOTAL_COMPONENTS_EXCEEDED',
  ),
  refused(
    '4001 characters of text',
    layout(text(long(4000)), text('a')),
    'data.components',
    'COMPONENT_DISPLAYABLE_TEXT_SIZE_EXCEEDED',
  ),
  refused(
    'a section without accessory',
    layout({ type: 9, components: [text('a')] }),
    'data.components.0.accessory',
    'BASE_TYPE_REQUIRED',
  ),
  refused(
    'a section of 4 texts',
    layout({ ...section, components: many(4, () => text('a')) }),
    'data.components.0.components',
    'BASE_TYPE_BAD_LENGTH',
  ),
  refused('a gallery of 11', layout(gallery(11)), 'data.components.0.items', 'BASE_TYPE_BAD_LENGTH'),
  refused('a box within a box', layout(box(box(text('a')))), `${first}.type`, 'UNION_TYPE_CHOICES'),
]
