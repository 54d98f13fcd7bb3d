// The start page: every topic with what it offers, each a large key to its own page.
import { topics } from '../../../../commands/index.ts'
import { offersOf } from '../../../../commands/topic.ts'
import { AskLine } from './ask-line.tsx'
import { type PageParts, Shell } from './shell.tsx'

export const StartPage = (parts: PageParts) => {
  const { words } = parts.language
  return (
    <Shell {...parts} title={words.page.title}>
      <h1>{words.page.title}</h1>
      <p class="lead">{words.page.lead}</p>
      <AskLine words={words} text="" />
      {topics
        .filter(({ shape }) => shape !== 'text')
        .map((topic) => (
          <section class="topic" key={topic.name} aria-labelledby={`topic-${topic.name}`}>
            <h2 id={`topic-${topic.name}`}>{words.topics[topic.name]}</h2>
            <ul class="keys">
              {offersOf(topic).map((name) => (
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
