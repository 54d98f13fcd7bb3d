// Discord's documented limits on a modal: its title, and one to five inputs, each in a label (or alone in a row, the
// older way). Source: Discord's developer documentation, 'Component Reference', and 'Receiving and Responding'.

import { type Check, isAbsent, isRecord, type Json } from './limits-check.ts'
import { checkCustomId, checkSelect, type Found } from './limits-components.ts'

const inLabel = [3, 4, 5, 6, 7, 8, 19, 21, 22, 23]

function checkTextInput(check: Check, input: Json, found: Found, labelled: boolean): void {
  checkCustomId(check, input, found)
  check.whole(input, 'style', { min: 1, max: 2, needed: true })
  const least = check.whole(input, 'min_length', { min: 0, max: 4000 }) ?? 0
  const most = check.whole(input, 'max_length', { min: 1, max: 4000 }) ?? 4000
  if (least > most) check.at('min_length').say('NUMBER_TYPE_MAX', 'min_length must not be above max_length')
  const value = check.text(input, 'value', { max: 4000 })
  if (value.length > most && value.length <= 4000)
    check.at('value').say('BASE_TYPE_MAX_LENGTH', `Must be ${most} or fewer in length.`)
  check.text(input, 'placeholder', { max: 100 })
  check.flag(input, 'required')
  if (!labelled) check.text(input, 'label', { max: 45, needed: true })
  else if (!isAbsent(input['label'])) check.at('label').say('TEXT_INPUT_LABEL', 'The label around it has the label')
}

function checkInput(check: Check, input: unknown, found: Found) {
  if (!isRecord(input)) return check.say('BASE_TYPE_REQUIRED', 'This field is required')
  const type = Number(input['type'])
  if (!inLabel.includes(type))
    return check.at('type').say('UNION_TYPE_CHOICES', `Value of field "type" must be one of (${inLabel.join(', ')}).`)
  if (!isAbsent(input['disabled'])) check.at('disabled').say('MODAL_DISABLED', 'A modal has no disabled components')
  if (type === 4) checkTextInput(check, input, found, true)
  else if (type <= 8) checkSelect(check, input, found)
  else checkCustomId(check, input, found)
}

export function checkModal(check: Check, modal: Json): void {
  check.text(modal, 'title', { max: 45, needed: true })
  check.text(modal, 'custom_id', { max: 100, needed: true })
  const found: Found = { customIds: new Set(), count: 0, text: 0 }
  let inputs = 0
  for (const { item, check: here } of check.list(modal, 'components', { max: 5, min: 1, needed: true })) {
    if (item['type'] === 18) {
      inputs += 1
      here.text(item, 'label', { max: 45, needed: true })
      here.text(item, 'description', { max: 100 })
      checkInput(here.at('component'), item['component'], found)
    } else if (item['type'] === 1) {
      inputs += 1
      for (const { item: input, check: inner } of here.list(item, 'components', { max: 1, min: 1, needed: true })) {
        if (input['type'] === 4) checkTextInput(inner, input, found, false)
        else inner.at('type').say('UNION_TYPE_CHOICES', 'Value of field "type" must be one of (4).')
      }
    } else if (item['type'] === 10) here.text(item, 'content', { max: 4000, needed: true })
    else here.at('type').say('UNION_TYPE_CHOICES', 'Value of field "type" must be one of (1, 10, 18).')
  }
  if (inputs === 0) check.at('components').say('BASE_TYPE_BAD_LENGTH', 'A modal has 1 to 5 inputs')
}
