// The OpenAPI document against the routes that there are: none missing, none invented, every pointer leads somewhere.
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { questionNames, questions } from '../../../src/questions/index.ts'
import { testDesk, testHttp } from '../../support/doors.ts'

interface Operation {
  parameters?: Array<{ name: string; in: string; required?: boolean }>
  requestBody?: { content: Record<string, { schema: { properties: Record<string, unknown> } }> }
  responses: Record<string, { content?: Record<string, unknown> }>
}
interface OpenApi {
  openapi: string
  paths: Record<string, Record<string, Operation>>
  components: { schemas: Record<string, unknown> }
}

const asRoute = (path: string): string => path.replace(/\{(\w+)\}/g, ':$1')

let http: FastifyInstance
let document: OpenApi
beforeAll(async () => {
  http = await testHttp(testDesk())
  document = (await http.inject('/openapi.json')).json<OpenApi>()
})
afterAll(() => http.close())

describe('the OpenAPI document', () => {
  it('is of version 3.1', () => expect(document.openapi).toBe('3.1.0'))

  it('names every question and its inputs, by GET and by POST', () => {
    for (const name of questionNames) {
      const path = document.paths[`/v1/questions/${name}`]
      const inputs = Object.keys(questions[name].inputs).sort()
      expect(path?.get?.parameters?.map((one) => one.name).sort(), name).toEqual(inputs)
      expect(
        path?.get?.parameters?.every((one) => one.in === 'query' && !one.required),
        name,
      ).toBe(true)
      expect(
        Object.keys(path?.post?.requestBody?.content['application/json']?.schema.properties ?? {}).sort(),
        name,
      ).toEqual(inputs)
      expect(Object.keys(path?.get?.responses ?? {})).toEqual(['200', '422'])
      expect(Object.keys(path?.get?.responses['422']?.content ?? {})).toEqual(['application/problem+json'])
    }
  })

  it('names no path that the door does not have', async () => {
    for (const [path, methods] of Object.entries(document.paths)) {
      for (const method of Object.keys(methods))
        expect(http.hasRoute({ url: asRoute(path), method: method.toUpperCase() as 'GET' }), `${method} ${path}`).toBe(
          true,
        )
    }
  })

  it('names every path of the door but the pages and itself', () => {
    const told = new Set(Object.keys(document.paths).map(asRoute))
    const above: string[] = []
    const routes = http
      .printRoutes({ commonPrefix: false })
      .split('\n')
      .flatMap((line) => {
        const [, indent = '', segment = '', methods] = /^([│├└─\s]*)(\S+)( \()?/.exec(line) ?? []
        const depth = indent.length / 4 - 1
        above[depth] = segment
        const path = above
          .slice(0, depth + 1)
          .join('')
          .replaceAll('//', '/')
        return methods ? [path] : []
      })
    const untold = routes.filter(
      (route) =>
        !told.has(route) &&
        ![
          '/',
          '/ask',
          '/ask/:question',
          '/board',
          '/wrench/:tag',
          '/bench',
          '/bench/:tag',
          '/wrench/:tag/check/:id',
          '/report.css',
          '/kiosk.css',
          '/ask/:question/live',
          '/script/:name',
          '/screen',
          '/screen.css',
          '/about',
          '/qr.svg',
          '/wrench/:tag/check',
          '/sign-in',
          '/sign-out',
          '/keep/:kind',
          '/icon.svg',
          '/openapi.json',
          '/v1/questions/:name',
        ].includes(route),
    )
    expect(routes.length).toBeGreaterThan(10)
    expect(routes).toContain('/v1/questions/pull')
    expect(untold).toEqual([])
  })

  it('every pointer leads to a schema, and every schema is pointed to', () => {
    const pointers = [...JSON.stringify(document).matchAll(/"#\/components\/schemas\/(\w+)"/g)].map(
      (match) => match[1] as string,
    )
    expect([...new Set(pointers)].sort()).toEqual(Object.keys(document.components.schemas).sort())
  })
})
