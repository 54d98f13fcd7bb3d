// Callbacks that Discord (or the house) refuses for their type, text, mentions, flags or embeds, each with the reason,
// where the complaint must lie and its code.

import { interactions } from './interactions.ts'
import { embed, field, fresh, long, many, message, modal, type RefusedCallback, refused } from './payload-parts.ts'

const { autocomplete, submit } = interactions
const wrongType = 'INTERACTION_RESPONSE_TYPE_INVALID'
const notFound = 'UNFURLED_MEDIA_ITEM_REFERENCED_ATTACHMENT_NOT_FOUND'
const tooMuch = message({ embeds: [{ description: long(4000) }, { description: long(2001) }] })
const mentions = (allowed_mentions: unknown) => message({ ...fresh, allowed_mentions })

export const badMessages: RefusedCallback[] = [
  refused('a type that is none', { type: 3 }, 'type', wrongType),
  refused('an update where no message is', { ...message(fresh), type: 7 }, 'type', wrongType),
  refused('a message as answer to autocomplete', message(fresh), 'type', wrongType, { ask: autocomplete }),
  refused('a modal as answer to a modal', modal({}), 'type', wrongType, { ask: submit }),
  refused('no data', { type: 4 }, 'data', 'BASE_TYPE_REQUIRED'),
  refused('nothing in it', message({}), 'data', 'EMPTY_MESSAGE'),
  refused('blank content', message({ content: ' \n' }), 'data', 'EMPTY_MESSAGE'),
  refused('content of 2001', message({ content: long(2001) }), 'data.content', 'BASE_TYPE_BAD_LENGTH'),
  refused('no allowed_mentions', { type: 4, data: fresh }, 'data.allowed_mentions', 'HOUSE_NO_PINGS'),
  refused('allowed_mentions without parse', mentions({}), 'data.allowed_mentions.parse', 'HOUSE_NO_PINGS'),
  refused('pings of users', mentions({ parse: ['users'] }), 'data.allowed_mentions.parse', 'HOUSE_NO_PINGS'),
  refused('a ping of one user', mentions({ parse: [], users: ['1'] }), 'data.allowed_mentions.users', 'HOUSE_NO_PINGS'),
  refused('a flag that cannot be set', message({ ...fresh, flags: 128 }), 'data.flags', 'BASE_TYPE_CHOICES'),
  refused('another flag when deferring', { type: 5, data: { flags: 4 } }, 'data.flags', 'BASE_TYPE_CHOICES'),
  refused('11 embeds', message({ embeds: many(11, () => ({ title: 'a' })) }), 'data.embeds', 'BASE_TYPE_BAD_LENGTH'),
  refused('an empty embed', message({ embeds: [{}] }), 'data.embeds.0.description', 'BASE_TYPE_REQUIRED'),
  refused('an embed title of 257', embed({ title: long(257) }), 'data.embeds.0.title', 'BASE_TYPE_BAD_LENGTH'),
  refused(
    'a description of 4097',
    embed({ description: long(4097) }),
    'data.embeds.0.description',
    'BASE_TYPE_BAD_LENGTH',
  ),
  refused(
    '26 fields',
    embed({ fields: many(26, () => ({ name: 'a', value: 'b' })) }),
    'data.embeds.0.fields',
    'BASE_TYPE_BAD_LENGTH',
  ),
  refused('a field name of 257', field({ name: long(257) }), 'data.embeds.0.fields.0.name', 'BASE_TYPE_BAD_LENGTH'),
  refused('an empty field value', field({ value: '' }), 'data.embeds.0.fields.0.value', 'BASE_TYPE_REQUIRED'),
  refused(
    'a field value of 1025',
    field({ value: long(1025) }),
    'data.embeds.0.fields.0.value',
    'BASE_TYPE_BAD_LENGTH',
  ),
  refused(
    'a footer of 2049',
    embed({ footer: { text: long(2049) } }),
    'data.embeds.0.footer.text',
    'BASE_TYPE_BAD_LENGTH',
  ),
  refused(
    'an author of 257',
    embed({ author: { name: long(257) } }),
    'data.embeds.0.author.name',
    'BASE_TYPE_BAD_LENGTH',
  ),
  refused('6001 characters in two embeds', tooMuch, 'data.embeds', 'MAX_EMBED_SIZE_EXCEEDED'),
  refused('a picture that was not uploaded', embed({ image: { url: 'attachment://a.png' } }), 'data.embeds', notFound),
]
