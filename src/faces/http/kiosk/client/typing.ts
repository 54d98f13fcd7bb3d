// What a key makes of the text that it is touched for. Pure: no page, no field.

/** How marks are written between the parts of a text. */
const written: Readonly<Record<string, string>> = {
  '+': ' + ',
  '×': ' x ',
  ':': ': ',
  ';': '; ',
  '|': ' | ',
  flat: 'flat ',
  cone: 'cone ',
  ball: 'ball ',
}

const UNIT_AT_END = /\s*(?:[^\d\s.,/+@;:|-][^\d+@;:|]*)$/u
const LAST_OF_TEXT = /(?:\s*[^\d\s.,/+@;:|-]+|\s*.)\s*$/u

/** A direction that was taken before its length: what is typed then goes in front of it. */
const split = (text: string): readonly [before: string, angle: string] => {
  const [, before = text, angle = ''] = /^(.*?)(@-?\d+)$/u.exec(text) ?? []
  return angle === '' || /\p{L}\s*$/u.test(before) ? [text, ''] : [before, angle]
}

/** True while a direction stands there and its length does not. */
export const wantsLength = (text: string): boolean => {
  const [before, angle] = split(text)
  return angle !== '' && !/\d\s*$/.test(before)
}

/** A fraction stands behind whole inches with a space; a unit behind its number with one, in the place of another. */
export const added = (text: string, typed: string, kind: string): string => {
  const [before, angle] = split(text)
  if (kind === 'unit') return `${before.replace(UNIT_AT_END, '')} ${typed}`.trimStart() + angle
  if (kind === 'fraction') return (/\d$/.test(before) ? `${before} ${typed}` : `${before}${typed}`) + angle
  return before + (kind === 'mark' ? (written[typed] ?? typed) : typed) + angle
}

/** Without what was typed last: a digit, a mark, or a unit as a whole. */
export const erased = (text: string): string => {
  const [before, angle] = split(text)
  if (wantsLength(text)) return before.trimEnd()
  return before.replace(LAST_OF_TEXT, '').trimEnd() + angle
}

/** The last of the adapters, pointing another way. */
export const withAngle = (text: string, angle: number): string => {
  const parts = text.split(/\s*\+\s*/)
  const last = parts.pop() ?? ''
  return [...parts, `${last.replace(/\s*@.*$/, '')}@${angle}`].join(' + ')
}
