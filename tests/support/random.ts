// Random numbers that are the same in every run: a 32-bit generator (mulberry32), for Monte Carlo and generated inputs.

/** Numbers in 0…1 (1 excluded) from a seed. */
export const seeded = (seed: number): (() => number) => {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}

/** The seed of every generated test: fixed, printed with each, and changed only on purpose. */
export const SEED = 20_261_125
