// The page on which messages are looked at shows every typical answer, whole and with its keys, in every language.
import { expect, it } from 'vitest'
import { homeNames } from '../../../src/words/index.ts'
import { openChatInProcess } from '../../support/chat.ts'
import { drawReply, typical } from '../../support/chat-page.ts'

it.each(homeNames)(
  'typical asks in %s have a reply each that can be drawn, and their markup is ours',
  async (locale) => {
    const chat = openChatInProcess()
    for (const [name, ask] of typical) {
      const reply = await chat.send({ ...ask, locale })
      const html = drawReply(reply)
      expect(html, name).toContain('<section>')
      expect(html, name).not.toContain('undefined')
      expect(html.match(/<script|onerror/i), name).toBeNull()
    }
  },
)

it('what people type stays text on it', () => {
  const html = drawReply({ data: { content: '<img onerror=x> \\*\\*no\\*\\* **yes**' }, files: [] })
  expect(html).not.toContain('<img')
  expect(html).toContain('**no**')
  expect(html).toContain('<b>yes</b>')
})
