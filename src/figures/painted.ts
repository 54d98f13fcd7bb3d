// A sheet read back as what is painted, in order, each with the style that its classes and attributes give it. It reads the SVG that
// is written here (see svg.ts, frame.ts, theme.ts) and no other: what it does not know is a bug, and is said.
import { entities } from './svg.ts'

export interface Style {
  /** Colours as they are written; undefined paints nothing. */
  readonly fill: string | undefined
  readonly stroke: string | undefined
  readonly width: number
  readonly cap: 'butt' | 'round'
  readonly join: 'miter' | 'round'
  /** Lengths of dash and gap; empty for a whole line. */
  readonly dashes: readonly number[]
  /** Of the fill, 0 to 1. */
  readonly opacity: number
}

type Placed =
  | {
      readonly kind: 'rect'
      readonly x: number
      readonly y: number
      readonly w: number
      readonly h: number
      readonly r: number
    }
  | { readonly kind: 'circle'; readonly x: number; readonly y: number; readonly r: number }
  /** Path data as SVG writes it. */
  | { readonly kind: 'path'; readonly d: string }
  | {
      readonly kind: 'text'
      readonly x: number
      /** Of the line that letters stand on. */
      readonly y: number
      readonly size: number
      readonly weight: number
      readonly anchor: 'start' | 'middle' | 'end'
      readonly content: string
    }

/** A part of the sheet with points of its own: they are made so many times larger, then moved, and end at its edges. */
export interface Frame {
  readonly scale: number
  readonly move: { readonly x: number; readonly y: number }
  readonly edges: { readonly x: number; readonly y: number; readonly w: number; readonly h: number }
}

export type Painted = Placed & { readonly style: Style; readonly frame?: Frame }

export interface Painting {
  /** Both in points of the sheet. */
  readonly width: number
  readonly height: number
  readonly parts: readonly Painted[]
}

type Words = Readonly<Record<string, string>>

const wordsOf = (text: string): Words =>
  Object.fromEntries([...text.matchAll(/([a-z-]+)\s*:\s*([^;]+)/g)].map(([, name, value]) => [name, value?.trim()]))

/** Selectors with what they set, in order: names of elements first, as a class says more than they do. */
const rulesOf = (css: string): ReadonlyArray<readonly [selector: string, Words]> => {
  if (css.includes('@'))
    throw new Error('a sheet for whatever the reader has cannot be painted: it has more than one set of colours')
  const rules = [...css.matchAll(/([^{}]+)\{([^}]*)\}/g)].flatMap(([, selectors = '', body = '']) =>
    selectors.split(',').map((one) => [one.trim(), wordsOf(body)] as const),
  )
  const isClass = ([selector]: (typeof rules)[number]): boolean => selector.startsWith('.')
  return [...rules.filter((one) => !isClass(one)), ...rules.filter(isClass)]
}

const textOf = (xml: string): string =>
  Object.entries(entities).reduceRight((text, [char, entity]) => text.replaceAll(entity, char), xml)

const numbers = (list: string): number[] =>
  list
    .trim()
    .split(/[\s,]+/)
    .map(Number)

const paint = (colour: string | undefined): string | undefined => (colour === 'none' ? undefined : colour)

const styleOf = (all: Words): Style => ({
  fill: paint(all['fill'] ?? '#000'),
  stroke: paint(all['stroke'] ?? 'none'),
  width: Number.parseFloat(all['stroke-width'] ?? '1'),
  cap: all['stroke-linecap'] === 'round' ? 'round' : 'butt',
  join: all['stroke-linejoin'] === 'round' ? 'round' : 'miter',
  dashes: all['stroke-dasharray'] === undefined ? [] : numbers(all['stroke-dasharray']),
  opacity: Number(all['fill-opacity'] ?? '1'),
})

const polygonOf = (points: string): string => {
  const all = numbers(points)
  const pairs = all.flatMap((x, n) => (n % 2 === 0 ? [`${x} ${all[n + 1]}`] : []))
  return `M${pairs.join('L')}Z`
}

const placed = (name: string, at: Words, all: Words, content: string): Placed => {
  const of = (key: string): number => Number(at[key] ?? '0')
  switch (name) {
    case 'rect':
      return { kind: 'rect', x: of('x'), y: of('y'), w: of('width'), h: of('height'), r: of('rx') }
    case 'circle':
      return { kind: 'circle', x: of('cx'), y: of('cy'), r: of('r') }
    case 'line':
      return { kind: 'path', d: `M${of('x1')} ${of('y1')}L${of('x2')} ${of('y2')}` }
    case 'polygon':
      return { kind: 'path', d: polygonOf(at['points'] ?? '') }
    case 'path':
      return { kind: 'path', d: at['d'] ?? '' }
    case 'text': {
      const anchor = all['text-anchor']
      return {
        kind: 'text',
        x: of('x'),
        y: of('y'),
        size: Number.parseFloat(all['font-size'] ?? '16'),
        weight: Number(all['font-weight'] ?? '400'),
        anchor: anchor === 'middle' || anchor === 'end' ? anchor : 'start',
        content: textOf(content).replace(/\s+/g, ' ').trim(),
      }
    }
    default:
      throw new Error(`a sheet with <${name}> cannot be painted`)
  }
}

const ATTRIBUTES = '((?:\\s+[a-zA-Z][\\w-]*="[^"]*")*)\\s*'
const OPEN = new RegExp(`^<svg${ATTRIBUTES}>`)
const ELEMENT = new RegExp(`<([a-z]+)${ATTRIBUTES}(?:/>|>([^<]*)</\\1>)|<svg${ATTRIBUTES}>(.*?)</svg>`, 'gs')

const attributesOf = (text: string): Words =>
  Object.fromEntries([...text.matchAll(/([a-zA-Z][\w-]*)="([^"]*)"/g)].map(([, name, value]) => [name, value]))

interface Part {
  readonly name: string
  readonly at: Words
  readonly content: string
  readonly frame?: Frame
}

/** As large as it fits, in the middle, as SVG does where nothing else is said. */
const frameOf = (at: Words): Frame => {
  const [left = 0, top = 0, wide = 1, high = 1] = numbers(at['viewBox'] ?? '')
  const edges = { x: Number(at['x']), y: Number(at['y']), w: Number(at['width']), h: Number(at['height']) }
  const scale = Math.min(edges.w / wide, edges.h / high)
  const move = {
    x: edges.x + (edges.w - wide * scale) / 2 - left * scale,
    y: edges.y + (edges.h - high * scale) / 2 - top * scale,
  }
  return { scale, move, edges }
}

const partsOf = (body: string, frame?: Frame): Part[] => {
  const found = [...body.matchAll(ELEMENT)]
  if (found.map(([whole]) => whole).join('') !== body || (frame && body.includes('<svg')))
    throw new Error('a sheet with parts within parts cannot be painted')
  return found.flatMap(([, name, told = '', content = '', inner, within = '']): Part[] =>
    name === undefined
      ? partsOf(within, frameOf(attributesOf(inner ?? '')))
      : [{ name, at: attributesOf(told), content, ...(frame ? { frame } : {}) }],
  )
}

/** What is painted on a sheet. Throws an Error where it is no sheet, has an element that none has, or follows the reader's colours. */
export const paintingOf = (svg: string): Painting => {
  const [open, told] = OPEN.exec(svg) ?? []
  if (open === undefined || !svg.endsWith('</svg>')) throw new Error('what is to be painted is no sheet')
  const size = attributesOf(told ?? '')
  const parts = partsOf(svg.slice(open.length, -'</svg>'.length))
  const rules = rulesOf(parts.flatMap(({ name, content }) => (name === 'style' ? [content] : [])).join(''))
  const painted = parts
    .filter(({ name }) => name !== 'style' && name !== 'title')
    .map(({ name, at, content, frame }): Painted => {
      const names = [name, ...(at['class'] ?? '').split(' ').map((one) => `.${one}`)]
      const ruled = rules.filter(([selector]) => names.includes(selector)).map(([, words]) => words)
      const all: Words = Object.assign({}, at, ...ruled, wordsOf(at['style'] ?? ''))
      return { ...placed(name, at, all, content), style: styleOf(all), ...(frame ? { frame } : {}) }
    })
  return { width: Number(size['width']), height: Number(size['height']), parts: painted }
}
