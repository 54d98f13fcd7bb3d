// The faults a test can put before the next answers of a route: an error Discord is known to give, no answer at all,
// a torn connection, or a slow one. `took` says that Discord did what was asked and only the answer went wrong.

export interface Fault {
  status?: number
  code?: number
  message?: string
  /** Seconds, for 429. */
  retryAfter?: number
  global?: boolean
  hang?: boolean
  reset?: boolean
  slowMs?: number
  took?: boolean
}

export const faults = {
  unknownInteraction: { status: 404, code: 10062, message: 'Unknown interaction' },
  alreadyAcknowledged: { status: 400, code: 40060, message: 'Interaction has already been acknowledged.' },
  tokenExpired: { status: 401, code: 50027, message: 'Invalid Webhook Token' },
  forbidden: { status: 403, code: 50001, message: 'Missing Access' },
  unauthorized: { status: 401, code: 0, message: '401: Unauthorized' },
  hang: { hang: true },
  reset: { reset: true },
  broken: (status = 500): Fault => ({ status, code: 0, message: `${status}: Internal Server Error` }),
  rateLimited: (retryAfter: number, global = false): Fault => ({ status: 429, retryAfter, global }),
  slow: (slowMs: number): Fault => ({ slowMs }),
  /** Discord takes it and never says so. */
  took: (fault: Fault): Fault => ({ ...fault, took: true }),
} satisfies Record<string, Fault | ((...args: never[]) => Fault)>

export interface Answer {
  status: number
  body?: unknown
  headers?: Record<string, string>
}

/** The answer a fault gives; undefined where it gives none (hang, reset) or lets the route answer (slow). */
export function faultAnswer(fault: Fault): Answer | undefined {
  if (fault.status === undefined) return undefined
  if (fault.status !== 429)
    return { status: fault.status, body: { message: fault.message ?? '', code: fault.code ?? 0 } }
  const after = fault.retryAfter ?? 1
  const scope = fault.global ? 'global' : 'user'
  return {
    status: 429,
    body: { message: 'You are being rate limited.', retry_after: after, global: fault.global ?? false },
    headers: {
      // Whole seconds in the standard header, the exact time in Discord's own, as Discord does.
      'Retry-After': String(Math.ceil(after)),
      'X-RateLimit-Limit': '5',
      'X-RateLimit-Remaining': '0',
      'X-RateLimit-Reset': String(Date.now() / 1000 + after),
      'X-RateLimit-Reset-After': String(after),
      'X-RateLimit-Bucket': 'fake',
      'X-RateLimit-Scope': scope,
      ...(fault.global && { 'X-RateLimit-Global': 'true' }),
    },
  }
}

export function faultQueues() {
  const queues = new Map<string, { fault: Fault; left: number }[]>()
  return {
    add(route: string, fault: Fault, times: number): void {
      queues.set(route, [...(queues.get(route) ?? []), { fault, left: times }])
    },
    next(route: string): Fault | undefined {
      const queue = queues.get(route)
      const head = queue?.[0]
      if (!queue || !head) return undefined
      head.left -= 1
      if (head.left <= 0) queue.shift()
      return head.fault
    },
    clear(): void {
      queues.clear()
    },
  }
}
