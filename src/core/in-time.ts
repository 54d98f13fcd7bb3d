// Waits for something, but no longer than so long. What comes later is let go; who asked decides what is said instead.

export const LATE = Symbol('late')

/** What is worked out, or LATE where it takes longer than `ms` [ms]. Throws what the work throws. */
export const within = async <T>(work: Promise<T>, ms: number): Promise<T | typeof LATE> => {
  let timer: NodeJS.Timeout | undefined
  const late = new Promise<typeof LATE>((resolve) => {
    timer = setTimeout(resolve, ms, LATE)
  })
  try {
    return await Promise.race([work, late])
  } finally {
    clearTimeout(timer)
  }
}

/** The same, with what stands in for it where it is late or fails. */
export const inTime = async <T, W>(work: Promise<T>, ms: number, without: W): Promise<T | W> => {
  const done = await within(
    work.catch(() => without),
    ms,
  )
  return done === LATE ? without : done
}
