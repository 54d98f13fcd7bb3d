// The report of a check as a page that can be printed: what was done, with what, every reading, the verdict and its rule.
import type { ComponentChildren } from 'preact'
import type { ReportDocument } from '../../../questions/check-document.ts'
import { signedText } from '../../../words/deviation-text.ts'
import type { Words } from '../../../words/index.ts'
import { render } from '../../../words/render.ts'
import { type PageParts, Shell } from './shell.tsx'

export const reportAddress = (tag: string, id: string): string =>
  `/wrench/${encodeURIComponent(tag)}/check/${encodeURIComponent(id)}`

const fill = (template: string, places: Readonly<Record<string, string>>): string =>
  render(template, (place) => places[place])

const joined = (...parts: ReadonlyArray<string | undefined>): string =>
  parts.filter((part) => part !== undefined).join(' · ')

const Fact = ({ name, children }: { name: string; children: ComponentChildren }) =>
  children === undefined ? null : (
    <>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </>
  )

const Facts = ({ report, words }: { report: ReportDocument; words: Words }) => {
  const { page } = words.checking
  const { wrench, gauge } = report
  const { serial, lever, range, kind } = wrench
  return (
    <dl>
      <Fact name={page.wrench}>
        {joined(
          `${wrench.tag}, ${wrench.name}`,
          kind,
          serial === undefined ? undefined : `${page.serial} ${serial}`,
          range,
          lever === undefined ? undefined : `${page.lever} ${lever}`,
        )}
      </Fact>
      <Fact name={page.gauge}>
        {gauge
          ? joined(
              `${gauge.tag}, ${gauge.name}`,
              gauge.serial === undefined ? undefined : `${page.serial} ${gauge.serial}`,
              gauge.tolerance === undefined ? undefined : fill(page.tolerance, { tolerance: gauge.tolerance }),
              gauge.checked === undefined ? undefined : fill(page.checked, { date: gauge.checked }),
            )
          : page.noGauge}
      </Fact>
      <Fact name={page.uncertainty}>{report.uncertainty}</Fact>
      <Fact name={page.way}>{report.way.text}</Fact>
      <Fact name={page.state}>{report.state.text}</Fact>
      <Fact name={page.distance}>{report.distance}</Fact>
      <Fact name={page.weight}>{report.weight?.text}</Fact>
      <Fact name={page.temperature}>{report.temperature}</Fact>
      <Fact name={page.remarks}>{report.remarks}</Fact>
      <Fact name={page.limit}>{report.limit.text}</Fact>
      <Fact name={page.rule}>{report.rule.text}</Fact>
    </dl>
  )
}

const Head = ({ names }: { names: readonly string[] }) => (
  <thead>
    <tr>
      {names.map((name) => (
        <th key={name} scope="col">
          {name}
        </th>
      ))}
    </tr>
  </thead>
)

const Points = ({ report, words }: { report: ReportDocument; words: Words }) => {
  const { page } = words.checking
  const names = [page.setting, page.mean, page.deviation, page.allowed, page.doubt, page.spread, page.verdict]
  return (
    <table>
      <Head names={names} />
      <tbody>
        {report.points.map((point) => (
          <tr key={point.setting.text}>
            <td>{point.setting.text}</td>
            <td>{point.mean.text}</td>
            <td>{signedText(point.deviation, words.deviation)}</td>
            <td>±{point.allowed.text}</td>
            <td>{point.uncertainty ? `±${point.uncertainty.text}` : '–'}</td>
            <td>{point.spread.text}</td>
            <td>{point.verdict.text}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** Every reading; where the gauge read torque, what it showed is the torque and stands once. */
const Readings = ({ report, words }: { report: ReportDocument; words: Words }) => {
  const { page } = words.checking
  const byForce = report.distance !== undefined
  const names = [page.setting, page.window, page.read, ...(byForce ? [page.torque] : []), page.deviation, page.verdict]
  return (
    <table>
      <Head names={names} />
      {report.points.map(({ setting, window, readings }) => (
        <tbody key={setting.text}>
          {readings.map(({ read, torque, deviation, verdict }, nth) => (
            <tr key={`${setting.text}-${nth.toString()}`}>
              <td>{nth === 0 ? setting.text : ''}</td>
              <td>{nth === 0 ? `${window.low.text} … ${window.high.text}` : ''}</td>
              <td>{read.text}</td>
              {byForce && <td>{torque.text}</td>}
              <td>{signedText(deviation, words.deviation)}</td>
              <td>{verdict.text}</td>
            </tr>
          ))}
        </tbody>
      ))}
    </table>
  )
}

export const CheckReportPage = (parts: PageParts & { report: ReportDocument }) => {
  const { report, language } = parts
  const { words } = language
  const { page } = words.checking
  const { wrench, companion } = report
  const title = fill(page.title, { wrench: wrench.tag, date: report.date })
  return (
    <Shell {...parts} title={title}>
      <link rel="stylesheet" href="/report.css" />
      <article class="report">
        <p class="made-in">{parts.shop}</p>
        <h1>{title}</h1>
        <p class="ruling">
          {page.verdict}: {report.verdict.text}
        </p>
        <p class="standing">{report.standing}</p>
        {!report.isLatest && <p>{page.later}</p>}
        {companion && (
          <p>
            <a class="key" href={reportAddress(wrench.tag, companion.id)}>
              {fill(page.companion, { state: companion.state.text, verdict: companion.verdict.text })}
            </a>
          </p>
        )}
        <Facts report={report} words={words} />
        {/* A small screen scrolls the tables sideways, by keys as well. */}
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable without a pointer */}
        <section class="wide" tabIndex={0} aria-label={page.read}>
          <Points report={report} words={words} />
          <Readings report={report} words={words} />
        </section>
        {report.notes.length > 0 && <h2>{page.know}</h2>}
        <ul>
          {report.notes.map(({ code, text }) => (
            <li key={code}>{text}</li>
          ))}
        </ul>
        <p class="signed">
          {page.signed} <span />
        </p>
        <p class="about">{fill(page.kept, { id: report.id, at: report.kept })}</p>
        <p class="ways">
          <a class="key" href={`/wrench/${encodeURIComponent(wrench.tag)}`}>
            {fill(page.back, { wrench: wrench.tag })}
          </a>
        </p>
      </article>
    </Shell>
  )
}
