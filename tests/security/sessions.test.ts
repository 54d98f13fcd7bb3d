// The PIN and what it opens: how it is kept, how guessing is held up, how a session begins and ends. Numbers are those of
// OWASP ASVS 4.0.3, said in our words.
import { randomUUID } from 'node:crypto'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { CROWD_TRIES, createLockOut } from '../../src/faces/http/kiosk/lock-out.ts'
import { fitsPin, readPinHash, writePinHash } from '../../src/faces/http/kiosk/pin.ts'
import { createSessions, IDLE_MS, sessionCookie } from '../../src/faces/http/kiosk/sessions.ts'
import { card, type Door, openDoor, PIN, sendForm, signIn, tokenIn } from './door.ts'

const HOUR_MS = 3_600_000

let door: Door
beforeEach(async () => {
  door = await openDoor()
})
afterEach(() => door.app.close())

const isIn = async (cookie: string): Promise<boolean> =>
  (await door.app.inject({ url: '/keep/wrench', headers: { cookie } })).statusCode === 200
const guess = (pin: string, remoteAddress: string) =>
  door.app.inject({
    method: 'POST',
    url: '/sign-in',
    remoteAddress,
    payload: `pin=${pin}`,
    headers: { 'content-type': 'application/x-www-form-urlencoded' },
  })

describe('a session', () => {
  it('V3.2.1: begins with an id of its own at every sign-in; the one that the browser brought ends', async () => {
    const first = await signIn(door)
    expect(await isIn(first)).toBe(true)
    const second = await signIn(door, { cookie: first })
    expect(second).not.toBe(first)
    expect(await isIn(second)).toBe(true)
    expect(await isIn(first)).toBe(false)
  })

  it('V3.2.1: is never one that somebody else has chosen', async () => {
    const cookie = await signIn(door, { cookie: 'desk=chosen-by-a-stranger' })
    expect(cookie).not.toContain('chosen-by-a-stranger')
    expect(await isIn('desk=chosen-by-a-stranger')).toBe(false)
  })

  it('V3.2.2: has an id of 122 random bits, and a token that is not the id', () => {
    const sessions = createSessions(() => 0, randomUUID)
    const all = Array.from({ length: 40 }, () => sessions.open())
    const texts = all.flatMap(({ id, token }) => [id, token])
    expect(new Set(texts).size).toBe(80)
    // RFC 9562, section 5.4: version 4 holds 122 random bits.
    for (const text of texts)
      expect(text).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/)
  })

  it('V3.1.1, V3.2.3: stands in its cookie alone: in no address, and on no page', async () => {
    const cookie = await signIn(door)
    const id = cookie.replace('desk=', '')
    for (const url of ['/keep/wrench', '/board', '/', '/sign-in']) {
      const { body, headers } = await door.app.inject({ url, headers: { cookie } })
      expect(body, url).not.toMatch(new RegExp(`${id}(?!\\d)`))
      expect(String(headers.location ?? ''), url).not.toContain(id)
    }
  })

  it('V3.3.1: ends with the sign-out, and the back button brings nothing back', async () => {
    const cookie = await signIn(door)
    const page = await door.app.inject({ url: '/keep/wrench', headers: { cookie } })
    expect(page.headers['cache-control']).toBe('no-store')
    await sendForm(door, '/sign-out', {}, { cookie })
    expect(await isIn(cookie)).toBe(false)
    const late = await sendForm(door, '/keep/wrench', { token: tokenIn(page.body), ...card }, { cookie })
    expect(late.statusCode).toBe(403)
    expect(await door.entries()).toBe(0)
  })

  it('V3.3.2: ends after five minutes without a sign of life', async () => {
    const cookie = await signIn(door)
    door.wait(IDLE_MS - 1)
    expect(await isIn(cookie)).toBe(true)
    door.wait(IDLE_MS)
    expect(await isIn(cookie)).toBe(false)
  })

  it('V3.3.2: a clock that was set back lengthens none', async () => {
    const cookie = await signIn(door)
    door.wait(-365 * 24 * HOUR_MS)
    expect(await isIn(cookie)).toBe(false)
  })

  it('V3.4.1, V3.4.2, V3.4.3, V3.4.5: comes in a cookie that no script reads, no other site sends, and TLS keeps to itself', () => {
    const session = { id: 'one', token: 'two' }
    expect(sessionCookie(session, true)).toBe('desk=one; Path=/; HttpOnly; SameSite=Strict; Secure')
    // Plain HTTP on a shop's own network: marked secure it would never come back.
    expect(sessionCookie(session, false)).toBe('desk=one; Path=/; HttpOnly; SameSite=Strict')
    expect(sessionCookie(undefined, true)).toContain('Max-Age=0')
  })
})

describe('the PIN', () => {
  it('V2.4.1, V2.4.2: is kept salted and slow: the same PIN twice has two hashes, and a guess costs its time', async () => {
    const [one, other] = [await writePinHash(PIN, Buffer.alloc(16, 1)), await writePinHash(PIN, Buffer.alloc(16, 2))]
    expect(one).not.toBe(other)
    const read = readPinHash(one)
    expect(read?.salt).toHaveLength(16)
    // The least cost that is taken at all is a quarter of what is written.
    expect(read?.cost).toBeGreaterThanOrEqual(16_384)
    if (read) expect(await fitsPin(read, PIN)).toBe(true)
  })

  it('a wrong one takes as long as a right one, however many digits fit', async () => {
    const read = readPinHash(await writePinHash(PIN, Buffer.alloc(16, 3)))
    if (!read) throw new Error('not read')
    const time = async (pin: string): Promise<number> => {
      const times: number[] = []
      for (let n = 0; n < 7; n++) {
        const before = performance.now()
        await fitsPin(read, pin)
        times.push(performance.now() - before)
      }
      return times.sort((a, b) => a - b)[1] as number
    }
    const [right, near, far] = [await time(PIN), await time('274916'), await time('9')]
    // The hash is all of it: a comparison that ends early would not show beside it, one that skips the hash would.
    for (const wrong of [near, far]) {
      expect(wrong).toBeGreaterThan(right / 4)
      expect(wrong).toBeLessThan(right * 4)
    }
  })

  it('V2.2.1: is guessed five times, then ever more slowly, and a right one does not help meanwhile', async () => {
    for (let n = 0; n < 5; n++) expect((await guess('111222', '10.0.0.5')).statusCode).toBe(403)
    const told = await guess(PIN, '10.0.0.5')
    expect(told.statusCode).toBe(429)
    expect(told.headers['retry-after']).toBe('30')
    expect(told.headers['set-cookie']).toBeUndefined()
    door.wait(30_000)
    expect((await guess(PIN, '10.0.0.5')).statusCode).toBe(303)
  })

  it('V2.2.1: is guessed no more than a hundred times an hour, by however many addresses', () => {
    let now = 0
    const lockOut = createLockOut(() => now)
    lockOut.succeeded('10.0.0.1')
    let guesses = 0
    for (let n = 0; n < 2000; n++) {
      const address = `10.1.${Math.floor(n / 5 / 250)}.${Math.floor(n / 5) % 250}`
      now += 1000
      if (lockOut.waitOf(address) > 0) continue
      guesses++
      lockOut.failed(address)
    }
    expect(guesses).toBe(CROWD_TRIES)
    expect(lockOut.waitOf('10.9.9.9')).toBeGreaterThan(0)
    // The shop's own screen, which signed in before, is let in meanwhile; and everybody when the hour is over.
    expect(lockOut.waitOf('10.0.0.1')).toBe(0)
    now += HOUR_MS
    expect(lockOut.waitOf('10.9.9.9')).toBe(0)
  })

  it('a clock that was set back locks nobody out for the time between', () => {
    let now = 3 * 365 * 24 * HOUR_MS
    const lockOut = createLockOut(() => now)
    for (let n = 0; n < 9; n++) lockOut.failed('10.0.0.1')
    const wait = lockOut.waitOf('10.0.0.1')
    expect(wait).toBeGreaterThan(0)
    for (const back of [300_000, 365 * 24 * HOUR_MS]) {
      now -= back
      expect(wait - lockOut.waitOf('10.0.0.1')).toBeLessThan(1000)
      expect(lockOut.waitOf('10.0.0.1')).toBeLessThanOrEqual(wait)
    }
    now += wait
    expect(lockOut.waitOf('10.0.0.1')).toBe(0)
    for (let n = 0; n < 200; n++) lockOut.failed(`10.0.1.${n}`)
    now -= 365 * 24 * HOUR_MS
    expect(lockOut.waitOf('10.0.0.2')).toBeLessThanOrEqual(HOUR_MS)
    now += HOUR_MS
    expect(lockOut.waitOf('10.0.0.2')).toBe(0)
  })

  it.each(['', ' ', '274915 ', '２７４９１５', "' or 1=1", '0'.repeat(10_000)])('V5.1.3: %j is none', async (pin) => {
    const reply = await sendForm(door, '/sign-in', { pin })
    expect(reply.statusCode).toBe(403)
    expect(reply.headers['set-cookie']).toBeUndefined()
  })

  it('V8.3.1: is taken from a form alone, never from an address, and is on no page', async () => {
    const asked = await door.app.inject(`/sign-in?pin=${PIN}`)
    expect(asked.headers['set-cookie']).toBeUndefined()
    expect(asked.body).not.toContain(PIN)
    const wrong = await sendForm(door, '/sign-in', { pin: '112299' })
    expect(wrong.body).not.toContain('112299')
  })
})
