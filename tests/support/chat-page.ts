// Messages as a chat would show them, as one page to be looked at: `npx tsx tests/support/chat-page.ts <file>` writes typical answers.
import { writeFileSync } from 'node:fs'
import type { ChatReply } from '../../src/faces/chat/reply.ts'
import { createPictures } from '../../src/faces/pictures.ts'
import { openChatInProcess } from './chat.ts'
import type { Ask } from './fake-discord/ask.ts'

const safe = (text: string): string => text.replace(/[&<>"]/g, (mark) => `&#${mark.charCodeAt(0)};`)

// What is escaped is a plain letter; bold and fences are all that our messages use.
const marked = (text: string): string => {
  const kept: string[] = []
  const bare = text.replace(/\\([\\`*_~|>[\]<@#])/g, (_, mark: string) => `\uE000${kept.push(safe(mark)) - 1}\uE001`)
  return safe(bare)
    .replace(/```\n?([\s\S]*?)```/g, '<pre>$1</pre>')
    .replace(/\*\*([\s\S]*?)\*\*/g, '<b>$1</b>')
    .replace(/\n/g, '<br>')
    .replace(/\uE000(\d+)\uE001/g, (_, n: string) => kept[Number(n)] ?? '')
}

interface Key {
  readonly label?: string
  readonly placeholder?: string
  readonly options?: ReadonlyArray<{ readonly label: string }>
}

const keys = (rows: NonNullable<ChatReply['data']['components']>): string =>
  (rows as unknown as ReadonlyArray<{ readonly components: readonly Key[] }>)
    .map(
      ({ components }) =>
        `<div class="row">${components
          .map(({ label, placeholder, options = [] }) =>
            label === undefined
              ? `<details><summary>${safe(placeholder ?? '')} ▾</summary>${options.map((one) => `<div>${safe(one.label)}</div>`).join('')}</details>`
              : `<button>${safe(label)}</button>`,
          )
          .join('')}</div>`,
    )
    .join('')

/** One reply as HTML. */
export const drawReply = ({ data, files, modal }: ChatReply): string => {
  const picture = files.find(({ name }) => name.endsWith('.png'))
  const image = picture ? `<img src="data:image/png;base64,${picture.data.toString('base64')}" alt="">` : ''
  const embeds = (data.embeds ?? [])
    .map(
      ({ title = '', description = '', fields = [], footer }) =>
        `<section><h3>${safe(title)}</h3><p>${marked(description)}</p>${fields
          .map(({ name, value }) => `<h4>${safe(name)}</h4><p>${marked(value)}</p>`)
          .join('')}${image}${footer ? `<small>${safe(footer.text)}</small>` : ''}</section>`,
    )
    .join('')
  const others = files
    .filter((file) => file !== picture)
    .map(({ name, data: bytes }) => `<p>▤ ${safe(name)}, ${bytes.length} bytes</p>`)
  const form = modal
    ? `<section><h3>${safe(modal.title)}</h3><pre>${safe(JSON.stringify(modal.components, null, 1))}</pre></section>`
    : ''
  const note = data.flags === 64 ? '<small>seen by the asker alone</small>' : ''
  return `<article>${data.content ? `<p>${marked(data.content)}</p>` : ''}${embeds}${form}${others.join('')}${keys(data.components ?? [])}${note}</article>`
}

const style = `body{font:16px/1.4 sans-serif;margin:0;padding:8px;background:#202226;color:#e6e6e6;overflow-wrap:anywhere}
article{border-top:1px solid #555;padding:10px 0}section{border-left:4px solid #1d7a6b;background:#2a2c31;padding:8px 12px;border-radius:4px}
h2{font-size:14px;color:#9ad}h3{margin:4px 0;font-size:16px}h4{margin:10px 0 2px;font-size:14px}p{margin:2px 0;font-size:15px}img{max-width:100%;border-radius:6px}
.row{display:flex;flex-wrap:wrap;gap:6px;margin-top:8px}button,details{font:inherit;padding:6px 12px;border-radius:6px;border:1px solid #777;background:#383b41;color:#eee}
details{width:100%}pre{white-space:pre-wrap;background:#17181b;padding:6px}small{color:#aaa}`

/** Typical asks, one of every kind that people send. */
export const typical: ReadonlyArray<readonly [string, Ask]> = [
  [
    'a crowfoot straight ahead',
    { command: 'adapter', options: { torque: '120 N·m', lever: '380 mm', adapter: '45 mm' } },
  ],
  ['at an angle', { command: 'adapter', options: { torque: '75 lb-ft', lever: '18 in', adapter: '3 in@45' } }],
  [
    'a chain',
    {
      command: 'adapter',
      options: { torque: '48 ± 3 N·m', lever: '380 mm', adapter: '45 mm@30; 60 mm@-20', mark: '1 N·m' },
    },
  ],
  [
    'a reading',
    { command: 'adapter', options: { find: 'reading', reading: '80 N·m', lever: '400 mm', adapter: '50 mm@90' } },
  ],
  ['the lever is missing', { command: 'adapter', options: { torque: '120 N·m', adapter: '45 mm' } }],
  ['no unit', { command: 'adapter', options: { torque: '120', lever: '380 mm', adapter: '45 mm' } }],
  [
    'held elsewhere',
    {
      command: 'hand',
      subcommand: 'position',
      options: { setting: '90 N·m', lever: '400 mm', hand: '300 mm', 'wrench-type': 'click' },
    },
  ],
  [
    'a tilted head',
    { command: 'head', subcommand: 'flex', options: { torque: '40 N·m', lever: '300 mm', tilt: '20' } },
  ],
  ['a swivel', { command: 'swivel', options: { torque: '60 N·m', angle: '20' } }],
  ['bars', { command: 'extension', options: { torque: '100 N·m', length: '250 mm', drive: '1/2' } }],
  ['a multiplier', { command: 'multiplier', options: { torque: '600 N·m', 'turns-ratio': '5' } }],
  ['anti-seize', { command: 'lubricant', options: { torque: '100 N·m', from: 'dry', to: 'anti-seize', size: 'M12' } }],
  [
    'clamp force',
    {
      command: 'bolt',
      subcommand: 'clamp',
      options: { size: 'M12', torque: '80 N·m', condition: 'dry', class: '8.8' },
    },
  ],
  [
    'a check with a scale',
    {
      command: 'check',
      subcommand: 'scale',
      options: { distance: '400 mm', force: '25.3; 25.6; 25.1 kg', setting: '100 N·m', lie: 'upright' },
    },
  ],
  ['a plan', { command: 'check', subcommand: 'plan', options: { most: '200 N·m', distance: '450 mm' } }],
  [
    'against a reference',
    {
      command: 'check',
      subcommand: 'readings',
      options: { points: '40 N·m: 39.8; 40.3 N·m | 100 N·m: 99.5; 101 N·m', tolerance: '4 %' },
    },
  ],
  [
    'two sets',
    {
      command: 'bench',
      subcommand: 'compare',
      options: { a: '99.5; 101; 100.2; 100.8 N·m', b: '104; 103.2; 105; 104.4 N·m' },
    },
  ],
  ['does a drop matter', { command: 'does-it-matter', options: { topic: 'dropped' } }],
  [
    'in own words',
    {
      command: 'ask',
      options: { text: 'got a 3 in crowfoot on my 18 in clicker, straight, book says 75 lb-ft, what do I set?' },
    },
  ],
  [
    'several readings',
    { command: 'ask', options: { text: 'clicked at 80 ft lbs, crowfoot 3 in straight, 18 in wrench' } },
  ],
  ['a maker’s figure', { command: 'ask', options: { text: 'what torque for the wheel nuts of my van?' } }],
  ['a conversion', { command: 'convert', options: { quantity: '85 lb-ft' } }],
]

export const drawPage = async (locale: string): Promise<string> => {
  const chat = openChatInProcess(createPictures())
  const drawn: string[] = []
  for (const [name, ask] of typical)
    drawn.push(`<h2>${safe(name)}</h2>${drawReply(await chat.send({ ...ask, locale }))}`)
  const own = await chat.send({ ...(typical[0]?.[1] ?? {}), locale })
  drawn.push(`<h2>its working</h2>${drawReply(await chat.press(own, 'work', { locale }))}`)
  drawn.push(`<h2>its form</h2>${drawReply(await chat.press(own, 'edit', { locale }))}`)
  return `<!doctype html><meta charset="utf-8"><meta name="viewport" content="width=device-width"><style>${style}</style>${drawn.join('\n')}`
}

const [file, locale = 'en-US'] = process.argv.slice(2)
if (process.argv[1] === import.meta.filename && file !== undefined) writeFileSync(file, await drawPage(locale))
