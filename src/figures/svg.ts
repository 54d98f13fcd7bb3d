// SVG as text: elements, attributes, escaping. Numbers are written short; nothing here knows what is drawn.

export type Attributes = Readonly<Record<string, string | number | undefined>>

export const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }
// XML 1.0 has no place for these, not even escaped; a name that was kept with one must not break its picture.
const unfit = /[\p{Cc}\p{Cs}\uFFFE\uFFFF]/gu
const fit = (char: string): string => ('\n\r\t'.includes(char) ? char : '\uFFFD')
export const escapeXml = (text: string): string =>
  text.replace(unfit, fit).replace(/[&<>"]/g, (char) => entities[char] as string)

const short = (value: string | number): string =>
  typeof value === 'number' ? String(Math.round(value * 10) / 10) : escapeXml(value)

/** One element; undefined attributes are left out. */
export const element = (name: string, attributes: Attributes, ...children: readonly string[]): string => {
  const told = Object.entries(attributes).map(([key, value]) =>
    value === undefined ? '' : ` ${key}="${short(value)}"`,
  )
  return children.length === 0
    ? `<${name}${told.join('')}/>`
    : `<${name}${told.join('')}>${children.join('')}</${name}>`
}

export const text = (content: string, attributes: Attributes): string => element('text', attributes, escapeXml(content))

export interface Point {
  readonly x: number
  readonly y: number
}

export const line = (from: Point, to: Point, attributes: Attributes): string =>
  element('line', { x1: from.x, y1: from.y, x2: to.x, y2: to.y, ...attributes })

export const circle = (at: Point, r: number, attributes: Attributes): string =>
  element('circle', { cx: at.x, cy: at.y, r, ...attributes })

/** A line with an arrow head at its end, drawn as one path so that it looks the same in every renderer. */
export const arrow = (from: Point, to: Point, head: number, attributes: Attributes): string => {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const [ux, uy] = length === 0 ? [0, -1] : [(to.x - from.x) / length, (to.y - from.y) / length]
  const neck = { x: to.x - ux * head, y: to.y - uy * head }
  const wing = head * 0.6
  const points = [
    [neck.x - uy * wing, neck.y + ux * wing],
    [to.x, to.y],
    [neck.x + uy * wing, neck.y - ux * wing],
  ]
  const shaft = line(from, neck, { ...attributes, fill: undefined })
  const tip = element('polygon', {
    points: points.map(([x = 0, y = 0]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' '),
    class: `${attributes.class}-tip`,
  })
  return shaft + tip
}

const polygon = (corners: readonly Point[], attributes: Attributes): string =>
  element('polygon', { points: corners.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' '), ...attributes })

/** A straight piece of a width between two points, with square ends. */
export const beam = (from: Point, to: Point, width: number, attributes: Attributes): string => {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1
  const [nx, ny] = [(-(to.y - from.y) / length) * (width / 2), ((to.x - from.x) / length) * (width / 2)]
  const corners = [
    { x: from.x + nx, y: from.y + ny },
    { x: to.x + nx, y: to.y + ny },
    { x: to.x - nx, y: to.y - ny },
    { x: from.x - nx, y: from.y - ny },
  ]
  return polygon(corners, attributes)
}

/** Four corners around a point, standing on one. */
export const lozenge = ({ x, y }: Point, r: number, attributes: Attributes): string =>
  polygon(
    [
      { x, y: y - r },
      { x: x + r, y },
      { x, y: y + r },
      { x: x - r, y },
    ],
    attributes,
  )

/** Six corners around a point. */
export const hexagon = (at: Point, r: number, attributes: Attributes): string => {
  const corners = [0, 60, 120, 180, 240, 300].map((degrees) => {
    const turn = (degrees * Math.PI) / 180
    return `${(at.x + r * Math.cos(turn)).toFixed(1)},${(at.y + r * Math.sin(turn)).toFixed(1)}`
  })
  return element('polygon', { points: corners.join(' '), ...attributes })
}
