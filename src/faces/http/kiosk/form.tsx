// The form of a question, made from its declared inputs: what it needs first, the rest behind one key. Faults stand at their field.
import type { Answer } from '../../../questions/answer.ts'
import { type QuestionName, questions } from '../../../questions/index.ts'
import type { Input } from '../../../questions/input.ts'
import type { Words } from '../../../words/index.ts'
import { About, Field, type FieldParts, lentOf, stateOf, toldOf } from './field.tsx'

export type FormValues = Readonly<Record<string, string>>

export interface FormParts {
  readonly question: QuestionName
  readonly values: FormValues
  readonly answer: Answer | undefined
  readonly words: Words
  readonly locale: string
  readonly system: 'metric' | 'inch'
  readonly wrenches: FieldParts['wrenches']
}

const partsOf = ({ question, values, answer, words, system, wrenches }: FormParts, name: string): FieldParts => ({
  name,
  input: questions[question].inputs[name] as Input<unknown>,
  value: values[name] ?? '',
  ...toldOf(answer, name),
  words,
  system,
  wrenches,
})

/** What comes first: what is needed, what is needed in one way or another, and the wrench, which brings the rest along. */
const first = (question: QuestionName, name: string): boolean => {
  const { inputs, oneOf } = questions[question]
  return inputs[name]?.needed === true || inputs[name]?.kind === 'wrench' || oneOf.some((group) => group.includes(name))
}

export const QuestionForm = (parts: FormParts) => {
  const { question, values, answer, words, locale } = parts
  const names = Object.keys(questions[question].inputs)
  const wrench = names.filter((name) => questions[question].inputs[name]?.kind === 'wrench')
  const needed = [...names.filter((name) => first(question, name) && !wrench.includes(name))]
  const optional = names.filter((name) => !first(question, name))
  // With a wrench in the register its lever comes with it: it is asked for before what it would bring.
  const leading =
    parts.wrenches.length > 0 ? [...needed.slice(0, 1), ...wrench, ...needed.slice(1)] : [...needed, ...wrench]
  const told = optional.some(
    (name) => values[name] !== undefined || answer?.missing.some(({ input }) => input === name),
  )
  const field = (name: string) => <Field key={name} {...partsOf(parts, name)} />
  return (
    <form method="get" action={`/ask/${question}#answer`} data-live>
      <input type="hidden" name="lang" value={locale} />
      <fieldset>
        <legend>{words.page.needed}</legend>
        {leading.map(field)}
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

/** What is told about each field, for a page that is open already: the same as in the form, without its controls. */
export const FieldNotes = (parts: FormParts) => (
  <>
    {Object.keys(questions[parts.question].inputs).map((name) => {
      const own = partsOf(parts, name)
      return (
        <div key={name} data-about={name} data-state={stateOf(own)} data-lent={lentOf(own)}>
          <About {...own} />
        </div>
      )
    })}
  </>
)
