// The guard that keeps tests off the network, tested: a guard that lets all through would look the same.
import { describe, expect, it } from 'vitest'

describe('the network', () => {
  it.each(['http://192.0.2.1:8080/', 'http://example.invalid/'])('%s is out of reach', async (url) => {
    const failure = await fetch(url).catch((error: unknown) => error as Error & { cause?: Error })
    expect(String((failure as { cause?: Error }).cause ?? failure)).toContain('only loopback is allowed')
  })

  it('loopback is in reach: a closed port refuses, the guard does not', async () => {
    const failure = await fetch('http://127.0.0.1:61999/').catch((error: unknown) => error as Error & { cause?: Error })
    expect(String((failure as { cause?: Error }).cause ?? failure)).not.toContain('only loopback')
  })
})
