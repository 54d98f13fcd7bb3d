// Discord's documented limits on the embeds of one message. Source: Discord's developer documentation, 'Message',
// embed limits: the 6000 characters count over all embeds of the message together.

import { type Check, isAbsent, isRecord, type Json } from './limits-check.ts'

const mostCharacters = 6000
const webAddress = /^https?:\/\/\S+$/
const imageAddress = /^(https?|attachment):\/\/\S+$/
const shown = ['title', 'description', 'fields', 'image', 'thumbnail', 'footer', 'author']

function checkPart(check: Check, embed: Json, key: string, look: (here: Check, part: Json) => number): number {
  const part = embed[key]
  if (isAbsent(part)) return 0
  if (isRecord(part)) return look(check.at(key), part)
  check.at(key).say('DICT_TYPE_CONVERT', 'Only dictionaries may be used in a DictType')
  return 0
}

function checkEmbed(check: Check, embed: Json): number {
  if (shown.every((key) => isAbsent(embed[key]) || (Array.isArray(embed[key]) && embed[key].length === 0)))
    check.at('description').say('BASE_TYPE_REQUIRED', 'This field is required')
  let characters = check.text(embed, 'title', { max: 256 }).length
  characters += check.text(embed, 'description', { max: 4096 }).length
  check.text(embed, 'url', { max: 2048, pattern: webAddress })
  check.text(embed, 'timestamp', { max: 40, pattern: /^\d{4}-\d\d-\d\dT/ })
  check.whole(embed, 'color', { min: 0, max: 0xffffff })
  characters += checkPart(check, embed, 'footer', (here, footer) => {
    here.text(footer, 'icon_url', { max: 2048, pattern: imageAddress })
    return here.text(footer, 'text', { max: 2048, needed: true }).length
  })
  characters += checkPart(check, embed, 'author', (here, author) => {
    here.text(author, 'icon_url', { max: 2048, pattern: imageAddress })
    return here.text(author, 'name', { max: 256, needed: true }).length
  })
  for (const key of ['image', 'thumbnail'])
    checkPart(check, embed, key, (here, image) => {
      here.text(image, 'url', { max: 2048, needed: true, pattern: imageAddress })
      return 0
    })
  for (const { item, check: here } of check.list(embed, 'fields', { max: 25 })) {
    characters += here.text(item, 'name', { max: 256, needed: true }).length
    characters += here.text(item, 'value', { max: 1024, needed: true }).length
    here.flag(item, 'inline')
  }
  return characters
}

export function checkEmbeds(check: Check, message: Json): void {
  let characters = 0
  for (const { item, check: here } of check.list(message, 'embeds', { max: 10 })) characters += checkEmbed(here, item)
  if (characters > mostCharacters)
    check.at('embeds').say('MAX_EMBED_SIZE_EXCEEDED', `Embed size exceeds maximum size of ${mostCharacters}`)
}
