// Who posts is known by Ed25519 alone: against the vectors of the standard, and with each part of what is signed changed.
import { generateKeyPairSync, sign, verify } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { isGenuine, readPublicKey, type Signed } from '../../../src/faces/chat/wire/signature.ts'

// RFC 8032, section 7.1: public key, message and signature of TEST 1 and TEST 2.
const vectors = [
  [
    'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a',
    '',
    'e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b',
  ],
  [
    '3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c',
    '72',
    '92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00',
  ],
] as const

describe('signatures', () => {
  it.each(vectors)('the key %s is read so that the vector of RFC 8032 holds', (key, message, signature) => {
    const [data, signed] = [Buffer.from(message, 'hex'), Buffer.from(signature, 'hex')]
    expect(verify(null, data, readPublicKey(key), signed)).toBe(true)
    expect(verify(null, Buffer.concat([data, Buffer.from('0')]), readPublicKey(key), signed)).toBe(false)
  })

  const { publicKey, privateKey } = generateKeyPairSync('ed25519')
  const key = readPublicKey(publicKey.export({ type: 'spki', format: 'der' }).subarray(-32).toString('hex'))
  const now = 1_800_000_000_000
  const signedAt = (timestamp: string, text = '{"type":1}'): Signed => {
    const body = Buffer.from(text, 'utf8')
    const signature = sign(null, Buffer.concat([Buffer.from(timestamp), body]), privateKey).toString('hex')
    return { body, timestamp, signature }
  }
  const fresh = signedAt('1800000000')

  it.each([
    ['now', fresh],
    ['in capitals', { ...fresh, signature: fresh.signature.toUpperCase() }],
    ['by a clock that is four minutes behind', signedAt('1799999760')],
    ['by a clock that is four minutes ahead', signedAt('1800000240')],
    ['with letters of every language', signedAt('1800000000', '{"a":"größer, 測る"}')],
  ])('what is signed %s is genuine', (_name, signed) => {
    expect(isGenuine(signed, key, now)).toBe(true)
  })

  it.each([
    ['a byte of the body changed', { ...fresh, body: Buffer.from('{"type":2}') }],
    ['a byte more', { ...fresh, body: Buffer.from('{"type":1} ') }],
    ['another time', { ...fresh, timestamp: '1800000001' }],
    ['six minutes old', signedAt('1799999640')],
    ['six minutes early', signedAt('1800000360')],
    ['no time', signedAt('')],
    ['a time with a sign', signedAt('+1800000000')],
    ['a time in hex', signedAt('0x6b49d200')],
    ['a short signature', { ...fresh, signature: fresh.signature.slice(2) }],
    ['a long signature', { ...fresh, signature: `${fresh.signature}00` }],
    ['no signature', { ...fresh, signature: '' }],
    ['zeros', { ...fresh, signature: '00'.repeat(64) }],
  ])('%s is not', (_name, signed) => {
    expect(isGenuine(signed, key, now)).toBe(false)
  })
})
