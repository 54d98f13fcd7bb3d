// The pages of bench runs: the list, and a run with what it says, its pictures, its readings, and a form for the next one.
import type { RunRow } from '../../../desk/run-rows.ts'
import type { FoundRun } from '../../../desk/runs.ts'
import { drawRun, viewsOf } from '../../../figures/run-view.ts'
import type { RunDocument } from '../../../questions/run-document.ts'
import type { Words } from '../../../words/index.ts'
import { render } from '../../../words/render.ts'
import { AddReading } from './bench-reading.tsx'
import { Keypad } from './keypad.tsx'
import type { Session } from './sessions.ts'
import { type PageParts, Shell } from './shell.tsx'
import { Corrected, EntryKeys, Kept, SignedIn, TakenBack } from './write-keys.tsx'

export const runAddress = (tag: string): string => `/bench/${encodeURIComponent(tag)}`

export const BenchPage = (
  page: PageParts & { readonly rows: readonly RunRow[]; readonly next: string | undefined },
) => {
  const { words } = page.language
  const { page: told } = words.bench
  return (
    <Shell {...page} title={told.title}>
      <h1>{told.title}</h1>
      {page.rows.length === 0 && <p class="lead">{told.none}</p>}
      <ul class="board">
        {page.rows.map(({ tag, asked, date, state, due }) => (
          <li key={tag}>
            <a class="key" href={runAddress(tag)}>
              {tag}: {asked}
            </a>
            <p class="about">
              {[state.text, render(told.begun, () => date), due && `${words.bench.labels.again}: ${due}`]
                .filter((part) => part)
                .join(' · ')}
            </p>
          </li>
        ))}
      </ul>
      <p>
        <a class="key" href="/keep/run">
          {told.begin}
        </a>
      </p>
      {page.next !== undefined && (
        <p>
          <a class="key" href={`/bench?${new URLSearchParams({ after: page.next })}`}>
            {words.register.more}
          </a>
        </p>
      )}
    </Shell>
  )
}

export interface RunPageParts {
  readonly found: FoundRun
  readonly document: RunDocument
  readonly session: Session | undefined
  readonly formKey: string
  readonly today: string
  /** What was read under last, so that the next reading begins there. */
  readonly condition: string | undefined
  readonly isKept: boolean
}

const Pictures = ({ document, language }: { document: RunDocument; language: PageParts['language'] }) => {
  const { words, style } = language
  const shown = viewsOf(document).flatMap((view) => {
    const figure = drawRun(document, view, { words, style, theme: 'auto' })
    return figure ? [{ view, alt: figure.alt }] : []
  })
  return (
    <>
      {shown.map(({ view, alt }) => (
        <figure class="history" key={view}>
          <img src={`/v1/bench/${encodeURIComponent(document.tag)}/figure.svg?show=${view}`} alt={alt} />
        </figure>
      ))}
    </>
  )
}

const Readings = ({ parts: { document, found }, words }: { parts: RunPageParts; words: Words }) => (
  <div class="wide">
    <table>
      <thead>
        <tr>
          {[words.bench.page.day, words.bench.labels.condition, words.bench.page.readings, ''].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {document.readings.map(({ id, date, condition, text, again, note }) => {
          const kept = found.folder.readings.find(({ entry }) => entry.id === id)
          return (
            <tr key={id}>
              <td>{date}</td>
              <td>{again === undefined ? condition : `${condition} (+${again})`}</td>
              <td>
                {text}
                {note === undefined ? '' : `: ${note}`}
              </td>
              <td>
                <EntryKeys words={words} kind="run-reading" id={id} /> {kept && <Corrected words={words} kept={kept} />}
              </td>
            </tr>
          )
        })}
      </tbody>
    </table>
  </div>
)

/** As a question names it: with its condition where there are several. */
const citable = ({ tag, conditions }: RunDocument): string =>
  conditions.length > 1 ? `${tag} ${conditions[0]?.name ?? ''}` : tag

const Part = ({ title, lines }: { title: string; lines: readonly string[] }) =>
  lines.length === 0 ? null : (
    <>
      <h2>{title}</h2>
      <ul>
        {lines.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
    </>
  )

export const RunPage = (page: PageParts & { readonly parts: RunPageParts }) => {
  const { parts, language } = page
  const { words } = language
  const { document, found } = parts
  const { page: told } = words.bench
  const title = `${document.tag}: ${document.asked}`
  const quiet = new Set([
    document.headline,
    document.limits ?? '',
    ...document.outlook,
    ...document.again.map(({ text }) => text),
  ])
  const address = `/v1/bench/${encodeURIComponent(document.tag)}`
  const { finish, opening } = found.folder
  return (
    <Shell {...page} title={title}>
      <link rel="stylesheet" href="/report.css" />
      <div class="report">
        <h1>{title}</h1>
        {parts.isKept && <Kept words={words} />}
        <p class="about">
          {document.state.text} · {render(told.begun, () => document.date)}
        </p>
        <p class="ruling">{document.headline}</p>
        <dl>
          {document.conditions.map(({ name, what, readings }) => (
            <>
              <dt key={name}>{name}</dt>
              <dd>{`${what === name ? '' : `${what}, `}n = ${readings}`}</dd>
            </>
          ))}
          {document.held.length > 0 && (
            <>
              <dt>{told.held}</dt>
              <dd>{document.held.join('; ')}</dd>
            </>
          )}
          {document.end?.note !== undefined && (
            <>
              <dt>{document.end.date}</dt>
              <dd>{document.end.note}</dd>
            </>
          )}
        </dl>
        <AddReading parts={parts} here={page.here} words={words} />
        <Pictures document={document} language={language} />
        <Part title={told.said} lines={document.lines.filter((one) => !quiet.has(one))} />
        {!finish && <Part title={told.ahead} lines={document.outlook} />}
        <Part title={told.again} lines={document.again.map(({ text }) => text)} />
        {document.readings.length > 0 && <h2>{told.readings}</h2>}
        {document.readings.length > 0 && <Readings parts={parts} words={words} />}
        <Part title={told.limits} lines={document.limits === undefined ? [] : [document.limits]} />
        {document.factors.length > 0 && <p class="about">{render(told.cite, () => citable(document))}</p>}
        <ul class="keys write ways">
          {!finish && (
            <li>
              <a class="key" href={`/keep/run-finish?${new URLSearchParams({ run: document.tag })}`}>
                {told.finish}
              </a>
            </li>
          )}
          <li>
            <a class="key" href={`${address}/entries.csv`}>
              {told.sheet}
            </a>
          </li>
          {document.readings.length > 0 && (
            <li>
              <a class="key" href={`${address}/card.png`}>
                {told.card}
              </a>
            </li>
          )}
          <li>
            <a class="key" href={address}>
              {told.data}
            </a>
          </li>
          <li>
            <a class="key" href="/bench">
              {told.back}
            </a>
          </li>
        </ul>
        <p class="ways">
          <EntryKeys words={words} kind="run" id={opening.entry.id} /> <Corrected words={words} kept={opening} />
        </p>
        <TakenBack words={words} withdrawn={found.withdrawn} />
        <p class="about ways">{words.kiosk.print}</p>
        {parts.session && <SignedIn words={words} />}
      </div>
      <Keypad words={words} />
    </Shell>
  )
}
