// The bare chat bot that ours is measured against: discord.js, an echo of the same payload and the same ready picture, nothing else.
import { readFileSync } from 'node:fs'
import { type APIInteraction, Client, GatewayDispatchEvents, Routes } from 'discord.js'

const { url, token, payload, picture } = JSON.parse(process.env.BARE ?? '{}') as {
  url: string
  token: string
  payload: object
  picture?: string
}
const files = picture ? [{ name: 'armlength.png', data: readFileSync(picture) }] : []
const client = new Client({ intents: [], rest: { api: url } })
client.ws.on(GatewayDispatchEvents.InteractionCreate, (interaction: APIInteraction) => {
  void client.rest.post(Routes.interactionCallback(interaction.id, interaction.token), {
    auth: false,
    body: { type: 4, data: payload },
    files,
  })
})
await client.login(token)
