// Keys that lead to writing: what may be added to a wrench or to the board, and how an entry is corrected or taken back.
import type { Kind } from '../../../register/records.ts'
import type { Words } from '../../../words/index.ts'

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

export const WrenchKeys = ({ words, tag }: KeyParts & { tag: string }) => (
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
    <Keys words={words} kinds={['check', 'event', 'uses']} known={{ wrench: tag }} />
  </>
)

/** Beside an entry: correct it, take it back. */
export const EntryKeys = ({ words, kind, id }: KeyParts & { kind: Kind; id: string }) => (
  <span class="entry-keys">
    <a href={addressOf(kind, { supersedes: id })}>{words.keep.correct}</a>{' '}
    <a href={addressOf('withdrawal', { supersedes: id })}>{words.keep.takeBack}</a>
  </span>
)

export const Kept = ({ words }: KeyParts) => (
  <p class="kept" role="status">
    {words.keep.kept}
  </p>
)
