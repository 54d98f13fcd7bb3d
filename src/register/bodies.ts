// What each kind of entry holds. Field names are the names of the inputs that fill them, so that a wrench can lend them to a question.
import { z } from 'zod'
import { units } from '../core/unit.ts'
import { isoClasses, isoTypes } from '../mechanics/check-verdict.ts'
import { wrenchTypes } from '../mechanics/pivot-range.ts'
import {
  daySchema,
  intervalSchema,
  measuredFromZero,
  measuredIn,
  tagSchema,
  textUpTo,
  toleranceSchema,
} from './parts.ts'

export const LONGEST_NAME = 80
export const LONGEST_NOTE = 500

/** How the pivot of a wrench is known: told by its maker, measured by two pulls, or taken by its kind. */
export const pivotsFound = ['told', 'measured', 'assumed-by-kind'] as const

/** A wrench's card as a whole; a later card for the same tag replaces it whole. */
export const wrenchBody = z
  .strictObject({
    tag: tagSchema,
    name: textUpTo(LONGEST_NAME),
    serial: textUpTo(LONGEST_NAME).optional(),
    'wrench-type': z.enum(wrenchTypes),
    'iso-type': z.enum(isoTypes).optional(),
    'iso-class': z.enum(isoClasses).optional(),
    least: measuredIn('torque').optional(),
    most: measuredIn('torque'),
    mark: measuredIn('torque').optional(),
    lever: measuredIn('length').optional(),
    pivot: z
      .strictObject({ value: measuredFromZero('length'), found: z.enum(pivotsFound) })
      .readonly()
      .optional(),
    tolerance: toleranceSchema.optional(),
    interval: intervalSchema.optional(),
    place: textUpTo(LONGEST_NAME).optional(),
    /** The unit on its scale, in which it is shown. */
    unit: z.enum(['N·m', 'lbf·ft', 'lbf·in', 'ozf·in', 'kgf·m', 'kgf·cm']),
  })
  .readonly()

export const gaugeTypes = ['luggage-scale', 'force-gauge', 'torque-tester', 'weights'] as const

/** What wrenches are checked against; replaced whole like a wrench's card. */
export const gaugeBody = z
  .strictObject({
    tag: tagSchema,
    name: textUpTo(LONGEST_NAME),
    serial: textUpTo(LONGEST_NAME).optional(),
    'gauge-type': z.enum(gaugeTypes),
    most: measuredIn('force', 'torque').optional(),
    tolerance: toleranceSchema.optional(),
    /** The day on which the gauge itself was last checked. */
    checked: daySchema.optional(),
    place: textUpTo(LONGEST_NAME).optional(),
  })
  .readonly()

/** A weight hung on the handle, a scale pulled at it, a tester under the drive, or a laboratory's certificate. */
export const checkWays = ['hang', 'pull', 'tester', 'laboratory'] as const
export type CheckWay = (typeof checkWays)[number]
/** Ways that read a force at a distance; the others read torque. */
export const forceWays: readonly CheckWay[] = ['hang', 'pull']

export const checkStates = ['as-found', 'as-left'] as const
export type CheckState = (typeof checkStates)[number]

export const MOST_CHECK_POINTS = 12
export const MOST_CHECK_READINGS = 30

const pointSchema = z
  .strictObject({
    /** What the wrench said. */
    setting: measuredIn('torque'),
    /** What the gauge showed each time, all in one unit: force at the distance, or torque. */
    readings: z
      .array(measuredIn('force', 'torque'))
      .min(1)
      .max(MOST_CHECK_READINGS)
      .refine((all) => all.every(({ unit }) => unit === all[0]?.unit))
      .readonly(),
  })
  .readonly()

/** Own weight of the wrench in a check by force: where the drive axis lies level it counts, upright it does not. */
const ownWeightSchema = z
  .strictObject({
    lie: z.enum(['level', 'upright']),
    mass: measuredIn('mass').optional(),
    'balance-point': measuredIn('length').optional(),
    'pull-direction': z.enum(['down', 'up']).optional(),
  })
  .readonly()

export const checkBody = z
  .strictObject({
    wrench: tagSchema,
    date: daySchema,
    gauge: tagSchema.optional(),
    way: z.enum(checkWays),
    /** From the centre of the drive to where the force acts; with the ways that read a force. */
    distance: measuredIn('length').optional(),
    'own-weight': ownWeightSchema.optional(),
    /** Of the reference at 95 %, where a certificate states it; wins over the gauge's tolerance. */
    'gauge-uncertainty': measuredIn('percent').optional(),
    state: z.enum(checkStates),
    conditions: z
      .strictObject({ 'temperature-c': z.number().optional(), notes: textUpTo(LONGEST_NOTE).optional() })
      .readonly()
      .optional(),
    points: z.array(pointSchema).min(1).max(MOST_CHECK_POINTS).readonly(),
  })
  // Force at a distance, or torque: a check that mixes them could not be worked out.
  .refine(({ way, distance, points }) => {
    const [byForce, dimension] = forceWays.includes(way) ? ([true, 'force'] as const) : ([false, 'torque'] as const)
    const fits = points.every(({ readings }) => readings.every(({ unit }) => units[unit].dimension === dimension))
    return fits && byForce === (distance !== undefined)
  })
  .readonly()

export const eventKinds = [
  'dropped',
  'overloaded',
  'wound-up',
  'repaired',
  'adjusted',
  'lent',
  'returned',
  'lost',
  'found',
  'retired',
] as const
export type EventKind = (typeof eventKinds)[number]

export const eventBody = z
  .strictObject({
    wrench: tagSchema,
    what: z.enum(eventKinds),
    /** When it happened; of what lasts, when it ended. */
    date: daySchema,
    /** When it began, of what lasts: left wound up. */
    from: daySchema.optional(),
    /** What it was left wound up to. */
    setting: measuredFromZero('torque').optional(),
    note: textUpTo(LONGEST_NOTE).optional(),
  })
  .readonly()

/** Uses counted up to a day: since the last check, or since the last count. */
export const countsSince = ['check', 'count'] as const

export const usesBody = z
  .strictObject({
    wrench: tagSchema,
    date: daySchema,
    count: z.int().min(0).max(1_000_000_000),
    since: z.enum(countsSince),
  })
  .readonly()

/** Takes an entry back that should never have been there; it holds nothing but what it supersedes, and why. */
export const withdrawalBody = z.strictObject({}).readonly()
