// Answers as Discord messages: within the limits whatever is asked, private where it is a fault, nobody pinged, no markup of strangers.
import { describe, expect, it } from 'vitest'
import { escapeChat, privateLine, renderReply } from '../../../src/faces/chat/reply.ts'
import { languages } from '../../../src/words/index.ts'
import { cases } from '../../contract/cases.ts'
import { testDesk } from '../../support/doors.ts'

const words = languages.en.words
const desk = testDesk()
const replyTo = (question: Parameters<typeof desk.ask>[0], raw: unknown) =>
  renderReply(desk.ask(question, raw, { door: 'chat' }), words)

const longest = {
  question: 'adapter-setting' as const,
  raw: {
    torque: '48.123456 ± 3.123456 N·m',
    lever: '380.25 mm',
    adapter: '45.123456 mm@30; 45.123456 mm@-30; 45.123456 mm@130; 45.123456 mm@1',
    hand: '300.25 mm',
    mark: '1 N·m',
    least: '1 N·m',
    most: '20 N·m',
  },
}
const manyReadings = {
  question: 'scale-check' as const,
  raw: {
    distance: '36 cm',
    setting: '50 Nm',
    force: Array.from({ length: 20 }, (_, n) => `${14 + n / 10} kg`).join('; '),
  },
}
const manyFaults = {
  question: 'adapter-setting' as const,
  raw: Object.fromEntries(Array.from({ length: 25 }, (_, n) => [`x${n}`, '*'.repeat(90)])),
}
const manyRuns = {
  question: 'nut-factor' as const,
  raw: { size: 'M12', torque: Array(50).fill('60 N·m').join('; '), 'clamp-force': Array(50).fill('24 kN').join('; ') },
}

describe('a reply', () => {
  it.each([...cases, longest, manyReadings, manyFaults, manyRuns])(
    'keeps within the limits of a message: $question $raw',
    ({ question, raw }) => {
      const { data, files } = replyTo(question, raw)
      const [embed, ...more] = data.embeds ?? []
      expect(more).toEqual([])
      expect(embed?.title?.length).toBeLessThanOrEqual(256)
      expect(embed?.description?.length).toBeLessThanOrEqual(4096)
      const fields = embed?.fields ?? []
      expect(fields.length).toBeLessThanOrEqual(25)
      for (const { name, value } of fields) {
        expect(name.length > 0 && name.length <= 256 && value.length > 0 && value.length <= 1024, name).toBe(true)
      }
      const total = fields.reduce((sum, { name, value }) => sum + name.length + value.length, 0)
      expect(
        total + (embed?.title?.length ?? 0) + (embed?.description?.length ?? 0) + (embed?.footer?.text.length ?? 0),
      ).toBeLessThanOrEqual(6000)
      expect(data.allowed_mentions).toEqual({ parse: [] })
      expect(data.attachments?.length ?? 0).toBe(files.length)
    },
  )

  it('what does not fit is in the file, whole, and the message says so', () => {
    const { data, files } = replyTo(manyRuns.question, manyRuns.raw)
    expect(files).toHaveLength(1)
    const text = files[0]?.data.toString('utf8') ?? ''
    expect(text).toContain('Run 50')
    expect(data.embeds?.[0]?.footer?.text).toBe(words.faces['whole-answer'])
    expect(data.attachments?.[0]).toMatchObject({ id: 0, filename: files[0]?.name })
  })

  it('an answer is for all, a gap and a fault are for the asker alone', () => {
    expect(replyTo('pull', { torque: '100 Nm', hand: '1 m' }).data.flags).toBeUndefined()
    expect(replyTo('pull', { torque: '100 Nm' }).data.flags).toBe(64)
    expect(replyTo('pull', { torque: '100' }).data.flags).toBe(64)
    expect(privateLine('x').data).toEqual({ content: 'x', flags: 64, allowed_mentions: { parse: [] } })
  })

  it('texts of people come without markup, mentions, links or cursor tricks', () => {
    const text = JSON.stringify(
      replyTo('convert', { quantity: '**x** [y](http://z) `q` <@1> @here \u202eabc\u0007' }).data,
    )
    expect(text).not.toMatch(/\*\*x\*\*|\[y\]\(|<@1>|\\u202e|\u202e|\\u0007/)
    expect(escapeChat('**x** <@1>')).toBe('\\*\\*x\\*\\* \\<\\@1\\>')
  })

  it('a bare address of somebody is no link', () => {
    expect(escapeChat('see https://x.example/a_b')).toBe('see https\\://x.example/a\\_b')
    expect(escapeChat('ratio 4:1, 10:30')).toBe('ratio 4:1, 10:30')
    const text = JSON.stringify(replyTo('convert', { quantity: 'https://x.example' }).data)
    expect(text).toContain('https\\\\://x.example')
    expect(text).not.toContain('https://')
  })

  it('the field to act on comes first', () => {
    expect(replyTo('pull', { torque: '100' }).data.embeds?.[0]?.fields?.[0]?.name).toBe(words.faces.faults)
    expect(replyTo('pull', { torque: '100 N·m' }).data.embeds?.[0]?.fields?.[0]?.name).toBe(words.faces.missing)
    expect(replyTo('pull', { torque: '100 N·m', hand: '1 m' }).data.embeds?.[0]?.fields?.[0]?.name).toBe(
      words.faces.results,
    )
  })
})
