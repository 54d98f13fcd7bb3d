// Where there is no page, a person gets one that says so, and a program its document; a language that was chosen stays chosen.
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { en } from '../../../src/words/en/index.ts'
import { homeNames } from '../../../src/words/index.ts'
import { testDesk, testHttp } from '../../support/doors.ts'

let http: FastifyInstance
beforeAll(async () => {
  http = await testHttp(testDesk())
})
afterAll(() => http.close())

const browser = { accept: 'text/html,application/xhtml+xml,*/*;q=0.8' }

describe('an address without a page', () => {
  it.each([
    ['/nothing', 'not-found', 404],
    ['/ask/no-such-question', 'unknown-question', 404],
    ['/wrench/NOPE', 'no-such-wrench', 404],
  ] as const)('%s is told to a person as a page with the way on', async (url, name, status) => {
    const reply = await http.inject({ url, headers: browser })
    expect(reply.statusCode).toBe(status)
    expect(reply.headers['content-type']).toBe('text/html; charset=utf-8')
    expect(reply.body).toContain(en.problems[name].title)
    expect(reply.body).toContain(en.problems[name].next)
    expect(reply.body).toContain('href="/board"')
  })

  it.each([
    ['/nothing', undefined],
    ['/nothing', { accept: 'application/json' }],
    ['/nothing', { accept: '*/*' }],
    ['/v1/questions/nope', browser],
    ['/v1/wrenches/NOPE', browser],
  ])('%s asked with %j gets the document', async (url, headers) => {
    const reply = await http.inject({ url, ...(headers ? { headers } : {}) })
    expect(reply.statusCode).toBe(404)
    expect(reply.headers['content-type']).toContain('application/problem+json')
    expect(reply.json().status).toBe(404)
  })

  it('says nothing that was in the address as markup', async () => {
    const reply = await http.inject({ url: '/x%22%3E%3Cscript%3Ealert(1)%3C/script%3E', headers: browser })
    expect(reply.body).not.toContain('<script>alert')
  })
})

describe('the language of a screen', () => {
  it('is kept when it is chosen, and forgotten when the screen starts over', async () => {
    for (const name of homeNames) {
      const reply = await http.inject(`/?lang=${name}`)
      expect(reply.headers['set-cookie']).toBe(`lang=${name}; Path=/; SameSite=Strict`)
      expect(reply.body).toContain(`<html lang="${name}">`)
      const kept = await http.inject({ url: '/board', headers: { cookie: `screen=x; lang=${name}` } })
      expect(kept.body).toContain(`<html lang="${name}">`)
      expect(kept.headers['set-cookie']).toBeUndefined()
    }
    const over = await http.inject({ url: '/?lang=', headers: { cookie: 'lang=en' } })
    expect(over.headers['set-cookie']).toContain('Max-Age=0')
  })

  it.each(['xx', 'en; Path=/evil', 'EN'])('%j is not kept', async (lang) => {
    const reply = await http.inject(`/?lang=${encodeURIComponent(lang)}`)
    expect(reply.headers['set-cookie']).toBeUndefined()
    expect(reply.body).toContain('<html lang="en">')
  })
})
