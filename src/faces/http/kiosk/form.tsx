// The form of a question, made from its declared inputs: what it needs first, the rest behind one key. Faults stand at their field.
import type { Answer, ShownFault } from '../../../questions/answer.ts'
import { type QuestionName, questions } from '../../../questions/index.ts'
import type { Input } from '../../../questions/input.ts'
import type { Words } from '../../../words/index.ts'

export type FormValues = Readonly<Record<string, string>>

interface FieldParts {
  readonly name: string
  readonly input: Input<unknown>
  readonly value: string
  readonly faults: readonly ShownFault[]
  readonly missing: boolean
  readonly words: Words
  readonly system: 'metric' | 'inch'
}

const Control = ({
  name,
  input,
  value,
  describedBy,
  invalid,
  system,
  words,
}: FieldParts & { describedBy: string; invalid: boolean }) => {
  const common = { id: `in-${name}`, name, 'aria-describedby': describedBy, 'aria-invalid': invalid || undefined }
  if (input.choices) {
    return (
      <select {...common}>
        <option value="">{words.page.notSaid}</option>
        {input.choices.map((choice) => (
          <option key={choice} value={choice} selected={choice === value}>
            {choice}
          </option>
        ))}
      </select>
    )
  }
  const list = input.suggestions && `offers-${name}`
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
        placeholder={`${words.page.like} ${input.example[system]}`}
      />
      {list && (
        <datalist id={list}>
          {input.suggestions?.map((offer) => (
            <option key={offer} value={offer} />
          ))}
        </datalist>
      )}
    </>
  )
}

const Field = (parts: FieldParts) => {
  const { name, faults, missing, words } = parts
  const text = words.inputs[name as keyof Words['inputs']]
  const invalid = faults.length > 0
  return (
    <div class={invalid ? 'field wrong' : missing ? 'field wanted' : 'field'}>
      <label for={`in-${name}`}>{text.label}</label>
      <Control {...parts} describedBy={`about-${name}`} invalid={invalid} />
      <div class="about" id={`about-${name}`}>
        {faults.map(({ got, hint }) => (
          <p class="fault" key={hint}>
            {`${words.faces.got} “${got}”. ${hint}`}
          </p>
        ))}
        {missing && <p class="ask">{`${words.page.stillNeeded}: ${text.ask}.`}</p>}
        <p>{text.measure}</p>
      </div>
    </div>
  )
}

export interface FormParts {
  readonly question: QuestionName
  readonly values: FormValues
  readonly answer: Answer | undefined
  readonly words: Words
  readonly locale: string
  readonly system: 'metric' | 'inch'
}

export const QuestionForm = ({ question, values, answer, words, locale, system }: FormParts) => {
  const { inputs, oneOf } = questions[question]
  const first = (name: string): boolean => inputs[name]?.needed === true || oneOf.some((group) => group.includes(name))
  const field = (name: string) => (
    <Field
      key={name}
      name={name}
      input={inputs[name] as Input<unknown>}
      value={values[name] ?? ''}
      faults={answer?.faults.filter((one) => one.input === name) ?? []}
      missing={answer?.missing.some((one) => one.input === name) ?? false}
      words={words}
      system={system}
    />
  )
  const needed = Object.keys(inputs).filter(first)
  const optional = Object.keys(inputs).filter((name) => !first(name))
  const told = optional.some(
    (name) => values[name] !== undefined || answer?.missing.some(({ input }) => input === name),
  )
  return (
    <form method="get" action={`/ask/${question}#answer`}>
      <input type="hidden" name="lang" value={locale} />
      <fieldset>
        <legend>{words.page.needed}</legend>
        {needed.map(field)}
      </fieldset>
      {optional.length > 0 && (
        <details open={told}>
          <summary>{words.page.optional}</summary>
          <fieldset>
            <legend class="quiet">{words.page.optional}</legend>
            {optional.map(field)}
          </fieldset>
        </details>
      )}
      <div class="actions">
        <button type="submit">{words.page.workOut}</button>
        <a class="key" href={`/ask/${question}?lang=${locale}`}>
          {words.page.startOver}
        </a>
      </div>
    </form>
  )
}
