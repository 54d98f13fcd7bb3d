// The answer follows each key: the form's own page is asked for its fragment, and what changed is put in place.
// Until the reply is there the answer on the screen is marked as one to what was typed before; it is never taken for the new one.
import { changed } from './answer-line.ts'
import type { Line } from './line.ts'
import { all, find, liveForm } from './page.ts'

const QUIET_MS = 120
const PATIENCE_MS = 5000

const queryOf = (form: HTMLFormElement): string =>
  new URLSearchParams(
    [...new FormData(form)].flatMap(([name, value]): [string, string][] =>
      typeof value === 'string' && value.trim() !== '' ? [[name, value]] : [],
    ),
  ).toString()

const isSlipTold = (answer: Element | null): string | undefined =>
  answer?.querySelector('.slips')?.textContent ?? undefined

/** The new answer in the place of the old one; a slip that was looked at and confirmed stays confirmed. */
const placeAnswer = (fresh: Element | null): void => {
  const old = find('#answer')
  const slot = find('#answer-slot')
  const confirmed = old?.querySelector('details.held[open]') ? isSlipTold(old) : undefined
  if (fresh && confirmed !== undefined && isSlipTold(fresh) === confirmed)
    fresh.querySelector('details.held')?.setAttribute('open', '')
  const opened = new Set(
    all('details[open] > summary', old ?? document.createElement('p')).map((one) => one.textContent),
  )
  for (const summary of fresh ? all('details > summary', fresh) : [])
    if (
      !summary.closest('.held > summary') &&
      opened.has(summary.textContent) &&
      !summary.parentElement?.matches('.held')
    )
      summary.parentElement?.setAttribute('open', '')
  slot?.replaceChildren(...(fresh ? [fresh] : []))
  const said = find('#said')
  const headline = fresh?.querySelector('#headline')?.textContent ?? ''
  if (said && said.textContent !== headline) said.textContent = headline
}

/** In an empty field stands what the register lends, or the example again. */
const showLent = (control: HTMLElement | null, lent: string | undefined): void => {
  if (control instanceof HTMLSelectElement) {
    const [none] = control.options
    if (!none) return
    control.dataset['none'] ??= none.text
    none.text = lent ?? control.dataset['none']
  }
  if (control instanceof HTMLInputElement) {
    control.dataset['example'] ??= control.placeholder
    control.placeholder = lent ?? control.dataset['example']
  }
}

const place = (page: Document): void => {
  for (const fresh of all('[data-about]', page)) {
    const name = fresh.dataset['about'] ?? ''
    const field = find(`#field-${CSS.escape(name)}`)
    const about = find(`#about-${CSS.escape(name)}`)
    if (!field || !about) continue
    field.className = fresh.dataset['state'] ?? 'field'
    const control = find('input, select', field)
    if (field.classList.contains('wrong')) control?.setAttribute('aria-invalid', 'true')
    else control?.removeAttribute('aria-invalid')
    showLent(control, fresh.dataset['lent'])
    about.replaceChildren(...fresh.childNodes)
  }
  placeAnswer(page.querySelector('#answer'))
}

export const watchLive = (line: Line): void => {
  const form = liveForm()
  if (!form) return
  // A form that the screen holds stays beside its answer; a longer one scrolls with the page.
  const stay = (): void => void form.classList.toggle('stays', form.offsetHeight + 16 < innerHeight)
  new ResizeObserver(stay).observe(form)
  addEventListener('resize', stay)
  let timer = 0
  let running: AbortController | undefined
  const ask = async (): Promise<void> => {
    const query = queryOf(form)
    const asked = new URLSearchParams(query)
    asked.delete('lang')
    running?.abort()
    const own = new AbortController()
    running = own
    history.replaceState(null, '', `${location.pathname}?${query}`)
    try {
      const patience = AbortSignal.timeout(PATIENCE_MS)
      const reply = await fetch(`${location.pathname}/live?${query}`, {
        signal: AbortSignal.any([own.signal, patience]),
      })
      if (!reply.ok) throw new Error(String(reply.status))
      const text = await reply.text()
      if (own.signal.aborted) return
      line.back()
      place(new DOMParser().parseFromString(text, 'text/html'))
      document.documentElement.classList.remove('behind')
      changed()
    } catch {
      // A newer question took this one's place: nothing is lost.
      if (!own.signal.aborted) line.lost()
    }
  }
  form.addEventListener('input', () => {
    document.documentElement.classList.add('behind')
    clearTimeout(timer)
    timer = window.setTimeout(() => void ask(), QUIET_MS)
  })
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    clearTimeout(timer)
    void ask().then(() => find('#answer')?.scrollIntoView({ block: 'start' }))
  })
  line.onBack(() => {
    if (document.documentElement.classList.contains('behind')) void ask()
  })
}
