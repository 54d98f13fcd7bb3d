// The keys under an answer: what next, and what can be done with it. Each knows what is carried; see carried.ts.

import {
  type APIActionRowComponent,
  type APIComponentInMessageActionRow,
  type APIStringSelectComponent,
  ButtonStyle,
  ComponentType,
} from 'discord.js'
import type { Answer } from '../../../questions/answer.ts'
import type { Words } from '../../../words/index.ts'
import { inputsTaken } from '../../taken.ts'
import { cut } from '../cut.ts'
import { type Carried, idsFor } from './carried.ts'

export const verbs = ['next', 'share', 'work', 'pic', 'units', 'edit', 'fill', 'save', 'wrong', 'gone'] as const
export type Verb = (typeof verbs)[number]
export const isVerb = (text: string | undefined): text is Verb => (verbs as readonly string[]).includes(text ?? '')

/** Where the answer stands, as far as its keys depend on it. */
export interface Place {
  readonly isPrivate: boolean
  /** A quiet channel: nothing there is shown to all. */
  readonly isQuiet: boolean
  /** Somebody who may write cards of wrenches asked. */
  readonly mayKeep: boolean
  /** The server has a channel for answers that look wrong. */
  readonly hasReports: boolean
}

export type Rows = Array<APIActionRowComponent<APIComponentInMessageActionRow>>

/** What comes next, in the order of the list: other readings of a text first, then what follows from the answer. */
export const nextOf = (answer: Answer): Answer['related'] => [
  ...(answer.reading?.alternatives ?? []),
  ...answer.related,
]

const MOST_NEXT = 25
const LABEL = 100
const IN_A_ROW = 5
/** A form holds no more than this. */
export const MOST_FIELDS = 5

/** The system that the key for units turns to; none where the results have no system. */
export const turnedUnits = (answer: Answer, shown: Carried['shown']): 'inch' | 'metric' | undefined => {
  const units = Object.values(answer.results).flatMap((result) =>
    !Array.isArray(result) && typeof (result as { unit?: unknown }).unit === 'string'
      ? [(result as { unit: string }).unit]
      : [],
  )
  const inch = units.some((unit) => /lbf|^in$|^ft$|ozf|psi|ksi/.test(unit))
  const metric = units.some((unit) => /N|mm|^m$|cm|kgf|MPa/.test(unit))
  return inch === metric ? (inch ? (shown === 'inch' ? 'metric' : 'inch') : undefined) : inch ? 'metric' : 'inch'
}

const kept = ['lever', 'pivot', 'tolerance', 'mark', 'least', 'most'] as const
/** The inputs of an answer, whether they were asked or taken from a text. */
export const inputsOf = (answer: Answer, { question, raw }: Carried): Carried['raw'] =>
  question === null ? inputsTaken(answer) : raw

/** What of an answer belongs on the card of a wrench. */
export const ofWrench = (raw: Carried['raw']): Record<string, string> =>
  Object.fromEntries(
    kept.flatMap((name) => (typeof raw[name] === 'string' ? [[name, raw[name] as string] as const] : [])),
  )

const buttonsOf = (answer: Answer, carried: Carried, place: Place, hasFigure: boolean): Verb[] => {
  const isAnswered = answer.status === 'answered'
  const raw = inputsOf(answer, carried)
  const rules: ReadonlyArray<readonly [Verb, boolean]> = [
    ['fill', answer.status === 'incomplete' && answer.question !== null && answer.missing.length > 0],
    ['share', isAnswered && place.isPrivate && !place.isQuiet],
    ['work', isAnswered && answer.steps.length > 0],
    ['pic', isAnswered && hasFigure],
    ['units', isAnswered && turnedUnits(answer, carried.shown) !== undefined],
    ['edit', answer.question !== null && Object.keys(raw).length > 0 && answer.status !== 'incomplete'],
    ['save', isAnswered && place.mayKeep && !('wrench' in raw) && 'lever' in raw],
    ['wrong', isAnswered && place.hasReports],
    ['gone', !place.isPrivate],
  ]
  return rules.filter(([, holds]) => holds).map(([verb]) => verb)
}

/** The rows of keys; none where what they would carry does not fit. */
export const keysUnder = (
  answer: Answer,
  carried: Carried,
  { chat }: Words,
  place: Place,
  hasFigure: boolean,
): Rows => {
  const next = nextOf(answer).slice(0, MOST_NEXT)
  const buttons = buttonsOf(answer, carried, place, hasFigure)
  const used: Verb[] = [...(next.length > 0 ? (['next'] as const) : []), ...buttons]
  const ids = used.length > 0 ? idsFor(carried, used) : undefined
  if (!ids) return []
  const idOf = new Map(used.map((verb, n) => [verb, ids[n] as string]))
  const other = turnedUnits(answer, carried.shown)
  const label: Readonly<Record<Verb, string>> = {
    next: chat.keys.next,
    share: chat.keys.share,
    work: chat.keys.working,
    pic: chat.keys.figure,
    units: other === 'inch' ? chat.keys.inch : chat.keys.metric,
    edit: chat.keys.edit,
    fill: chat.keys.fill,
    save: chat.keys.save,
    wrong: chat.keys.wrong,
    gone: chat.keys.gone,
  }
  const select: APIStringSelectComponent = {
    type: ComponentType.StringSelect,
    custom_id: idOf.get('next') ?? '',
    placeholder: chat.keys.next,
    options: next.map((one, n) => ({ label: cut(one.label, LABEL, '…'), value: `${n}:${one.question}` })),
  }
  const rows: Rows = next.length > 0 ? [{ type: ComponentType.ActionRow, components: [select] }] : []
  for (let from = 0; from < buttons.length; from += IN_A_ROW) {
    rows.push({
      type: ComponentType.ActionRow,
      components: buttons.slice(from, from + IN_A_ROW).map((verb) => ({
        type: ComponentType.Button as const,
        custom_id: idOf.get(verb) as string,
        label: label[verb],
        style:
          verb === 'fill' || verb === 'share'
            ? ButtonStyle.Primary
            : verb === 'gone' || verb === 'wrong'
              ? ButtonStyle.Danger
              : ButtonStyle.Secondary,
      })),
    })
  }
  return rows
}
