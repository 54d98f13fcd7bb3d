// The page of a wrench: its status, its checks over time as a picture and in words, every check, what happened to it. Read only.
import { fromSi } from '../../../core/quantity.ts'
import { showQuantity } from '../../../core/quantity-text.ts'
import { units } from '../../../core/unit.ts'
import type { Shop } from '../../../desk/shop.ts'
import { drawHistory } from '../../../figures/history-view.ts'
import { type Book, gaugeOf, type Kept as KeptEntry } from '../../../register/book.ts'
import { driftOf } from '../../../register/drift.ts'
import type { FleetRow } from '../../../register/fleet.ts'
import { usable } from '../../../register/status-rules.ts'
import { judge } from '../../../register/verdict.ts'
import type { Words } from '../../../words/index.ts'
import { render } from '../../../words/render.ts'
import { pointText } from '../../point-text.ts'
import { driftTexts } from '../api/history.ts'
import { reportAddress } from './check-report.tsx'
import { type PageParts, Shell } from './shell.tsx'
import { StatusLine } from './status-line.tsx'
import { Corrected, EntryKeys, Kept, TakenBack, WrenchKeys } from './write-keys.tsx'

interface Found {
  readonly book: Book
  readonly row: FleetRow
}

const Checks = ({ found: { book, row }, language }: { found: Found; language: PageParts['language'] }) => {
  const { words, style } = language
  const card = row.folder.card.entry.body
  const unit = units[card.unit]
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable without a pointer
    <section class="wide" tabIndex={0} aria-label={words.register.checks}>
      <table class="checks">
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
                <td>{pointText(point, judged.limit, language)}</td>
                <td>{words.codes[point.verdict]}</td>
              </tr>
            ))
          })}
        </tbody>
      </table>
    </section>
  )
}

const reportTitle = ({ entry: { body } }: KeptEntry<'check'>, { checking }: Words): string =>
  render(checking.page.link, (place) => ({ date: body.date, state: checking.states[body.state] })[place])

/** Drawn for a wide screen and for a narrow one; the words say the same to who does not see it. */
const History = ({ found: { book, row }, language }: { found: Found; language: PageParts['language'] }) => {
  const { folder } = row
  const { words, style } = language
  const look = { words, style, theme: 'auto', shape: 'wide' } as const
  const alt = drawHistory({ folder, drifts: driftOf(book, folder) }, look)?.alt
  if (alt === undefined) return null
  const address = `/v1/wrenches/${encodeURIComponent(folder.tag)}/history.svg`
  return (
    <section>
      <h2>{words.history.title}</h2>
      <figure class="history">
        <picture>
          <source media="(max-width: 36rem)" srcset={`${address}?shape=narrow`} />
          <img src={address} alt={alt} />
        </picture>
      </figure>
      {driftTexts(book, folder, language).map((told) => (
        <p key={told}>{told}</p>
      ))}
    </section>
  )
}

export const WrenchPage = (
  parts: PageParts & { found: NonNullable<Awaited<ReturnType<Shop['wrench']>>>; isKept: boolean },
) => {
  const { register } = parts.language.words
  const {
    folder,
    status: { status },
  } = parts.found.row
  const { tag, name, place, lever, least, most } = folder.card.entry.body
  const title = `${tag}: ${name}`
  return (
    <Shell {...parts} title={title}>
      <h1>{title}</h1>
      {parts.isKept && <Kept words={parts.language.words} />}
      <StatusLine row={parts.found.row} language={parts.language} />
      <p class="fact">
        {[place, least ? `${least.text} … ${most.text}` : most.text, lever && `${register.lever} ${lever.text}`]
          .filter((part) => part !== undefined)
          .join(' · ')}
      </p>
      {usable(status) && (
        <p>
          <a class="key" href={`/ask/adapter-setting?wrench=${encodeURIComponent(tag)}`}>
            {register.askWith}
          </a>
        </p>
      )}
      <WrenchKeys words={parts.language.words} tag={tag} status={status} />
      <History found={parts.found} language={parts.language} />
      <h2>{register.checks}</h2>
      {folder.checks.length === 0 ? (
        <p>{register.reasons['never-checked']}</p>
      ) : (
        <Checks found={parts.found} language={parts.language} />
      )}
      <ul class="entries">
        {folder.checks.map((kept) => (
          <li key={kept.entry.id}>
            <a class="key" href={reportAddress(tag, kept.entry.id)}>
              {reportTitle(kept, parts.language.words)}
            </a>{' '}
            <EntryKeys words={parts.language.words} kind="check" id={kept.entry.id} />{' '}
            <Corrected words={parts.language.words} kept={kept} />
          </li>
        ))}
      </ul>
      <p>
        {parts.language.words.register.card}:{' '}
        <EntryKeys words={parts.language.words} kind="wrench" id={folder.card.entry.id} />{' '}
        <Corrected words={parts.language.words} kept={folder.card} />
      </p>
      <p class="about">{parts.language.words.cautions['not-accredited']}</p>
      {folder.events.length > 0 && <h2>{register.happened}</h2>}
      <ul>
        {folder.events.map(({ entry, earlier }) => (
          <li key={entry.id}>
            {entry.body.date}: {register.events[entry.body.what]}
            {entry.body.note === undefined ? '' : `: ${entry.body.note}`}{' '}
            <EntryKeys words={parts.language.words} kind="event" id={entry.id} />{' '}
            <Corrected words={parts.language.words} kept={{ entry, earlier }} />
          </li>
        ))}
      </ul>
      <TakenBack words={parts.language.words} withdrawn={folder.withdrawn} />
    </Shell>
  )
}
