// What was typed into a field before on this screen, as keys under it: nothing is typed twice. Only lengths, adapters and
// wrenches are remembered; torques are not, since yesterday's torque is the wrong one to offer.
import { all, find, liveForm, remembered, type } from './page.ts'

const MOST = 4
const kept = new Set(['lever', 'adapter', 'wrench', 'hand', 'distance'])

const listOf = (name: string): string[] => {
  try {
    const list: unknown = JSON.parse(remembered.get(`typed-${name}`) ?? '[]')
    return Array.isArray(list) ? list.filter((one): one is string => typeof one === 'string').slice(0, MOST) : []
  } catch {
    return []
  }
}

const note = (name: string, text: string): void => {
  const list = [text, ...listOf(name).filter((one) => one !== text)].slice(0, MOST)
  remembered.set(`typed-${name}`, JSON.stringify(list))
}

export const offerRecent = (): void => {
  const form = liveForm()
  if (!form) return
  for (const field of all<HTMLInputElement>('input[name]', form)) {
    const slot = find(`#recent-${CSS.escape(field.name)}`)
    if (!kept.has(field.name) || !slot) continue
    slot.replaceChildren(
      ...listOf(field.name).map((text) => {
        const button = document.createElement('button')
        button.type = 'button'
        button.className = 'offer'
        button.textContent = text
        button.addEventListener('click', () => {
          type(field, text)
          field.focus()
        })
        return button
      }),
    )
  }
  // What stood in the address was typed by whoever made the link, not here.
  const typed = new Set<string>()
  form.addEventListener('input', ({ target }) => {
    if (target instanceof HTMLInputElement) typed.add(target.name)
  })
  // What was answered is worth offering again; what was refused is not.
  addEventListener('pagehide', () => {
    if (!find('#answer.answered')) return
    for (const field of all<HTMLInputElement>('input[name]', form))
      if (kept.has(field.name) && typed.has(field.name) && field.value.trim() !== '')
        note(field.name, field.value.trim())
  })
}
