// The first pages in a real Chromium: by keyboard, without a script, at phone width and on a shop's screen, with nothing for axe to find.
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { homeNames } from '../../src/words/index.ts'
import { hasBrowser, mustHaveBrowser, openBrowser } from '../support/browser.ts'
import { type Service, startService } from '../support/service.ts'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const sizes = { phone: { width: 360, height: 740 }, shop: { width: 1366, height: 768 } } as const
const answered = '/ask/adapter-setting?torque=100+lb-ft&lever=14+in&adapter=2+in%4030'
const pages = [
  '/',
  '/ask/adapter-setting',
  answered,
  '/ask/adapter-setting?torque=100&hand=-2',
  '/ask/adapter-setting?torque=100+Nm&adapter=3+cm',
  '/ask/lubricant?torque=100+Nm&from=dry&to=oiled',
  '/board',
]

it('a Chromium is there where it must be', () => {
  expect(hasBrowser || !mustHaveBrowser).toBe(true)
})

describe.runIf(hasBrowser)('the pages in Chromium', () => {
  let service: Service
  let browser: Browser
  beforeAll(async () => {
    service = await startService({ SHOP_NAME: 'Kiln Lane Garage' })
    browser = await openBrowser()
  })
  afterAll(async () => {
    await browser?.close()
    service?.kill()
  })

  const open = async (path: string, options: Parameters<Browser['newContext']>[0] = {}): Promise<Page> => {
    const context = await browser.newContext(options)
    const page = await context.newPage()
    await page.goto(service.url + path)
    return page
  }

  it('a question is asked by keyboard alone, without a script', async () => {
    const page = await open('/', { javaScriptEnabled: false, viewport: sizes.shop })
    const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '')
    const focusedName = () => page.evaluate(() => document.activeElement?.getAttribute('name'))
    for (let n = 0; n < 20 && (await focused()) !== 'What to dial with an adapter on'; n++)
      await page.keyboard.press('Tab')
    await page.keyboard.press('Enter')
    await page.waitForURL('**/ask/adapter-setting')
    for (let n = 0; n < 20 && (await focusedName()) !== 'torque'; n++) await page.keyboard.press('Tab')
    await page.keyboard.type('100 lb-ft')
    await page.keyboard.press('Tab')
    await page.keyboard.type('14 in')
    await page.keyboard.press('Tab')
    await page.keyboard.type('2 in@90')
    await page.keyboard.press('Enter')
    await page.waitForURL(/torque=100/)
    expect(await page.locator('#headline').textContent()).toBe(
      'Set 100 lbf·ft, the torque itself: this adapter adds nothing to the lever.',
    )
    expect(await page.locator('input[name=lever]').inputValue()).toBe('14 in')
    await page.context().close()
  })

  it('the figure is loaded and tells in words what it shows', async () => {
    const page = await open(answered)
    const image = page.locator('figure img')
    expect(await image.evaluate((element) => (element as HTMLImageElement).naturalWidth)).toBeGreaterThan(0)
    expect(await image.getAttribute('alt')).toContain('SET 89 lbf·ft')
    await page.context().close()
  })

  it.each(Object.entries(sizes).flatMap(([name, size]) => homeNames.map((lang) => [name, lang, size] as const)))(
    'nothing is wider than a %s in %s, and keys are large enough for a finger',
    async (_name, lang, viewport) => {
      let keys = 0
      for (const bare of pages) {
        const path = `${bare}${bare.includes('?') ? '&' : '?'}lang=${lang}`
        const page = await open(path, { viewport })
        expect(await page.evaluate(() => document.documentElement.lang), path).toBe(lang)
        const wide = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        )
        expect(wide, path).toBeLessThanOrEqual(0)
        const heights = await page
          .locator('.key, button, input[type=text], select')
          .evaluateAll((keys) =>
            keys.map((key) => key.getBoundingClientRect()).flatMap(({ width, height }) => (width > 0 ? [height] : [])),
          )
        for (const height of heights) expect(height, path).toBeGreaterThanOrEqual(44)
        keys += heights.length
        await page.context().close()
      }
      expect(keys).toBeGreaterThan(pages.length)
    },
  )

  it.each(pages.flatMap((path) => (['light', 'dark'] as const).map((scheme) => [path, scheme] as const)))(
    'axe finds nothing at WCAG 2.2 AA on %s in %s',
    async (path, colorScheme) => {
      const page = await open(path, { colorScheme, viewport: sizes.phone })
      // Handed in by the debugger, as the page's own policy lets no script in.
      await page
        .context()
        .newCDPSession(page)
        .then((session) => session.send('Page.setBypassCSP', { enabled: true }))
      await page.reload()
      await page.evaluate(axe)
      const found = await page.evaluate(async () => {
        const runner = (
          globalThis as unknown as {
            axe: { run: (options: object) => Promise<{ violations: Array<{ id: string; nodes: unknown[] }> }> }
          }
        ).axe
        const { violations } = await runner.run({
          runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
        })
        return violations.map(({ id, nodes }) => `${id}: ${nodes.length}`)
      })
      expect(found).toEqual([])
      await page.context().close()
    },
  )

  it('the policy of the page keeps scripts out', async () => {
    const page = await open(answered)
    const ran = await page.evaluate(() => {
      const script = document.createElement('script')
      script.textContent = 'window.ran = true'
      document.body.append(script)
      return (window as unknown as { ran?: boolean }).ran === true
    })
    expect(ran).toBe(false)
    await page.context().close()
  })
})
