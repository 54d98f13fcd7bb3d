// The next reading of a run, one at a time with the keypad: the condition, and a field for each kind of reading that this run has.
import { readingLists } from '../../../keeping/run.ts'
import type { Words } from '../../../words/index.ts'
import type { RunPageParts } from './bench-page.tsx'

const keysOf = {
  torque: 'N·m|lbf·ft|lbf·in',
  'clamp-force': 'kN|N|lbf',
  angle: '°',
  'wrench-reading': 'N·m|lbf·ft|lbf·in',
} as const

type List = (typeof readingLists)[number]

const measured = { torque: 'torque', 'clamp-force': 'clamp', angle: 'angle', 'wrench-reading': 'wrench' } as const

/** Once something was read, the same kinds are read on; others stand on the long form. */
const fieldsOf = ({ found }: RunPageParts): readonly List[] => {
  const taken = found.folder.readings.flatMap(({ entry }) => entry.body.readings)
  const used = readingLists.filter((list) => taken.some((reading) => reading[measured[list]] !== undefined))
  return used.length > 0 ? used : readingLists
}

export const AddReading = ({ parts, here, words }: { parts: RunPageParts; here: string; words: Words }) => {
  const { document, session, found, formKey, today, condition } = parts
  const { page: told, labels } = words.bench
  const open = found.folder.again.filter(({ isDone }) => !isDone)
  // A finished run is read on only where that was planned.
  if (found.folder.finish && found.folder.again.length === 0) return null
  if (!session)
    return (
      <p class="ways">
        <a class="key strong" href={`/sign-in?onward=${encodeURIComponent(here)}`}>
          {told.add}
        </a>
      </p>
    )
  const many = new URLSearchParams({ run: document.tag, ...(condition === undefined ? {} : { condition }) })
  const again = found.folder.finish ? (open[0] ?? found.folder.again.at(-1)) : undefined
  return (
    <section class="next-reading ways" aria-labelledby="add">
      <h2 id="add">{told.add}</h2>
      <form method="post" action="/keep/run-reading">
        <input type="hidden" name="token" value={session.token} />
        <input type="hidden" name="key" value={formKey} />
        <input type="hidden" name="run" value={document.tag} />
        <input type="hidden" name="date" value={today} />
        {again && <input type="hidden" name="again" value={`${again.months} months`} />}
        <div class="field">
          <label for="in-condition">{labels.condition}</label>
          <select id="in-condition" name="condition">
            {document.conditions.map(({ name, what }) => (
              <option key={name} value={name} selected={name === condition}>
                {what === name ? name : `${name}: ${what}`}
              </option>
            ))}
          </select>
        </div>
        {fieldsOf(parts).map((list) => (
          <div class="field" key={list}>
            <label for={`in-${list}`}>{labels[list]}</label>
            <input type="text" id={`in-${list}`} name={list} autocomplete="off" data-keys={keysOf[list]} />
          </div>
        ))}
        <div class="actions">
          <button type="submit">{words.keep.keep}</button>
          <a class="key" href={`/keep/run-reading?${many}`}>
            {told.many}
          </a>
        </div>
      </form>
    </section>
  )
}
