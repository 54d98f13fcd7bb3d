// The form for a check in chat: five texts, as a modal; what was typed comes back filled in when something was wrong with it.

import {
  type APIActionRowComponent,
  type APIButtonComponentWithCustomId,
  type APIModalInteractionResponseCallbackData,
  ButtonStyle,
  ComponentType,
  TextInputStyle,
} from 'discord.js'
import type { Words } from '../../../words/index.ts'
import { render } from '../../../words/render.ts'
import { cut } from '../cut.ts'
import { fieldsOf } from '../parts.ts'

export const formFields = ['way', 'gauge', 'distance', 'when', 'points'] as const
export type FormField = (typeof formFields)[number]
export type FormTexts = Readonly<Partial<Record<FormField, string>>>

const needed: ReadonlySet<string> = new Set(['way', 'when', 'points'])
const LABEL = 45
const TITLE = 45
const LONGEST = { way: 20, gauge: 24, distance: 40, when: 30, points: 3500 } as const
const examples: Readonly<Record<FormField, string>> = {
  way: 'pull',
  gauge: 'S-1',
  distance: '400 mm',
  when: '2026-11-25 as-found',
  points: '40 N·m: 10.2; 10.1 kg | 120 N·m: 30.6; 30.5 kg',
}

export const checkForm = (
  customId: string,
  tag: string,
  texts: FormTexts,
  { chatRegister: { modal } }: Words,
): APIModalInteractionResponseCallbackData => ({
  custom_id: customId,
  title: cut(
    render(modal.title, () => tag),
    TITLE,
  ),
  components: formFields.map((field) => ({
    type: ComponentType.ActionRow,
    components: [
      {
        type: ComponentType.TextInput,
        custom_id: field,
        label: cut(modal[field], LABEL),
        style: field === 'points' ? TextInputStyle.Paragraph : TextInputStyle.Short,
        required: needed.has(field),
        max_length: LONGEST[field],
        placeholder: examples[field],
        ...(texts[field] ? { value: cut(texts[field], LONGEST[field]) } : {}),
      },
    ],
  })),
})

/** The texts of a form that was sent. */
export const textsOfForm = (components: unknown): FormTexts =>
  Object.fromEntries(fieldsOf(components).filter(([name]) => (formFields as readonly string[]).includes(name)))

/** As the declaration of a check takes it; blank fields say nothing. */
export const rawOfForm = (tag: string, { when = '', ...texts }: FormTexts): Record<string, string> => {
  const [date = '', ...state] = when.trim().split(/[\s,]+/)
  const all = { ...texts, wrench: tag, date, state: state.join('-') || 'as-found' }
  return Object.fromEntries(Object.entries(all).filter(([, text]) => text.trim() !== ''))
}

export const button = (
  customId: string,
  label: string,
  style: ButtonStyle.Primary | ButtonStyle.Secondary = ButtonStyle.Secondary,
): APIButtonComponentWithCustomId => ({ type: ComponentType.Button, custom_id: customId, label, style })

export const row = (
  ...components: readonly APIButtonComponentWithCustomId[]
): APIActionRowComponent<APIButtonComponentWithCustomId> => ({
  type: ComponentType.ActionRow,
  components: [...components],
})
