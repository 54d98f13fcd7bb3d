// The guided check at the kiosk: how it is to be checked, then one reading at a time with the verdict growing, then to be kept.
// What was read so far stands in the address: a reload, another screen or a restarted browser goes on where it was.
import { writeNumber } from '../../../core/number-style.ts'
import { slipsIn } from '../../../desk/checking.ts'
import type { CheckDocument, CheckPoint } from '../../../questions/check-document.ts'
import { signedText } from '../../../words/deviation-text.ts'
import type { Words } from '../../../words/index.ts'
import { render } from '../../../words/render.ts'
import { type GuidedParts, isSetUp, Setup } from './guided-setup.tsx'
import { Keypad } from './keypad.tsx'
import { type PageParts, Shell } from './shell.tsx'
import { StatusLine } from './status-line.tsx'
import { SignedIn } from './write-keys.tsx'

const addressOf = (tag: string, inputs: Readonly<Record<string, string>>): string =>
  `/wrench/${encodeURIComponent(tag)}/check?${new URLSearchParams(inputs)}`

/** What goes along with every reading: all but the wrench, which stands in the address itself. */
const carried = ({ wrench: _, ...inputs }: CheckDocument['inputs']): Readonly<Record<string, string>> => inputs

const Hidden = ({ inputs }: { inputs: Readonly<Record<string, string>> }) => (
  <>
    {Object.entries(inputs).map(([name, value]) => (
      <input key={name} type="hidden" name={name} value={value} />
    ))}
  </>
)

const unitsLike = (unit: string): string => (['N', 'kN', 'lbf', 'kgf'].includes(unit) ? 'kg|N|lb' : 'N·m|lbf·ft|lbf·in')

/** The reading that is asked for now: what to set, what lies within the limit, one field. */
const Next = ({ parts, words }: { parts: GuidedParts; words: Words }) => {
  const { document, tag } = parts
  const { next, inputs } = document
  if (!next) return null
  const fault = document.faults.find(({ input }) => input === 'reading')
  const isSlip = fault !== undefined && slipsIn(document).includes(fault)
  const sure = [inputs['sure'], fault?.got].filter((one) => one !== undefined).join('; ')
  return (
    <section class="next-reading" aria-labelledby="ask">
      {next.held !== undefined && (
        <p class="status check-before-use" role="alert">
          <strong>{`▲ ${next.held}`}</strong>
        </p>
      )}
      <h2 id="ask">{next.ask}</h2>
      {fault && <p class="fault" role="alert">{`${words.faces.got} “${fault.got}”. ${fault.hint}`}</p>}
      <form method="get" action={`/wrench/${encodeURIComponent(tag)}/check`}>
        <Hidden inputs={carried(inputs)} />
        <div class="field">
          <label for="in-reading">{words.keep.reading}</label>
          <input
            type="text"
            id="in-reading"
            name="reading"
            autocomplete="off"
            // What is asked back is read before anything is typed again.
            autofocus={fault === undefined}
            data-keys={unitsLike(next.shows.middle.unit)}
            data-told={next.ask}
            placeholder={`${words.page.like} ${next.shows.middle.text}`}
          />
        </div>
        <div class="actions">
          <button type="submit">{words.keep.takeReading}</button>
          {isSlip && (
            <a class="key" href={addressOf(tag, { ...carried(inputs), sure, reading: fault.got })}>
              {render(words.keep.asShown, () => fault.got)}
            </a>
          )}
        </div>
      </form>
    </section>
  )
}

const Points = ({ points, words }: { points: readonly CheckPoint[]; words: Words }) => (
  <table>
    <thead>
      <tr>
        {[
          words.register.setting,
          words.keep.within,
          words.keep.read,
          words.register.deviation,
          words.register.verdict,
        ].map((head) => (
          <th key={head} scope="col">
            {head}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>
      {points.map((point) => (
        <tr key={point.setting.text}>
          <td>{point.setting.text}</td>
          <td>
            {`${point.shows.low.text} … ${point.shows.high.text}`}
            {point.reaches === false && <strong class="fault">{` ▲ ${words.keep.beyond}`}</strong>}
          </td>
          <td>{point.taken.length === 0 ? '–' : point.taken.map(({ text }) => text).join('; ')}</td>
          <td>{point.deviation ? signedText(point.deviation, words.deviation) : '–'}</td>
          <td>{point.verdict?.text ?? '–'}</td>
        </tr>
      ))}
    </tbody>
  </table>
)

const written = ({ value, unit }: { readonly value: number; readonly unit: string }): string =>
  `${writeNumber(Number(value.toPrecision(12)))} ${unit}`

/** The address without the last reading; undefined where there is none. */
const without = (document: CheckDocument, tag: string): string | undefined => {
  const points = document.points.filter(({ taken }) => taken.length > 0)
  const last = points.at(-1)
  if (!last) return undefined
  const kept = points.flatMap((point) => {
    const taken = point === last ? point.taken.slice(0, -1) : point.taken
    return taken.length === 0 ? [] : [`${written(point.setting)}: ${taken.map(written).join('; ')}`]
  })
  const { points: _, ...rest } = carried(document.inputs)
  return addressOf(tag, { ...rest, ...(kept.length > 0 ? { points: kept.join(' | ') } : {}) })
}

const Keep = ({ parts, here, words }: { parts: GuidedParts; here: string; words: Words }) => {
  const { document, session } = parts
  if (document.taken === 0) return null
  if (!session)
    return (
      <p>
        <a class="key strong" href={`/sign-in?onward=${encodeURIComponent(here)}`}>
          {words.keep.signInToKeep}
        </a>
      </p>
    )
  return (
    <form method="post" action="/keep/check">
      <input type="hidden" name="token" value={session.token} />
      <input type="hidden" name="key" value={parts.formKey} />
      <Hidden inputs={{ date: parts.today, state: 'as-found', ...document.inputs }} />
      <div class="actions">
        <button type="submit" class={document.next ? undefined : 'strong'}>
          {document.next ? words.keep.keepSoFar : words.keep.keep}
        </button>
      </div>
    </form>
  )
}

export const GuidedPage = (page: PageParts & { parts: GuidedParts }) => {
  const { parts, here } = page
  const { words } = page.language
  const { document, tag } = parts
  const title = `${words.keep.guided}: ${tag}`
  // A slip refuses one reading, not the check.
  const isUnderWay = document.points.length > 0
  const rest = document.faults.filter(({ input }) => input !== 'reading' && (isUnderWay || !isSetUp(input)))
  const back = without(document, tag)
  return (
    <Shell {...page} title={title}>
      <h1>{title}</h1>
      {(isUnderWay || parts.asked['way'] !== undefined) && <p class="fact">{document.headline}</p>}
      {document.means !== undefined && (
        <p class="means">
          <strong>{document.means}</strong>
        </p>
      )}
      {document.taken > 0 && (
        <>
          <p>{words.keep.notYet}</p>
          <StatusLine row={parts.row} language={page.language} />
        </>
      )}
      {rest.map(({ got, hint }) => (
        <p class="fault" key={`${got} ${hint}`}>
          {got === '' ? hint : `${words.faces.got} “${got}”. ${hint}`}
        </p>
      ))}
      {isUnderWay ? (
        <div data-check={tag}>
          <Next parts={parts} words={words} />
          <Points points={document.points} words={words} />
          <Keep parts={parts} here={here} words={words} />
          {back !== undefined && (
            <p>
              <a class="key" href={back}>
                {words.keep.takeBackReading}
              </a>
            </p>
          )}
          {document.notes.length > 0 && (
            <ul>
              {document.notes.map(({ code, text }) => (
                <li key={code}>{text}</li>
              ))}
            </ul>
          )}
          <p class="about">{words.cautions['not-accredited']}</p>
        </div>
      ) : (
        <Setup parts={parts} words={words} />
      )}
      <p>
        <a class="key" href={`/wrench/${encodeURIComponent(tag)}`}>
          {words.keep.leave}
        </a>
      </p>
      {parts.session && <SignedIn words={words} />}
      <Keypad words={words} />
    </Shell>
  )
}
