// The components of a message or of a form that was sent, one by one, however they are nested.

export type Part = Readonly<Record<string, unknown>>

export function* partsOf(components: unknown): Generator<Part> {
  if (Array.isArray(components)) {
    for (const one of components) yield* partsOf(one)
  } else if (typeof components === 'object' && components !== null) {
    const part = components as Part
    yield part
    yield* partsOf(part['component'])
    yield* partsOf(part['components'])
  }
}

/** The fields of a form that was sent, with what was typed into each. */
export const fieldsOf = (components: unknown): ReadonlyArray<readonly [string, string]> =>
  [...partsOf(components)].flatMap(({ custom_id: name, value }): [string, string][] =>
    typeof name === 'string' && typeof value === 'string' ? [[name, value]] : [],
  )
