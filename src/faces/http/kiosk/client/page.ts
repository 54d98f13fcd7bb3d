// Small things that every part of the script asks of the page.

export const find = <E extends Element = HTMLElement>(selector: string, within: ParentNode = document): E | null =>
  within.querySelector<E>(selector)

export const all = <E extends Element = HTMLElement>(selector: string, within: ParentNode = document): E[] => [
  ...within.querySelectorAll<E>(selector),
]

/** The form that is answered as it is typed. */
export const liveForm = (): HTMLFormElement | null => find<HTMLFormElement>('form[data-live]')

/** Types into a field as a person would, so that everything that listens hears it. */
export const type = (field: HTMLInputElement, text: string): void => {
  field.value = text
  field.dispatchEvent(new Event('input', { bubbles: true }))
}

/** Whether a page of this desk led here: what somebody else's link holds is nobody's word at this screen. */
export const cameFromHere = (): boolean =>
  URL.canParse(document.referrer) && new URL(document.referrer).origin === location.origin

/** How this screen was set up, from the cookie that its page keeps. */
export const screenSetting = (): URLSearchParams =>
  new URLSearchParams(decodeURIComponent(/(?:^|;\s*)screen=([^;]*)/.exec(document.cookie)?.[1] ?? ''))

/** What is remembered on this screen; a browser that keeps nothing is no failure. */
export const remembered = {
  get: (name: string): string | null => {
    try {
      return localStorage.getItem(name)
    } catch {
      return null
    }
  },
  set: (name: string, value: string): void => {
    try {
      localStorage.setItem(name, value)
    } catch {
      // Nothing is lost but an offer.
    }
  },
}
