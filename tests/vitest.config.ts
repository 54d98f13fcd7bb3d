// How tests are run: every test file under tests/, in a process without network but for loopback.
import { join } from 'node:path'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    root: join(import.meta.dirname, '..'),
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/support/loopback-only.ts'],
    testTimeout: 20_000,
  },
})
