// Starts the bare bot that ours is measured against, with the payload and the picture of an answer of ours.
import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { CallbackRecord } from '../support/fake-discord/books.ts'
import type { FakeDiscord } from '../support/fake-discord/fake-discord.ts'

export const startBare = (peer: FakeDiscord, { data, files }: CallbackRecord): ChildProcess => {
  const picture = files[0] ? join(mkdtempSync(join(tmpdir(), 'bench-')), 'picture.png') : undefined
  if (picture) writeFileSync(picture, files[0]?.bytes as Uint8Array)
  return spawn(process.execPath, ['--import', 'tsx', join(import.meta.dirname, 'bare-bot.ts')], {
    env: {
      PATH: process.env.PATH,
      BARE: JSON.stringify({ url: peer.url, token: peer.token, payload: data, picture }),
    },
    stdio: ['ignore', 'inherit', 'inherit'],
  })
}
