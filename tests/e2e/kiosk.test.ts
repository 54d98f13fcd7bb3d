// The kiosk as hands use it, in a real Chromium: by touch at three sizes, with its own keys; slips held back; the server gone and
// back; a shared screen that starts over; sizes in millimetres, contrast and weight.
import { createHash } from 'node:crypto'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { hasBrowser, openBrowser } from '../support/browser.ts'
import { type Service, startService } from '../support/service.ts'

const touchScreens = {
  'a small panel': { width: 800, height: 480 },
  'a wide panel': { width: 1920, height: 1080 },
  'a phone': { width: 390, height: 844 },
} as const

const MM = 3.78 // CSS pixels to a millimetre, by its definition 96/25.4
const LEAST_KEY_MM = 9

describe.runIf(hasBrowser)('the kiosk in Chromium', () => {
  let service: Service
  let browser: Browser
  const folder = mkdtempSync(join(tmpdir(), 'kiosk-'))
  beforeAll(async () => {
    const key = 'kiln-lane-'.repeat(3)
    const keys = join(folder, 'keys')
    writeFileSync(keys, `keeper desk ${createHash('sha256').update(key).digest('hex')}\n`)
    service = await startService({ SHOP_NAME: 'Kiln Lane Garage', API_KEYS_FILE: keys })
    const added = await fetch(`${service.url}/v1/wrenches`, {
      method: 'POST',
      headers: { authorization: `Bearer ${key}`, 'content-type': 'application/json' },
      body: JSON.stringify({
        tag: 'W-07',
        name: 'Half-inch click wrench',
        'wrench-type': 'click',
        least: '40 N·m',
        most: '200 N·m',
        lever: '380 mm',
      }),
    })
    if (added.status !== 201) throw new Error(await added.text())
    browser = await openBrowser()
  })
  afterAll(async () => {
    await browser?.close()
    service?.kill()
    rmSync(folder, { recursive: true, force: true })
  })

  const open = async (path: string, options: BrowserContextOptions = {}): Promise<Page> => {
    const context = await browser.newContext({ hasTouch: true, ...options })
    const page = await context.newPage()
    page.on('pageerror', (error) => {
      throw error
    })
    await page.goto(service.url + path)
    return page
  }
  const touch = (page: Page, types: string): Promise<void> =>
    page.locator(`#keypad button[data-types="${types}"]`).first().tap()
  const headline = (page: Page): Promise<string | null> => page.locator('#headline').textContent()

  it.each(Object.entries(touchScreens))(
    'from the start page to the setting on %s: six touches beside the torque, and no typing',
    async (_name, viewport) => {
      const page = await open('/', { viewport })
      let touches = 0
      const count = async (done: Promise<void>): Promise<void> => {
        touches++
        await done
      }
      await count(page.locator('a.key.wrench').tap())
      await count(page.locator('input[name=torque]').tap())
      for (const types of ['1', '2', '0', 'N·m']) await touch(page, types)
      await count(page.locator('#keypad [data-does=close]').tap())
      await count(page.locator('input[name=adapter]').tap())
      for (const types of ['4', '5', 'mm']) await touch(page, types)
      await count(page.locator('#keypad [data-does=close]').tap())
      await page.locator('#headline', { hasText: 'Set ' }).waitFor()
      // 120 · 380/(380 + 45)
      expect(await headline(page)).toContain('Set 107.3 N·m')
      expect(touches).toBeLessThanOrEqual(6)
      expect(page.url()).toContain('torque=120+N%C2%B7m')
      await page.context().close()
    },
  )

  it('what stood in a link that somebody made is not offered as typed or begun here', async () => {
    const page = await open('/ask/adapter-setting?lever=900+mm&torque=120+N%C2%B7m&adapter=45+mm%4030')
    expect(await page.locator('#answer.answered').count()).toBe(1)
    await page.goto(`${service.url}/ask/adapter-setting`)
    expect(await page.locator('#recent-lever .offer, #recent-adapter .offer').count()).toBe(0)
    await page.goto(`${service.url}/wrench/W-07/check?way=tester&state=as-found&points=100+N%C2%B7m:+100;+100+N%C2%B7m`)
    expect(await page.locator('[data-check]').count()).toBe(1)
    await page.goto(`${service.url}/wrench/W-07`)
    expect(await page.locator('[data-resume]').isVisible()).toBe(false)
    await page.context().close()
  })

  it('an adapter that was used before is offered again; a torque is not', async () => {
    const page = await open('/ask/adapter-setting?wrench=W-07&torque=120+N%C2%B7m')
    await page.locator('input[name=adapter]').fill('45 mm@30')
    await page.locator('#answer.answered').waitFor()
    await page.goto(`${service.url}/ask/adapter-setting?wrench=W-07`)
    expect(await page.locator('#recent-adapter .offer').allTextContents()).toEqual(['45 mm@30'])
    expect(await page.locator('#recent-torque .offer').count()).toBe(0)
    await page.locator('#recent-adapter .offer').tap()
    expect(await page.locator('input[name=adapter]').inputValue()).toBe('45 mm@30')
    await page.context().close()
  })

  it('the direction is touched on the drawing, in the sense of the figures', async () => {
    const page = await open('/ask/adapter-setting?torque=120+N%C2%B7m&lever=380+mm&adapter=45+mm')
    await page.locator('button[data-opens-angle=in-adapter]').tap()
    const box = await page.locator('#angle-drawing').boundingBox()
    if (!box) throw new Error('no drawing')
    // Up and to the right of the middle: ahead, and to the side that the handle turns to.
    await page.touchscreen.tap(box.x + box.width * 0.75, box.y + box.height * 0.25)
    expect(await page.locator('#angle-told').textContent()).toBe('45°')
    await page.locator('#angle [data-by="-1"]').tap()
    await page.locator('#angle [data-does=take]').tap()
    expect(await page.locator('input[name=adapter]').inputValue()).toBe('45 mm@44')
    // 120 · 380/(380 + 45 cos 44°)
    await page.locator('#headline', { hasText: '110.6 N·m' }).waitFor()
    await page.context().close()
  })

  it('what looks like a slip is told before any number, and the number only when somebody says so', async () => {
    const page = await open('/ask/adapter-setting?wrench=W-07&torque=1200+N%C2%B7m&adapter=45+mm')
    expect(await page.locator('.slips').textContent()).toContain('120 N·m would be inside')
    expect(await page.locator('#headline').isVisible()).toBe(false)
    expect(await page.locator('#answer figure').isVisible()).toBe(false)
    await page.locator('.held > summary').tap()
    expect(await page.locator('#headline').isVisible()).toBe(true)
    await page.context().close()
  })

  it('while the server is away it says so at once, marks the old answer as old, and comes back by itself', async () => {
    const page = await open('/ask/adapter-setting?torque=120+N%C2%B7m&lever=380+mm&adapter=45+mm')
    await page.context().setOffline(true)
    await page.locator('input[name=torque]').fill('90 N·m')
    await page.locator('#line').waitFor({ state: 'visible' })
    expect(await headline(page)).toContain('107.3 N·m')
    expect(await page.locator('html.behind').count()).toBe(1)
    expect(await page.locator('#keypad-headline').isVisible()).toBe(false)
    await page.context().setOffline(false)
    // 90 · 380/425
    await page.locator('#headline', { hasText: '80.5 N·m' }).waitFor({ timeout: 15_000 })
    expect(await page.locator('#line').isVisible()).toBe(false)
    await page.locator('html:not(.behind)').waitFor()
    await page.context().close()
  })

  it('a shared screen counts down and starts over; a touch stops it', async () => {
    const page = await open('/screen', { viewport: touchScreens['a small panel'] })
    await page.locator('#in-idle').selectOption('60')
    await page.locator('button[type=submit]').tap()
    await page.locator('.kept').waitFor()
    await page.clock.install()
    await page.goto(`${service.url}/ask/pull?torque=100+N%C2%B7m&hand=1+m`)
    await page.clock.runFor(59_000)
    expect(await page.locator('#idle').isVisible()).toBe(false)
    await page.clock.runFor(3000)
    expect(await page.locator('#idle').isVisible()).toBe(true)
    await page.locator('#idle button').tap()
    expect(await page.locator('#idle').isVisible()).toBe(false)
    await page.clock.runFor(82_000)
    await page.waitForURL(`${service.url}/?lang=`)
    await page.context().close()
  })

  it('a screen that was measured has keys of the millimetres that it promises', async () => {
    const page = await open('/screen?mm=6&key=15&far=arm&idle=0&contrast=high&keys=always')
    await page.goto(`${service.url}/`)
    for (const box of await page.locator('a.key').all())
      expect((await box.boundingBox())?.height).toBeGreaterThanOrEqual(6 * 15 - 0.5)
    await page.context().close()
  })

  it.each(Object.entries(touchScreens))('no key on %s is lower than a gloved finger needs', async (_name, viewport) => {
    const page = await open('/ask/adapter-setting?torque=120+N%C2%B7m&lever=380+mm&adapter=45+mm', { viewport })
    await page.locator('input[name=torque]').tap()
    for (const key of await page.locator('#keypad button:visible').all()) {
      const box = await key.boundingBox()
      expect((box?.height ?? 0) / MM, (await key.textContent()) ?? '').toBeGreaterThanOrEqual(LEAST_KEY_MM)
    }
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
    ).toBeLessThanOrEqual(0)
    await page.context().close()
  })

  it.each(['light', 'dark'] as const)('what is acted on stands out seven to one in %s', async (colorScheme) => {
    const page = await open('/ask/adapter-setting?wrench=W-07&torque=1200+N%C2%B7m&adapter=45+mm', { colorScheme })
    await page.locator('.held > summary').tap()
    const ratios = await page.evaluate(() => {
      const parts = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number)
      const light = (colour: string): number => {
        const [r = 0, g = 0, b = 0] = parts(colour).map((value) => {
          const share = value / 255
          return share <= 0.03928 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
        })
        return 0.2126 * r + 0.7152 * g + 0.0722 * b
      }
      const behind = (element: Element | null): string => {
        if (!element) return 'rgb(255, 255, 255)'
        const { backgroundColor } = getComputedStyle(element)
        return parts(backgroundColor)[3] === 0 ? behind(element.parentElement) : backgroundColor
      }
      return [...document.querySelectorAll('.key, button, #headline, .slips li, .echo, label, input[type=text]')].map(
        (element) => {
          const [one, other] = [light(getComputedStyle(element).color), light(behind(element))].sort((a, b) => b - a)
          return { text: element.textContent, ratio: ((one ?? 0) + 0.05) / ((other ?? 0) + 0.05) }
        },
      )
    })
    expect(ratios.length).toBeGreaterThan(20)
    expect(ratios.filter(({ ratio }) => ratio < 7)).toEqual([])
    await page.context().close()
  })

  it('the first page weighs less than 60 kB and asks nobody else; a fragment less than 10 kB', async () => {
    const context = await browser.newContext()
    const page = await context.newPage()
    const bodies: Promise<Buffer>[] = []
    const strangers: string[] = []
    page.on('response', (reply) => {
      if (!reply.url().startsWith(service.url)) strangers.push(reply.url())
      bodies.push(reply.body())
    })
    await page.goto(`${service.url}/`, { waitUntil: 'networkidle' })
    expect(strangers).toEqual([])
    const weight = (await Promise.all(bodies)).reduce((sum, body) => sum + body.length, 0)
    expect(weight).toBeGreaterThan(10_000)
    expect(weight).toBeLessThan(60_000)
    const fragment = await fetch(
      `${service.url}/ask/adapter-setting/live?torque=120+N%C2%B7m&lever=380+mm&adapter=45+mm%4030`,
    )
    expect((await fragment.arrayBuffer()).byteLength).toBeLessThan(10_000)
    await context.close()
  })

  it('a page without a script says the same as one with it', async () => {
    const path = '/ask/adapter-setting?torque=120+N%C2%B7m&lever=380+mm&adapter=45+mm%4030'
    const [plain, live] = [await open(path, { javaScriptEnabled: false }), await open(path)]
    await live.locator('input[name=torque]').fill('121 N·m')
    await live.locator('input[name=torque]').fill('120 N·m')
    await live.locator('#headline', { hasText: '108.8 N·m' }).waitFor()
    await live.locator('html:not(.behind)').waitFor()
    expect(await plain.locator('#answer .results').textContent()).toBe(
      await live.locator('#answer .results').textContent(),
    )
    await plain.context().close()
    await live.context().close()
  })
})
