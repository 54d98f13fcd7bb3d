// What systemd hands to a service and wants to hear from it: secrets as files, and a word when it is ready, alive, or stopping.
// Without systemd nothing here does anything.
import { execFile } from 'node:child_process'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

type Env = Readonly<Record<string, string | undefined>>

/**
 * The environment with the secrets of the credentials folder put in: a file's name is the setting's, its text the value.
 * What the environment says already is not overruled. Throws where the folder cannot be read.
 */
export const withSecrets = (env: Env): Env => {
  const folder = env['CREDENTIALS_DIRECTORY']
  if (folder === undefined || !existsSync(folder)) return env
  const secrets = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((file) => file.isFile())
    // A folder of secrets comes as files named after it: secrets_DISCORD_TOKEN.
    .map((file): [string, string] => [
      file.name.replace(/^secrets_/, ''),
      readFileSync(join(file.parentPath, file.name), 'utf8').trim(),
    ])
  return { ...Object.fromEntries(secrets), ...env }
}

export interface Watched {
  readonly stopping: () => void
}

type Tell = (words: readonly string[]) => void

// Node speaks no datagrams to a local socket; the program that comes with systemd does.
const bySystemd: Tell = (words) => void execFile('systemd-notify', words, () => undefined)

const MICROSECONDS = 1000

/** Says that the service is ready, and then, twice as often as is asked, that its loop still turns. */
export const tellSystemd = (env: Env, tell: Tell = bySystemd): Watched => {
  if (env['NOTIFY_SOCKET'] === undefined) return { stopping: () => undefined }
  tell(['--ready'])
  const everyMs = Number(env['WATCHDOG_USEC']) / MICROSECONDS / 2
  const timer = everyMs > 0 ? setInterval(() => tell(['WATCHDOG=1']), everyMs).unref() : undefined
  return {
    stopping: () => {
      clearInterval(timer)
      tell(['STOPPING=1'])
    },
  }
}
