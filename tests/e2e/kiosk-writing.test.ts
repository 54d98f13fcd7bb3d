// Writing at the kiosk in a real Chromium: a PIN, a check reading by reading, a slip asked back, a browser that is killed and comes
// back, two kiosks at once, and signing out by doing nothing.
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { writePinHash } from '../../src/faces/http/kiosk/pin.ts'
import { hasBrowser, openBrowser } from '../support/browser.ts'
import { type Service, startService } from '../support/service.ts'

const PIN = '274915'
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

describe.runIf(hasBrowser)('a kiosk that writes', () => {
  let service: Service
  let browser: Browser
  beforeAll(async () => {
    service = await startService({
      SHOP_NAME: 'Kiln Lane Garage',
      KIOSK_PIN_HASH: await writePinHash(PIN, Buffer.alloc(16, 7)),
    })
    browser = await openBrowser()
  })
  afterAll(async () => {
    await browser?.close()
    service?.kill()
  })

  const screen = (): Promise<BrowserContext> =>
    browser.newContext({ viewport: { width: 1280, height: 800 }, hasTouch: true })
  const go = async (page: Page, path: string): Promise<void> => void (await page.goto(service.url + path))
  const submit = async (page: Page, selector: string): Promise<void> => {
    const before = page.url()
    await page.locator(selector).tap()
    await page.waitForURL((url) => url.href !== before)
  }
  const signIn = async (page: Page, onward: string): Promise<void> => {
    await go(page, `/sign-in?onward=${encodeURIComponent(onward)}`)
    await page.locator('#in-pin').fill(PIN)
    await page.locator('#in-pin').press('Enter')
    await page.waitForURL((url) => !url.pathname.startsWith('/sign-in'))
  }
  const fill = async (page: Page, values: Readonly<Record<string, string>>): Promise<void> => {
    for (const [name, value] of Object.entries(values)) {
      const field = page.locator(`#in-${name}`)
      if (await field.evaluate((element) => element.tagName === 'SELECT')) await field.selectOption(value)
      else await field.fill(value)
    }
  }
  const add = async (page: Page, kind: string, values: Readonly<Record<string, string>>): Promise<void> => {
    await go(page, `/keep/${kind}`)
    await fill(page, values)
    await submit(page, 'form[action^="/keep/"] button[type=submit]')
  }
  const read = async (page: Page, reading: string): Promise<void> => {
    await page.locator('#in-reading').fill(reading)
    await submit(page, '.next-reading button[type=submit]')
  }

  it('a wrench and a gauge are added, and a wrong PIN is none', async () => {
    const context = await screen()
    const page = await context.newPage()
    await go(page, '/keep/wrench')
    expect(page.url()).toContain('/sign-in')
    await page.locator('#in-pin').fill('111222')
    await page.locator('form.pin button[type=submit]').tap()
    await page.locator('[role=alert].fault').waitFor()
    await signIn(page, '/board')
    await add(page, 'wrench', {
      tag: 'W-03',
      name: 'Half-inch click wrench',
      'wrench-type': 'click',
      least: '40 N·m',
      most: '200 N·m',
      mark: '1 N·m',
      lever: '400 mm',
      tolerance: '4 %',
    })
    expect(page.url()).toContain('/wrench/W-03?kept=')
    await add(page, 'gauge', {
      tag: 'S-1',
      name: 'Luggage scale',
      'gauge-type': 'luggage-scale',
      'most-force': '60 kg',
      tolerance: '0.5 %',
    })
    expect(await page.locator('.board').textContent()).toContain('No check of it is recorded')
    await context.close()
  })

  it('a check is entered reading by reading; a slip is asked back; the browser is killed in between', async () => {
    const state = await screen()
    const page = await state.newPage()
    await go(page, '/wrench/W-03')
    await submit(page, 'a.key.strong[href="/wrench/W-03/check"]')
    await fill(page, { way: 'pull', gauge: 'S-1', distance: '400 mm' })
    await submit(page, 'form button[type=submit]')
    // 40 N·m at 0.4 m is 100 N, 10.2 kg; ±4 %.
    expect(await page.locator('#ask').textContent()).toContain('Set 40 N·m. Reading 1 of 5')
    await read(page, '10.2 kg')
    await read(page, '102')
    expect(await page.locator('.next-reading .fault').textContent()).toContain('10.2 kgf')
    expect(await page.locator('#ask').textContent()).toContain('Reading 2 of 5')
    await read(page, '10.1')
    // Killed: nothing but what the browser keeps by itself is left.
    const kept = await state.storageState()
    await state.close()
    const again = await browser.newContext({
      viewport: { width: 1280, height: 800 },
      hasTouch: true,
      storageState: kept,
    })
    const other = await again.newPage()
    await go(other, '/wrench/W-03')
    await submit(other, '[data-resume] a')
    expect(await other.locator('#ask').textContent()).toContain('Reading 3 of 5')
    for (const reading of ['10.2', '10.3', '10.1']) await read(other, reading)
    for (const reading of ['30.5 kg', '30.6', '30.7', '30.5', '30.6', '51 kg', '51.1', '50.9', '51', '51'])
      await read(other, reading)
    expect(await other.locator('.fact').textContent()).toContain('pass')
    await submit(other, 'a[href^="/sign-in"]')
    await other.locator('#in-pin').fill(PIN)
    await submit(other, 'form.pin button[type=submit]')
    await submit(other, 'form[action="/keep/check"] button')
    expect(other.url()).toContain('/wrench/W-03?kept=')
    expect(await other.locator('.status').textContent()).toContain('in service')
    expect(await other.locator('[data-resume]').isVisible()).toBe(false)
    await again.close()
    // Some twenty pages, one after another.
  }, 60_000)

  it('a day that is picked is told as it is kept, however the browser writes days', async () => {
    const context = await screen()
    const page = await context.newPage()
    await signIn(page, '/keep/event?wrench=W-03')
    await page.locator('#in-date').fill('2026-03-05')
    expect(await page.locator('output[for=in-date]').textContent()).toBe('2026-03-05')
    await context.close()
  })

  it('signing in needs no keyboard: the PIN is touched, and not shown', async () => {
    const context = await screen()
    const page = await context.newPage()
    await go(page, '/sign-in?onward=/board')
    await page.locator('#in-pin').tap()
    for (const digit of PIN) await page.locator(`#keypad button[data-types="${digit}"]`).tap()
    expect(await page.locator('#keypad-echo').textContent()).toBe('••••••')
    await submit(page, '#keypad [data-does=next]')
    expect(new URL(page.url()).pathname).toBe('/board')
    await context.close()
  })

  it('a shared screen that starts over signs out as well', async () => {
    const context = await screen()
    const page = await context.newPage()
    await go(page, '/screen?mm=4&key=15&far=near&idle=60&contrast=usual&keys=touch')
    await signIn(page, '/board')
    await page.clock.install()
    await go(page, '/keep/wrench')
    await page.clock.runFor(82_000)
    await page.waitForURL(`${service.url}/?lang=`)
    await go(page, '/keep/wrench')
    expect(page.url()).toContain('/sign-in')
    await context.close()
  })

  it('two kiosks write at once, and both are kept', async () => {
    const screens = await Promise.all([screen(), screen()])
    const pages = await Promise.all(screens.map((one) => one.newPage()))
    await Promise.all(pages.map((page) => signIn(page, '/board')))
    await Promise.all(
      pages.map((page, n) =>
        add(page, 'event', { wrench: 'W-03', what: n === 0 ? 'dropped' : 'overloaded', note: `kiosk ${n + 1}` }),
      ),
    )
    await go(pages[0] as Page, '/wrench/W-03')
    const text = (await (pages[0] as Page).locator('main').textContent()) ?? ''
    expect(text).toContain('kiosk 1')
    expect(text).toContain('kiosk 2')
    expect(text).toContain('check before use')
    await Promise.all(screens.map((one) => one.close()))
  })

  it.each([
    '/wrench/W-03',
    '/wrench/W-03/check',
    '/wrench/W-03/check?way=pull&gauge=S-1&distance=400+mm&reading=10.2+kg',
    '/sign-in',
    '/keep/check?wrench=W-03',
    '/keep/wrench',
    '/screen',
    '/about',
  ])('axe finds nothing at WCAG 2.2 AA on %s, light and dark', async (path) => {
    for (const colorScheme of ['light', 'dark'] as const) {
      const context = await browser.newContext({
        viewport: { width: 390, height: 844 },
        colorScheme,
        hasTouch: true,
        bypassCSP: true,
      })
      const page = await context.newPage()
      await signIn(page, '/board')
      await go(page, path)
      await page.evaluate(axe)
      const found = await page.evaluate(async () => {
        const { axe: runner } = globalThis as unknown as {
          axe: {
            run: (options: object) => Promise<{ violations: Array<{ id: string; nodes: Array<{ html: string }> }> }>
          }
        }
        const { violations } = await runner.run({
          runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
        })
        return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)
      })
      expect(found, colorScheme).toEqual([])
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
      ).toBeLessThanOrEqual(0)
      await context.close()
    }
  })
})
