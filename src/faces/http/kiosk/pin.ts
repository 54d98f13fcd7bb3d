// The PIN of the kiosk: kept as a scrypt hash with its own salt, compared in constant time. Salt and PIN are handed in.
import { scrypt, timingSafeEqual } from 'node:crypto'

export interface PinHash {
  readonly cost: number
  readonly salt: Buffer
  readonly hash: Buffer
}

// 16 MB and some 50 ms a guess (RFC 7914, N = 2^14, r = 8, p = 1): four digits are few, so guesses are also made slow; see lock-out.ts.
const COST = 16_384
const LENGTH = 32
export const SALT_LENGTH = 16

const form = /^scrypt:(\d{4,7}):([\w-]{22}):([\w-]{43})$/

/** The hash of a setting; undefined where the text is none. */
export const readPinHash = (text: string): PinHash | undefined => {
  const [, cost, salt, hash] = form.exec(text) ?? []
  if (cost === undefined || salt === undefined || hash === undefined) return undefined
  const n = Number(cost)
  if (n < 4096 || n > 131_072 || !Number.isInteger(Math.log2(n))) return undefined
  return { cost: n, salt: Buffer.from(salt, 'base64url'), hash: Buffer.from(hash, 'base64url') }
}

const derive = (pin: string, salt: Buffer, cost: number): Promise<Buffer> =>
  new Promise((resolve, reject) => {
    // Twice what it needs, so that the limit of the platform never stands in the way.
    scrypt(pin, salt, LENGTH, { N: cost, r: 8, p: 1, maxmem: 256 * 8 * cost }, (error, key) =>
      error ? reject(error) : resolve(key),
    )
  })

/** The text of the setting for a PIN; the salt is 16 random bytes. */
export const writePinHash = async (pin: string, salt: Buffer): Promise<string> =>
  `scrypt:${COST}:${salt.toString('base64url')}:${(await derive(pin, salt, COST)).toString('base64url')}`

export const fitsPin = async ({ cost, salt, hash }: PinHash, pin: string): Promise<boolean> =>
  timingSafeEqual(await derive(pin, salt, cost), hash)

/** Why a PIN is none to take; undefined where it will do. */
export const weakness = (pin: string): 'not-digits' | 'alike' | 'a-run' | undefined => {
  if (!/^\d{4,12}$/.test(pin)) return 'not-digits'
  const steps = [...pin].slice(1).map((digit, n) => Number(digit) - Number(pin[n]))
  if (steps.every((step) => step === 0)) return 'alike'
  return steps.every((step) => step === 1) || steps.every((step) => step === -1) ? 'a-run' : undefined
}
