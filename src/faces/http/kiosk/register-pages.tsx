// The board by the tools and the page of a wrench: read only, what the register says today. Status in words and by a mark of
// its own, never by colour alone.

import { showNumber } from '../../../core/number-style.ts'
import { fromSi } from '../../../core/quantity.ts'
import { showQuantity } from '../../../core/quantity-text.ts'
import { units } from '../../../core/unit.ts'
import type { Shop } from '../../../desk/shop.ts'
import { type Book, gaugeOf } from '../../../register/book.ts'
import type { FleetRow } from '../../../register/fleet.ts'
import type { Status } from '../../../register/status-rules.ts'
import { judge } from '../../../register/verdict.ts'
import { ReportLinks } from './check-report.tsx'
import { type PageParts, Shell } from './shell.tsx'

// A shape for each status, said in words beside it.
const marks: Readonly<Record<Status, string>> = {
  'in-service': '●',
  'check-due': '◐',
  'check-before-use': '▲',
  'out-of-limit': '✕',
  'set-aside': '○',
  retired: '–',
}

const StatusLine = ({ row, language: { words } }: { row: FleetRow; language: PageParts['language'] }) => {
  const { status, reasons, due } = row.status
  return (
    <p class={`status ${status}`}>
      <span aria-hidden="true">{marks[status]}</span> <strong>{words.register.statuses[status]}</strong>{' '}
      {reasons.map(({ code, date }) => `${words.register.reasons[code]} (${date})`).join(' ')}
      {due && (status === 'in-service' || status === 'check-due') && ` ${words.register.due}: ${due.on}.`}
    </p>
  )
}

const addressOf = (tag: string): string => `/wrench/${encodeURIComponent(tag)}`

export const BoardPage = (parts: PageParts & { rows: readonly FleetRow[]; next: string | undefined }) => {
  const { register } = parts.language.words
  return (
    <Shell {...parts} title={register.board}>
      <h1>{register.board}</h1>
      {parts.rows.length === 0 && <p class="lead">{register.empty}</p>}
      <ul class="board">
        {parts.rows.map((row) => {
          const { tag, name, place } = row.folder.card.entry.body
          return (
            <li key={tag}>
              <a class="key" href={addressOf(tag)}>
                {tag}: {name}
                {place === undefined ? '' : `, ${place}`}
              </a>
              <StatusLine row={row} language={parts.language} />
            </li>
          )
        })}
      </ul>
      {parts.next !== undefined && (
        <p>
          <a class="key" href={`/board?after=${encodeURIComponent(parts.next)}`}>
            {register.more}
          </a>
        </p>
      )}
    </Shell>
  )
}

interface Found {
  readonly book: Book
  readonly row: FleetRow
}

const Checks = ({ found: { book, row }, language }: { found: Found; language: PageParts['language'] }) => {
  const { words, style } = language
  const card = row.folder.card.entry.body
  const unit = units[card.unit]
  return (
    <table>
      <thead>
        <tr>
          {[words.register.day, words.register.setting, words.register.mean, words.register.deviation].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
          <th scope="col">{words.register.verdict}</th>
        </tr>
      </thead>
      <tbody>
        {row.folder.checks.flatMap(({ entry }) => {
          const gauge = entry.body.gauge
          const judged = judge(entry.body, card, gauge === undefined ? undefined : gaugeOf(book, gauge)?.entry.body)
          return judged.points.map((point) => (
            <tr key={`${entry.id}-${point.setting}`}>
              <td>{entry.body.date}</td>
              <td>{showQuantity(fromSi(point.setting, unit), style)}</td>
              <td>{showQuantity(fromSi(point.mean, unit), style)}</td>
              <td>{showNumber(point.deviation * 100, style)} %</td>
              <td>{words.codes[point.verdict]}</td>
            </tr>
          ))
        })}
      </tbody>
    </table>
  )
}

const checksOf = ({ checks }: FleetRow['folder']) =>
  checks.map(({ entry: { id, body } }) => ({ id, date: body.date, state: body.state }))

export const WrenchPage = (parts: PageParts & { found: NonNullable<Awaited<ReturnType<Shop['wrench']>>> }) => {
  const { register } = parts.language.words
  const { folder } = parts.found.row
  const { tag, name, place, lever, least, most } = folder.card.entry.body
  const title = `${tag}: ${name}`
  return (
    <Shell {...parts} title={title}>
      <h1>{title}</h1>
      <StatusLine row={parts.found.row} language={parts.language} />
      <p class="lead">
        {[place, least ? `${least.text} … ${most.text}` : most.text, lever && `${register.lever} ${lever.text}`]
          .filter((part) => part !== undefined)
          .join(' · ')}
      </p>
      <p>
        <a class="key" href={`/ask/adapter-setting?wrench=${encodeURIComponent(tag)}`}>
          {register.askWith}
        </a>
      </p>
      <h2>{register.checks}</h2>
      {folder.checks.length === 0 ? (
        <p>{register.reasons['never-checked']}</p>
      ) : (
        <Checks found={parts.found} language={parts.language} />
      )}
      <ReportLinks tag={tag} checks={checksOf(folder)} words={parts.language.words} />
      <p class="about">{parts.language.words.cautions['not-accredited']}</p>
      {folder.events.length > 0 && <h2>{register.happened}</h2>}
      <ul>
        {folder.events.map(({ entry }) => (
          <li key={entry.id}>
            {entry.body.date}: {register.events[entry.body.what]}
            {entry.body.note === undefined ? '' : `: ${entry.body.note}`}
          </li>
        ))}
      </ul>
    </Shell>
  )
}
