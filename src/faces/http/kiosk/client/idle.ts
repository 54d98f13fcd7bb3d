// A screen that is shared starts over by itself, after a countdown that anybody can stop.
import { find, screenSetting } from './page.ts'

const SECOND = 1000
const PATIENCE_MS = 2000

/** Whoever comes next is somebody else: signed out first, then the start page, whether that was heard or not. */
const startOver = (home: string): void => {
  const signal = AbortSignal.timeout(PATIENCE_MS)
  const out = fetch('/sign-out', { method: 'POST', body: new URLSearchParams(), redirect: 'manual', signal })
  void out.catch(() => undefined).then(() => location.assign(home))
}

export const watchIdle = (): void => {
  const dialog = find<HTMLDialogElement>('#idle')
  const left = find('#idle-left')
  const seconds = Number(screenSetting().get('idle') ?? 0)
  if (!dialog || !left || !(seconds > 0)) return
  const countdown = Number(dialog.dataset['countdown'] ?? 20)
  let since = Date.now()
  const stay = (): void => {
    since = Date.now()
    if (dialog.open) dialog.close()
  }
  for (const name of ['pointerdown', 'keydown', 'input', 'wheel']) addEventListener(name, stay, { passive: true })
  const timer = window.setInterval(() => {
    // The start page has nothing to lose; it is only looked at anew.
    const over = Math.ceil(seconds + countdown - (Date.now() - since) / SECOND)
    if (over > countdown) return
    if (location.pathname === '/') return void (over <= 0 && stay())
    if (over <= 0) {
      clearInterval(timer)
      startOver(dialog.dataset['home'] ?? '/')
      return
    }
    left.textContent = String(over)
    if (!dialog.open) dialog.showModal()
  }, SECOND)
}
