// How long a kiosk's browser takes to show the first page and an answer, of the built program, each in a browser that knows nothing yet.
import { hasBrowser, openBrowser } from '../support/browser.ts'
import { startService } from '../support/service.ts'

const TIMES = 7
const pages = {
  'first page': '/',
  'an answer': '/ask/adapter-setting?torque=120+N·m&lever=380+mm&adapter=45+mm%4030',
} as const

export interface PaintBench {
  readonly name: string
  readonly p50: number
  readonly most: number
}

export const benchPaint = async (): Promise<PaintBench[]> => {
  if (!hasBrowser) return []
  const service = await startService({})
  const browser = await openBrowser()
  const rows: PaintBench[] = []
  for (const [name, path] of Object.entries(pages)) {
    const times: number[] = []
    for (let n = 0; n < TIMES; n++) {
      const context = await browser.newContext({ viewport: { width: 1280, height: 800 } })
      const page = await context.newPage()
      await page.goto(service.url + path)
      if ((await page.locator('h1, h2').count()) === 0) throw new Error(`nothing on ${path}`)
      const first = await page.evaluate(
        () =>
          new Promise<number>((resolve) => {
            new PerformanceObserver((list) => {
              const [entry] = list.getEntriesByName('first-contentful-paint')
              if (entry) resolve(entry.startTime)
            }).observe({ type: 'paint', buffered: true })
          }),
      )
      times.push(first)
      await context.close()
    }
    times.sort((one, other) => one - other)
    rows.push({ name, p50: times[TIMES >> 1] as number, most: times.at(-1) as number })
  }
  await browser.close()
  service.kill()
  return rows
}
