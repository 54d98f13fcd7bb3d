// How a check is to be made, asked before its plan: the way, the gauge, where it is pulled; the rest behind one key.
import { checkInputs } from '../../../desk/checking.ts'
import type { CheckDocument } from '../../../questions/check-document.ts'
import type { Input } from '../../../questions/input.ts'
import type { FleetRow } from '../../../register/fleet.ts'
import { choiceIn, exampleIn, styleFor, type Words } from '../../../words/index.ts'
import { DayField } from './day-field.tsx'
import { keysOf } from './keys-of.ts'
import type { Session } from './sessions.ts'

export interface GuidedParts {
  readonly tag: string
  /** What the register says of the wrench until this check is kept. */
  readonly row: FleetRow
  readonly document: CheckDocument
  /** What was handed in, for a form that comes back. */
  readonly asked: Readonly<Record<string, string>>
  readonly gauges: readonly { readonly tag: string; readonly name: string }[]
  readonly session: Session | undefined
  readonly formKey: string
  readonly today: string
}

type Label = keyof Words['keep']['labels']

const setup = [
  'way',
  'date',
  'gauge',
  'distance',
  'state',
  'lie',
  'wrench-mass',
  'balance-point',
  'pull-direction',
  'gauge-uncertainty',
  'temperature',
  'notes',
] as const
/** What has a field in the form, beside which its faults are told. */
export const isSetUp = (name: string): boolean => (setup as readonly string[]).includes(name)

const first: ReadonlySet<string> = new Set(['way', 'gauge', 'distance', 'state', 'date'])

const SetupField = ({ name, parts, words }: { name: Label; parts: GuidedParts; words: Words }) => {
  const { document, asked, gauges } = parts
  const input = (checkInputs as Readonly<Record<string, Input<unknown> | undefined>>)[name]
  if (!input) return null
  const faults = document.faults.filter((one) => one.input === name)
  const isMissing = document.missing.some((one) => one.input === name)
  const choices =
    name === 'gauge' && gauges.length > 0
      ? gauges.map(({ tag, name: called }) => ({ value: tag, label: `${tag}: ${called}` }))
      : input.choices?.map((value) => ({ value, label: choiceIn(words, value) }))
  const value = asked[name] ?? (name === 'state' ? 'as-found' : name === 'date' ? parts.today : '')
  const common = { id: `in-${name}`, name, 'aria-describedby': `about-${name}` }
  return (
    <div class={faults.length > 0 ? 'field wrong' : isMissing && asked['way'] ? 'field wanted' : 'field'}>
      <label for={`in-${name}`}>{words.keep.labels[name]}</label>
      {choices ? (
        <select {...common}>
          <option value="">{words.page.notSaid}</option>
          {choices.map((one) => (
            <option key={one.value} value={one.value} selected={one.value === value}>
              {one.label}
            </option>
          ))}
        </select>
      ) : input.kind === 'date' ? (
        <DayField id={common.id} name={name} value={value} about={`about-${name}`} />
      ) : (
        <input
          {...common}
          type="text"
          value={value}
          autocomplete="off"
          {...keysOf(input, 'metric')}
          placeholder={`${words.page.like} ${exampleIn(input.example.metric, styleFor(words))}`}
        />
      )}
      <div class="about" id={`about-${name}`}>
        {faults.map(({ got, hint }) => (
          <p class="fault" key={hint}>{`${words.faces.got} “${got}”. ${hint}`}</p>
        ))}
        <p>{input.kind === 'date' ? words.keep.dayShown : words.register.inputs[name].measure}</p>
      </div>
    </div>
  )
}

export const Setup = ({ parts, words }: { parts: GuidedParts; words: Words }) => (
  <form method="get" action={`/wrench/${encodeURIComponent(parts.tag)}/check`}>
    <fieldset>
      <legend>{words.keep.how}</legend>
      {setup
        .filter((name) => first.has(name))
        .map((name) => (
          <SetupField key={name} name={name} parts={parts} words={words} />
        ))}
    </fieldset>
    <details open={parts.document.missing.some(({ input }) => !first.has(input))}>
      <summary>{words.page.optional}</summary>
      <fieldset>
        <legend class="quiet">{words.page.optional}</legend>
        {setup
          .filter((name) => !first.has(name))
          .map((name) => (
            <SetupField key={name} name={name} parts={parts} words={words} />
          ))}
      </fieldset>
    </details>
    <div class="actions">
      <button type="submit">{words.keep.toPlan}</button>
    </div>
  </form>
)
