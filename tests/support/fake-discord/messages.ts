// The messages that come of callbacks, follow-ups and edits, in the shape in which Discord gives them back.

import { isRecord, type Json, type Upload } from './limits.ts'
import { snowflake } from './snowflake.ts'

const loading = 1 << 7

export const isLoading = (message: Json): boolean => (Number(message['flags'] ?? 0) & loading) !== 0

function attachmentsOf(data: Json, files: readonly Upload[], kept: readonly Json[]): Json[] {
  const listed = Array.isArray(data['attachments']) ? data['attachments'].filter(isRecord) : undefined
  const fresh = files.map((file) => {
    const number = /^files\[(\d)\]$/.exec(file.key)?.[1]
    const about = listed?.find((one) => String(one['id']) === number)
    const id = snowflake()
    const url = `https://cdn.invalid/attachments/${id}/${file.name}`
    const described = typeof about?.['description'] === 'string' ? { description: about['description'] } : {}
    const [filename, content_type] = [file.name, file.contentType]
    return { id, filename, size: file.size, url, proxy_url: url, content_type, ...described }
  })
  const staying = listed ? kept.filter((one) => listed.some((other) => String(other['id']) === one['id'])) : kept
  return [...staying, ...fresh]
}

export function newMessage(
  data: Json,
  files: readonly Upload[],
  raw: Json,
  about: { applicationId: string; botUser: Json },
  isLoading: boolean,
): Json {
  const command = raw['type'] === 2
  return {
    id: snowflake(),
    // A reply in the channel, the answer to a slash command, or to a command of the context menu.
    type: !command ? 19 : isRecord(raw['data']) && raw['data']['type'] === 3 ? 23 : 20,
    channel_id: raw['channel_id'],
    author: about.botUser,
    content: data['content'] ?? '',
    embeds: data['embeds'] ?? [],
    components: data['components'] ?? [],
    attachments: attachmentsOf(data, files, []),
    flags: Number(data['flags'] ?? 0) | (isLoading ? loading : 0),
    mentions: [],
    mention_roles: [],
    mention_everyone: false,
    pinned: false,
    tts: false,
    timestamp: new Date().toISOString(),
    edited_timestamp: null,
    application_id: about.applicationId,
    webhook_id: about.applicationId,
    interaction_metadata: {
      id: raw['id'],
      type: raw['type'],
      user: raw['user'] ?? (isRecord(raw['member']) ? raw['member']['user'] : undefined),
      authorizing_integration_owners: raw['authorizing_integration_owners'],
    },
  }
}

export function editedMessage(message: Json, data: Json, files: readonly Upload[]): Json {
  const kept = Array.isArray(message['attachments']) ? message['attachments'].filter(isRecord) : []
  const settable = Number(data['flags'] ?? 0)
  const changes = ['content', 'embeds', 'components'].flatMap((key) => (key in data ? [[key, data[key]] as const] : []))
  return {
    ...message,
    ...Object.fromEntries(changes),
    attachments: attachmentsOf(data, files, kept),
    flags: (Number(message['flags'] ?? 0) & ~loading) | settable,
    edited_timestamp: new Date().toISOString(),
  }
}

/** What a callback with `?with_response=true` gets. */
export function callbackResponse(raw: Json, type: number, message: Json | undefined): Json {
  const flags = Number(message?.['flags'] ?? 0)
  return {
    interaction: {
      id: raw['id'],
      type: raw['type'],
      channel_id: raw['channel_id'],
      guild_id: raw['guild_id'] ?? null,
      ...(message && {
        response_message_id: message['id'],
        response_message_loading: (flags & loading) !== 0,
        response_message_ephemeral: (flags & 64) !== 0,
      }),
    },
    resource: { type, ...(message && { message }) },
  }
}
