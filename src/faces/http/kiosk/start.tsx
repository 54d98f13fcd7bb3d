// The start page: the wrenches at hand, what is asked most, the line for free text, and every other question as a large key.
import { topics } from '../../../../commands/index.ts'
import { offersOf } from '../../../../commands/topic.ts'
import type { FleetRow } from '../../../register/fleet.ts'
import { usable } from '../../../register/status-rules.ts'
import { marks } from '../../status-marks.ts'
import { AskLine } from './ask-line.tsx'
import { type PageParts, Shell } from './shell.tsx'

const most = ['adapter-setting', 'hand-position', 'lubricant', 'does-it-matter'] as const

const isMost = (name: string): boolean => (most as readonly string[]).includes(name)

const InHand = ({ rows, words }: { rows: readonly FleetRow[]; words: PageParts['language']['words'] }) =>
  rows.length === 0 ? null : (
    <section class="topic" aria-labelledby="in-hand">
      <h2 id="in-hand">{words.kiosk.inHand}</h2>
      <ul class="keys">
        {rows.map(({ folder, status: { status, reasons } }) => {
          const inDoubt = status === 'in-service' && reasons.some(({ code }) => code === 'passed-in-doubt')
          const { tag, name, least, most } = folder.card.entry.body
          const range = least ? `${least.text} … ${most.text}` : most.text
          const named = encodeURIComponent(tag)
          return (
            <li key={tag}>
              {/* One that is not to be pulled with leads to why, not to a number. */}
              <a class="key wrench" href={usable(status) ? `/ask/adapter-setting?wrench=${named}` : `/wrench/${named}`}>
                <strong>{tag}</strong> <span>{name}</span> <span class="range">{range}</span>
                {status !== 'in-service' && (
                  <small>
                    <span aria-hidden="true">{marks[status]}</span> {words.register.statuses[status]}
                  </small>
                )}
                {inDoubt && (
                  <small>
                    <span aria-hidden="true">±</span> {words.codes['pass-in-doubt']}
                  </small>
                )}
              </a>
            </li>
          )
        })}
        <li>
          <a class="key" href="/board">
            {words.kiosk.allWrenches}
          </a>
        </li>
      </ul>
    </section>
  )

/** `rows`: the wrenches that may be picked at once; none where there is no register or it is away. */
export const StartPage = (parts: PageParts & { rows: readonly FleetRow[] }) => {
  const { words } = parts.language
  return (
    <Shell {...parts} title={words.page.title}>
      <h1>{words.page.title}</h1>
      <p class="lead">{words.page.lead}</p>
      <InHand rows={parts.rows} words={words} />
      <section class="topic" aria-labelledby="most-asked">
        <h2 id="most-asked">{words.kiosk.topTasks}</h2>
        <ul class="keys">
          {most.map((name) => (
            <li key={name}>
              <a class="key strong" href={`/ask/${name}`}>
                {words.questions[name]}
              </a>
            </li>
          ))}
        </ul>
      </section>
      <AskLine words={words} text="" />
      <h2>{words.kiosk.more}</h2>
      {topics
        .map((topic) => ({ ...topic, others: offersOf(topic).filter((name) => !isMost(name)) }))
        .filter(({ others }) => others.length > 0)
        .map((topic) => (
          <section class="topic" key={topic.name} aria-labelledby={`topic-${topic.name}`}>
            <h3 id={`topic-${topic.name}`}>{words.topics[topic.name]}</h3>
            <ul class="keys">
              {topic.others.map((name) => (
                <li key={name}>
                  <a class="key" href={`/ask/${name}`}>
                    {words.questions[name]}
                  </a>
                </li>
              ))}
            </ul>
          </section>
        ))}
    </Shell>
  )
}
