// The keys of the kiosk under a finger, in a real Chromium: where they open and where they lead, what they show and hide, how large
// they are, and that neither a field nor an answer lies behind them.
import type { Browser, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { writePinHash } from '../../src/faces/http/kiosk/pin.ts'
import { hasBrowser, openBrowser } from '../support/browser.ts'
import { type Service, startService } from '../support/service.ts'

const PIN = '274915'
const small = { width: 800, height: 480 }
const phone = { width: 390, height: 844 }
const screens = Object.entries({ 'a small panel': small, 'a panel': { width: 1280, height: 800 }, 'a phone': phone })
const asked = '/ask/adapter-setting?wrench=W-03&torque=120+N%C2%B7m'
const check = '/wrench/W-03/check?way=pull&gauge=S-1&distance=400+mm'

describe.runIf(hasBrowser)('the keys of the kiosk', () => {
  let service: Service
  let browser: Browser
  beforeAll(async () => {
    service = await startService({ KIOSK_PIN_HASH: await writePinHash(PIN, Buffer.alloc(16, 7)) }, ['demo'])
    browser = await openBrowser()
  })
  afterAll(async () => {
    await browser?.close()
    service?.kill()
  })

  const open = async (path: string, viewport = small): Promise<Page> => {
    const context = await browser.newContext({ viewport, hasTouch: true })
    const page = await context.newPage()
    page.on('pageerror', (error) => {
      throw error
    })
    await page.goto(service.url + path)
    return page
  }
  const tap = async (page: Page, ...keys: readonly string[]): Promise<void> => {
    for (const types of keys) await page.locator(`#keypad button[data-types="${types}"]`).first().tap()
  }
  const does = (page: Page, what: string): Promise<void> => page.locator(`#keypad [data-does=${what}]`).tap()
  const isOpen = (page: Page): Promise<boolean> => page.locator('#keypad').isVisible()
  const focused = (page: Page): Promise<string | null> => page.evaluate(() => document.activeElement?.id ?? null)
  const isOnScreen = (one: Locator): Promise<boolean> =>
    one.evaluate((element) => {
      const { top, bottom } = element.getBoundingClientRect()
      return top >= 0 && bottom <= innerHeight
    })
  const box = async (one: Locator) => {
    const found = await one.boundingBox()
    if (!found) throw new Error('it is not on the page')
    return found
  }

  it('open by themselves where the page asks for one reading, and again when it is touched', async () => {
    const page = await open(check)
    await page.locator('#keypad').waitFor()
    expect(await page.locator('#keypad-label').textContent()).toContain('Set 40 N·m. Reading 1 of 5')
    await does(page, 'close')
    expect(await isOpen(page)).toBe(false)
    await page.locator('#in-reading').tap()
    expect(await isOpen(page)).toBe(true)
    await tap(page, '1', '0', '.', '2', 'kg')
    await does(page, 'next')
    await page.waitForURL((url) => url.searchParams.get('reading') === '10.2 kg')
    expect(await page.locator('#keypad-label').textContent()).toContain('Reading 2 of 5')
    expect(await isOpen(page)).toBe(true)
    await page.context().close()
  })

  it('stay away from a reading that is asked back, which is told without words for other doors', async () => {
    const page = await open(`${check}&reading=102+kg`)
    expect(await page.locator('.next-reading .fault').textContent()).toContain('Was it 10.2 kgf')
    expect(await page.locator('.next-reading .fault').textContent()).not.toContain('sure')
    expect(await page.locator('.next-reading a.key').textContent()).toContain('102 kgf')
    expect(await isOpen(page)).toBe(false)
    await page.context().close()
  })

  it('lead from the last number to the answer, and past what is folded away', async () => {
    const page = await open(asked)
    await page.locator('#in-adapter').tap()
    await tap(page, '4', '5', 'mm')
    await page.locator('#headline', { hasText: '107.9 N·m' }).waitFor()
    await does(page, 'next')
    expect(await isOpen(page)).toBe(false)
    expect(await isOnScreen(page.locator('#headline'))).toBe(true)
    await page.locator('#in-adapter').tap()
    await does(page, 'close')
    expect(await isOnScreen(page.locator('#headline'))).toBe(true)
    await page.context().close()
  })

  it('pass over a lever that the register has given, and only then', async () => {
    const page = await open(asked)
    await page.locator('#in-torque').tap()
    await does(page, 'next')
    expect(await focused(page)).toBe('in-adapter')
    await page.goto(`${service.url}/ask/adapter-setting`)
    await page.locator('#in-torque').tap()
    await does(page, 'next')
    expect(await focused(page)).toBe('in-lever')
    await page.context().close()
  })

  it('say which field is wrong, in the colour of what is wrong', async () => {
    const page = await open('/ask/adapter-setting?wrench=W-03&adapter=45+mm')
    const colour = () => page.locator('#keypad-headline').evaluate((element) => getComputedStyle(element).color)
    await page.locator('#in-torque').tap()
    await tap(page, '1', '2', '0')
    await page.locator('#keypad-headline.refused').waitFor()
    expect(await page.locator('#keypad-headline').textContent()).toMatch(/^Torque: .*unit/)
    const wrong = await colour()
    await tap(page, 'N·m')
    await page.locator('#keypad-headline.answered', { hasText: '107.9 N·m' }).waitFor()
    expect(await colour()).not.toBe(wrong)
    expect(await page.locator('#keypad-read').textContent()).toContain('88.5 lbf·ft')
    await page.context().close()
  })

  it.each(['torque', 'adapter'])('show an example of %s where nothing is typed, never a minus', async (name) => {
    const page = await open('/ask/adapter-setting')
    await page.locator(`#in-${name}`).tap()
    const shown = await page.locator('#keypad-echo').textContent()
    expect(shown).toBe(await page.locator(`#in-${name}`).getAttribute('placeholder'))
    expect(shown).toMatch(/\d/)
    await page.context().close()
  })

  it('show only what a field takes: no direction of a torque, nothing but digits of a PIN', async () => {
    const page = await open('/ask/adapter-setting')
    await page.locator('#in-torque').tap()
    expect(await page.locator('#keypad-angle').isVisible()).toBe(false)
    await page.locator('#in-adapter').tap()
    expect(await page.locator('#keypad-angle').isVisible()).toBe(true)
    await page.goto(`${service.url}/sign-in`)
    await page.locator('#in-pin').tap()
    const shown = await page.locator('#keypad button[data-types]:visible').allTextContents()
    expect(shown.sort()).toEqual([...'0123456789'])
    await page.context().close()
  })

  it('lie as on any keypad, three by four with the units beside, as high as the screen was set', async () => {
    const page = await open('/screen?mm=4&key=14&far=near&idle=0&contrast=usual&keys=always')
    await page.goto(`${service.url}/ask/adapter-setting`)
    await page.locator('#in-torque').tap()
    const at = (types: string) => box(page.locator(`#keypad button[data-types="${types}"]`).first())
    const rows = await Promise.all(['789', '456', '123'].map((row) => Promise.all([...row].map(at))))
    for (const row of rows) expect(new Set(row.map(({ y }) => Math.round(y))).size).toBe(1)
    for (const column of [0, 1, 2]) expect(new Set(rows.map((row) => Math.round(row[column]?.x ?? 0))).size).toBe(1)
    expect(rows.map(([first]) => first?.y)).toEqual(rows.map(([first]) => first?.y).sort((a, b) => (a ?? 0) - (b ?? 0)))
    const unit = await at('N·m')
    expect(unit.x).toBeGreaterThan(rows[0]?.[2]?.x ?? 0)
    expect(unit.width).toBeGreaterThan((rows[0]?.[0]?.width ?? 0) * 0.9)
    for (const key of await page.locator('#keypad button:visible').all())
      expect((await box(key)).height).toBeGreaterThanOrEqual(4 * 14 - 0.5)
    await page.context().close()
  })

  it.each(screens)('cover neither the field that is typed in nor themselves on %s', async (_name, viewport) => {
    const page = await open('/ask/adapter-setting?wrench=W-03', viewport)
    for (const [name, keys] of Object.entries({ torque: ['9', '0', 'N·m'], adapter: ['4', '5', 'mm'] })) {
      await page.locator(`#in-${name}`).tap()
      await tap(page, ...keys)
      const field = await box(page.locator(`#in-${name}`))
      const pad = await box(page.locator('#keypad'))
      expect(field.y).toBeGreaterThanOrEqual(0)
      expect(field.y + field.height).toBeLessThanOrEqual(pad.y)
      expect(await page.locator('#keypad').evaluate((one) => one.scrollHeight - one.clientHeight)).toBeLessThanOrEqual(
        1,
      )
    }
    await page.context().close()
  })

  it.each([
    ['/wrench/W-03/check', 'distance', ['4', '0', '0', 'mm'], '400 mm'],
    ['/ask/bolt-torque', 'size', ['M', '1', '2', 'x', '1', '.', '5'], 'M12x1.5'],
    ['/ask/bolt-torque', 'seat', ['flat', '1', '8', 'mm', '×', '1', '3', 'mm'], 'flat 18 mm x 13 mm'],
    ['/ask/compare', 'a', ['9', '9', ';', '1', '0', '1', 'N·m'], '99; 101 N·m'],
    ['/ask/wrench-check', 'points', ['4', '0', 'N·m', ':', '3', '9', ';', '4', '1', 'N·m'], '40 N·m: 39; 41 N·m'],
    ['/ask/adapter-setting', 'adapter', ['3', '0', 'mm', '+', '1', '1/2', 'in'], '30 mm + 1 1/2 in'],
  ] as const)('on %s type %s', async (path, name, keys, text) => {
    const page = await open(path)
    const field = page.locator(`#in-${name}`)
    await field.evaluate((element) => element.closest('details')?.setAttribute('open', ''))
    await field.tap()
    await tap(page, ...keys)
    expect(await field.inputValue()).toBe(text)
    await page.context().close()
  })

  it('take a unit away as a whole, and a digit as one', async () => {
    const page = await open('/ask/adapter-setting')
    await page.locator('#in-torque').tap()
    await tap(page, '1', '2', 'lbf·ft')
    await does(page, 'back')
    expect(await page.locator('#in-torque').inputValue()).toBe('12')
    await does(page, 'back')
    expect(await page.locator('#in-torque').inputValue()).toBe('1')
    await page.context().close()
  })

  it('go through a form that is kept field by field, and never send it half filled', async () => {
    const page = await open('/sign-in?onward=/keep/wrench')
    await page.locator('#in-pin').tap()
    await tap(page, ...PIN)
    await does(page, 'next')
    await page.waitForURL(({ pathname }) => pathname === '/keep/wrench')
    const keyed = page.locator('form[action="/keep/wrench"] input[data-keys]')
    expect(await keyed.count()).toBeGreaterThan(3)
    for (const field of await keyed.all()) {
      await field.tap()
      await does(page, 'next')
    }
    expect(new URL(page.url()).pathname).toBe('/keep/wrench')
    expect(await page.locator('[role=alert].fault').count()).toBe(0)
    await page.context().close()
  })

  it.each(screens)('leave the direction to a drawing that fits %s with its keys', async (_name, viewport) => {
    const page = await open(asked, viewport)
    await page.locator('#in-adapter').tap()
    await page.locator('#keypad-angle').tap()
    expect(await page.locator('#angle > p').isVisible()).toBe(true)
    expect(await page.locator('#angle-drawing text', { hasText: '180' }).count()).toBe(0)
    expect(await page.locator('#angle-drawing .pulled').isVisible()).toBe(true)
    for (const part of ['#angle-drawing', '[data-by="15"]', '[data-to="180"]', '[data-does=take]', '[data-does=leave]'])
      expect(await isOnScreen(page.locator(`#angle ${part}, #angle${part}, ${part}`).first()), part).toBe(true)
    await page.locator('#angle [data-to="180"]').tap()
    await page.locator('#angle [data-does=take]').tap()
    expect(await page.locator('#in-adapter').inputValue()).toBe('@180')
    expect(await page.locator('#keypad-headline').textContent()).toBe('Now the length')
    await tap(page, '4', '5', 'mm')
    expect(await page.locator('#in-adapter').inputValue()).toBe('45 mm@180')
    // 120 · 400/(400 − 45)
    await page.locator('#headline', { hasText: '135.2 N·m' }).waitFor()
    await page.context().close()
  })
})

describe.runIf(hasBrowser)('what a screen of the kiosk shows at once', () => {
  let service: Service
  let browser: Browser
  beforeAll(async () => {
    service = await startService({}, ['demo'])
    browser = await openBrowser()
  })
  afterAll(async () => {
    await browser?.close()
    service?.kill()
  })
  const open = async (path: string, viewport: { width: number; height: number }): Promise<Page> => {
    const page = await (await browser.newContext({ viewport, hasTouch: true })).newPage()
    await page.goto(service.url + path)
    return page
  }

  it.each([
    ['a small panel', small],
    ['a phone', phone],
  ] as const)('is what to act on, at the lower edge of %s, and it leads to the answer', async (_name, viewport) => {
    const page = await open(`${asked}&adapter=45+mm%4030`, viewport)
    const line = page.locator('#to-answer')
    expect(await line.textContent()).toContain('Set 109.3 N·m')
    const { y, height } = (await line.boundingBox()) ?? { y: 0, height: 0 }
    expect(y + height).toBeLessThanOrEqual(viewport.height)
    await line.tap()
    await page.locator('#to-answer').waitFor({ state: 'hidden' })
    const top = await page.locator('#headline').evaluate((element) => element.getBoundingClientRect().top)
    expect(top).toBeGreaterThanOrEqual(0)
    expect(top).toBeLessThan(viewport.height / 2)
    await page.locator('#in-torque').tap()
    expect(await line.isVisible()).toBe(false)
    await page.context().close()
  })

  it('is a slip in the place of its number', async () => {
    const page = await open('/ask/adapter-setting?wrench=W-03&torque=1200+N%C2%B7m&adapter=45+mm', small)
    expect(await page.locator('#to-answer').textContent()).toContain('Look again')
    expect(await page.locator('#to-answer').textContent()).not.toContain('Set ')
    await page.context().close()
  })

  it.each(['/wrench/W-03', check])('on a small panel is what %s is about', async (path) => {
    const page = await open(path, small)
    expect(await page.locator('.fact').isVisible()).toBe(true)
    expect((await page.locator('.fact').textContent())?.length).toBeGreaterThan(10)
    await page.context().close()
  })

  it('on a wide panel scrolls with the page, and a form that the screen holds stays', async () => {
    const page = await open(`${asked}&adapter=45+mm%4030`, { width: 1280, height: 1200 })
    expect(await page.locator('.bench > div').evaluate((one) => one.scrollHeight - one.clientHeight)).toBe(0)
    const before = await page.locator('#headline').evaluate((one) => one.getBoundingClientRect().top)
    await page.evaluate(() => scrollTo(0, 600))
    expect(await page.locator('#headline').evaluate((one) => one.getBoundingClientRect().top)).toBe(before - 600)
    expect(await page.locator('form.stays').evaluate((one) => one.getBoundingClientRect().top)).toBeGreaterThanOrEqual(
      0,
    )
    await page.context().close()
  })

  it('that is of a wrench to be checked says so before its number, and not in the colour of an answer', async () => {
    const page = await open('/ask/adapter-setting?wrench=W-02&torque=40+N%C2%B7m&adapter=45+mm%4030', small)
    const line = page.locator('#to-answer')
    await line.waitFor()
    expect(await line.textContent()).toMatch(/^Read this before you use the wrench: ▲ Check W-02 before it is used /)
    expect(await line.textContent()).not.toMatch(/Set [\d.]+ N·m/)
    expect(await line.getAttribute('class')).toBe('refused')
    // The number is seen by whoever says that it was read.
    expect(await page.locator('#headline').isVisible()).toBe(false)
    await page.locator('.held > summary').tap()
    expect(await page.locator('#headline').textContent()).toMatch(/Set [\d.]+ N·m/)
    expect(await page.locator('#headline').isVisible()).toBe(true)
    await page.context().close()
  })

  it.each(['en', 'de', 'es', 'fr'])('on a phone is a head of one line (%s)', async (locale) => {
    const page = await open(`/board?lang=${locale}`, phone)
    expect((await page.locator('.top').boundingBox())?.height).toBeLessThan(80)
    await page.context().close()
  })

  it('of a text read in one way is no question whether another was meant', async () => {
    const page = await open(`/ask?text=${encodeURIComponent('convert 20 Nm to lbf ft')}`, small)
    expect(await page.locator('#headline').textContent()).toContain('14.75 lbf·ft')
    expect(await page.locator('nav.related').last().textContent()).toBe('Change the numbers')
    await page.context().close()
  })
})
