// Whether a request comes from Discord: Ed25519 (RFC 8032) over its timestamp and its body, byte for byte as they came.
import { createPublicKey, type KeyObject, verify } from 'node:crypto'

// SubjectPublicKeyInfo of an Ed25519 key (RFC 8410, section 4): what stands before its 32 bytes.
const SPKI = Buffer.from('302a300506032b6570032100', 'hex')
const SIGNATURE = /^[0-9a-f]{128}$/i
const SECONDS = /^\d{1,12}$/
/** Ids are remembered for longer, so that nothing can be sent again within this. */
const FRESH_MS = 300_000

export const readPublicKey = (hex: string): KeyObject =>
  createPublicKey({ key: Buffer.concat([SPKI, Buffer.from(hex, 'hex')]), format: 'der', type: 'spki' })

export interface Signed {
  readonly body: Buffer
  readonly signature: string
  /** Seconds since 1970, as text. */
  readonly timestamp: string
}

export const isGenuine = ({ body, signature, timestamp }: Signed, key: KeyObject, now: number): boolean =>
  SIGNATURE.test(signature) &&
  SECONDS.test(timestamp) &&
  Math.abs(now - Number(timestamp) * 1000) <= FRESH_MS &&
  verify(null, Buffer.concat([Buffer.from(timestamp, 'utf8'), body]), key, Buffer.from(signature, 'hex'))
