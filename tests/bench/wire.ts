// Many connections that stay open, each from a loopback address of its own, so that the limit of one address is none of all.
import { Agent, request } from 'node:http'

export interface Got {
  readonly status: number
  readonly ms: number
  readonly text: string
}

export interface Wire {
  readonly send: (
    path: string,
    body?: { readonly text: string; readonly headers: Readonly<Record<string, string>> },
  ) => Promise<Got>
  readonly close: () => void
}

/** `n` picks the address, 127.0.0.2 and on. */
export const openWire = (url: string, n: number): Wire => {
  const agent = new Agent({ keepAlive: true, maxSockets: 1 })
  const localAddress = `127.0.0.${2 + (n % 250)}`
  return {
    send: (path, body) =>
      new Promise((resolve, reject) => {
        const before = performance.now()
        const sent = request(
          url + path,
          { agent, localAddress, ...(body ? { method: 'POST', headers: body.headers } : {}) },
          (reply) => {
            const parts: Buffer[] = []
            reply.on('data', (part: Buffer) => parts.push(part))
            reply.on('error', reject)
            reply.on('end', () =>
              resolve({
                status: reply.statusCode ?? 0,
                ms: performance.now() - before,
                text: Buffer.concat(parts).toString(),
              }),
            )
          },
        )
        sent.on('error', reject).end(body?.text)
      }),
    close: () => agent.destroy(),
  }
}

/** A torque that was not asked for before: five decimals, so that it is never read as a thousands mark. */
export const torqueOf = (n: number): string => `${(60 + n / 100_000).toFixed(5)}+N%C2%B7m`

export const quantile = (times: readonly number[], q: number): number =>
  [...times].sort((one, other) => one - other)[Math.floor(times.length * q)] ?? Number.NaN
