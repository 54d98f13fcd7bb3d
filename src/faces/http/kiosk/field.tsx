// One field of a form, made from its declared input: its label, its control, and what is told about it (how it was read, what is
// wrong with it, what it is). What a keypad needs to know of it stands in its data attributes.
import type { Answer, ShownFault, ShownGiven } from '../../../questions/answer.ts'
import type { Input } from '../../../questions/input.ts'
import { choiceIn, exampleIn, styleFor, topicIn, type Words } from '../../../words/index.ts'
import { keysOf, type System } from './keys-of.ts'

export interface FieldParts {
  readonly name: string
  readonly input: Input<unknown>
  readonly value: string
  readonly faults: readonly ShownFault[]
  readonly missing: boolean
  readonly given: readonly ShownGiven[]
  readonly words: Words
  readonly system: System
  /** Wrenches of the shop, offered where the input names one. */
  readonly wrenches: readonly { readonly tag: string; readonly label: string }[]
}

const Select = ({ offers, value, words, none, ...common }: SelectParts) => (
  <select {...common}>
    <option value="">{none ?? words.page.notSaid}</option>
    {offers.map(({ text, label }) => (
      <option key={text} value={text} selected={text === value}>
        {label}
      </option>
    ))}
  </select>
)

interface SelectParts {
  readonly offers: readonly { readonly text: string; readonly label: string }[]
  readonly value: string
  readonly words: Words
  /** What holds where nothing is picked; that nothing was said where absent. */
  readonly none?: string | undefined
  readonly id: string
  readonly name: string
}

/** What came from the register stands in its field: an example there would be read as the number that is used. */
export const lentOf = ({ given }: Pick<FieldParts, 'given'>): string | undefined =>
  given.find(({ from }) => from === 'register')?.text

const Control = ({ name, input, value, faults, given, words, system, wrenches }: FieldParts) => {
  const lent = lentOf({ given })
  const common = {
    id: `in-${name}`,
    name,
    'aria-describedby': `about-${name}`,
    'aria-invalid': faults.length > 0 || undefined,
  }
  if (input.choices)
    return (
      <Select
        {...common}
        offers={input.choices.map((text) => ({ text, label: choiceIn(words, text) }))}
        value={value}
        words={words}
        none={lent}
      />
    )
  const ours = wrenches.some(({ tag }) => tag === value) || value === ''
  if (input.kind === 'wrench' && wrenches.length > 0 && ours)
    return (
      <Select
        {...common}
        offers={wrenches.map(({ tag, label }) => ({ text: tag, label }))}
        value={value}
        words={words}
      />
    )
  const list = input.suggestions && `offers-${name}`
  const angle = input.kind === 'adapters' || input.kind === 'angle'
  return (
    <>
      <input
        {...common}
        type="text"
        list={list}
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        value={value}
        {...keysOf(input, system)}
        data-angle={angle ? '' : undefined}
        placeholder={lent ?? `${words.page.like} ${exampleIn(input.example[system], styleFor(words))}`}
      />
      {list && (
        <datalist id={list}>
          {input.suggestions?.map((offer) => (
            <option key={offer} value={offer} label={input.kind === 'topic' ? topicIn(words, offer) : undefined} />
          ))}
        </datalist>
      )}
      <p class="offers" id={`recent-${name}`} />
      {angle && (
        <button type="button" class="offer" data-opens-angle={`in-${name}`} hidden>
          {words.kiosk.byAngle}
        </button>
      )}
    </>
  )
}

/** How it was read, in the other unit too; what is wrong; what is still wanted; what it is. */
export const About = ({ name, input, faults, missing, given, words }: FieldParts) => (
  <>
    {/* A wrench that was picked stands in its field already. */}
    {(input.kind === 'wrench' ? [] : given).map(({ text, also, low, high, from }) => (
      <p class="echo" key={text}>
        {also[0] && low === high ? `${text} = ${also[0].text}` : text}
        {from === 'register' && ` (${words.faces.register})`}
      </p>
    ))}
    {faults.map(({ got, hint }) => (
      <p class="fault" key={hint}>
        {`${words.faces.got} “${got}”. ${hint}`}
      </p>
    ))}
    {missing && <p class="ask">{`${words.page.stillNeeded}: ${words.inputs[name as keyof Words['inputs']].ask}.`}</p>}
    <p>{words.inputs[name as keyof Words['inputs']].measure}</p>
  </>
)

/** What the register has given is no field that anybody still has to fill in. */
export const stateOf = ({ faults, missing, given }: Pick<FieldParts, 'faults' | 'missing' | 'given'>): string => {
  if (faults.length > 0) return 'field wrong'
  if (missing) return 'field wanted'
  return given.some(({ from }) => from === 'register') ? 'field given' : 'field'
}

export const Field = (parts: FieldParts) => (
  <div class={stateOf(parts)} id={`field-${parts.name}`}>
    <label for={`in-${parts.name}`}>{parts.words.inputs[parts.name as keyof Words['inputs']].label}</label>
    <Control {...parts} />
    <div class="about" id={`about-${parts.name}`}>
      <About {...parts} />
    </div>
  </div>
)

/** What an answer says of one input. */
export const toldOf = (answer: Answer | undefined, name: string): Pick<FieldParts, 'faults' | 'missing' | 'given'> => ({
  faults: answer?.faults.filter((one) => one.input === name) ?? [],
  missing: answer?.missing.some((one) => one.input === name) ?? false,
  given: answer?.given.filter(({ input, from }) => input === name && (from === 'asked' || from === 'register')) ?? [],
})
