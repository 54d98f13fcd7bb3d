// Marks that turn the direction of writing round are taken out; everything else stays.
import { expect, it } from 'vitest'
import { unturned } from '../../src/core/turning.ts'

it('takes out what turns the writing round, and nothing else', () => {
  expect(unturned('Bay \u202e120\u202c N·m \u2067x\u2069 é שלום ½')).toBe('Bay 120 N·m x é שלום ½')
})
