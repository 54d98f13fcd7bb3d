// The HTTP door, ready but not listening: routes, limits, headers, and a problem document for everything that goes wrong.
import helmet from '@fastify/helmet'
import rateLimit from '@fastify/rate-limit'
import swagger from '@fastify/swagger'
import Fastify, { type FastifyError, type FastifyInstance, type FastifyReply, type FastifyRequest } from 'fastify'
import { jsonSchemaTransform, jsonSchemaTransformObject, serializerCompiler } from 'fastify-type-provider-zod'
import type { Desk } from '../../desk/desk.ts'
import { engineVersion } from '../../tables/version.ts'
import type { Pictures } from '../pictures.ts'
import { askRoutes } from './api/ask.ts'
import { benchRoutes } from './api/bench.ts'
import { benchFigureRoutes } from './api/bench-figures.ts'
import { checkRoutes } from './api/checks.ts'
import { figureRoutes } from './api/figures.ts'
import { type HealthParts, healthRoutes } from './api/health.ts'
import { historyRoutes } from './api/history.ts'
import { interactionRoutes, type TakePost } from './api/interactions.ts'
import { questionRoutes } from './api/questions.ts'
import { registerRoutes } from './api/register.ts'
import { registerFileRoutes } from './api/register-out.ts'
import type { RegisterParts } from './api/register-parts.ts'
import { registerWritingRoutes } from './api/register-writing.ts'
import { sheetRoutes } from './api/sheets.ts'
import { wrenchListRoutes } from './api/wrench-lists.ts'
import { readBody } from './body.ts'
import { BODY_LIMIT, clientProblem, handleErrors, NOT_FOUND, unreadable } from './errors.ts'
import { placeRoutes } from './kiosk/place-routes.tsx'
import { problemPages } from './kiosk/problem-page.tsx'
import { reportRoutes } from './kiosk/report-routes.tsx'
import { kioskRoutes } from './kiosk/routes.tsx'
import { readForms } from './kiosk/sent-form.ts'
import { writingRoutes } from './kiosk/writing.tsx'
import { problem, sendProblem } from './problem.ts'
import { rateCount } from './rate-count.ts'
import { decodeUtf8 } from './utf8.ts'

export interface HttpParts extends HealthParts {
  readonly desk: Desk
  readonly pictures: Pictures
  readonly shop: string
  /** The address by which other devices reach this desk, for codes on its pages. */
  readonly publicUrl?: string | undefined
  readonly register: RegisterParts
  readonly trustProxy: boolean | string[]
  /** Requests that one address may make in a second before it is told to wait. */
  readonly mostASecond: number
  readonly seen?: (route: string, status: number, seconds: number) => void
  /** Takes what the chat service posts; absent where interactions come another way. */
  readonly interactions?: TakePost | undefined
  /** Told of outages and bugs, with the reference that the asker was given. */
  readonly failed: (reference: string, error: unknown) => void
}

const REQUEST_TIMEOUT_MS = 10_000

// Every schema comes once as it is written and once as it is read; only what is written is pointed to.
const withoutInputTwins = <T extends object>(document: T): T => {
  const schemas = (document as { components?: { schemas?: Record<string, unknown> } }).components?.schemas ?? {}
  for (const name of Object.keys(schemas)) if (name.endsWith('Input')) delete schemas[name]
  return document
}

const describe = async (app: FastifyInstance): Promise<void> => {
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Armlength',
        version: engineVersion,
        description: 'Torque questions in, worked answers out. Inputs are texts with their units; nothing is coerced.',
        license: { name: 'MIT', identifier: 'MIT' },
      },
    },
    transform: jsonSchemaTransform,
    transformObject: (document) => withoutInputTwins(jsonSchemaTransformObject(document)),
  })
}

/** Builds the door around a desk. It listens nowhere until told to. */
export const buildHttp = async (parts: HttpParts): Promise<FastifyInstance> => {
  const app = Fastify({
    logger: false,
    bodyLimit: BODY_LIMIT,
    requestTimeout: REQUEST_TIMEOUT_MS,
    // Node looks for stalled requests only this often; without it the timeout would hold to half a minute.
    http: { headersTimeout: REQUEST_TIMEOUT_MS - 1000, connectionsCheckingInterval: 1000 },
    clientErrorHandler: unreadable,
    trustProxy: parts.trustProxy,
    routerOptions: { maxParamLength: 64 },
    // What cannot be read at all (a broken percent sign in the address) gets a problem document as well.
    frameworkErrors: (error, _request, reply) => {
      const endless = (error as FastifyError).code === 'FST_ERR_MAX_PARAM_LENGTH'
      if (endless) sendProblem(reply as unknown as FastifyReply, problem('not-found', NOT_FOUND))
      else clientProblem(error, undefined, reply as unknown as FastifyReply)
    },
  })
  app.setSerializerCompiler(serializerCompiler)
  app.removeContentTypeParser(['application/json', 'text/plain'])
  app.addContentTypeParser(
    'application/json',
    { parseAs: 'buffer' },
    (_request: FastifyRequest, bytes: string | Buffer, done: (error: Error | null, body?: unknown) => void) => {
      try {
        done(null, readBody(decodeUtf8(bytes)))
      } catch (error) {
        done(Object.assign(error as Error, { statusCode: 400 }))
      }
    },
  )
  handleErrors(app, parts.failed)
  await describe(app)
  await app.register(helmet, {
    // Plain http on a shop network: no upgrade to https is asked for, which would break it.
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'none'"],
        styleSrc: ["'self'"],
        imgSrc: ["'self'"],
        scriptSrc: ["'self'"],
        connectSrc: ["'self'"],
        baseUri: ["'none'"],
        formAction: ["'self'"],
        frameAncestors: ["'none'"],
      },
    },
    // Forms of our own pages must be known as such: without a referrer a browser sends no origin with them.
    referrerPolicy: { policy: 'same-origin' },
    strictTransportSecurity: false,
    crossOriginOpenerPolicy: false,
    originAgentCluster: false,
  })
  await app.register(rateLimit, {
    global: true,
    max: parts.mostASecond,
    timeWindow: 1000,
    enableDraftSpec: true,
    store: rateCount(),
  })
  const { seen } = parts
  if (seen) {
    app.addHook('onResponse', async (request, reply) => {
      seen(request.routeOptions.url ?? 'none', reply.statusCode, reply.elapsedTime / 1000)
    })
  }
  const { desk, shop, publicUrl } = parts
  problemPages(app, desk, shop)
  questionRoutes(app, parts.desk)
  askRoutes(app, parts.desk)
  figureRoutes(app, parts.desk, parts.pictures)
  healthRoutes(app, parts)
  registerRoutes(app, parts.desk, parts.register)
  registerWritingRoutes(app, parts.desk, parts.register)
  checkRoutes(app, parts.desk, parts.register)
  historyRoutes(app, parts.desk, parts.register.shop, parts.pictures)
  benchRoutes(app, parts.desk, parts.register)
  benchFigureRoutes(app, parts.desk, parts.register.shop, parts.pictures)
  wrenchListRoutes(app, parts.register.shop)
  registerFileRoutes(app, parts.desk, parts.register)
  await sheetRoutes(app, parts.desk, parts.register)
  const kiosk = { desk, shop, register: parts.register.shop, publicUrl }
  kioskRoutes(app, kiosk)
  placeRoutes(app, kiosk)
  const { now, writing } = parts.register
  await app.register(async (scope) => {
    readForms(scope)
    writingRoutes(scope, { ...kiosk, now, pin: writing?.pin, id: writing?.id ?? (() => '') })
  })
  reportRoutes(app, kiosk)
  if (parts.interactions) await interactionRoutes(app, parts.interactions)
  app.get('/openapi.json', { schema: { hide: true } }, (_request, reply) => {
    reply
      .header('content-type', 'application/json; charset=utf-8')
      .header('cache-control', 'public, max-age=60')
      .serializer((body: unknown) => JSON.stringify(body))
    return app.swagger()
  })
  await app.ready()
  return app
}
