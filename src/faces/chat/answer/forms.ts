// Forms under an answer: just what is missing, or what was typed to be changed; a tag to save to; what looks wrong. Five fields at most.

import {
  type APIModalInteractionResponseCallbackData,
  type APITextInputComponent,
  ComponentType,
  TextInputStyle,
} from 'discord.js'
import type { Answer } from '../../../questions/answer.ts'
import { type QuestionName, questions } from '../../../questions/index.ts'
import type { Words } from '../../../words/index.ts'
import { cut } from '../cut.ts'
import type { Carried } from './carried.ts'
import { MOST_FIELDS } from './keys.ts'

const LABEL = 45
const TITLE = 45
const PLACEHOLDER = 100
const VALUE = 4000

const field = (
  name: string,
  label: string,
  more: Partial<Pick<APITextInputComponent, 'placeholder' | 'value' | 'style' | 'required' | 'max_length'>> = {},
): APITextInputComponent => ({
  type: ComponentType.TextInput,
  custom_id: name,
  label: cut(label, LABEL, '…'),
  style: TextInputStyle.Short,
  required: false,
  max_length: VALUE,
  ...more,
})

const form = (
  customId: string,
  title: string,
  fields: readonly APITextInputComponent[],
): APIModalInteractionResponseCallbackData => ({
  custom_id: customId,
  title: cut(title, TITLE, '…'),
  components: fields.map((one) => ({ type: ComponentType.ActionRow, components: [one] })),
})

/** Several values of an input in one text, as they may be typed. */
const textOf = (question: QuestionName, input: string, value: unknown): string =>
  [value]
    .flat()
    .filter((text) => typeof text === 'string')
    .join(questions[question].inputs[input]?.between ?? '; ')

const long: ReadonlySet<string> = new Set(['points', 'readings', 'force', 'events'])

/** Which inputs a form asks for: what is missing, what was wrong, then what was typed; in the order of the declaration. */
const fieldsFor = (question: QuestionName, answer: Answer, raw: Carried['raw'], isFilling: boolean): string[] => {
  const declared = Object.keys(questions[question].inputs)
  const missing = answer.missing.map(({ input }) => input)
  if (isFilling) return missing.slice(0, MOST_FIELDS)
  const wrong = answer.faults.map(({ input }) => input)
  const typed = declared.filter((name) => name in raw)
  const wanted = [...new Set([...missing, ...wrong, ...typed])].filter((name) => declared.includes(name))
  const chosen = wanted.slice(0, MOST_FIELDS)
  return declared.filter((name) => chosen.includes(name))
}

export const editForm = (
  customId: string,
  question: QuestionName,
  answer: Answer,
  raw: Carried['raw'],
  words: Words,
  isFilling: boolean,
): APIModalInteractionResponseCallbackData =>
  form(
    customId,
    words.questions[question],
    fieldsFor(question, answer, raw, isFilling).map((name) => {
      const input = questions[question].inputs[name]
      const { label } = words.inputs[name as keyof Words['inputs']]
      const value = textOf(question, name, raw[name])
      const { metric = '', inch = '' } = input?.example ?? {}
      const like = metric === inch ? metric : `${metric} / ${inch}`
      return field(name, label, {
        placeholder: cut(like, PLACEHOLDER, '…'),
        ...(input && long.has(input.kind) ? { style: TextInputStyle.Paragraph } : {}),
        ...(value === '' ? {} : { value: cut(value, VALUE) }),
      })
    }),
  )

export const saveForm = (customId: string, { chat }: Words): APIModalInteractionResponseCallbackData =>
  form(customId, chat.save.title, [
    field('wrench', chat.save.wrench, { required: true, max_length: 40, placeholder: 'W-07' }),
  ])

export const wrongForm = (customId: string, { chat }: Words): APIModalInteractionResponseCallbackData =>
  form(customId, chat.wrong.title, [
    field('what', chat.wrong.what, { required: true, max_length: 1000, style: TextInputStyle.Paragraph }),
  ])

/** The inputs after a form: a field that was emptied takes its input away, one that was not shown stays. */
export const withFields = (
  raw: Carried['raw'],
  fields: ReadonlyArray<readonly [string, string]>,
): Record<string, unknown> => {
  const shown = new Set(fields.map(([name]) => name))
  const rest = Object.entries(raw).filter(([name]) => !shown.has(name))
  return Object.fromEntries([...rest, ...fields.filter(([, text]) => text.trim() !== '')])
}
