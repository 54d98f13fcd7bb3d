// How far to trust the desk, and every source that its numbers come from, with its standing.
import { citations } from '../../../tables/citation.ts'
import { type PageParts, Shell } from './shell.tsx'

export const AboutPage = (parts: PageParts) => {
  const { kiosk, standings } = parts.language.words
  return (
    <Shell {...parts} title={kiosk.about}>
      <h1>{kiosk.about}</h1>
      <p class="lead">{kiosk.aboutLead}</p>
      <ul>
        {Object.values(kiosk.aboutPoints).map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <h2>{kiosk.aboutSources}</h2>
      <ul>
        {Object.values(citations).map(({ title, where, standing }) => (
          <li key={`${title} ${where}`}>{`${title}, ${where} (${standings[standing]})`}</li>
        ))}
      </ul>
    </Shell>
  )
}
