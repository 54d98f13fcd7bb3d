// Random numbers that are the same in every run: a seed in, a stream out (mulberry32, public domain).

export type Random = () => number

/** The seed of every generated test: fixed, printed with each, and changed only on purpose. */
export const SEED = 20_261_125

/** Uniform in [0, 1). */
export const seeded = (seed: number): Random => {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}

/** Standard normal by Box and Muller. */
export const normalFrom = (random: Random): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
