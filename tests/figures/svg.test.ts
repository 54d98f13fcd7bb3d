// Texts in pictures: escaped, and without what XML has no place for.
import { expect, it } from 'vitest'
import { escapeXml } from '../../src/figures/svg.ts'

it.each([
  ['<b>&"', '&lt;b&gt;&amp;&quot;'],
  ['a\0b\u001b[31m\ud800\uffff', 'a\ufffdb\ufffd[31m\ufffd\ufffd'],
  ['two\nlines, ½ 💥', 'two\nlines, ½ 💥'],
])('%j stands as %j', (text, escaped) => expect(escapeXml(text)).toBe(escaped))
