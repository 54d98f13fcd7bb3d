// What is printed steers no terminal: control characters are written out.
import { expect, it } from 'vitest'
import { visible } from '../src/visible-text.ts'

it.each([
  ['\u001b[31mred\u0007', '\\u001b[31mred\\u0007'],
  ['a\0b\rc\ud800', 'a\\u0000b\\u000dc\\ud800'],
  ['\u009b2J', '\\u009b2J'],
  ['Bay \u202e 120', 'Bay \\u202e 120'],
  ['two\nlines\tand a tab, ½ 💥', 'two\nlines\tand a tab, ½ 💥'],
])('%j is shown as %j', (text, shown) => expect(visible(text)).toBe(shown))
