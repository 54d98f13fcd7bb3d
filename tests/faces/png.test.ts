// Pictures as they are packed, read by another program (libspng, within sharp): every pixel is what it was, as long as a palette holds
// the colours; where it does not, flat areas are, and edges nearly.
import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { type Pixels, pngOf } from '../../src/faces/png.ts'
import { seeded } from '../support/random.ts'

type Colour = readonly [red: number, green: number, blue: number]

const pixelsOf = (width: number, height: number, colourAt: (x: number, y: number) => Colour): Pixels => {
  const data = Buffer.alloc(width * height * 4, 255)
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) data.set(colourAt(x, y), (y * width + x) * 4)
  return { data, width, height }
}

const readBack = async (png: Buffer): Promise<Colour[]> => {
  const { data } = await sharp(png, { failOn: 'warning' }).removeAlpha().raw().toBuffer({ resolveWithObject: true })
  return Array.from({ length: data.length / 3 }, (_, n) => [...data.subarray(3 * n, 3 * n + 3)] as unknown as Colour)
}

const hex = (colour: Colour): string => `#${Buffer.from(colour).toString('hex')}`

describe('a picture that is packed', () => {
  it.each([
    [1, 1, 1],
    [1, 40, 3],
    [40, 1, 3],
    [257, 33, 2],
    [64, 64, 256],
  ])('%i by %i of %i colours is the same, pixel for pixel', async (width, height, count) => {
    const chance = seeded(width * 1000 + height)
    const colours = Array.from({ length: count }, (_, n): Colour => [n, (n * 7) % 256, 255 - n])
    // All of them are there, and then whatever comes: runs of any length, over the ends of rows too.
    let [left, colour] = [0, colours[0] as Colour]
    const pixels = pixelsOf(width, height, (x, y) => {
      const n = y * width + x
      if (n < count) return colours[n] as Colour
      if (left-- <= 0) {
        left = Math.floor(chance() * 60)
        colour = colours[Math.floor(chance() * count)] as Colour
      }
      return colour
    })
    const png = await pngOf(pixels, [])
    expect(await sharp(png).metadata()).toMatchObject({ format: 'png', width, height, isPalette: true })
    const back = await readBack(png)
    back.forEach((one, n) => {
      expect([...one]).toEqual([...pixels.data.subarray(4 * n, 4 * n + 3)])
    })
  })

  it('of more colours keeps those of areas, and changes others by less than what is seen', async () => {
    const [paper, ink, hand]: readonly [Colour, Colour, Colour] = [
      [21, 24, 26],
      [241, 239, 233],
      [255, 171, 102],
    ]
    // Blends of ink and of the hand's colour with the paper, as at the edges of letters, and areas of each.
    const blend = (of: Colour, share: number): Colour =>
      of.map((value, n) => Math.round(value * share + (paper[n] as number) * (1 - share))) as unknown as Colour
    const pixels = pixelsOf(300, 12, (x, y) =>
      y < 3 ? paper : y < 5 ? ink : y < 7 ? hand : blend(y < 10 ? ink : hand, x / 299),
    )
    const before = new Set(Array.from({ length: 3600 }, (_, n) => pixels.data.readUInt32LE(4 * n)))
    expect(before.size).toBeGreaterThan(256)
    const back = await readBack(await pngOf(pixels, [paper, ink, hand].map(hex)))
    back.forEach((one, n) => {
      const was = [...pixels.data.subarray(4 * n, 4 * n + 3)]
      const isFlat = [paper, ink, hand].some((flat) => flat.every((value, at) => value === was[at]))
      const off = Math.max(...one.map((value, at) => Math.abs(value - (was[at] as number))))
      expect(off).toBeLessThanOrEqual(isFlat ? 0 : 15)
    })
  })
})
