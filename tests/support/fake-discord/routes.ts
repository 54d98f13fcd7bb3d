// The routes of Discord's API that the fake has, by the names under which tests put faults before them.

import type { Books, CallbackRecord, RequestRecord } from './books.ts'
import { violate } from './books.ts'
import type { Channels } from './channels.ts'
import type { commandShelf } from './commands.ts'
import type { Answer } from './faults.ts'
import type { Ledger } from './ledger.ts'
import { checkCommandList, isRecord, type Json, refusalOf } from './limits.ts'
import type { Asked, Route } from './rest.ts'

export type RouteName =
  | 'gateway'
  | 'gateway-bot'
  | 'me'
  | 'application'
  | 'commands-get'
  | 'commands-put'
  | 'callback'
  | 'follow-up'
  | 'message-get'
  | 'message-patch'
  | 'message-delete'
  | 'channel-message'
  | 'channel-get'

export interface RouteTable {
  books: Books
  applicationId: string
  botUser: Json
  ledger: Ledger
  channels: Channels
  isPublic: boolean
  shelf: ReturnType<typeof commandShelf>
  gatewayInformation: () => Json
  onCallback: (record: CallbackRecord) => void
}

export function callbackRecord(
  about: RouteTable,
  asked: Asked,
  record: Pick<RequestRecord, 'at' | 'status' | 'code'>,
): CallbackRecord {
  const [id = ''] = asked.parts
  const body = isRecord(asked.body) ? asked.body : {}
  const entry = about.ledger.find(id)
  return {
    at: record.at,
    id,
    status: record.status,
    code: record.code,
    type: Number(body['type']),
    data: isRecord(body['data']) ? body['data'] : {},
    body: asked.body,
    files: asked.files,
    ms: entry ? performance.now() - entry.sentAt : Number.NaN,
    message: entry?.messages.get('@original'),
  }
}

export function buildRoutes(about: RouteTable): Route[] {
  const { ledger, channels, shelf, books } = about
  const route = (
    name: RouteName,
    method: string,
    path: string,
    needsToken: boolean,
    answer: Route['answer'],
    more: Pick<Route, 'look' | 'note'> = {},
  ): Route => ({ name, method, path: new RegExp(`^${path}$`), needsToken, answer, ...more })
  const application = {
    id: about.applicationId,
    name: about.botUser['username'],
    description: '',
    flags: 0,
    bot_public: about.isPublic,
    bot: about.botUser,
  }
  const refuseCommands = (list: unknown): Answer | undefined => {
    const found = checkCommandList(list)
    for (const one of found) violate(books, 'commands-put', one)
    return refusalOf(found)
  }
  const own = (id: string | undefined, answer: () => Answer): Answer =>
    id === about.applicationId
      ? answer()
      : {
          status: 403,
          body: { message: 'You are not authorized to perform this action on this application', code: 20012 },
        }
  const onMessage = ({ parts: [, token = '', key = ''], ...sent }: Asked, method: string) =>
    ledger.message(token, key, method, sent)
  const messagePath = '/webhooks/([^/]+)/([^/]+)/messages/([^/]+)'
  return [
    route('gateway', 'GET', '/gateway', false, () => ({
      status: 200,
      body: { url: about.gatewayInformation()['url'] },
    })),
    route('gateway-bot', 'GET', '/gateway/bot', true, () => ({ status: 200, body: about.gatewayInformation() })),
    route('me', 'GET', '/users/@me', true, () => ({ status: 200, body: about.botUser })),
    route('application', 'GET', '/(?:oauth2/)?applications/@me', true, () => ({ status: 200, body: application })),
    route('commands-get', 'GET', '/applications/([^/]+)/commands', true, ({ parts, query }) =>
      own(parts[0], () => ({ status: 200, body: shelf.get(query.get('with_localizations') === 'true') })),
    ),
    route(
      'commands-put',
      'PUT',
      '/applications/([^/]+)/commands',
      true,
      ({ parts, body }) =>
        own(parts[0], () => refuseCommands(body) ?? { status: 200, body: shelf.replace(body as Json[]) }),
      { look: ({ body }) => void refuseCommands(body) },
    ),
    route(
      'callback',
      'POST',
      '/interactions/([^/]+)/([^/]+)/callback',
      false,
      ({ parts: [id = '', token = ''], query, confirmed, ...sent }) =>
        ledger.callback(id, token, sent, query.get('with_response') === 'true', confirmed),
      {
        look: ({ parts: [id = ''], ...sent }) => void ledger.lookAtCallback(id, sent),
        note: (asked, record) => about.onCallback(callbackRecord(about, asked, record)),
      },
    ),
    route('follow-up', 'POST', '/webhooks/([^/]+)/([^/]+)', false, ({ parts: [, token = ''], ...sent }) =>
      ledger.followUp(token, sent),
    ),
    route('channel-get', 'GET', '/channels/([^/]+)', true, ({ parts: [channel = ''] }) => channels.get(channel)),
    route('channel-message', 'POST', '/channels/([^/]+)/messages', true, ({ parts: [channel = ''], ...sent }) =>
      channels.post(channel, sent),
    ),
    route('message-get', 'GET', messagePath, false, (asked) => onMessage(asked, 'GET')),
    route('message-patch', 'PATCH', messagePath, false, (asked) => onMessage(asked, 'PATCH')),
    route('message-delete', 'DELETE', messagePath, false, (asked) => onMessage(asked, 'DELETE')),
  ]
}
