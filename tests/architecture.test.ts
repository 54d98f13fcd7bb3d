// The directions of the house: who may import whom. Each rule says in a plain sentence what is broken when it fires.
import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, normalize, relative } from 'node:path'
import { describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '..')

interface Import {
  readonly file: string
  readonly target: string
  readonly typeOnly: boolean
}

const files = ['src', 'commands'].flatMap((top) =>
  readdirSync(join(root, top), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(top, name)),
)

const importPattern =
  /(?:^|\n)\s*(?:import|export)\s+(type\s+)?(?:[^'"]*?\sfrom\s+)?['"]([^'"]+)['"]|import\(\s*['"]([^'"]+)['"]\s*\)/g

const imports: readonly Import[] = files.flatMap((file) => {
  const text = readFileSync(join(root, file), 'utf8')
  return [...text.matchAll(importPattern)].map((match) => {
    const named = (match[2] ?? match[3]) as string
    const target = named.startsWith('.') ? normalize(join(dirname(file), named)) : named
    return { file, target, typeOnly: match[1] !== undefined }
  })
})

/** The room of a file: the folder that has a rule of its own. */
const roomOf = (path: string): string => {
  const parts = path.split('/')
  if (parts[0] === 'commands') return 'commands'
  if (parts[0] !== 'src') return 'package'
  if (parts[1] === 'faces' && parts.length > 3) return `faces/${parts[2]}`
  return parts.length > 2 ? (parts[1] as string) : path
}

const mayImport: Readonly<Record<string, readonly string[]>> = {
  core: ['core'],
  mechanics: ['core', 'mechanics'],
  tables: ['core', 'tables'],
  register: ['core', 'mechanics', 'register'],
  // A run's entries are made of the parts that the register's are made of.
  bench: ['core', 'mechanics', 'register', 'bench'],
  questions: ['core', 'mechanics', 'tables', 'register', 'questions'],
  keeping: ['core', 'mechanics', 'register', 'questions', 'keeping'],
  demo: ['core', 'register', 'desk', 'demo'],
  words: ['core', 'words'],
  commands: ['questions', 'commands'],
  store: ['core', 'register', 'store'],
  asking: ['core', 'mechanics', 'tables', 'questions', 'asking'],
  figures: ['core', 'register', 'questions', 'words', 'figures'],
  desk: [
    'core',
    'mechanics',
    'tables',
    'register',
    'bench',
    'keeping',
    'questions',
    'asking',
    'words',
    'desk',
    'store',
  ],
  faces: ['core', 'faces', 'figures', 'register', 'questions', 'words'],
  'faces/chat': [
    'core',
    'figures',
    'register',
    'keeping',
    'questions',
    'words',
    'commands',
    'desk',
    'store',
    'faces',
    'faces/chat',
  ],
  'faces/http': [
    'core',
    'figures',
    'tables',
    'register',
    'keeping',
    'questions',
    'words',
    'commands',
    'desk',
    'faces',
    'faces/http',
  ],
  'faces/terminal': ['core', 'questions', 'words', 'commands', 'desk', 'faces', 'faces/terminal'],
}

// The types of the English words name every phrase, so that a question cannot ask for words that do not exist.
const typesOnly: Readonly<Record<string, readonly string[]>> = {
  questions: ['words'],
  commands: ['words'],
  'faces/chat': ['src/counters.ts'],
}

const mayUse: Readonly<Record<string, readonly string[]>> = {
  core: [],
  mechanics: ['@stdlib/math-base-special-erfc', '@stdlib/stats-base-dists-t-quantile'],
  tables: [],
  register: ['zod'],
  bench: ['zod'],
  questions: ['zod'],
  keeping: ['csv-parse', 'csv-stringify', 'csv-parse/sync', 'csv-stringify/sync'],
  demo: [],
  words: [],
  commands: [],
  store: ['better-sqlite3', 'kysely', 'pg', 'node:fs', 'node:path', 'node:url'],
  asking: [],
  figures: [],
  desk: ['node:crypto'],
  faces: [
    '@napi-rs/canvas',
    'p-limit',
    'node:crypto',
    'node:module',
    'node:util',
    'node:v8',
    'node:vm',
    'node:worker_threads',
    'node:zlib',
  ],
  'faces/chat': ['discord.js', 'bottleneck', 'node:zlib', 'node:crypto'],
  'faces/http': [
    'fastify',
    'fastify-type-provider-zod',
    '@fastify/helmet',
    '@fastify/rate-limit',
    '@fastify/swagger',
    'zod',
    'preact',
    'preact-render-to-string',
    'node:crypto',
    'node:fs',
    'node:stream',
    'uqr',
  ],
  'faces/terminal': ['node:readline', 'node:stream'],
}

const rooms = [...new Set(files.map(roomOf))].filter((room) => !room.startsWith('src/'))

describe('the directions of the house', () => {
  it('every room has its rules, and every rule a room', () => {
    const named = rooms.map((room) => (room.startsWith('faces') && room.split('/').length === 1 ? 'faces' : room))
    expect([...new Set(named)].sort()).toEqual(Object.keys(mayImport).sort())
    expect(Object.keys(mayUse).sort()).toEqual(Object.keys(mayImport).sort())
  })

  it('finds the imports it is to judge', () => {
    expect(imports.length).toBeGreaterThan(150)
    expect(imports.some(({ file, target }) => file === 'src/main.ts' && target.startsWith('src/faces/http'))).toBe(true)
  })

  it.each(rooms)('%s imports only what lies below it', (room) => {
    const wrong = imports.filter(({ file, target, typeOnly }) => {
      const to = roomOf(target)
      if (roomOf(file) !== room || to === 'package') return false
      return !(mayImport[room]?.includes(to) || (typeOnly && typesOnly[room]?.includes(to)))
    })
    expect(wrong, `${room} looks up or sideways: a change there would now reach down here`).toEqual([])
  })

  it.each(rooms)('%s uses only the packages that are its own', (room) => {
    const wrong = imports.filter(
      ({ file, target, typeOnly }) =>
        roomOf(file) === room && roomOf(target) === 'package' && !typeOnly && !mayUse[room]?.includes(target),
    )
    expect(wrong, `${room} reaches for a package that another room keeps`).toEqual([])
  })

  it('only the chat door knows discord.js, only the HTTP door knows fastify', () => {
    const users = (name: string) => [
      ...new Set(imports.filter(({ target }) => target === name).map(({ file }) => roomOf(file))),
    ]
    expect(users('discord.js')).toEqual(['faces/chat'])
    expect(users('fastify')).toEqual(['faces/http'])
  })

  it('only the store knows the databases', () => {
    const users = ['better-sqlite3', 'kysely', 'pg'].map((name) => [
      ...new Set(imports.filter(({ target }) => target === name).map(({ file }) => roomOf(file))),
    ])
    expect(users).toEqual([['store'], ['store'], ['store']])
  })

  it('no clock, randomness or environment is read outside the composition root: they are handed in', () => {
    const readers = files.filter((file) => {
      // Fontconfig is told its file by the environment and by nothing else.
      // The script of the pages runs in a browser, where nobody hands it a clock.
      if (file.startsWith('src/faces/http/kiosk/client/')) return false
      if (
        file === 'src/main.ts' ||
        file === 'src/verbs.ts' ||
        file === 'src/opening.ts' ||
        // How long something took may be told by the clock that nobody sets; this file alone reads it.
        file === 'src/core/never-back.ts' ||
        file === 'src/faces/pictures.ts'
      )
        return false
      const code = readFileSync(join(root, file), 'utf8').replace(/\/\/.*|\/\*[\s\S]*?\*\//g, '')
      return /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bprocess\.(env|argv|hrtime)\b|\bperformance\.now\b/.test(
        code,
      )
    })
    expect(readers).toEqual([])
  })

  it('every file begins by saying what it is for', () => {
    const silent = files.filter((file) => !readFileSync(join(root, file), 'utf8').startsWith('// '))
    expect(silent.map((file) => relative(root, join(root, file)))).toEqual([])
  })

  it('no file holds more than one idea: 250 lines at most, tables and words aside', () => {
    const long = files.filter(
      (file) => !/^src\/(tables|words)\//.test(file) && readFileSync(join(root, file), 'utf8').split('\n').length > 251,
    )
    expect(long).toEqual([])
  })

  it('main.ts fits on a screen', () => {
    expect(readFileSync(join(root, 'src/main.ts'), 'utf8').trimEnd().split('\n').length).toBeLessThanOrEqual(90)
  })
})
