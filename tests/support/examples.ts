// Every question with its own examples: what a door would offer to be typed, and what must work as it stands.
import { type QuestionName, questionNames, questions } from '../../src/questions/index.ts'

export type System = 'metric' | 'inch'
export const systems: readonly System[] = ['metric', 'inch']

/** What a question cannot do without: its needed inputs, and the first of each group of which one is enough. */
export const neededOf = (name: QuestionName): readonly string[] => {
  const { inputs, oneOf } = questions[name]
  return [...Object.keys(inputs).filter((input) => inputs[input]?.needed), ...oneOf.map((group) => group[0] as string)]
}

export const exampleOf = (name: QuestionName, input: string, system: System): string => {
  const example = questions[name].inputs[input]?.example[system]
  if (example === undefined) throw new Error(`${name} has no input ${input}`)
  return example
}

/** The needed inputs, each with its example. */
export const exampleInputs = (name: QuestionName, system: System): Record<string, string> =>
  Object.fromEntries(neededOf(name).map((input) => [input, exampleOf(name, input, system)]))

export const everyQuestion: ReadonlyArray<readonly [QuestionName, System]> = questionNames.flatMap((name) =>
  systems.map((system) => [name, system] as const),
)
