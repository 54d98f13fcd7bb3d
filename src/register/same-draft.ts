// Whether what was sent again under one key is the same as what was recorded: then it is the same entry, else a slip.
import type { Draft, Entry } from './records.ts'

// Field order says nothing: a form and a file may send the same in another order.
const canonical = (value: unknown): string =>
  JSON.stringify(value, (_name, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([one], [other]) => (one < other ? -1 : 1)))
      : part,
  )

/** The same kind, body and replacement; who sent it and by which door does not matter. */
export const isSameDraft = (entry: Entry, draft: Draft): boolean =>
  canonical([entry.kind, entry.body, entry.supersedes, entry.why]) ===
  canonical([draft.kind, draft.body, draft.supersedes, draft.why])
