// The plain page at /: what this is, and the questions with a ready example of each. Works in any browser, without a script.

import { topics } from '../../../../commands/index.ts'
import { offersOf } from '../../../../commands/topic.ts'
import { type QuestionName, questions } from '../../../questions/index.ts'
import type { Words } from '../../../words/index.ts'

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}
export const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, (char) => entities[char] as string)

const exampleOf = (name: QuestionName, system: 'metric' | 'inch'): string => {
  const { inputs, oneOf } = questions[name]
  const wanted = Object.entries(inputs).filter(
    ([input, { needed }]) => needed || oneOf.some(([first]) => first === input),
  )
  return `/v1/questions/${name}?${new URLSearchParams(wanted.map(([input, { example }]): [string, string] => [input, example[system]])).toString()}`
}

const style = `
:root { color-scheme: light dark; font: 1.125rem/1.5 system-ui, sans-serif }
body { margin: 0 auto; max-width: 46rem; padding: 1.5rem; background: light-dark(#fbfaf7, #15181a); color: light-dark(#1b1e20, #eceae4) }
h1 { margin: 0 0 .25rem } h2 { margin: 1.75rem 0 .25rem; font-size: 1.1rem } p { margin: .25rem 0 }
ul { list-style: none; margin: 0; padding: 0 } li { margin: .4rem 0 }
a { color: light-dark(#0b4f6c, #8fd0ee); display: inline-block; padding: .5rem 0 } a:focus-visible { outline: 3px solid currentColor; outline-offset: 2px }
`

export const startPage = (words: Words, shop: string, locale: string, system: 'metric' | 'inch'): string => {
  const sections = topics.map((topic) => {
    const items = offersOf(topic).map(
      (name) => `<li><a href="${escapeHtml(exampleOf(name, system))}">${escapeHtml(words.questions[name])}</a></li>`,
    )
    return `<section><h2>${escapeHtml(words.topics[topic.name])}</h2><ul>${items.join('')}</ul></section>`
  })
  return `<!doctype html>
<html lang="${escapeHtml(locale)}">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>Armlength: ${escapeHtml(shop)}</title><style>${style}</style></head>
<body>
<header><h1>Armlength</h1><p>${escapeHtml(words.page.lead)}</p></header>
<main>${sections.join('\n')}</main>
<footer><p>${escapeHtml(words.cautions['maker-first'])}</p><p>${escapeHtml(words.cautions['critical-joint'])}</p>
<p><a href="/v1/questions">${escapeHtml(words.page.catalogue)}</a> · <a href="/openapi.json">OpenAPI</a></p></footer>
</body></html>
`
}

export const pageStyle = style
