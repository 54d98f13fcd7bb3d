// A real Chromium, Debian's, for the pages: started without a sandbox (tests run as root) and without anything that calls home.
import { existsSync } from 'node:fs'
import { type Browser, chromium } from 'playwright-core'

const path = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find((one) => existsSync(one))

/** False on a desk without Chromium; CI installs it and says so, and then it must be there. */
export const hasBrowser = path !== undefined
export const mustHaveBrowser = process.env.CI_BROWSER === '1'

export const openBrowser = (): Promise<Browser> =>
  chromium.launch({
    executablePath: path as string,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  })
