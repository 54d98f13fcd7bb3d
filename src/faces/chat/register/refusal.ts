// What is wrong with something that should be kept, as a private message: each fault at its input, and what is still needed.

import { sayerFor } from '../../../desk/say.ts'
import type { Keeping } from '../../../desk/shop.ts'
import type { Language } from '../../../words/index.ts'
import { cut } from '../cut.ts'
import { type ChatReply, escapeChat } from '../reply.ts'
import type { row } from './form.ts'
import { message } from './layout.ts'

export const faultLines = (kept: Extract<Keeping, { kind: 'refused' }>, language: Language): string[] => {
  const { words } = language
  const say = sayerFor(language)
  return [
    ...kept.faults
      .map(say.fault)
      .map(({ input, got, hint }) => `${input === '' ? '' : `${input}: `}${got === '' ? '' : `“${got}”. `}${hint}`),
    ...kept.missing.map((input) => {
      const { ask, measure } = words.register.inputs[input as keyof typeof words.register.inputs]
      return `${input}: ${words.page.stillNeeded}: ${ask}. ${measure}`
    }),
  ]
}

export const refused = (
  lines: readonly string[],
  { words }: Language,
  buttons: ReadonlyArray<ReturnType<typeof row>> = [],
): ChatReply =>
  message(
    {
      description: cut(
        [words.chatRegister.notKept, ...lines.map((line) => `- ${escapeChat(line)}`)].join('\n'),
        4000,
        '…',
      ),
    },
    { isPrivate: true, buttons },
  )
