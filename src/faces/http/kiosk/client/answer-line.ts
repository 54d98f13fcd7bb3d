// What the answer comes to, in one line: over the keys while somebody types, and at the lower edge of a screen on which the
// answer lies farther down. A refusal names its field, and a slip is told in the place of the number.
import { all, find } from './page.ts'

export interface Told {
  readonly text: string
  readonly state: 'answered' | 'incomplete' | 'refused'
}

/** Where the answer on the page changed, or the keys came or went. */
export const changed = (): void => void document.dispatchEvent(new Event('told'))
export const onChange = (then: () => void): void => document.addEventListener('told', then)

const textOf = (selector: string, within?: ParentNode): string => find(selector, within)?.textContent?.trim() ?? ''

export const toldOf = (): Told | undefined => {
  const answer = find('#answer')
  if (!answer) return undefined
  const slips = find('.slips', answer)
  if (slips) return { text: `${textOf('h2', slips)}: ${textOf('li', slips)}`, state: 'refused' }
  const wrong = find('.field.wrong')
  if (answer.matches('.refused') && wrong)
    return { text: `${textOf('label', wrong)}: ${textOf('.fault', wrong)}`, state: 'refused' }
  const wanted = all('.field.wanted label').map((label) => label.textContent)
  if (answer.matches('.incomplete') && wanted.length > 0)
    return { text: `${answer.dataset['needed']}: ${wanted.join(', ')}`, state: 'incomplete' }
  const state = answer.matches('.answered') ? 'answered' : answer.matches('.refused') ? 'refused' : 'incomplete'
  return { text: textOf('#headline', answer), state }
}

export const watchAnswerLine = (): void => {
  const line = find<HTMLAnchorElement>('#to-answer')
  if (!line) return
  const show = (): void => {
    const told = toldOf()
    const top = find('#answer .slips, #headline')?.getBoundingClientRect().top ?? 0
    const isBelow = top > innerHeight - line.offsetHeight
    line.hidden = told === undefined || !isBelow || document.documentElement.classList.contains('typing')
    line.className = told?.state ?? ''
    line.textContent = told ? `${told.text} ▾` : ''
  }
  onChange(show)
  addEventListener('scroll', show, { passive: true })
  addEventListener('resize', show)
  show()
}
