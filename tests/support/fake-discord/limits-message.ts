// Discord's documented limits on one message that an application sends or edits, its files included; and the house
// rule that no message may ping anybody: `allowed_mentions.parse` is there and empty.

import { type Check, isAbsent, isRecord, type Json } from './limits-check.ts'
import { checkComponents, componentsV2 } from './limits-components.ts'
import { checkEmbeds } from './limits-embeds.ts'

export const ephemeral = 1 << 6
/** Suppress embeds, ephemeral, suppress notifications, voice message, components V2. */
const settable = (1 << 2) | ephemeral | (1 << 12) | (1 << 13) | componentsV2
const uploadBelow = 10 * 1024 * 1024

export interface Upload {
  key: string
  name: string
  contentType: string
  size: number
  bytes: Buffer
}

/** What an edited message was before: its flags stay, its attachments may be kept by id. */
export interface Before {
  flags: number
  attachmentIds: readonly string[]
}

function checkMentions(check: Check, message: Json) {
  const mentions = message['allowed_mentions']
  const here = check.at('allowed_mentions')
  if (!isRecord(mentions)) return here.say('HOUSE_NO_PINGS', 'Send allowed_mentions: {parse: []} with every message')
  if (!Array.isArray(mentions['parse']) || mentions['parse'].length > 0)
    here.at('parse').say('HOUSE_NO_PINGS', 'Must be there and empty')
  for (const key of ['users', 'roles'])
    if (Array.isArray(mentions[key]) && mentions[key].length > 0) here.at(key).say('HOUSE_NO_PINGS', 'Must be empty')
  if (mentions['replied_user'] === true) here.at('replied_user').say('HOUSE_NO_PINGS', 'Must not be true')
}

function checkFiles(check: Check, message: Json, files: readonly Upload[], before: Before | undefined): void {
  const numbers = files.map((file) => /^files\[(\d)\]$/.exec(file.key)?.[1])
  for (const [index, number] of numbers.entries())
    if (number === undefined)
      check.say('FILE_FIELD_NAME', `Part ${files[index]?.key} must be named files[0] to files[9]`)
  if (new Set(numbers).size !== numbers.length) check.say('FILE_FIELD_NAME', 'Two files under one name')
  if (files.reduce((sum, file) => sum + file.size, 0) >= uploadBelow)
    check.say('REQUEST_ENTITY_TOO_LARGE', `Files must stay below ${uploadBelow} bytes together`)
  const described = new Set<string>()
  for (const { item, check: here } of check.list(message, 'attachments', { max: 10 })) {
    const id = String(item['id'])
    here.text(item, 'description', { max: 1024 })
    here.text(item, 'filename', { max: 260 })
    if (described.has(id)) here.at('id').say('ATTACHMENT_ID_DUPLICATED', 'Attachment id cannot be duplicated')
    described.add(id)
    if (!numbers.includes(id) && !before?.attachmentIds.includes(id))
      here.at('id').say('ATTACHMENT_NOT_FOUND', `Attachment data for id ${id} not found: no part files[${id}]`)
  }
  if (!isAbsent(message['attachments']))
    for (const number of numbers)
      if (number !== undefined && !described.has(number))
        check
          .at('attachments')
          .say('ATTACHMENT_NOT_LISTED', `files[${number}] is not in the list, so it would be dropped`)
}

function attachmentsNamedIn(value: unknown): string[] {
  if (typeof value === 'string') return value.startsWith('attachment://') ? [value.slice('attachment://'.length)] : []
  if (Array.isArray(value)) return value.flatMap(attachmentsNamedIn)
  return isRecord(value) ? Object.values(value).flatMap(attachmentsNamedIn) : []
}

function checkReferences(check: Check, message: Json, files: readonly Upload[], before: Before | undefined): void {
  if (before && before.attachmentIds.length > 0) return
  const names = new Set(files.map((file) => file.name))
  for (const key of ['embeds', 'components'])
    for (const name of attachmentsNamedIn(message[key]))
      if (!names.has(name))
        check
          .at(key)
          .say('UNFURLED_MEDIA_ITEM_REFERENCED_ATTACHMENT_NOT_FOUND', `attachment://${name} was not uploaded`)
}

function isEmpty(message: Json, files: readonly Upload[]): boolean {
  const { content, embeds, components } = message
  const none = (value: unknown) => !Array.isArray(value) || value.length === 0
  return (
    (typeof content !== 'string' || content.trim() === '') && none(embeds) && none(components) && files.length === 0
  )
}

export function checkMessage(check: Check, message: Json, files: readonly Upload[], before?: Before): void {
  const flags = check.whole(message, 'flags', { min: 0, max: 2 ** 31 - 1 }) ?? 0
  if ((flags & ~settable) !== 0)
    check.at('flags').say('BASE_TYPE_CHOICES', `Flags ${flags & ~settable} cannot be set here`)
  if (before && (flags & ephemeral) !== 0)
    check.at('flags').say('EPHEMERAL_FIXED', 'Ephemeral or not is fixed by the first response')
  check.text(message, 'content', { max: 2000 })
  check.flag(message, 'tts')
  for (const key of ['poll', 'sticker_ids', 'message_reference'])
    if (!isAbsent(message[key])) check.at(key).say('NOT_KNOWN_HERE', `This fake does not know ${key}`)
  checkMentions(check, message)
  checkEmbeds(check, message)
  checkComponents(check, message, flags | ((before?.flags ?? 0) & componentsV2))
  checkFiles(check, message, files, before)
  checkReferences(check, message, files, before)
  if (!before && isEmpty(message, files)) check.say('EMPTY_MESSAGE', 'Cannot send an empty message')
}

const nonceBelow = 26
const id = /^\d{1,20}$/

/** A message of the bot's own in a channel: nobody's alone, it may be a reply, and may carry a name that is taken once. */
export function checkOwnMessage(check: Check, body: Json, files: readonly Upload[]): void {
  const { message_reference: reference, ...message } = body
  if ((Number(message['flags'] ?? 0) & ephemeral) !== 0)
    check.at('flags').say('BASE_TYPE_CHOICES', 'Only the answer to an interaction can be ephemeral')
  const { nonce } = message
  if (!isAbsent(nonce) && !(typeof nonce === 'string' && nonce.length < nonceBelow))
    check.at('nonce').say('BASE_TYPE_BAD_LENGTH', 'A nonce is a text of 25 characters at most')
  check.flag(message, 'enforce_nonce')
  if (message['enforce_nonce'] === true && isAbsent(nonce))
    check.at('nonce').say('BASE_TYPE_REQUIRED', 'There is none to be enforced')
  if (!isAbsent(reference)) {
    const here = check.at('message_reference')
    if (!isRecord(reference) || !id.test(String(reference['message_id'])))
      here.at('message_id').say('NUMBER_TYPE_COERCE', 'Must be the id of a message')
    // Who is replied to is pinged unless that is denied.
    const mentions = message['allowed_mentions']
    if (!isRecord(mentions) || mentions['replied_user'] !== false)
      check.at('allowed_mentions.replied_user').say('HOUSE_NO_PINGS', 'Must be there and false in a reply')
  }
  checkMessage(check, message, files)
}
