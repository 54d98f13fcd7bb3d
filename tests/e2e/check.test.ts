// A check from the plan to its printed report: the built program at the terminal with lines piped in, keeping in a real database
// file; then the built service on the same file, its report over HTTP, and the page in a real Chromium on the screen and on paper.
import { spawn } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { createShop } from '../../src/desk/shop.ts'
import { lazyStore } from '../../src/store/lazy.ts'
import { openStore } from '../../src/store/open.ts'
import { hasBrowser, mustHaveBrowser, openBrowser } from '../support/browser.ts'
import { type Service, startService } from '../support/service.ts'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
interface Axe {
  readonly axe: { readonly run: () => Promise<{ readonly violations: ReadonlyArray<{ readonly id: string }> }> }
}

const root = join(import.meta.dirname, '../..')
const folder = mkdtempSync(join(tmpdir(), 'armlength-check-'))
const DATABASE_URL = `file:${join(folder, 'register.db')}`

const seed = async (): Promise<void> => {
  const { store, close } = lazyStore(() => openStore(DATABASE_URL))
  let count = 0
  const shop = createShop({
    store,
    now: () => new Date('2026-02-01T08:00:00Z'),
    id: () => `seed-${++count}`,
    timeZone: 'UTC',
  })
  const who = { role: 'keeper', door: 'terminal' } as const
  const wrench = {
    tag: 'W-07',
    name: 'Half-inch click wrench',
    'wrench-type': 'click',
    'iso-type': 'setting',
    'iso-class': 'A',
    serial: '40-1177',
    least: '40 N·m',
    most: '200 N·m',
    mark: '1 N·m',
    lever: '400 mm',
  }
  const gauge = {
    tag: 'S-1',
    name: 'Hanging scale',
    'gauge-type': 'luggage-scale',
    'most-force': '600 N',
    tolerance: '0.5 %',
    checked: '2026-01-10',
  }
  for (const [kind, raw] of [
    ['wrench', wrench],
    ['gauge', gauge],
  ] as const) {
    if ((await shop.keep(kind, raw, who)).kind !== 'kept') throw new Error(`the ${kind} was not kept`)
  }
  await close()
}

const ask = (argv: readonly string[], lines: readonly string[] | undefined) =>
  new Promise<{ code: number | null; out: string }>((resolve) => {
    const child = spawn(process.execPath, ['dist/src/main.js', 'ask', ...argv], {
      cwd: root,
      env: { PATH: process.env.PATH ?? '', DATABASE_URL },
      stdio: [lines ? 'pipe' : 'ignore', 'pipe', 'pipe'],
    })
    let out = ''
    for (const stream of [child.stdout, child.stderr]) stream?.on('data', (chunk: Buffer) => (out += chunk.toString()))
    // The pipe stays open, as it does where somebody types: the program must end by itself.
    child.stdin?.write(`${lines?.join('\n')}\n`)
    child.once('exit', (code) => resolve({ code, out }))
  })

const asked = ['check', 'wrench=W-07', 'gauge=S-1', 'distance=400 mm', 'lie=upright', 'temperature=21 °C']
const readings = [
  ...['100.4 N', '101', '1004', '100.2', '99.8', '100'],
  ...['302', '301', '303', '300', '302'],
  ...['505', '503', '506', '504', '505'],
]

let service: Service
let kept: { code: number | null; out: string }
let id = ''
beforeAll(async () => {
  await seed()
  kept = await ask(asked, [...readings, 'yes'])
  id = /\/check\/([\w-]+)/.exec(kept.out)?.[1] ?? ''
  service = await startService({ DATABASE_URL, SHOP_NAME: 'Kiln Lane Garage' })
}, 30_000)
afterAll(async () => {
  await service.stop()
  rmSync(folder, { recursive: true })
})

describe('a check at the terminal of the built program', () => {
  it('prints the plan where nobody types', async () => {
    const { code, out } = await ask(asked, undefined)
    expect(code).toBe(0)
    expect(out).toContain('Set W-07 to 40 N·m, 120 N·m, 200 N·m')
  })

  it('asks, asks a slip back, and keeps in the file', () => {
    expect(kept.out).toContain('Was it 100.4 N?')
    expect(kept.out).toContain('All readings are in: pass.')
    expect(kept.code).toBe(0)
    expect(id).not.toBe('')
  })
})

describe('its report', () => {
  it('is the same over HTTP as what the terminal said', async () => {
    const report = (await (await fetch(`${service.url}/v1/wrenches/W-07/checks/${id}`)).json()) as {
      verdict: { code: string }
      points: Array<{ setting: { text: string }; mean: { text: string }; deviation: { text: string } }>
    }
    expect(report.verdict.code).toBe('pass')
    for (const { setting, mean, deviation } of report.points) {
      expect(kept.out).toContain(`${setting.text}, 5 read: mean ${mean.text}, deviation ${deviation.text}`)
    }
  })

  it.runIf(hasBrowser || mustHaveBrowser)('is accessible by axe on a small screen, light and dark', async () => {
    const browser: Browser = await openBrowser()
    try {
      for (const colorScheme of ['light', 'dark'] as const) {
        const viewport = { width: 380, height: 800 }
        const page = await (await browser.newContext({ colorScheme, viewport, bypassCSP: true })).newPage()
        for (const path of ['/wrench/W-07', `/wrench/W-07/check/${id}`]) {
          await page.goto(`${service.url}${path}`)
          await page.evaluate(axe)
          const found = await page.evaluate(async () => {
            const { violations } = await (globalThis as unknown as Axe).axe.run()
            return violations.map((one) => one.id)
          })
          expect(found).toEqual([])
        }
      }
    } finally {
      await browser.close()
    }
  })

  it.runIf(hasBrowser || mustHaveBrowser)('reads on the screen and prints black on white', async () => {
    const browser: Browser = await openBrowser()
    try {
      const page: Page = await browser.newPage({ colorScheme: 'dark', viewport: { width: 1024, height: 900 } })
      await page.goto(`${service.url}/wrench/W-07`)
      await page.click(`a[href="/wrench/W-07/check/${id}"]`)
      const text = await page.textContent('main')
      for (const told of [
        '40-1177',
        'S-1, Hanging scale',
        'as found',
        '21 °C',
        '100.4 N',
        'not an accredited calibration',
      ]) {
        expect(text).toContain(told)
      }
      expect(await page.locator('tbody tr').count()).toBe(3 + 15)
      await page.emulateMedia({ media: 'print' })
      const look = await page.evaluate(() => {
        const { color, backgroundColor } = getComputedStyle(document.querySelector('main') as Element)
        const seen = (one: string): boolean => (document.querySelector(one) as HTMLElement).offsetParent !== null
        return { color, backgroundColor, top: seen('.top'), footer: seen('footer'), ways: seen('.ways') }
      })
      expect(look).toEqual({
        color: 'rgb(0, 0, 0)',
        backgroundColor: 'rgb(255, 255, 255)',
        top: false,
        footer: false,
        ways: false,
      })
      for (const format of ['A4', 'Letter'] as const) {
        const pdf = (await page.pdf({ format })).toString('latin1')
        expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1)
      }
    } finally {
      await browser.close()
    }
  })
})
