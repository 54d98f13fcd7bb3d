// How tests are run: every test file under tests/, in a process without network but for loopback. The pieces and what runs the built
// program go two at a time; what counts milliseconds runs after them and alone.
import { join } from 'node:path'
import { defineConfig } from 'vitest/config'

const root = join(import.meta.dirname, '..')
const alone = [
  'tests/e2e/chat*.test.ts',
  'tests/e2e/readiness.test.ts',
  'tests/faults/*.test.ts',
  'tests/fuzz/*.test.ts',
  'tests/soak/*.test.ts',
  'tests/security/sessions.test.ts',
  'tests/store/*-trouble.test.ts',
  'tests/support/fake-discord/faults.test.ts',
  'tests/core/hostile-text.test.ts',
  'tests/asking/hostile.test.ts',
  'tests/desk/intake.test.ts',
  'tests/faces/chat/late.test.ts',
  'tests/faces/chat/steady.test.ts',
  'tests/faces/chat/taking.test.ts',
  'tests/questions/matters-search.test.ts',
]

// Rooms whose tests leave nothing behind: their files share what they import, which takes less than half the time.
const rooms = [
  'asking',
  'bench',
  'contract',
  'core',
  'desk',
  'faces',
  'figures',
  'keeping',
  'mechanics',
  'questions',
  'register',
  'tables',
  'words',
]
const pieces = rooms.map((room) => `tests/${room}/**/*.test.ts`)

const common = { root, setupFiles: [join(import.meta.dirname, 'support/loopback-only.ts')], testTimeout: 20_000 }

export default defineConfig({
  test: {
    ...common,
    projects: [
      {
        test: {
          ...common,
          name: 'pieces',
          include: pieces,
          exclude: alone,
          isolate: false,
          maxWorkers: 2,
          sequence: { groupOrder: 0 },
        },
      },
      {
        test: {
          ...common,
          name: 'together',
          include: ['tests/**/*.test.ts'],
          exclude: [...alone, ...pieces],
          maxWorkers: 2,
          sequence: { groupOrder: 0 },
        },
      },
      { test: { ...common, name: 'alone', include: alone, maxWorkers: 1, sequence: { groupOrder: 1 } } },
    ],
  },
})
