// The kiosk's pages and figures by injection: the same inputs in the address, the same page; blanks dropped; strangers' text harmless.
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { questionNames, questions } from '../../../src/questions/index.ts'
import { slugs } from '../../../src/questions/matters/topic.ts'
import { homeNames, languages } from '../../../src/words/index.ts'
import { cases } from '../../contract/cases.ts'
import { testDesk, testHttp } from '../../support/doors.ts'

const words = languages.en.words
let http: FastifyInstance
beforeAll(async () => {
  http = await testHttp(testDesk())
})
afterAll(() => http.close())

const page = async (url: string): Promise<string> => (await http.inject(url)).body
const address = (raw: Readonly<Record<string, string | readonly string[]>>): string =>
  new URLSearchParams(
    Object.entries(raw).flatMap(([name, value]) => [value].flat().map((text): [string, string] => [name, text])),
  ).toString()
const plain = (html: string): string =>
  html.replaceAll('&quot;', '"').replaceAll('&#39;', "'").replaceAll('&lt;', '<').replaceAll('&amp;', '&')

describe('the start page', () => {
  it('names every question with a key to its own page', async () => {
    const html = await page('/')
    for (const name of questionNames) expect(html).toContain(`href="/ask/${name}"`)
  })
})

describe('the topics of does-it-matter', () => {
  it.each(homeNames)('are keys in plain words, each leading to its answer (%s)', async (locale) => {
    const { names } = languages[locale].words.matterTopics
    const html = plain(await page(`/ask/does-it-matter?lang=${locale}`))
    for (const slug of slugs)
      expect(html).toContain(`href="/ask/does-it-matter?topic=${slug}&lang=${locale}#answer">${names[slug]}</a>`)
    for (const slug of slugs)
      expect((await http.inject(`/ask/does-it-matter?topic=${slug}`)).body).toContain('class="answer answered"')
  })

  it('stand on no other page', async () => {
    expect(await page('/ask/swivel')).not.toContain('topic=')
  })
})

describe('the page of a question', () => {
  it('tells the marks next to a setting under it, and only there', async () => {
    // 100 · 400/475 = 84.21: 84 gives 99.75, 85 gives 100.94.
    const html = await page('/ask/adapter-setting?torque=100+N·m&lever=400+mm&adapter=75+mm&angle=0&mark=1+N·m')
    expect(html).toContain('Nearest marks of the scale: set 84 N·m, it gets 99.8 N·m · set 85 N·m, it gets 100.9 N·m')
    expect(html).not.toContain('Mark below')
    const on = await page('/ask/adapter-setting?torque=100+N·m&lever=400+mm&adapter=100+mm&angle=0&mark=1+N·m')
    expect(on).toContain('Nearest marks of the scale: set 80 N·m, it gets 100 N·m<')
  })

  it.each(questionNames)(
    '%s has a field with a label for every input, and asks nothing before it is sent',
    async (name) => {
      const html = await page(`/ask/${name}`)
      for (const input of Object.keys(questions[name].inputs)) {
        expect(html).toContain(`<label for="in-${input}">`)
        expect(html).toMatch(new RegExp(`id="in-${input}" name="${input}" aria-describedby="about-${input}"`))
      }
      expect(html).not.toContain('id="answer"')
    },
  )

  it.each(cases)('$name: shows what the document says', async ({ question, raw }) => {
    const answer = testDesk().ask(question, raw, { door: 'kiosk' })
    const reply = await http.inject(`/ask/${question}?${address(raw)}`)
    // Blank fields are dropped by the page, and an empty form is asked for what it needs.
    if (Object.values(raw).includes('') || Object.keys(raw).length === 0) return expect(reply.statusCode).toBe(200)
    const html = plain(reply.body)
    expect(reply.statusCode).toBe(200)
    expect(html).toContain(answer.headline)
    for (const { text } of answer.cautions) expect(html).toContain(text)
    for (const { hint } of answer.faults) expect(html).toContain(hint)
    for (const { text, also, from, low, high } of answer.given) {
      if (from === 'asked' && answer.status === 'answered')
        expect(html).toContain(also[0] && low === high ? `${text} = ${also[0].text}` : text)
    }
  })

  it('echoes what was typed at its field and above the answer, in the other unit too', async () => {
    const html = await page('/ask/pull?torque=100+lb-ft&hand=2+ft')
    const field = html.slice(html.indexOf('id="field-torque"'), html.indexOf('id="field-hand"'))
    expect(field).toContain('<p class="echo">100 lbf·ft = 135.6 N·m</p>')
    const above = html.slice(html.indexOf(words.page.readAs), html.indexOf('id="headline"'))
    expect(above).toContain('100 lbf·ft = 135.6 N·m')
  })

  it('drops blank fields; a form that is sent with nothing asks for what it needs', async () => {
    expect(await page('/ask/pull?torque=100+lb-ft&hand=2+ft&lever=')).toBe(
      (await page('/ask/pull?torque=100+lb-ft&hand=2+ft')).replaceAll('never', 'never'),
    )
    const empty = await page('/ask/pull?torque=&lever=&hand=&lang=en')
    expect(empty).toContain(words.page.stillNeeded)
  })

  it('keeps the inputs in the language key and in the form, and starts over without them', async () => {
    const html = await page('/ask/pull?torque=100+lb-ft&hand=2+ft')
    expect(html).toContain('value="100 lb-ft"')
    expect(html).toContain('href="/ask/pull?torque=100+lb-ft&amp;hand=2+ft&amp;lang=en"')
    expect(html).toContain('href="/ask/pull?lang=en"')
  })

  it('shows several adapters in one field, as they may be typed', async () => {
    expect(await page('/ask/adapter-setting?adapter=2+in@90&adapter=3+in')).toContain('value="2 in@90 + 3 in"')
  })

  it('opens the rest of the form where something of it was told or is asked for', async () => {
    expect(await page('/ask/adapter-setting?torque=1+N·m')).not.toContain('<details open')
    expect(await page('/ask/adapter-setting?hand=10+in')).toContain('<details open')
  })

  it('text of strangers is text: no markup comes alive', async () => {
    const evil = '"><script>alert(1)</script><img src=x onerror=alert(1)>'
    const html = await page(`/ask/convert?${address({ quantity: evil, [evil]: evil })}`)
    expect(html.replace('<script type="module" src="/script/kiosk.js"></script>', '')).not.toMatch(/<script|<img src=x/)
    expect((await http.inject(`/ask/${encodeURIComponent('<script>')}`)).statusCode).toBe(404)
  })

  it('needs no script and loads nothing from elsewhere', async () => {
    const html = await page('/ask/adapter-setting?torque=100+lb-ft&lever=14+in&adapter=2+in')
    expect(html.match(/<script[^>]*>/g)).toEqual(['<script type="module" src="/script/kiosk.js">'])
    for (const [, target = ''] of html.matchAll(/(?:src|href|action)="([^"]+)"/g)) expect(target).toMatch(/^[/#](?!\/)/)
  })
})

describe('figures', () => {
  const good = address({ torque: '100 lb-ft', lever: '14 in', adapter: '2 in@30' })

  it('the picture on the page is there, and says in words what it shows', async () => {
    const html = await page(`/ask/adapter-setting?${good}`)
    const [, src = '', alt = ''] = /<img src="([^"]+)" alt="([^"]+)"/.exec(html) ?? []
    const reply = await http.inject(plain(src))
    expect(reply.statusCode).toBe(200)
    expect(reply.headers['content-type']).toContain('image/svg+xml')
    expect(alt).toContain('SET 89 lbf·ft')
  })

  it.each([
    ['a theme', `/v1/questions/adapter-setting/figure.svg?${good}&theme=dark`, 200],
    ['a theme that is none', `/v1/questions/adapter-setting/figure.svg?${good}&theme=loud`, 400],
    ['an incomplete question', '/v1/questions/adapter-setting/figure.svg?torque=100+lb-ft', 422],
    ['a refused question', '/v1/questions/adapter-setting/figure.svg?torque=100', 422],
    ['a question without a figure', '/v1/questions/convert/figure.svg?quantity=1+N·m', 404],
    [
      'an answer that nothing can be drawn of',
      '/v1/questions/clamp-force/figure.svg?size=M10&torque=45+N·m&k=0.2',
      404,
    ],
    ['a question that is none', '/v1/questions/nope/figure.png', 404],
  ])('%s', async (_name, url, status) => {
    const reply = await http.inject(url)
    expect(reply.statusCode).toBe(status)
    if (status !== 200) {
      expect(reply.headers['content-type']).toContain('application/problem+json')
      expect(reply.headers.etag).toBeUndefined()
    }
  })

  it('a cache that has the figure gets 304', async () => {
    const first = await http.inject(`/v1/questions/adapter-setting/figure.svg?${good}`)
    const again = await http.inject({
      url: `/v1/questions/adapter-setting/figure.svg?${good}`,
      headers: { 'if-none-match': String(first.headers.etag) },
    })
    expect([again.statusCode, again.body]).toEqual([304, ''])
  })
})
