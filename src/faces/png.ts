// Pixels as a PNG with a palette (W3C PNG, third edition; ISO/IEC 15948: colour type 3). A sheet has some flat colours and their
// blends at edges: blends that are nearly the same become one, and the picture takes half the bytes.
import { promisify } from 'node:util'
import { crc32, deflate } from 'node:zlib'

export interface Pixels {
  /** Four bytes each: red, green, blue, and alpha, which is taken to be full. */
  readonly data: Buffer
  readonly width: number
  readonly height: number
}

const pack = promisify(deflate)

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])
/** Of zlib: the next ones take twice as long for a fifth less. */
const LEVEL = 3
const MOST_COLOURS = 256
const [DEPTH, INDEXED] = [8, 3]

const chunk = (name: string, content: Buffer): Buffer => {
  const named = Buffer.concat([Buffer.from(name, 'latin1'), content])
  const whole = Buffer.alloc(named.length + 8)
  whole.writeUInt32BE(content.length, 0)
  named.copy(whole, 4)
  whole.writeUInt32BE(crc32(named), named.length + 4)
  return whole
}

const header = ({ width, height }: Pixels): Buffer => {
  const content = Buffer.alloc(13)
  content.writeUInt32BE(width, 0)
  content.writeUInt32BE(height, 4)
  content[8] = DEPTH
  content[9] = INDEXED
  return chunk('IHDR', content)
}

interface Runs {
  /** Every colour that is there, as three bytes of a number from red, the lowest, on. */
  readonly colours: readonly number[]
  /** Pixels of one colour beside each other: which it is, and where they end in rows that each begin with one byte more. */
  readonly which: Uint32Array
  readonly ends: Uint32Array
  readonly count: number
}

// Filled anew for each picture, one after the other.
let scratch = { which: new Uint32Array(0), ends: new Uint32Array(0) }

const runsOf = ({ data, width, height }: Pixels): Runs => {
  const pixels = new Uint32Array(data.buffer, data.byteOffset, width * height)
  if (scratch.which.length < pixels.length)
    scratch = { which: new Uint32Array(pixels.length), ends: new Uint32Array(pixels.length) }
  const { which, ends } = scratch
  const places = new Map<number, number>()
  const colours: number[] = []
  const placeOf = (pixel: number): number => {
    const colour = pixel & 0xffffff
    const known = places.get(colour)
    if (known !== undefined) return known
    places.set(colour, colours.length)
    return colours.push(colour) - 1
  }
  let [count, n] = [0, 0]
  for (let y = 0; y < height; y++) {
    for (const end = n + width; n < end; ) {
      const pixel = pixels[n] as number
      do n++
      while (n < end && pixels[n] === pixel)
      which[count] = placeOf(pixel)
      ends[count++] = n + y + 1
    }
  }
  return { colours, which, ends, count }
}

/** As few as a palette takes: those that have the upper bits of each channel in common become the first of them. */
const fewer = (found: readonly number[], flat: readonly number[]): { palette: number[]; places: Uint8Array } => {
  for (let bits = 8; ; bits--) {
    const kind = (0xff & (0xff << (8 - bits))) * 0x010101
    const kinds = new Map<number, number>()
    const palette: number[] = []
    const placeOf = (colour: number): number => {
      const known = kinds.get(colour & kind)
      if (known !== undefined) return known
      kinds.set(colour & kind, palette.length)
      return palette.push(colour) - 1
    }
    // They are what areas are filled with, and stay what they are.
    for (const colour of flat) placeOf(colour)
    const places = found.map(placeOf)
    if (palette.length <= MOST_COLOURS) return { palette, places: Uint8Array.from(places) }
  }
}

/** Rows of places in the palette, each behind the number of its filter, which is none. */
const rowsOf = ({ width, height }: Pixels, { which, ends, count }: Runs, places: Uint8Array): Buffer => {
  const rows = Buffer.alloc((width + 1) * height)
  let at = 0
  for (let n = 0; n < count; n++) {
    const end = ends[n] as number
    const place = places[which[n] as number] as number
    if (at % (width + 1) === 0) at++
    if (end - at > 16) rows.fill(place, at, end)
    else for (let one = at; one < end; one++) rows[one] = place
    at = end
  }
  return rows
}

/** From `#rrggbb`. */
const colourOf = (hex: string): number => {
  const [red = 0, green = 0, blue = 0] = Buffer.from(hex.slice(1), 'hex')
  return red | (green << 8) | (blue << 16)
}

/** `flat`: the colours of areas, as `#rrggbb`: no pixel of theirs is changed, others by so little that it is not seen. */
export const pngOf = async (pixels: Pixels, flat: readonly string[]): Promise<Buffer> => {
  const runs = runsOf(pixels)
  const { palette, places } = fewer(runs.colours, flat.map(colourOf))
  const packed = await pack(rowsOf(pixels, runs, places), { level: LEVEL })
  const bytes = palette.flatMap((colour) => [colour & 0xff, (colour >> 8) & 0xff, (colour >> 16) & 0xff])
  return Buffer.concat([
    SIGNATURE,
    header(pixels),
    chunk('PLTE', Buffer.from(bytes)),
    chunk('IDAT', packed),
    chunk('IEND', Buffer.alloc(0)),
  ])
}
