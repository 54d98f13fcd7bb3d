// Keys that lead to writing: what may be added to a wrench or to the board, and how an entry is corrected or taken back.
import type { WrenchFolder } from '../../../register/book.ts'
import type { Entry, Kind } from '../../../register/records.ts'
import { hangs, type Status } from '../../../register/status-rules.ts'
import type { Words } from '../../../words/index.ts'
import { render } from '../../../words/render.ts'

interface KeyParts {
  readonly words: Words
}

const addressOf = (kind: Kind, with_: Readonly<Record<string, string>> = {}): string => {
  const query = new URLSearchParams(with_).toString()
  return `/keep/${kind}${query === '' ? '' : `?${query}`}`
}

const Keys = ({
  words,
  kinds,
  known,
}: KeyParts & { kinds: readonly Kind[]; known: Readonly<Record<string, string>> }) => (
  <ul class="keys write">
    {kinds.map((kind) => (
      <li key={kind}>
        <a class="key" href={addressOf(kind, known)}>
          {words.keep.forms[kind]}
        </a>
      </li>
    ))}
  </ul>
)

export const BoardKeys = ({ words }: KeyParts) => <Keys words={words} kinds={['wrench', 'gauge']} known={{}} />

/** A wrench that is gone is not checked here: what happened to it since is told first, for instance that it came back. */
export const WrenchKeys = ({ words, tag, status }: KeyParts & { tag: string; status: Status }) => (
  <>
    {hangs(status) && (
      <>
        <p>
          <a class="key strong" href={`/wrench/${encodeURIComponent(tag)}/check`}>
            {`${words.keep.guided}: ${tag}`}
          </a>
        </p>
        <p data-resume={tag} hidden>
          <a class="key" href={`/wrench/${encodeURIComponent(tag)}/check`}>
            {words.keep.goOn}
          </a>
        </p>
      </>
    )}
    <Keys words={words} kinds={hangs(status) ? ['check', 'event', 'uses'] : ['event']} known={{ wrench: tag }} />
  </>
)

/** Beside an entry: correct it, take it back. */
export const EntryKeys = ({ words, kind, id }: KeyParts & { kind: Kind; id: string }) => (
  <span class="entry-keys">
    <a href={addressOf(kind, { supersedes: id })}>{words.keep.correct}</a>{' '}
    <a href={addressOf('withdrawal', { supersedes: id })}>{words.keep.takeBack}</a>
  </span>
)

/** That an entry is not the first of its kind: when it was corrected, as what and by which door, and why. */
export const Corrected = ({
  words,
  kept: { entry, earlier },
}: KeyParts & { kept: { entry: Entry; earlier: readonly Entry[] } }) =>
  earlier.length === 0 ? null : (
    <small>
      {render(
        words.keep.corrected,
        (place) =>
          ({ date: entry.at.slice(0, 10), role: entry.by.role, door: entry.by.door, why: entry.why ?? '' })[place],
      )}
    </small>
  )

/** What was taken back stays to be seen: what it was, when and why it went. */
export const TakenBack = ({ words, withdrawn }: KeyParts & { withdrawn: WrenchFolder['withdrawn'] }) =>
  withdrawn.length === 0 ? null : (
    <>
      <h2>{words.keep.takenBack}</h2>
      <ul>
        {withdrawn.map(({ by, earlier }) => (
          <li key={by.id}>
            {render(
              words.keep.goneFor,
              (place) =>
                ({
                  kind: words.keep.kinds[earlier.at(-1)?.kind ?? 'event'],
                  date: by.at.slice(0, 10),
                  role: by.by.role,
                  why: by.why ?? '',
                })[place],
            )}
          </li>
        ))}
      </ul>
    </>
  )

/** That somebody is signed in here, until when, and the way out. */
export const SignedIn = ({ words }: KeyParts) => (
  <form method="post" action="/sign-out" class="signed-in">
    <p class="about">{words.keep.signedIn}</p>
    <button type="submit" class="offer">
      {words.keep.signOut}
    </button>
  </form>
)

export const Kept = ({ words }: KeyParts) => (
  <>
    <p class="kept" role="status">
      {words.keep.kept}
    </p>
    <SignedIn words={words} />
  </>
)
