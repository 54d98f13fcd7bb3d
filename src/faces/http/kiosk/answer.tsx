// An answer under its form: how the inputs were read, in both unit systems; then what to act on, the figure, and all that holds it up.
import type { ComponentChildren } from 'preact'
import { figureOf } from '../../../figures/index.ts'
import type { Answer } from '../../../questions/answer.ts'
import type { Words } from '../../../words/index.ts'
import { render } from '../../../words/render.ts'
import {
  besidesLines,
  foremostLines,
  givenLine,
  headlineOf,
  marksBeside,
  type Section,
  sectionsOf,
  withoutBeside,
} from '../../wording.ts'

const List = ({ lines }: { lines: readonly string[] }) => (
  <ul>
    {lines.map((line) => (
      <li key={line} class={line.startsWith('  ') ? 'deeper' : undefined}>
        {line.trim()}
      </li>
    ))}
  </ul>
)

const Part = ({ section }: { section: Section }) => (
  <section class={`part ${section.name}`}>
    <h3>{section.title}</h3>
    <List lines={section.lines} />
  </section>
)

const Folded = ({ section }: { section: Section }) => (
  <details class={`part ${section.name}`}>
    <summary>{section.title}</summary>
    <List lines={section.lines} />
  </details>
)

const folded: ReadonlySet<string> = new Set(['working', 'sources'])

const queryOf = (inputs: Answer['related'][number]['inputs']): string =>
  new URLSearchParams(
    Object.entries(inputs).flatMap(([name, value]) => [value].flat().map((text): [string, string] => [name, text])),
  ).toString()

const Related = ({ answer, words, locale }: { answer: Answer; words: Words; locale: string }) =>
  answer.related.length === 0 ? null : (
    <nav class="part related" aria-label={words.faces.related}>
      <h3>{words.faces.related}</h3>
      <ul class="keys">
        {answer.related.map(({ question, inputs, label }) => (
          <li key={label}>
            <a class="key" href={`/ask/${question}?${queryOf(inputs)}&lang=${locale}#answer`}>
              {label}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  )

/** Cautions that mean: look at what was typed, before the number is used. */
const slips: ReadonlySet<string> = new Set([
  'factor-twelve',
  'factor-ten',
  'beyond-range',
  'lever-unusual',
  'adapter-longer',
  'pivot-unusual',
])

/** On a page the other readings are keys, not lines. */
const asKeys = ({ name }: Section): boolean => name !== 'alternatives'

export const AnswerView = ({
  answer,
  words,
  locale,
  query,
  out,
}: {
  answer: Answer
  words: Words
  locale: string
  query: string
  /** Ways out of the page, where it has some. */
  out?: ComponentChildren
}) => {
  const typed = answer.given.filter(({ from }) => from === 'asked').map((given) => givenLine(words, given))
  // What was typed stands above; below it only what was taken without being told.
  const rest = { ...withoutBeside(answer), given: answer.given.filter(({ from }) => from !== 'asked') }
  const marks = marksBeside(answer).map((one) =>
    render(words.kiosk.markGives, (place) => one[place as keyof typeof one]),
  )
  const sections = sectionsOf(rest, words).filter(asKeys)
  const figure = figureOf(answer, words, 'auto')
  const slipped = answer.status === 'answered' ? answer.cautions.filter(({ code }) => slips.has(code)) : []
  // Of a wrench that is not to be pulled with as it is no number is seen before that was read.
  const warnings = answer.status === 'answered' ? foremostLines(answer) : []
  const directions = besidesLines(answer, words)
  const body = (
    <>
      {answer.status === 'answered'
        ? null
        : foremostLines(answer).map((line) => (
            <p key={line} class="status out-of-limit">
              <strong>{line}</strong>
            </p>
          ))}
      <h2 id="headline">{headlineOf(answer)}</h2>
      {marks.length > 0 && (
        <p class="fact">
          {words.kiosk.nearestMarks}: {marks.join(' · ')}
        </p>
      )}
      {figure && (
        <figure>
          <img src={`/v1/questions/${answer.question}/figure.svg?${query}`} alt={figure.alt} width="800" />
        </figure>
      )}
      {sections
        .filter(({ name }) => !folded.has(name))
        .map((section) => (
          <Part key={section.name} section={section} />
        ))}
      {directions.length > 0 && (
        <details class="part directions">
          <summary>{words.results.directions}</summary>
          <List lines={directions} />
        </details>
      )}
      {sections
        .filter(({ name }) => folded.has(name))
        .map((section) => (
          <Folded key={section.name} section={section} />
        ))}
      <Related answer={answer} words={words} locale={locale} />
      {out}
    </>
  )
  return (
    <section
      id="answer"
      class={`answer ${answer.status}`}
      aria-labelledby="headline"
      data-needed={words.page.stillNeeded}
    >
      {typed.length > 0 && (
        <div class="typed">
          <p class="label">{words.page.readAs}</p>
          <List lines={typed} />
        </div>
      )}
      {warnings.length + slipped.length > 0 ? (
        <>
          <div class="slips">
            <h2>{warnings.length > 0 ? words.kiosk.readFirst : words.kiosk.slip}</h2>
            <List lines={[...warnings, ...slipped.map(({ text }) => text)]} />
          </div>
          <details class="held">
            <summary>{warnings.length > 0 ? words.kiosk.wasRead : words.kiosk.asTyped}</summary>
            {body}
          </details>
        </>
      ) : (
        body
      )}
    </section>
  )
}
