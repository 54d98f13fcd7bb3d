// How many requests each address made within the window, as the rate limit wants it counted. All windows begin together, so that
// what is over is let go at once; measured by a clock that nobody sets: set back, another one would shut the busy out until it
// is that late again.
import { even } from '../../core/never-back.ts'

type Told = (error: Error | null, count?: { current: number; ttl: number }) => void

/** `now` goes on evenly, in ms; the class is what the limit makes an instance of. */
export const rateCount = (now: () => number = even) =>
  class RateCount {
    private counts = new Map<string, number>()
    private began = now()

    incr(address: string, told: Told, windowMs: number): void {
      const time = now()
      if (time - this.began >= windowMs) {
        this.counts = new Map()
        this.began = time
      }
      const current = (this.counts.get(address) ?? 0) + 1
      this.counts.set(address, current)
      told(null, { current, ttl: Math.max(1, Math.ceil(this.began + windowMs - time)) })
    }

    /** A route with a limit of its own counts by itself. */
    child(): RateCount {
      return new RateCount()
    }
  }
