// A keypad for gloves: digits, the units and marks that the field takes, fractions of an inch. It opens under a field that is
// touched where this screen asks for it, and types into it as a keyboard would. The keyboard always works beside it.
import { openAngle } from './angle.ts'
import { changed, onChange, toldOf } from './answer-line.ts'
import { all, find, screenSetting, type } from './page.ts'
import { added, erased, wantsLength } from './typing.ts'

const FRACTIONS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15].map((of) => {
  const shared = of % 8 === 0 ? 8 : of % 4 === 0 ? 4 : of % 2 === 0 ? 2 : 1
  return `${of / shared}/${16 / shared}`
})

const ROWS = 4
const LOW = 640
const SETTLE_MS = 500

const key = (text: string, kind: string): HTMLButtonElement => {
  const button = document.createElement('button')
  button.type = 'button'
  button.className = kind
  button.dataset['types'] = text
  button.textContent = text === '-' ? '−' : text
  return button
}

const parts = (text: string | undefined, between: string): string[] =>
  (text ?? '').split(between).filter((one) => one !== '')

const isKeyed = (target: EventTarget | null): target is HTMLInputElement =>
  target instanceof HTMLInputElement && target.dataset['keys'] !== undefined

/** What comes behind a field: on a page that answers as it is typed the next number that is not known yet, else any control. */
const nextOf = (field: HTMLInputElement): HTMLElement | undefined => {
  const { form } = field
  if (!form) return undefined
  const isLive = form.matches('[data-live]')
  const fields = all(isLive ? 'input[data-keys]' : 'input:not([type=hidden]), select, textarea', form).filter(
    (one) => one === field || (one.checkVisibility() && !(isLive && one.closest('.given, details:not([open])'))),
  )
  return fields[fields.indexOf(field) + 1]
}

const isAlone = ({ form }: HTMLInputElement): boolean =>
  form !== null && all('input:not([type=hidden]), select, textarea', form).length === 1

export const watchKeypad = (): void => {
  const pad = find('#keypad')
  if (!pad) return
  const units = find('#keypad-units')
  const marks = find('#keypad-marks')
  const fractions = find('#keypad-fractions')
  const echo = find<HTMLOutputElement>('#keypad-echo')
  const readAs = find('#keypad-read')
  const label = find('#keypad-label')
  const headline = find('#keypad-headline')
  const angle = find('#keypad-angle')
  const noUnit = find('#keypad-no-unit')
  const wanted = matchMedia('(pointer: coarse)').matches || screenSetting().get('keys') === 'always'
  let field: HTMLInputElement | undefined
  let settling = 0

  const show = (): void => {
    if (!field || !echo) return
    const isEmpty = field.value === ''
    echo.textContent = isEmpty
      ? field.placeholder
      : field.type === 'password'
        ? '•'.repeat(field.value.length)
        : field.value
    echo.classList.toggle('example', isEmpty)
    const isBehind = document.documentElement.classList.contains('behind')
    // How it was read, in the other unit too, as it stands under the field: there the keys may hide it.
    const read = isEmpty || isBehind ? [] : all('.echo', field.closest('.field') ?? pad)
    if (readAs) readAs.textContent = read.map((one) => one.textContent).join('; ')
    if (!headline) return
    const told = toldOf()
    const isWaiting = wantsLength(field.value)
    headline.textContent = (isWaiting ? headline.dataset['length'] : told?.text) ?? ''
    headline.className = isWaiting ? 'incomplete' : (told?.state ?? '')
  }
  const fit = (): void => document.documentElement.style.setProperty('--pad', `${pad.offsetHeight}px`)
  const close = (): void => {
    if (!field) return
    pad.hidden = true
    document.documentElement.classList.remove('typing')
    // The room that the keys took goes later: a key of the page that closed them must not move under its finger.
    settling = window.setTimeout(() => document.documentElement.style.removeProperty('--pad'), SETTLE_MS)
    field.removeAttribute('inputmode')
    field = undefined
    changed()
  }
  const leave = (): void => {
    field?.blur()
    close()
    find('#answer.answered')?.scrollIntoView({ block: 'start' })
  }
  const open = (next: HTMLInputElement): void => {
    // Our keys take the place of the screen's own keyboard.
    next.inputMode = 'none'
    field = next
    clearTimeout(settling)
    const keys = parts(next.dataset['keys'], '|')
    const isSecret = next.type === 'password'
    const own = keys.map((one) => key(one, 'unit'))
    const also = parts(next.dataset['marks'], ' ').map((one) => key(one, 'mark'))
    // The first marks fill the column of the units, as high as the digits are.
    const room = Math.max(ROWS - own.length, 0)
    units?.replaceChildren(...own, ...also.slice(0, room))
    marks?.replaceChildren(...also.slice(room), ...(angle ? [angle] : []))
    fractions?.replaceChildren(...(keys.includes('in') ? FRACTIONS.map((one) => key(one, 'fraction')) : []))
    if (fractions) fractions.hidden = !keys.includes('in')
    if (angle) angle.hidden = next.dataset['angle'] === undefined
    if (noUnit) noUnit.hidden = !keys.includes('N·m')
    pad.classList.toggle('secret', isSecret)
    if (label) label.textContent = next.dataset['told'] ?? find(`label[for="${next.id}"]`)?.textContent ?? ''
    pad.hidden = false
    document.documentElement.classList.add('typing')
    show()
    fit()
    // A low screen has no room for the label; the keys tell it.
    const place = innerHeight < LOW ? next : (next.closest('.field') ?? next)
    place.scrollIntoView({ block: 'start' })
    changed()
  }

  if (!wanted) return
  document.addEventListener('focusin', ({ target }) => {
    if (isKeyed(target)) open(target)
    else if (target instanceof HTMLElement && !target.closest('#keypad, #angle')) close()
  })
  // A field that has the focus already sends none; so it is with one that the page itself put it in.
  document.addEventListener('click', ({ target }) => {
    if (isKeyed(target) && field !== target) open(target)
  })
  if (isKeyed(document.activeElement)) open(document.activeElement)
  document.addEventListener('input', show)
  onChange(show)
  addEventListener('resize', fit)
  // The field keeps its focus while keys are touched.
  pad.addEventListener('pointerdown', (event) => {
    if ((event.target as HTMLElement).closest('button')) event.preventDefault()
  })
  pad.addEventListener('click', ({ target }) => {
    const button = (target as HTMLElement).closest('button')
    if (!button || !field) return
    const { types, does } = button.dataset
    if (types !== undefined) type(field, added(field.value, types, button.className))
    if (does === 'back') type(field, erased(field.value))
    if (does === 'clear') type(field, '')
    if (does === 'angle') openAngle(field)
    if (does === 'close') leave()
    if (does === 'next') {
      const next = nextOf(field)
      if (next) next.focus()
      else if (isAlone(field)) field.form?.requestSubmit()
      else leave()
    }
  })
  document.addEventListener('keydown', ({ key: pressed }) => {
    if (pressed === 'Escape') close()
  })
}
