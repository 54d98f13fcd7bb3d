// The page on which a screen is set up: a bank card is held against the drawing until both are as wide, so that keys can be
// made in real millimetres.
import { all, find } from './page.ts'

const CARD_MM = 85.6 // ISO/IEC 7810, ID-1

export const watchScreen = (): void => {
  const card = find('#card')
  const width = find<HTMLInputElement>('#in-mm')
  if (!card || !width) return
  const show = (): void => {
    const perMm = Number.parseFloat(width.value.replace(',', '.'))
    if (perMm > 0) card.style.inlineSize = `${(perMm * CARD_MM).toFixed(1)}px`
  }
  for (const button of all<HTMLButtonElement>('button[data-wider]')) {
    button.hidden = false
    button.addEventListener('click', () => {
      const px = Number.parseFloat(width.value) * CARD_MM + Number(button.dataset['wider'])
      width.value = (px / CARD_MM).toFixed(3)
      show()
    })
  }
  width.addEventListener('input', show)
  show()
}
