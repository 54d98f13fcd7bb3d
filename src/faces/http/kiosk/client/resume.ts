// A check that was begun on this screen is offered again on the page of its wrench, after a reload, a lost connection or a
// restarted browser: its address holds all of it. One that a page of somebody else led to was not begun here. Once a check is kept, there is nothing to go on with.
import { cameFromHere, find, remembered } from './page.ts'

const nameOf = (tag: string): string => `check-${tag}`

export const resumeCheck = (): void => {
  const under = find('[data-check]')?.dataset['check']
  if (under !== undefined && cameFromHere() && new URLSearchParams(location.search).has('way'))
    remembered.set(nameOf(under), location.pathname + location.search)
  const offer = find('[data-resume]')
  const tag = offer?.dataset['resume']
  if (!offer || tag === undefined) return
  if (new URLSearchParams(location.search).has('kept')) remembered.set(nameOf(tag), '')
  const address = remembered.get(nameOf(tag)) ?? ''
  const link = find<HTMLAnchorElement>('a', offer)
  if (!address.startsWith('/wrench/') || !link) return
  link.href = address
  offer.hidden = false
}
