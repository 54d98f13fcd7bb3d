// A keypad for gloves: digits, the units that the field takes, fractions of an inch. It opens under a field that is touched
// where this screen asks for it, and types into it as a keyboard would. The keyboard always works beside it.
import { openAngle } from './angle.ts'
import { all, find, screenSetting, type } from './page.ts'

const FRACTIONS = [
  '1/16',
  '1/8',
  '3/16',
  '1/4',
  '5/16',
  '3/8',
  '7/16',
  '1/2',
  '9/16',
  '5/8',
  '11/16',
  '3/4',
  '13/16',
  '7/8',
  '15/16',
]

const key = (text: string, kind: string): HTMLButtonElement => {
  const button = document.createElement('button')
  button.type = 'button'
  button.className = kind
  button.dataset['types'] = text
  button.textContent = text
  return button
}

/** A fraction stands behind whole inches with a space; a unit behind its number with one. */
const added = (before: string, text: string, kind: string): string => {
  if (kind === 'unit') return `${before.replace(/\s*(?:[^\d\s.,/+@-][^\d+@]*)$/u, '')} ${text}`
  if (kind === 'fraction') return /\d$/.test(before) ? `${before} ${text}` : `${before}${text}`
  return before + text
}

const fieldsOf = (form: HTMLFormElement | null): HTMLInputElement[] =>
  form ? all<HTMLInputElement>('input[data-keys]', form).filter((one) => one.offsetParent !== null) : []

export const watchKeypad = (): void => {
  const pad = find('#keypad')
  if (!pad) return
  const units = find('#keypad-units')
  const fractions = find('#keypad-fractions')
  const echo = find<HTMLOutputElement>('#keypad-echo')
  const label = find('#keypad-label')
  const wanted = matchMedia('(pointer: coarse)').matches || screenSetting().get('keys') === 'always'
  let field: HTMLInputElement | undefined

  const show = (): void => {
    if (!field || !echo) return
    const shown = field.type === 'password' ? '•'.repeat(field.value.length) : field.value
    echo.textContent = shown === '' ? '–' : shown
  }
  const close = (): void => {
    pad.hidden = true
    document.documentElement.classList.remove('typing')
    field?.removeAttribute('inputmode')
    field = undefined
  }
  const open = (next: HTMLInputElement): void => {
    field = next
    const keys = (next.dataset['keys'] ?? '').split('|').filter((one) => one !== '')
    units?.replaceChildren(...keys.map((one) => key(one, 'unit')))
    fractions?.replaceChildren(...(keys.includes('in') ? FRACTIONS.map((one) => key(one, 'fraction')) : []))
    if (fractions) fractions.hidden = !keys.includes('in')
    const angle = find('#keypad-angle')
    if (angle) angle.hidden = next.dataset['angle'] === undefined
    const noUnit = find('#keypad-no-unit')
    if (noUnit) noUnit.hidden = !keys.includes('N·m')
    if (label) label.textContent = find(`label[for="${next.id}"]`)?.textContent ?? ''
    pad.hidden = false
    document.documentElement.classList.add('typing')
    show()
    next.scrollIntoView({ block: 'center' })
  }

  document.addEventListener('focusin', ({ target }) => {
    if (target instanceof HTMLInputElement && target.dataset['keys'] !== undefined && wanted) {
      // Our keys take the place of the screen's own keyboard.
      target.inputMode = 'none'
      open(target)
    } else if (target instanceof HTMLElement && !target.closest('#keypad, #angle')) close()
  })
  document.addEventListener('input', show)
  // The field keeps its focus while keys are touched.
  pad.addEventListener('pointerdown', (event) => {
    if ((event.target as HTMLElement).closest('button')) event.preventDefault()
  })
  pad.addEventListener('click', ({ target }) => {
    const button = (target as HTMLElement).closest('button')
    if (!button || !field) return
    const { types, does } = button.dataset
    if (types !== undefined) type(field, added(field.value, types, button.className))
    if (does === 'back') type(field, field.value.slice(0, -1).trimEnd())
    if (does === 'clear') type(field, '')
    if (does === 'angle') openAngle(field)
    if (does === 'next') {
      const fields = fieldsOf(field.form)
      const next = fields[fields.indexOf(field) + 1]
      if (next) next.focus()
      else if (field.form && !field.form.matches('[data-live]')) field.form.requestSubmit()
      else {
        field.blur()
        close()
        find('#answer')?.scrollIntoView({ block: 'start' })
      }
    }
    if (does === 'close') {
      field.blur()
      close()
    }
  })
  document.addEventListener('keydown', ({ key: pressed }) => {
    if (pressed === 'Escape') close()
  })
}
