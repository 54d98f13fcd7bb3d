// A day that is picked is told as it will be kept, however this browser writes days.
import { all } from './page.ts'

export const watchDays = (): void => {
  for (const field of all<HTMLInputElement>('input[type=date]')) {
    const told = field.nextElementSibling
    field.addEventListener('input', () => {
      if (told instanceof HTMLOutputElement) told.value = field.value
    })
  }
}
