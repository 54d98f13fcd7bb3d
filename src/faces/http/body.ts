// Reads a JSON body without losing anything: a member that stands in it twice is kept twice, where JSON.parse keeps the last.

const closing = (text: string, from: number): number => {
  for (let at = from + 1; at < text.length; at++) {
    if (text[at] === '\\') at++
    else if (text[at] === '"') return at
  }
  throw new SyntaxError('a text does not end')
}

/** Where a value ends that begins at `from`: at the comma or brace behind it. The text is known to be JSON. */
const endOfValue = (text: string, from: number): number => {
  let depth = 0
  for (let at = from; at < text.length; at++) {
    const char = text[at]
    if (char === '"') at = closing(text, at)
    else if (char === '{' || char === '[') depth++
    else if ((char === '}' || char === ']' || char === ',') && depth === 0) return at
    else if (char === '}' || char === ']') depth--
  }
  throw new SyntaxError('an object does not end')
}

const membersOf = (text: string): Array<[string, unknown]> => {
  const members: Array<[string, unknown]> = []
  let at = text.indexOf('{') + 1
  for (;;) {
    const open = text.indexOf('"', at)
    if (open === -1) return members
    const close = closing(text, open)
    const start = text.indexOf(':', close) + 1
    const end = endOfValue(text, start)
    members.push([JSON.parse(text.slice(open, close + 1)) as string, JSON.parse(text.slice(start, end))])
    if (text[end] === '}') return members
    at = end + 1
  }
}

// An empty list counts as one empty value: said twice is said twice.
const listed = (member: unknown): unknown[] => (Array.isArray(member) ? (member.length > 0 ? member : ['']) : [member])

/**
 * The value of a JSON text; of an object every member, those that stand in it twice as a list of all their values.
 * Throws SyntaxError on what is no JSON.
 */
export const readBody = (text: string): unknown => {
  const value: unknown = JSON.parse(text)
  if (value === null || typeof value !== 'object' || Array.isArray(value)) return value
  const inputs: Record<string, unknown> = Object.create(null)
  for (const [name, member] of membersOf(text)) {
    inputs[name] = Object.hasOwn(inputs, name) ? [...listed(inputs[name]), ...listed(member)] : member
  }
  return inputs
}
