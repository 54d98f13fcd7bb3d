// A drawing as the picture of a message. One that is late or fails is left out: the answer in words does not wait for it.
import { inTime } from '../../core/in-time.ts'
import type { Pictures } from '../pictures.ts'
import type { Picture } from './reply.ts'

/** A late answer is promised by then, so that a picture has its time. */
const WAIT_MS = 8000

/** What a figure is, whoever drew it: the sheet and the same in words. */
export interface Drawn {
  readonly svg: string
  readonly alt: string
}

export const pictureFrom = async (pictures: Pictures, drawn: Drawn | undefined): Promise<Picture | undefined> => {
  if (!drawn) return undefined
  const data = await inTime(pictures.png(drawn.svg), WAIT_MS, undefined)
  return data && { data, alt: drawn.alt }
}
