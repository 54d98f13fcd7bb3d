// The board by the tools: every wrench as it hangs, or those of one list of what needs doing, with how many are in each.
import { type Show, shows } from '../../../desk/fleet-index.ts'
import type { ListedRow } from '../../../register/fleet.ts'
import { type PageParts, Shell } from './shell.tsx'
import { StatusLine } from './status-line.tsx'
import { BoardKeys } from './write-keys.tsx'

export interface BoardParts extends PageParts {
  readonly rows: readonly ListedRow[]
  readonly next: string | undefined
  readonly show: Show | undefined
  readonly counts: Readonly<Record<Show, number>>
}

const addressOf = (tag: string): string => `/wrench/${encodeURIComponent(tag)}`

const Lists = ({ show, counts, language: { words } }: BoardParts) => {
  const { list } = words.history
  return (
    <nav aria-label={list.title}>
      <ul class="keys lists">
        <li>
          <a class="key" href="/board" aria-current={show === undefined ? 'page' : undefined}>
            {list.all}
          </a>
        </li>
        {shows.map((one) => (
          <li key={one}>
            <a class="key" href={`/board?show=${one}`} aria-current={show === one ? 'page' : undefined}>
              {list[one]}: {counts[one]}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  )
}

export const BoardPage = (parts: BoardParts) => {
  const { register, history } = parts.language.words
  const { show, rows, next } = parts
  const title = show === undefined ? register.board : history.list[show]
  const more = new URLSearchParams({ ...(show ? { show } : {}), after: next ?? '' })
  return (
    <Shell {...parts} title={title}>
      <h1>{title}</h1>
      <Lists {...parts} />
      {rows.length === 0 && <p class="fact">{show === undefined ? register.empty : history.list.none}</p>}
      <ul class="board">
        {rows.map((row) => {
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
      <BoardKeys words={parts.language.words} />
      {next !== undefined && (
        <p>
          <a class="key" href={`/board?${more}`}>
            {register.more}
          </a>
        </p>
      )}
    </Shell>
  )
}
