// The shell of every page: head, name of the shop, language key, footer with what always holds. No script is needed for any of it.
import type { ComponentChildren } from 'preact'
import { homeNames, type Language, type LocaleName, languages } from '../../../words/index.ts'

export interface PageParts {
  readonly language: Language
  readonly shop: string
  /** This page's path with its inputs, without the language. */
  readonly here: string
}

const inLanguage = (here: string, locale: LocaleName): string =>
  `${here}${here.includes('?') ? '&' : '?'}lang=${locale}`

const LanguageKey = ({ language, here }: PageParts) => (
  <details class="languages">
    <summary aria-label={`${language.words.page.language}: ${language.words.page.ownName}`}>
      {language.words.page.ownName}
    </summary>
    <nav aria-label={language.words.page.language}>
      {homeNames.map((locale) => (
        <a
          key={locale}
          href={inLanguage(here, locale)}
          lang={locale}
          hreflang={locale}
          aria-current={language.locale.startsWith(locale) ? 'true' : undefined}
        >
          {languages[locale].words.page.ownName}
        </a>
      ))}
    </nav>
  </details>
)

export const Shell = (parts: PageParts & { title: string; children: ComponentChildren }) => {
  const { words, locale } = parts.language
  return (
    <html lang={locale}>
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <title>{`${parts.title} – Armlength, ${parts.shop}`}</title>
        <link rel="icon" href="/icon.svg" type="image/svg+xml" />
        <link rel="stylesheet" href="/kiosk.css" />
        <link rel="stylesheet" href="/screen.css" />
        <script type="module" src="/script/kiosk.js" />
      </head>
      <body>
        <a class="skip" href="#main">
          {words.page.skip}
        </a>
        <header class="top">
          <a class="home" href="/">
            Armlength
          </a>
          <span class="shop">{parts.shop}</span>
          <a class="home" href="/board">
            {words.register.board}
          </a>
          <a class="home" href="/bench">
            {words.bench.page.title}
          </a>
          <LanguageKey {...parts} />
        </header>
        <p id="line" role="alert" hidden>
          {words.kiosk.lost}
        </p>
        <main id="main">{parts.children}</main>
        <footer>
          <p>{words.cautions['maker-first']}</p>
          <p>{words.cautions['critical-joint']}</p>
          <p>
            <a href="/bench">{words.bench.page.title}</a>
            {' · '}
            <a href="/about">{words.kiosk.about}</a>
            {' · '}
            <a href="/screen">{words.kiosk.screen}</a>
            {' · '}
            <a href="/v1/questions">{words.page.catalogue}</a>
            {' · '}
            <a href="/openapi.json">OpenAPI</a>
          </p>
        </footer>
        <dialog id="idle" aria-labelledby="idle-title" data-countdown="20" data-home="/?lang=">
          <h2 id="idle-title">{words.kiosk.idleTitle}</h2>
          <p>
            {words.kiosk.idleText} <strong id="idle-left">20</strong> {words.kiosk.seconds}
          </p>
          <button type="button">{words.kiosk.stay}</button>
        </dialog>
      </body>
    </html>
  )
}
