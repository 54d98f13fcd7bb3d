// The line for free text, and its answer: how it was read, and each other reading as a key that is one touch away.
import type { Answer } from '../../../questions/answer.ts'
import type { Words } from '../../../words/index.ts'

// A post fits; longer than this nobody types at a bench.
const LONGEST_LINE = 2000

export const AskLine = ({ words, text }: { words: Words; text: string }) => (
  <form class="ask-line" action="/ask" method="get">
    <div class="field">
      <label for="text">{words.page.askLine}</label>
      <input
        type="text"
        id="text"
        name="text"
        value={text}
        maxlength={LONGEST_LINE}
        placeholder={words.inputs.text.measure}
        autocomplete="off"
      />
    </div>
    <div class="actions">
      <button type="submit">{words.page.workOut}</button>
    </div>
  </form>
)

const addressOf = (question: string, inputs: Answer['related'][number]['inputs'], locale: string): string => {
  const query = new URLSearchParams(
    Object.entries(inputs).flatMap(([name, value]) => [value].flat().map((text): [string, string] => [name, text])),
  )
  return `/ask/${question}?${query}&lang=${locale}#answer`
}

/** The other readings, and the form of the one that was taken, filled in. */
export const OtherReadings = ({
  answer,
  inputs,
  words,
  locale,
}: {
  answer: Answer
  inputs: Answer['related'][number]['inputs']
  words: Words
  locale: string
}) => {
  const others = answer.reading?.alternatives ?? []
  const own = answer.question !== null ? { question: answer.question, inputs, label: words.page.change } : undefined
  const keys = [...(own ? [own] : []), ...others]
  return keys.length === 0 ? null : (
    <nav class="part related" aria-label={others.length > 0 ? words.faces.alternatives : words.page.change}>
      {others.length > 0 && <h3>{words.faces.alternatives}</h3>}
      <ul class="keys">
        {keys.map((key) => (
          <li key={key.label}>
            <a class="key" href={addressOf(key.question, key.inputs, locale)}>
              {key.label}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  )
}
