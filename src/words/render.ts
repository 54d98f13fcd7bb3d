// Puts values into the places of a template: "Set {setting}" with 87.5 lbf·ft. A place without a value is a bug, not a blank.

type Piece = { readonly text: string } | { readonly place: string }

const compiled = new Map<string, readonly Piece[]>()

const compile = (template: string): readonly Piece[] =>
  template.split(/(\{[a-zA-Z]+\})/).flatMap((part): Piece[] => {
    if (part === '') return []
    if (/^\{[a-zA-Z]+\}$/.test(part)) return [{ place: part.slice(1, -1) }]
    // A brace that is no place would be read out to people.
    if (/[{}]/.test(part)) throw new Error(`bug: a stray brace in "${template}"`)
    return [{ text: part }]
  })

/** The text of a template; `textAt` gives each place's words. Templates are the house's own, so there are few to keep. */
export const render = (template: string, textAt: (place: string) => string | undefined): string => {
  let pieces = compiled.get(template)
  if (pieces === undefined) {
    pieces = compile(template)
    compiled.set(template, pieces)
  }
  let text = ''
  for (const piece of pieces) {
    if ('text' in piece) {
      text += piece.text
      continue
    }
    const value = textAt(piece.place)
    if (value === undefined) throw new Error(`bug: nothing to put at {${piece.place}} in "${template}"`)
    text += value
  }
  return text
}
