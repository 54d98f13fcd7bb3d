// Puts values into the places of a template: "Set {setting}" with 87.5 lbf·ft. A place without a value is a bug, not a blank.

type Piece = { readonly text: string } | { readonly place: string }

const compiled = new Map<string, readonly Piece[]>()

const compile = (template: string): readonly Piece[] =>
  template.split(/(\{[a-z]+\})/).flatMap((part): Piece[] => {
    if (part === '') return []
    return part.startsWith('{') && part.endsWith('}') ? [{ place: part.slice(1, -1) }] : [{ text: part }]
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
