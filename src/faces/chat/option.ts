// One input as an option of a command: a text with what is asked and an example, or a choice.

import { type APIApplicationCommandBasicOption, ApplicationCommandOptionType } from 'discord.js'
import type { Input } from '../../questions/input.ts'
import { cut } from './cut.ts'

const DESCRIPTION = 100
const CHOICES = 25

/** A sentence within Discord's limit. */
export const describe = (text: string): string => {
  const sentence = text.charAt(0).toUpperCase() + text.slice(1)
  return cut(sentence, DESCRIPTION, '…')
}

// Nothing is required: what is missing is asked back, with what to measure and a ladder of answers.
export const basicOption = (
  name: string,
  input: Input<unknown>,
  ask: string,
  completed: boolean,
): APIApplicationCommandBasicOption => {
  const base = { name, type: ApplicationCommandOptionType.String as const, required: false }
  if (input.choices && input.choices.length <= CHOICES) {
    return { ...base, description: describe(ask), choices: input.choices.map((value) => ({ name: value, value })) }
  }
  const { metric, inch } = input.example
  const like = metric === inch ? metric : `${metric} or ${inch}`
  return { ...base, description: describe(`${ask}, like ${like}`), ...(completed ? { autocomplete: true } : {}) }
}
