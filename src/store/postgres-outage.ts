// What PostgreSQL and the way to it failed to do, as an outage; what we did wrong stays as it is.
import { Outage, type OutageCode } from '../core/outage.ts'

// Codes of PostgreSQL (its manual, appendix A) and of the socket; the first that fits.
const codes: ReadonlyArray<readonly [begins: string, code: OutageCode]> = [
  ['53100', 'disk-full'],
  ['55P03', 'locked'],
  ['57014', 'locked'],
  ['40001', 'locked'],
  ['40P01', 'locked'],
  ['25006', 'read-only'],
  ['28', 'refused'],
  ['3D000', 'refused'],
  ['42501', 'refused'],
  ['XX001', 'broken'],
  ['XX002', 'broken'],
  ['58', 'broken'],
  ['08', 'unreachable'],
  ['53', 'unreachable'],
  ['57P', 'unreachable'],
  ['25P03', 'unreachable'],
  ['ECONN', 'unreachable'],
  ['ENOENT', 'unreachable'],
  ['ENOTFOUND', 'unreachable'],
  ['EAI_', 'unreachable'],
  ['EHOST', 'unreachable'],
  ['ENET', 'unreachable'],
  ['ETIMEDOUT', 'unreachable'],
  ['EPIPE', 'unreachable'],
]

// The driver gives these no code.
const sayings: ReadonlyArray<readonly [says: RegExp, code: OutageCode]> = [
  [/after calling end on the pool/i, 'closed'],
  [/timeout|terminated|connection error|not queryable|client has encountered|was closed/i, 'unreachable'],
  [/SASL|password/i, 'refused'],
]

export const postgresOutage = (error: unknown): unknown => {
  if (!(error instanceof Error) || error instanceof Outage) return error
  // A host with several addresses fails with one error for each.
  const first: unknown = error instanceof AggregateError ? error.errors[0] : error
  const { code } = first as { readonly code?: unknown }
  const found =
    typeof code === 'string'
      ? codes.find(([begins]) => code.startsWith(begins))?.[1]
      : sayings.find(([says]) => says.test(error.message))?.[1]
  const { message } = first as Error
  return found ? new Outage(found, typeof code === 'string' ? `${message} (${code})` : message, error) : error
}
