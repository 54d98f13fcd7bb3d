// Sheets as PNG: the right size, drawn with the bundled font, kept by content, and a sheet that cannot be drawn is not kept.
import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { BusyDrawing, createPictures } from '../../src/faces/pictures.ts'

const sheet = (content: string, weight = 400): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="400" height="100" viewBox="0 0 400 100"><rect width="400" height="100" fill="#fff"/><text x="10" y="70" font-family="Inter" font-weight="${weight}" font-size="60">${content}</text></svg>`

const inked = async (png: Buffer): Promise<number> => {
  const { data } = await sharp(png).greyscale().raw().toBuffer({ resolveWithObject: true })
  return data.reduce((sum, value) => sum + (value < 128 ? 1 : 0), 0)
}

describe('pictures', () => {
  const pictures = createPictures()

  it('are PNG of the size of the sheet, with text on it, bolder where it is bold', async () => {
    const regular = await pictures.png(sheet('N·m 45°'))
    const bold = await pictures.png(sheet('N·m 45°', 700))
    expect(await sharp(regular).metadata()).toMatchObject({ format: 'png', width: 400, height: 100 })
    expect(await inked(regular)).toBeGreaterThan(1000)
    expect(await inked(bold)).toBeGreaterThan((await inked(regular)) * 1.15)
  })

  it('are drawn once for the same sheet', async () => {
    const [one, same, other] = await Promise.all([
      pictures.png(sheet('1')),
      pictures.png(sheet('1')),
      pictures.png(sheet('2')),
    ])
    expect(one).toBe(same)
    expect(one).not.toBe(other)
  })

  it('a sheet that is none fails, and again when asked again', async () => {
    await expect(pictures.png('no sheet')).rejects.toThrow()
    await expect(pictures.png('no sheet')).rejects.toThrow()
  })

  it('a sheet that is too large to be painted fails, and the next asker has a picture', async () => {
    const endless = sheet('x').replace('width="400" height="100"', 'width="1000000" height="1000000"')
    const [lost, beside] = await Promise.allSettled([pictures.png(endless), pictures.png(sheet('beside'))])
    expect(lost.status).toBe('rejected')
    expect(['fulfilled', 'rejected']).toContain(beside.status)
    expect(await sharp(await pictures.png(sheet('after'))).metadata()).toMatchObject({ width: 400 })
  })

  it('are drawn while there is room to wait; the next is told so at once, and is drawn later', async () => {
    const asked = await Promise.allSettled(Array.from({ length: 260 }, (_, at) => pictures.png(sheet(`crowd ${at}`))))
    const refused = asked.flatMap((one) => (one.status === 'rejected' ? [one.reason] : []))
    expect(refused.length).toBe(58)
    for (const reason of refused) expect(reason).toBeInstanceOf(BusyDrawing)
    expect(await sharp(await pictures.png(sheet('crowd 259'))).metadata()).toMatchObject({ format: 'png' })
  })
})
