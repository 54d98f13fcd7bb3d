// Whether the server can be reached: said at once, looked at again until it is back. What is on the screen stays readable.
import { find } from './page.ts'

export interface Line {
  readonly isLost: () => boolean
  /** A request that got no reply. */
  readonly lost: () => void
  readonly back: () => void
  readonly onBack: (then: () => void) => void
}

const CALM_MS = 15_000
const LOST_MS = 1500
const PATIENCE_MS = 3000

export const reaches = async (address: string): Promise<boolean> => {
  try {
    const reply = await fetch(address, { cache: 'no-store', signal: AbortSignal.timeout(PATIENCE_MS) })
    return reply.ok
  } catch {
    return false
  }
}

export const watchLine = (): Line => {
  const told = find('#line')
  const waiting: Array<() => void> = []
  let isLost = false
  let timer = 0
  const show = (): void => {
    if (told) told.hidden = !isLost
    document.documentElement.classList.toggle('cut-off', isLost)
  }
  const line: Line = {
    isLost: () => isLost,
    lost: () => {
      isLost = true
      show()
      look(LOST_MS)
    },
    back: () => {
      if (!isLost) return
      isLost = false
      show()
      for (const then of waiting) then()
    },
    onBack: (then) => void waiting.push(then),
  }
  const look = (inMs: number): void => {
    clearTimeout(timer)
    timer = window.setTimeout(async () => {
      if (await reaches('/healthz')) line.back()
      else line.lost()
      look(isLost ? LOST_MS : CALM_MS)
    }, inMs)
  }
  addEventListener('offline', line.lost)
  addEventListener('online', () => look(0))
  look(CALM_MS)
  return line
}
