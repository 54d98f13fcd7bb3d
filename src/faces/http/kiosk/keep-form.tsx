// A form for what is kept, made from its declaration: every input a field, faults at their field, nothing typed is lost.

import { keepables } from '../../../keeping/index.ts'
import type { ShownFault } from '../../../questions/answer.ts'
import type { Input } from '../../../questions/input.ts'
import type { Kind } from '../../../register/records.ts'
import { choiceIn, exampleIn, styleFor, type Words } from '../../../words/index.ts'
import { render } from '../../../words/render.ts'
import { DayField } from './day-field.tsx'
import { Keypad } from './keypad.tsx'
import { keysOf } from './keys-of.ts'
import type { Session } from './sessions.ts'
import { type PageParts, Shell } from './shell.tsx'
import { SignedIn } from './write-keys.tsx'

type Name = keyof Words['keep']['labels'] & keyof Words['register']['inputs']

export interface KeepParts {
  readonly kind: Kind
  readonly values: Readonly<Record<string, string>>
  readonly faults: readonly ShownFault[]
  readonly missing: readonly string[]
  /** Tags to pick from: wrenches for `wrench`, gauges for `gauge`. */
  readonly tags: Readonly<Partial<Record<string, readonly string[]>>>
  readonly session: Session
  /** The form's own name for what it sends: sent twice it is kept once. */
  readonly formKey: string
  /** Something else was kept under the form's name before. */
  readonly isTaken?: boolean
  /** Readings that look like a slip: one key more says that they stand. */
  readonly stands?: string
  readonly leave: string
}

/** What the page itself knows and nobody types. */
const fixed: ReadonlySet<string> = new Set(['supersedes'])
const long: ReadonlySet<string> = new Set(['points', 'notes', 'note', 'conditions', 'same'])

const optionText = (words: Words, name: string, choice: string): string =>
  name === 'what' ? words.register.events[choice as keyof Words['register']['events']] : choiceIn(words, choice)

const Control = ({
  name,
  input,
  value,
  parts,
  words,
}: {
  name: Name
  input: Input<unknown>
  value: string
  parts: KeepParts
  words: Words
}) => {
  const common = { id: `in-${name}`, name, 'aria-describedby': `about-${name}` }
  const listed = parts.tags[name]
  // What the address or an older form names is kept, though it is not (or no longer) in the list.
  const tags = listed && value !== '' && !listed.includes(value) ? [value, ...listed] : listed
  const choices = input.choices ?? tags
  if (choices && (choices.length > 0 || input.choices))
    return (
      <select {...common}>
        <option value="">{words.page.notSaid}</option>
        {choices.map((choice) => (
          <option key={choice} value={choice} selected={choice === value}>
            {optionText(words, name, choice)}
          </option>
        ))}
      </select>
    )
  if (long.has(name))
    return (
      <textarea {...common} rows={4} autocomplete="off">
        {value}
      </textarea>
    )
  if (input.kind === 'date') return <DayField id={common.id} name={name} value={value} about={`about-${name}`} />
  const example = `${words.page.like} ${exampleIn(input.example.metric, styleFor(words))}`
  return (
    <input
      {...common}
      type="text"
      value={value}
      autocomplete="off"
      {...keysOf(input, 'metric')}
      placeholder={example}
    />
  )
}

const KeepField = ({
  name,
  input,
  parts,
  words,
}: {
  name: Name
  input: Input<unknown>
  parts: KeepParts
  words: Words
}) => {
  const faults = parts.faults.filter((one) => one.input === name)
  const missing = parts.missing.includes(name)
  return (
    <div class={faults.length > 0 ? 'field wrong' : missing ? 'field wanted' : 'field'}>
      <label for={`in-${name}`}>{words.keep.labels[name]}</label>
      <Control name={name} input={input} value={parts.values[name] ?? ''} parts={parts} words={words} />
      <div class="about" id={`about-${name}`}>
        {faults.map(({ got, hint }) => (
          <p class="fault" key={hint}>
            {`${words.faces.got} “${got}”. ${hint}`}
          </p>
        ))}
        {missing && <p class="ask">{`${words.page.stillNeeded}: ${words.register.inputs[name].ask}.`}</p>}
        <p>{input.kind === 'date' ? words.keep.dayShown : words.register.inputs[name].measure}</p>
      </div>
    </div>
  )
}

export const KeepPage = (page: PageParts & { parts: KeepParts }) => {
  const { parts } = page
  const { words } = page.language
  const corrects = parts.values['supersedes'] !== undefined
  const title = (corrects ? words.keep.corrections : words.keep.forms)[parts.kind]
  const inputs = Object.entries(keepables[parts.kind].inputs).filter(
    ([name]) => !fixed.has(name) && (name !== 'why' || corrects),
  )
  const atField = new Set(inputs.map(([name]) => name))
  const rest = parts.faults.filter(({ input }) => !atField.has(input))
  return (
    <Shell {...page} title={title}>
      <h1>{title}</h1>
      {parts.isTaken && (
        <p class="fault" role="alert">
          {words.writing.sentBefore}
        </p>
      )}
      {(parts.faults.length > 0 || parts.missing.length > 0) && (
        <p class="fault" role="alert">
          {words.keep.notKept}
        </p>
      )}
      {rest.map(({ hint, got }) => (
        <p class="fault" key={hint}>
          {got === '' ? hint : `${words.faces.got} “${got}”. ${hint}`}
        </p>
      ))}
      <form method="post" action={`/keep/${parts.kind}`}>
        <input type="hidden" name="token" value={parts.session.token} />
        <input type="hidden" name="key" value={parts.formKey} />
        {corrects && <input type="hidden" name="supersedes" value={parts.values['supersedes']} />}
        <fieldset>
          <legend class="quiet">{title}</legend>
          {inputs.map(([name, input]) => (
            <KeepField key={name} name={name as Name} input={input} parts={parts} words={words} />
          ))}
        </fieldset>
        <div class="actions">
          <button type="submit">{words.keep.keep}</button>
          {parts.stands !== undefined && (
            <button type="submit" name="sure" value={parts.stands}>
              {render(words.keep.asShown, () => parts.stands)}
            </button>
          )}
          <a class="key" href={parts.leave}>
            {words.keep.leave}
          </a>
        </div>
      </form>
      <SignedIn words={words} />
      <Keypad words={words} />
    </Shell>
  )
}
