// What is due as an iCalendar feed (RFC 5545): an event a day long for each wrench, known by the wrench and its day.

export interface DueDay {
  readonly tag: string
  readonly name: string
  /** ISO day. */
  readonly due: string
  readonly place?: string | undefined
}

const escaped = (text: string): string =>
  text
    .replace(/[\\;,]/g, (mark) => `\\${mark}`)
    .replace(/\r\n|[\r\n]/g, '\\n')
    // Other control characters may not stand in a calendar.
    .replace(/\p{Cc}/gu, ' ')

// A line has at most 75 bytes; a character is never cut in two.
const folded = (line: string): string => {
  const parts: string[] = []
  let part = ''
  let size = 0
  for (const letter of line) {
    const bytes = Buffer.byteLength(letter)
    if (size + bytes > 74) {
      parts.push(part)
      part = ''
      size = 1
    }
    part += letter
    size += bytes
  }
  return [...parts, part].join('\r\n ')
}

/** The feed; `stamp` is the instant it was made, `summary` what is said of a wrench. */
export const calendarOf = (days: readonly DueDay[], stamp: Date, summary: (day: DueDay) => string): string => {
  const at = `${stamp.toISOString().replace(/[-:]/g, '').slice(0, 15)}Z`
  const events = days.flatMap((day) => [
    'BEGIN:VEVENT',
    `UID:${encodeURIComponent(day.tag)}-${day.due}@armlength`,
    `DTSTAMP:${at}`,
    `DTSTART;VALUE=DATE:${day.due.replaceAll('-', '')}`,
    `SUMMARY:${escaped(summary(day))}`,
    ...(day.place === undefined ? [] : [`LOCATION:${escaped(day.place)}`]),
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ])
  const lines = ['BEGIN:VCALENDAR', 'VERSION:2.0', 'PRODID:-//Armlength//register//EN', ...events, 'END:VCALENDAR']
  return `${lines.map(folded).join('\r\n')}\r\n`
}
