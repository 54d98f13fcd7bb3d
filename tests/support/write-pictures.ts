// Takes README's pictures anew from the built program, in a shop of our own invention: `npx tsx tests/support/write-pictures.ts`.
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { openBrowser } from './browser.ts'
import { startService } from './service.ts'

const folder = join(import.meta.dirname, '../../deploy/pictures')
const answered = '/ask/adapter-setting?wrench=W-03&torque=95+N·m&adapter=45+mm%4030'

/** Each picture of README: its page, the screen that it stands on, the colours of that screen. */
export const pictures = [
  { name: 'kiosk-answer', path: answered, width: 1280, height: 800, scheme: 'light' },
  { name: 'kiosk-board', path: '/board', width: 1280, height: 800, scheme: 'dark' },
  { name: 'kiosk-wrench', path: '/wrench/W-03', width: 1280, height: 800, scheme: 'light' },
  { name: 'kiosk-small', path: '/', width: 800, height: 480, scheme: 'light' },
] as const

export const takePictures = async (): Promise<void> => {
  mkdirSync(folder, { recursive: true })
  const service = await startService({}, ['demo'])
  const browser = await openBrowser()
  for (const { name, path, width, height, scheme } of pictures) {
    const context = await browser.newContext({ viewport: { width, height }, colorScheme: scheme, locale: 'en-GB' })
    const page = await context.newPage()
    await page.goto(service.url + path, { waitUntil: 'networkidle' })
    await page.screenshot({ path: join(folder, `${name}.png`) })
    await context.close()
  }
  await browser.close()
  service.kill()
}

if (process.argv[1] === import.meta.filename) await takePictures()
