// Square drives: size, and the torque that hand tools of that size are proof tested to. The weakest square limits a stack.
// Sizes ISO 1174-1, test torques ISO 1711-1 and ISO 3315 (extension bars, adapters): from memory. The maker's own rating wins.
import type { Citation } from './citation.ts'

const memory: Citation = {
  title: 'ISO 1174-1 and ISO 3315, hand-operated square drives',
  where: 'size; test torque',
  standing: 'from memory',
}

export const squareDrives = ['1/4', '3/8', '1/2', '3/4', '1'] as const
export type SquareDrive = (typeof squareDrives)[number]

export interface DriveRow {
  readonly drive: SquareDrive
  /** Across the square [m]. */
  readonly square: number
  /** Test torque [N·m]. */
  readonly rating: number
  readonly from: Citation
}

const row = (drive: SquareDrive, millimetres: number, rating: number): DriveRow => ({
  drive,
  square: millimetres * 0.001,
  rating,
  from: memory,
})

export const driveTable: Readonly<Record<SquareDrive, DriveRow>> = {
  '1/4': row('1/4', 6.35, 62),
  '3/8': row('3/8', 9.525, 202),
  '1/2': row('1/2', 12.7, 512),
  '3/4': row('3/4', 19.05, 1412),
  '1': row('1', 25.4, 2515),
}

/** The weakest square of a stack: the first of the lowest rating. */
export const weakestDrive = (first: SquareDrive, ...others: readonly SquareDrive[]): DriveRow =>
  others.reduce(
    (weakest, drive) => (driveTable[drive].rating < weakest.rating ? driveTable[drive] : weakest),
    driveTable[first],
  )
