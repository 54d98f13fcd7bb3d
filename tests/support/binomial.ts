// Bounds of a count that chance gives: so many of n at a chance p each, worked out term by term (the binomial law itself).

const chancesOf = (n: number, p: number): number[] => {
  let log = n * Math.log1p(-p)
  const step = Math.log(p) - Math.log1p(-p)
  return Array.from({ length: n + 1 }, (_, k) => {
    if (k > 0) log += Math.log((n - k + 1) / k) + step
    return Math.exp(log)
  })
}

/** Smallest count that is passed with a chance of at most `beyond`; p above 0 and below 1. */
export const mostOf = (n: number, p: number, beyond = 1e-4): number => {
  const chances = chancesOf(n, p)
  let above = 0
  for (let k = n; k > 0; k--) {
    above += chances[k] as number
    if (above > beyond) return k
  }
  return 0
}

/** Largest count that is missed with a chance of at most `beyond`. */
export const fewestOf = (n: number, p: number, beyond = 1e-4): number => n - mostOf(n, 1 - p, beyond)
