// Reading a body without losing a member: generated objects, with names told twice on purpose.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readBody } from '../../../src/faces/http/body.ts'

const seed = 20_261_125

describe('readBody', () => {
  it('is JSON.parse where no name stands twice', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (value) => {
        const text = JSON.stringify(value)
        expect({ ...(readBody(text) as object) }).toEqual({ ...JSON.parse(text) })
      }),
      { seed },
    )
  })

  it('keeps both values of a name that stands twice, however they are written', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), fc.string(), (name, one, other) => {
        const text = `{ ${JSON.stringify(name)} : ${JSON.stringify(one)} ,\n${JSON.stringify(name)}:${JSON.stringify(other)}}`
        expect((readBody(text) as Record<string, unknown>)[name]).toEqual([one, other])
      }),
      { seed },
    )
  })

  it.each(['', '{', '{"a":1,}', '{"a" 1}', 'nul', '{"a":"\n"}'])('refuses %j as no JSON', (text) => {
    expect(() => readBody(text)).toThrow(SyntaxError)
  })
})
