// What a drawer of figures is: an answer in, a sheet and the same in words out; and how its words are filled.
import type { Answer } from '../questions/answer.ts'
import type { Words } from '../words/index.ts'
import { render } from '../words/render.ts'
import type { Theme } from './theme.ts'

export interface Figure {
  readonly svg: string
  readonly alt: string
}

export type FigureWords = Words['figures']
export type Drawer = (answer: Answer, words: FigureWords, theme: Theme) => Figure | undefined

export const say = (template: string, values: Readonly<Record<string, string>>): string =>
  render(template, (place) => values[place])

/** Sentences of an alternative text, each with its full stop. */
export const sentences = (parts: readonly string[]): string =>
  parts.map((one) => (/[.!?]$/.test(one) ? one : `${one}.`)).join(' ')
