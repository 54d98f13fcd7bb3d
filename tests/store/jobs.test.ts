// Leases, marks and settings in every store: one job once, whoever asks; settings with all that they ever were.
import { expect, it } from 'vitest'
import type { Setting } from '../../src/store/store.ts'
import { onEveryStore } from '../support/stores.ts'

const minute = (n: number): string => new Date(Date.UTC(2026, 0, 1, 0, n)).toISOString()
const by = { role: 'keeper', door: 'chat' } as const

onEveryStore('jobs and settings', (open, kind, address) => {
  it('of two who want a lease at once one gets it', async () => {
    const at = await address()
    const one = await open(at)
    const other = kind === 'memory' ? one : await open(at)
    const want = (owner: string) => ({ name: 'digest', owner, now: minute(0), until: minute(5) })
    const got = await Promise.all([one.lease(want('a')), other.lease(want('b'))])
    expect(got.filter(Boolean)).toHaveLength(1)
  })

  it('a lease is kept and prolonged by its owner, and free once it is over', async () => {
    const store = await open()
    const lease = (owner: string, now: number, until: number) =>
      store.lease({ name: 'digest', owner, now: minute(now), until: minute(until) })
    expect(await lease('a', 0, 5)).toBe(true)
    expect(await lease('b', 4, 9)).toBe(false)
    expect(await lease('a', 4, 9)).toBe(true)
    expect(await lease('b', 8, 12)).toBe(false)
    expect(await lease('b', 9, 12)).toBe(true)
    expect(await lease('a', 9, 12)).toBe(false)
    expect(await store.lease({ name: 'other', owner: 'a', now: minute(9), until: minute(12) })).toBe(true)
  })

  it('a job is marked once, for ever', async () => {
    const at = await address()
    const store = await open(at)
    expect(await store.marked('digest', '2026-W10')).toBe(false)
    const got = await Promise.all(['a', 'b', 'c'].map(() => store.mark('digest', '2026-W10', minute(0))))
    expect(got.filter(Boolean)).toHaveLength(1)
    expect(await store.mark('digest', '2026-W11', minute(0))).toBe(true)
    expect(await store.mark('reminder', '2026-W10', minute(0))).toBe(true)
    if (kind === 'memory') return
    await store.close()
    const again = await open(at)
    expect(await again.mark('digest', '2026-W10', minute(9))).toBe(false)
    expect(await again.marked('digest', '2026-W10')).toBe(true)
  })

  it('a setting is what it was set to last, and every earlier one is still told', async () => {
    const store = await open()
    const set = (scope: string, name: string, value: string | null, n: number): Setting => {
      return { scope, name, value, at: minute(n), by }
    }
    const all = [
      set('shop', 'channel', '1', 0),
      set('shop', 'keeper', 'x\0\ud800"💥', 1),
      set('other', 'channel', '3', 2),
      set('shop', 'channel', '2', 3),
      set('shop', 'keeper', null, 4),
      set('shop', '__proto__', 'plain', 5),
    ]
    for (const one of all) await store.set(one)
    expect(Object.entries(await store.settings('shop')).sort()).toEqual([
      ['__proto__', 'plain'],
      ['channel', '2'],
    ])
    expect(await store.settings('none')).toEqual({})
    expect(await store.settingsHistory('shop')).toEqual(all.filter(({ scope }) => scope === 'shop'))
  })

  it('what people keep for themselves is theirs alone, and gone without a trace when they say so', async () => {
    const at = await address()
    const store = await open(at)
    const set = (owner: string, name: string, value: string | null, n: number) =>
      store.setOwn({ owner, name, value, at: minute(n) })
    await set('user:1', 'units', 'inch', 0)
    await set('user:1', 'units', 'metric', 1)
    await set('user:1', 'wrench', 'W-07', 1)
    await set('user:2', 'units', 'inch', 2)
    expect(await store.own('user:1')).toEqual({ units: 'metric', wrench: 'W-07' })
    await set('user:1', 'wrench', null, 3)
    expect(await store.own('user:1')).toEqual({ units: 'metric' })
    expect(await store.own('user:3')).toEqual({})
    expect(await store.forgetOwn('user:1')).toBe(1)
    expect(await store.forgetOwn('user:1')).toBe(0)
    expect(await store.own('user:1')).toEqual({})
    expect(await store.own('user:2')).toEqual({ units: 'inch' })
    if (kind === 'memory') return
    await store.close()
    expect(await (await open(at)).own('user:2')).toEqual({ units: 'inch' })
  })

  it('what nobody has set or used for long is let go, all of an owner together', async () => {
    const store = await open()
    const set = (owner: string, name: string, n: number) => store.setOwn({ owner, name, value: 'x', at: minute(n) })
    await set('user:1', 'units', 0)
    await set('user:1', 'wrench', 9)
    await set('user:2', 'units', 0)
    await set('user:2', 'wrench', 1)
    await set('user:3', 'units', 0)
    await store.usedOwn('user:3', minute(7))
    expect(await store.forgetIdle(minute(5))).toBe(1)
    expect(await store.own('user:2')).toEqual({})
    expect(Object.keys(await store.own('user:1')).sort()).toEqual(['units', 'wrench'])
    expect(await store.own('user:3')).toEqual({ units: 'x' })
    expect(await store.forgetIdle(minute(5))).toBe(0)
  })
})
