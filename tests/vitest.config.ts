// How tests are run: every test file under tests/, in a process without network but for loopback. What runs the built program,
// or looks at a clock, runs after all else and alone.
import { join } from 'node:path'
import { defineConfig } from 'vitest/config'

const root = join(import.meta.dirname, '..')
const alone = [
  'tests/e2e/**',
  'tests/faults/**',
  'tests/fuzz/**',
  'tests/soak/**',
  'tests/security/**',
  'tests/store/*-trouble.test.ts',
  'tests/support/**',
  'tests/core/hostile-text.test.ts',
  'tests/asking/hostile.test.ts',
  'tests/desk/intake.test.ts',
  'tests/faces/chat/late.test.ts',
  'tests/faces/chat/steady.test.ts',
  'tests/faces/chat/taking.test.ts',
  'tests/questions/matters-search.test.ts',
].map((path) => (path.endsWith('**') ? `${path}/*.test.ts` : path))

const common = { root, setupFiles: [join(import.meta.dirname, 'support/loopback-only.ts')], testTimeout: 20_000 }

export default defineConfig({
  test: {
    ...common,
    projects: [
      {
        test: {
          ...common,
          name: 'pieces',
          include: ['tests/**/*.test.ts'],
          exclude: alone,
          maxWorkers: 2,
          sequence: { groupOrder: 0 },
        },
      },
      { test: { ...common, name: 'alone', include: alone, maxWorkers: 1, sequence: { groupOrder: 1 } } },
    ],
  },
})
