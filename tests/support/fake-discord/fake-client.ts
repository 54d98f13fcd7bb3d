// A real discord.js client for the fake's own tests, wired as the product wires it, and plain requests beside it.

import { Client, Events, GatewayDispatchEvents, Routes } from 'discord.js'
import type { FakeDiscord } from './fake-discord.ts'
import { isRecord, type Json } from './limits.ts'

export const answer = { type: 4, data: { content: 'Set 84.9 N·m', allowed_mentions: { parse: [] } } }

export type Heard = (raw: Json, client: Client) => unknown

/** Sends one callback through the client's own REST. */
export const reply = (client: Client, raw: Json, body: Json, more: Json = {}): Promise<unknown> =>
  client.rest.post(Routes.interactionCallback(String(raw['id']), String(raw['token'])), { body, auth: false, ...more })

export const callbackPath = (raw: Json): string => `/interactions/${raw['id']}/${raw['token']}/callback`

export const failureOf = (promise: Promise<unknown>): Promise<unknown> =>
  promise.then(() => undefined).catch((error: unknown) => error)

const clients: Client[] = []

/** Logs in and waits until ready; `hear` is given every raw interaction. */
export async function connect(fake: FakeDiscord, hear?: Heard, more: Json = {}): Promise<Client> {
  const client = new Client({
    intents: 0,
    rest: { api: fake.url, timeout: 150 },
    // discord.js waits 5 s between two identifies; the fake does not mind.
    ws: { buildIdentifyThrottler: async () => ({ waitForIdentify: async () => {} }) },
    ...more,
  })
  const heard = hear ?? ((raw: Json) => reply(client, raw, answer))
  clients.push(client)
  client.on(Events.Error, () => {})
  client.ws.on(GatewayDispatchEvents.InteractionCreate, (raw: Json) =>
    Promise.resolve(heard(raw, client)).catch(() => {}),
  )
  const ready = new Promise((resolve) => client.once(Events.ClientReady, resolve))
  await client.login(fake.token)
  await ready
  return client
}

export async function disconnectAll(): Promise<void> {
  await Promise.all(clients.splice(0).map((client) => client.destroy()))
}

/** A request past any client: what was answered, and its body. */
export async function post(
  fake: FakeDiscord,
  path: string,
  body: unknown,
  { method = 'POST', token }: { method?: string; token?: string } = {},
): Promise<{ status: number; body: Json }> {
  const form = body instanceof FormData
  const headers = {
    ...(!form && { 'content-type': 'application/json' }),
    ...(token && { authorization: `Bot ${token}` }),
  }
  const content = form ? body : (JSON.stringify(body) ?? null)
  const response = await fetch(`${fake.url}/v10${path}`, { method, headers, body: content })
  const read: unknown = response.status === 204 ? {} : await response.json()
  return { status: response.status, body: isRecord(read) ? read : {} }
}
