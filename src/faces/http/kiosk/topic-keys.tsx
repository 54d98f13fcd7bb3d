// The topics of does-it-matter as keys, by group: whoever stands there picks rather than types.
import { groups, slugsByGroup } from '../../../questions/matters/topic.ts'
import type { Words } from '../../../words/index.ts'

export const TopicKeys = ({ words, locale }: { words: Words; locale: string }) => (
  <div class="topics">
    {groups.map((group) => (
      <section key={group} class="topic" aria-labelledby={`matter-${group}`}>
        <h2 id={`matter-${group}`}>{words.matterTopics.groups[group]}</h2>
        <ul class="keys">
          {slugsByGroup[group].map((slug) => (
            <li key={slug}>
              <a class="key" href={`/ask/does-it-matter?topic=${slug}&lang=${locale}#answer`}>
                {words.matterTopics.names[slug]}
              </a>
            </li>
          ))}
        </ul>
      </section>
    ))}
  </div>
)
