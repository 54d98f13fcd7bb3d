// Discord's ids: 42 bits of milliseconds since 2015, then worker bits and a counter. Fresh ones never repeat.

const epoch = 1_420_070_400_000
let counter = 0

export function snowflake(at = Date.now()): string {
  counter = (counter + 1) % 2 ** 22
  return ((BigInt(Math.floor(at) - epoch) << 22n) | BigInt(counter)).toString()
}

/** Unix milliseconds at which an id was made. */
export const snowflakeTime = (id: string): number => Number(BigInt(id) >> 22n) + epoch
