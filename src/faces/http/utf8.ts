// Bytes that were sent, as text. What is no UTF-8 is refused: its letters would be lost, and nobody would see it.

export class NotUtf8 extends Error {
  readonly statusCode = 400
  constructor() {
    super('What was sent is not UTF-8, and letters of it would be lost: nothing was kept. Send it as UTF-8.')
    this.name = 'NotUtf8'
  }
}

const strict = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true })

export const decodeUtf8 = (bytes: string | Buffer): string => {
  if (typeof bytes === 'string') return bytes
  try {
    return strict.decode(bytes)
  } catch {
    throw new NotUtf8()
  }
}

/** The fields of a form as browsers send it; bytes behind percent signs are held to the same. */
export const fieldsOf = (bytes: string | Buffer): ReadonlyArray<readonly [string, string]> => {
  const text = decodeUtf8(bytes)
  const fields = [...new URLSearchParams(text)]
  // The sign that stands for what could not be read, where nobody sent that sign itself.
  const isLost = fields.flat().some((one) => one.includes('\uFFFD')) && !/%EF%BF%BD|\uFFFD/i.test(text)
  if (isLost) throw new NotUtf8()
  return fields
}
