// The validator: every payload the fake receives goes through one of these and comes back with all that Discord (or
// the house) would refuse in it. Pure; who answered what before is the ledger's affair.

import { Check, type Complaint, isAbsent, isRecord, type Json } from './limits-check.ts'
import { type Before, checkMessage, checkOwnMessage, ephemeral, type Upload } from './limits-message.ts'
import { checkModal } from './limits-modal.ts'

export { type Complaint, isRecord, type Json, type Refusal, refusalOf } from './limits-check.ts'
export { charactersOf, checkCommandList } from './limits-commands.ts'
export type { Before, Upload } from './limits-message.ts'

export const callbackTypes = {
  pong: 1,
  message: 4,
  deferMessage: 5,
  deferUpdate: 6,
  update: 7,
  choices: 8,
  modal: 9,
} as const

/** Interaction type to the callback types it may be answered with; 6 and 7 need a message to be there. */
const answers: Record<number, readonly number[]> = { 1: [1], 2: [4, 5, 9], 3: [4, 5, 6, 7, 9], 4: [8], 5: [4, 5, 6, 7] }

function focusedType(raw: Json): number | undefined {
  const look = (list: unknown): number | undefined => {
    for (const option of Array.isArray(list) ? list : []) {
      if (!isRecord(option)) continue
      if (option['focused'] === true) return Number(option['type'])
      const inner = look(option['options'])
      if (inner !== undefined) return inner
    }
    return undefined
  }
  return look(isRecord(raw['data']) ? raw['data']['options'] : undefined)
}

function checkSuggestions(check: Check, data: Json, type: number | undefined): void {
  for (const { item, check: here } of check.list(data, 'choices', { max: 25, needed: true })) {
    here.text(item, 'name', { max: 100, needed: true })
    const numeric = type === 4 || type === 10
    if (!numeric) here.text(item, 'value', { max: 100, needed: true })
    else if (typeof item['value'] !== 'number')
      here.at('value').say('NUMBER_TYPE_COERCE', `Value "${String(item['value'])}" is not a number.`)
  }
}

/** A callback's whole body against the raw interaction it answers. */
export function checkCallback(body: unknown, files: readonly Upload[], raw: Json): Complaint[] {
  const check = new Check()
  if (!isRecord(body)) {
    check.say('DICT_TYPE_CONVERT', 'Only dictionaries may be used in a DictType')
    return check.complaints
  }
  const type = check.whole(body, 'type', { min: 1, max: 12, needed: true })
  const kind = Number(raw['type'])
  const fits = type !== undefined && answers[kind]?.includes(type)
  const onMessage = isRecord(raw['message'])
  if (type !== undefined && (!fits || ((type === 6 || type === 7) && !onMessage)))
    check.at('type').say('INTERACTION_RESPONSE_TYPE_INVALID', `Type ${type} does not answer interaction type ${kind}`)
  if (type === undefined || !Object.values<number>(callbackTypes).includes(type)) return check.complaints
  const here = check.at('data')
  const data = body['data']
  if (type === callbackTypes.pong || type === callbackTypes.deferUpdate) return check.complaints
  if (type === callbackTypes.deferMessage) {
    if (isAbsent(data)) return check.complaints
    if (!isRecord(data)) here.say('DICT_TYPE_CONVERT', 'Only dictionaries may be used in a DictType')
    else if (![0, ephemeral].includes(Number(data['flags'] ?? 0)))
      here.at('flags').say('BASE_TYPE_CHOICES', 'Only ephemeral may be set when deferring')
    return check.complaints
  }
  if (!isRecord(data)) here.say('BASE_TYPE_REQUIRED', 'This field is required')
  else if (type === callbackTypes.message) checkMessage(here, data, files)
  else if (type === callbackTypes.update) checkMessage(here, data, files, beforeOf(raw['message']))
  else if (type === callbackTypes.choices) checkSuggestions(here, data, focusedType(raw))
  else if (type === callbackTypes.modal) checkModal(here, data)
  return check.complaints
}

export function beforeOf(message: unknown): Before {
  if (!isRecord(message)) return { flags: 0, attachmentIds: [] }
  const attachments = Array.isArray(message['attachments']) ? message['attachments'] : []
  return {
    flags: Number(message['flags'] ?? 0),
    attachmentIds: attachments.filter(isRecord).map((one) => String(one['id'])),
  }
}

/** A follow-up message, or with `before` an edit. */
export function checkWebhookMessage(body: unknown, files: readonly Upload[], before?: Before): Complaint[] {
  const check = new Check()
  if (isRecord(body)) checkMessage(check, body, files, before)
  else check.say('DICT_TYPE_CONVERT', 'Only dictionaries may be used in a DictType')
  return check.complaints
}

/** A message of the bot's own in a channel. */
export function checkChannelMessage(body: unknown, files: readonly Upload[]): Complaint[] {
  const check = new Check()
  if (isRecord(body)) checkOwnMessage(check, body, files)
  else check.say('DICT_TYPE_CONVERT', 'Only dictionaries may be used in a DictType')
  return check.complaints
}
