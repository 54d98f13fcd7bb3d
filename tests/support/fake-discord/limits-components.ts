// Discord's documented limits on the components of a message, of both kinds: rows of buttons and selects alone, or
// (flag 32768) layouts of 40 components. Source: Discord's developer documentation, 'Component Reference'.

import { type Check, isAbsent, isRecord, type Json } from './limits-check.ts'

export const componentsV2 = 1 << 15
const mostComponents = 40
const mostText = 4000
const selects = [3, 5, 6, 7, 8]
const inContainer = [1, 9, 10, 12, 13, 14]
const media = /^(https?|attachment):\/\/\S+$/

export interface Found {
  customIds: Set<string>
  count: number
  text: number
}

export function checkCustomId(check: Check, of: Json, found: Found): void {
  const id = check.text(of, 'custom_id', { max: 100, needed: true })
  if (id !== '' && found.customIds.has(id))
    check.at('custom_id').say('COMPONENT_CUSTOM_ID_DUPLICATED', 'Component custom id cannot be duplicated')
  found.customIds.add(id)
}

function checkButton(check: Check, button: Json, found: Found): void {
  const style = check.whole(button, 'style', { min: 1, max: 5, needed: true })
  check.text(button, 'label', { max: 80 })
  check.flag(button, 'disabled')
  if (isAbsent(button['emoji']) && (isAbsent(button['label']) || button['label'] === ''))
    check.at('label').say('BUTTON_COMPONENT_LABEL_REQUIRED', 'A button has a label or an emoji')
  if (style === 5) {
    check.text(button, 'url', { max: 512, needed: true, pattern: /^(https?|discord):\/\/\S+$/ })
    if (!isAbsent(button['custom_id']))
      check.at('custom_id').say('BUTTON_COMPONENT_CUSTOM_ID_URL_MUTUALLY_EXCLUSIVE', 'A link button has no custom id')
  } else {
    checkCustomId(check, button, found)
    if (!isAbsent(button['url']))
      check.at('url').say('BUTTON_COMPONENT_CUSTOM_ID_URL_MUTUALLY_EXCLUSIVE', 'Only a link button has a url')
  }
}

export function checkSelect(check: Check, select: Json, found: Found): void {
  checkCustomId(check, select, found)
  check.text(select, 'placeholder', { max: 150 })
  const least = check.whole(select, 'min_values', { min: 0, max: 25 }) ?? 1
  const most = check.whole(select, 'max_values', { min: 1, max: 25 }) ?? 1
  if (least > most) check.at('min_values').say('NUMBER_TYPE_MAX', 'min_values must not be above max_values')
  if (select['type'] !== 3) return
  const values = new Set<string>()
  const options = check.list(select, 'options', { max: 25, min: 1, needed: true })
  for (const { item, check: here } of options) {
    here.text(item, 'label', { max: 100, needed: true })
    here.text(item, 'description', { max: 100 })
    const value = here.text(item, 'value', { max: 100, needed: true })
    if (values.has(value))
      here.at('value').say('SELECT_COMPONENT_OPTION_VALUE_DUPLICATED', 'The specified option value is already used')
    values.add(value)
  }
  if (most > options.length) check.at('max_values').say('NUMBER_TYPE_MAX', 'max_values must not be above the options')
}

function checkRow(check: Check, row: Json, found: Found): void {
  const list = check.list(row, 'components', { max: 5, min: 1, needed: true })
  found.count += list.length
  const hasSelect = list.some(({ item }) => selects.includes(Number(item['type'])))
  if (hasSelect && list.length > 1)
    check.at('components').say('COMPONENT_LAYOUT_WIDTH_EXCEEDED', 'A select fills its row alone')
  for (const { item, check: here } of list) {
    if (item['type'] === 2) checkButton(here, item, found)
    else if (selects.includes(Number(item['type']))) checkSelect(here, item, found)
    else here.at('type').say('UNION_TYPE_CHOICES', `Value of field "type" must be one of (2, ${selects.join(', ')}).`)
  }
}

function checkMedia(check: Check, of: Json, key: string, pattern = media): void {
  const item = of[key]
  if (isRecord(item)) check.at(key).text(item, 'url', { max: 2048, needed: true, pattern })
  else check.at(key).say('BASE_TYPE_REQUIRED', 'This field is required')
  check.text(of, 'description', { max: 1024 })
}

function checkSection(check: Check, section: Json, found: Found) {
  for (const { item, check: here } of check.list(section, 'components', { max: 3, min: 1, needed: true })) {
    if (item['type'] === 10) checkLayout(here, item, found, [10])
    else here.at('type').say('UNION_TYPE_CHOICES', 'Value of field "type" must be one of (10).')
  }
  const accessory = section['accessory']
  const here = check.at('accessory')
  if (!isRecord(accessory)) return here.say('BASE_TYPE_REQUIRED', 'This field is required')
  found.count += 1
  if (accessory['type'] === 2) checkButton(here, accessory, found)
  else if (accessory['type'] === 11) checkMedia(here, accessory, 'media')
  else here.at('type').say('UNION_TYPE_CHOICES', 'Value of field "type" must be one of (2, 11).')
}

function checkLayout(check: Check, item: Json, found: Found, allowed: readonly number[]) {
  found.count += 1
  const type = Number(item['type'])
  if (!allowed.includes(type))
    return check.at('type').say('UNION_TYPE_CHOICES', `Value of field "type" must be one of (${allowed.join(', ')}).`)
  if (type === 1) checkRow(check, item, found)
  if (type === 9) checkSection(check, item, found)
  if (type === 10) found.text += check.text(item, 'content', { max: mostText, needed: true }).length
  if (type === 12)
    for (const { item: one, check: here } of check.list(item, 'items', { max: 10, min: 1, needed: true }))
      checkMedia(here, one, 'media')
  if (type === 13) checkMedia(check, item, 'file', /^attachment:\/\/\S+$/)
  if (type === 14) check.whole(item, 'spacing', { min: 1, max: 2 })
  if (type === 17) {
    check.whole(item, 'accent_color', { min: 0, max: 0xffffff })
    for (const { item: one, check: here } of check.list(item, 'components', { max: 40, min: 1, needed: true }))
      checkLayout(here, one, found, inContainer)
  }
}

export function checkComponents(check: Check, message: Json, flags: number): void {
  const found: Found = { customIds: new Set(), count: 0, text: 0 }
  if ((flags & componentsV2) === 0) {
    for (const { item, check: here } of check.list(message, 'components', { max: 5 })) {
      if (item['type'] === 1) checkRow(here, item, found)
      else here.at('type').say('UNION_TYPE_CHOICES', 'Value of field "type" must be one of (1).')
    }
    return
  }
  for (const { item, check: here } of check.list(message, 'components', { max: mostComponents, min: 1 }))
    checkLayout(here, item, found, [...inContainer, 17])
  const here = check.at('components')
  if (found.count > mostComponents)
    here.say('COMPONENT_MAX_TOTAL_COMPONENTS_EXCEEDED', `${found.count} components, at most ${mostComponents}`)
  if (found.text > mostText)
    here.say('COMPONENT_DISPLAYABLE_TEXT_SIZE_EXCEEDED', `${found.text} characters of text, at most ${mostText}`)
  for (const key of ['content', 'embeds', 'poll', 'sticker_ids']) {
    const value = message[key]
    if (isAbsent(value) || value === '' || (Array.isArray(value) && value.length === 0)) continue
    check.at(key).say('MESSAGE_CANNOT_USE_LEGACY_FIELDS_WITH_COMPONENTS_V2', `${key} does not go with flag 32768`)
  }
}
