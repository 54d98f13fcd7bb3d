// The shop's own day of an instant, as ISO 8601 writes it. Swedish writes days so.

/** `timeZone` is an IANA name. */
export const shopDay = (timeZone: string): ((instant: Date) => string) => {
  const days = new Intl.DateTimeFormat('sv-SE', { timeZone })
  return (instant) => days.format(instant)
}
