// Reads a sheet back: its texts as boxes, its strokes and areas; and says what runs off it or into its texts.
import { widthOf } from '../../src/figures/frame.ts'
import { figureOf } from '../../src/figures/index.ts'
import type { Theme } from '../../src/figures/theme.ts'
import type { QuestionName } from '../../src/questions/index.ts'
import { languages } from '../../src/words/index.ts'
import { answered } from './desk.ts'

type Raw = Readonly<Record<string, string | readonly string[]>>
export const sheetOf = (question: QuestionName, raw: Raw, theme: Theme = 'light') => {
  const answer = answered(question, raw)
  const figure = figureOf(answer, languages.en.words, theme)
  if (!figure) throw new Error(`no figure for ${question}`)
  return { answer, ...figure }
}

export interface Shape {
  readonly name: string
  readonly at: Readonly<Record<string, string>>
  readonly content: string
}

export const shapesOf = (svg: string): Shape[] =>
  [...svg.matchAll(/<(text|line|rect|circle|polygon)((?:\s[\w-]+="[^"]*")*)(?:\/>|>([^<]*)<)/g)].map(
    ([, name = '', attributes = '', content = '']) => ({
      name,
      content,
      at: Object.fromEntries([...attributes.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, key, value]) => [key, value])),
    }),
  )

export const numberAt = ({ at }: Shape, name: string): number => Number(at[name])

interface Point {
  readonly x: number
  readonly y: number
}
interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

export const cornersOf = ({ at }: Shape): Point[] =>
  (at.points ?? '').split(' ').map((pair) => {
    const [x = 0, y = 0] = pair.split(',').map(Number)
    return { x, y }
  })

const boxOf = (shape: Shape): Box => {
  const [x, y, size] = [numberAt(shape, 'x'), numberAt(shape, 'y'), numberAt(shape, 'font-size')]
  const width = widthOf(shape.content.replaceAll(/&\w+;/g, '&'), size)
  const anchor = shape.at['text-anchor']
  const left = anchor === 'end' ? x - width : anchor === 'middle' ? x - width / 2 : x
  return { left, right: left + width, top: y - size * 0.73, bottom: y + size * 0.2 }
}

const grown = ({ left, right, top, bottom }: Box, by: number): Box => ({
  left: left - by,
  right: right + by,
  top: top - by,
  bottom: bottom + by,
})
const meet = (one: Box, other: Box): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom

/** Whether a stroke passes through a box: looked at in small paces. */
const passes = (from: Point, to: Point, box: Box): boolean => {
  const paces = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 2) + 1
  return Array.from({ length: paces + 1 }, (_, n) => n / paces).some((part) => {
    const [x, y] = [from.x + (to.x - from.x) * part, from.y + (to.y - from.y) * part]
    return x > box.left && x < box.right && y > box.top && y < box.bottom
  })
}

const strokesOf = (shape: Shape): { from: Point; to: Point; half: number }[] => {
  const half = Number(shape.at['stroke-width'] ?? 2.5) / 2
  const at = (x: string, y: string): Point => ({ x: numberAt(shape, x), y: numberAt(shape, y) })
  if (shape.name === 'line') return [{ from: at('x1', 'y1'), to: at('x2', 'y2'), half }]
  const corners =
    shape.name === 'polygon'
      ? cornersOf(shape)
      : [
          [0, 0],
          [1, 0],
          [1, 1],
          [0, 1],
        ].map(([right = 0, down = 0]) => ({
          x: numberAt(shape, 'x') + right * numberAt(shape, 'width'),
          y: numberAt(shape, 'y') + down * numberAt(shape, 'height'),
        }))
  return corners.map((from, n) => ({ from, to: corners[(n + 1) % corners.length] as Point, half: 0 }))
}

/** What is wrong with how a sheet is laid out, in words; empty where nothing is. */
export const clashesOf = (svg: string): string[] => {
  const [, width = 0, height = 0] = /viewBox="0 0 (\d+) (\d+)"/.exec(svg)?.map(Number) ?? []
  const shapes = shapesOf(svg)
  const texts = shapes.filter(({ name, content }) => name === 'text' && content !== '')
  const strokes = shapes
    .filter(({ name, at }) => (name === 'line' || name === 'rect' || name === 'polygon') && at.class !== 'paper')
    .flatMap((shape) => strokesOf(shape).map((stroke) => ({ ...stroke, shape })))
  const said: string[] = []
  for (const [n, text] of texts.entries()) {
    const box = boxOf(text)
    if (box.left < 0 || box.right > width || box.top < 0 || box.bottom > height) said.push(`runs off: ${text.content}`)
    if (numberAt(text, 'font-size') < 18) said.push(`too small: ${text.content}`)
    for (const other of texts.slice(n + 1))
      if (meet(box, boxOf(other))) said.push(`meet: ${text.content} / ${other.content}`)
    for (const { from, to, half, shape } of strokes)
      if (passes(from, to, grown(box, half))) said.push(`a ${shape.at.class} ${shape.name} runs into: ${text.content}`)
  }
  for (const { from, to, half, shape } of strokes)
    for (const { x, y } of [from, to])
      if (x - half < 0 || x + half > width || y - half < 0 || y + half > height)
        said.push(`runs off: ${shape.at.class} ${shape.name} ${x},${y}`)
  if (/NaN|undefined|Infinity/.test(svg)) said.push('a number that is none')
  return said
}

/** Classes that are used and have no look. */
export const unseenClasses = (svg: string): string[] => {
  const style = /<style>(.*?)<\/style>/.exec(svg)?.[1] ?? ''
  return [...svg.matchAll(/class="([^"]+)"/g)]
    .flatMap(([, names = '']) => names.split(' '))
    .filter((name) => !style.includes(`.${name}{`))
}
