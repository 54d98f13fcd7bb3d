// A deviation in words of any language, the same at every door: "3.4 % low (gives less)".
import { deviationShown } from '../core/deviation-shown.ts'
import { echoNumber, type NumberStyle } from '../core/number-style.ts'
import { render } from './render.ts'
import type { Words } from './shape.ts'

/** `percent` as ISO 6789 has it; `limit` [%] where it lies beside one. */
export const deviationText = (
  percent: number,
  words: Words['deviation'],
  style: NumberStyle,
  limit?: number,
): string => {
  const { side, size } = deviationShown(percent, limit)
  return render(words[side], (place) => (place === 'size' ? `${echoNumber(size, style)} %` : undefined))
}

/** The number of a document as it stands there, with ISO 6789's sign, and the side in a word beside it. */
export const signedText = (
  shown: { readonly value: number; readonly text: string },
  words: Words['deviation'],
): string => {
  if (shown.value === 0) return shown.text
  return render(shown.value > 0 ? words.less : words.more, (place) => (place === 'shown' ? shown.text : undefined))
}
