// README against the program: its examples are the real output, its tables are the real answers, its commands exist.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { topics } from '../commands/index.ts'
import { settings } from '../src/config.ts'
import { faultTells } from '../src/core/fault.ts'
import { escapeChat } from '../src/faces/chat/reply.ts'
import { type DoorName, type Doors, openDoors, testDesk } from './support/doors.ts'
import { badRaw, badTorques, rewrite } from './support/readme.ts'
import { pictures } from './support/write-pictures.ts'

const root = join(import.meta.dirname, '..')
const readme = readFileSync(join(root, 'README.md'), 'utf8')
const developers = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8')
const { scripts, version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  scripts: Record<string, string>
  version: string
}

let doors: Doors
let close: () => Promise<void>
beforeAll(async () => {
  const opened = await openDoors()
  doors = opened.doors
  close = opened.close
})
afterAll(() => close())

describe('README', () => {
  it('shows what the program says: run `npm run docs` where this fails', async () => {
    expect(await rewrite(readme)).toBe(readme)
  })

  it('begins with the job in one paragraph', () => {
    const [title, blank, paragraph = '', after] = readme.split('\n')
    expect([title, blank, after]).toEqual(['# Armlength', '', ''])
    expect(paragraph.length).toBeGreaterThan(200)
  })

  it('names no script that is not there, and DEVELOPERS.md names every one', () => {
    const named = [...`${readme}\n${developers}`.matchAll(/npm (?:run ([\w:]+)|(start|test)\b)/g)].map(
      (match) => match[1] ?? match[2],
    )
    for (const name of named) expect(scripts, `npm run ${name}`).toHaveProperty(name as string)
    for (const name of Object.keys(scripts)) expect(developers, name).toContain(`\`${name}\``)
  })

  it('names every command and every setting', () => {
    for (const topic of topics) {
      if (topic.shape === 'parts')
        for (const { word } of topic.offers) expect(readme).toContain(`\`/${topic.name} ${word}\``)
      else expect(readme).toContain(`\`/${topic.name}\``)
    }
    for (const name of Object.keys(settings)) expect(readme).toContain(`\`${name}\``)
  })

  it('shows the version there is', () => {
    expect(readme).toContain(`Armlength ${version}:`)
    expect(testDesk().ask('pull', {}, { door: 'terminal' }).versions.engine).toBe(version)
  })
})

describe('what README says of bad input holds at every door', () => {
  const names: readonly DoorName[] = ['http get', 'http post', 'terminal', 'terminal --json', 'chat']

  it.each(badTorques)('$shown', async (row) => {
    const raw = badRaw(row)
    const [fault] = testDesk().ask('adapter-setting', raw, { door: 'terminal' }).faults
    expect(Object.values(faultTells)).toContain(fault?.code)
    // 10 kB do not fit into the address of a GET; all else goes through every door.
    for (const name of names.filter((one) => one !== 'http get' || raw.torque.length < 8000)) {
      const shown = await doors[name]('adapter-setting', raw)
      expect(shown.status, name).toBe('refused')
      const hint = fault?.hint ?? '?'
      const told =
        shown.document?.faults.some((one) => one.code === fault?.code && one.hint === hint) ??
        (shown.text.includes(hint) || shown.text.includes(escapeChat(hint)))
      expect(told, `${name} does not say “${hint}”`).toBe(true)
    }
  })
})

describe('the pictures of README', () => {
  it('are there, say in words what they show, and are what the script takes', () => {
    const shown = [...readme.matchAll(/!\[([^\]]+)\]\(([^)]+)\)/g)]
    expect(shown.map(([, , path]) => path).sort()).toEqual(
      pictures.map(({ name }) => `deploy/pictures/${name}.png`).sort(),
    )
    for (const [, alt = '', path = ''] of shown) {
      expect(alt.length).toBeGreaterThan(20)
      expect(
        readFileSync(join(import.meta.dirname, '..', path))
          .subarray(1, 4)
          .toString(),
      ).toBe('PNG')
    }
  })
})
