// extension-bar: a bar in line under the drive loses nothing under a slow pull; it twists, and the weakest square limits it.
import { type Fault, fault, type Read, read, refuse } from '../core/fault.ts'
import { parseDrive } from '../core/parse-drive.ts'
import { fromSi, type Quantity, quantity, si } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import { STEEL_G, twistOf, twistStress } from '../mechanics/twist.ts'
import { citations } from '../tables/citation.ts'
import { driveTable, type SquareDrive, squareDrives, weakestDrive } from '../tables/square-drives.ts'
import { common, type Input, length, torque } from './input.ts'
import { drive } from './input-drive.ts'
import { type Caution, caution, type Given, type Outcome, put, type Result, result, step } from './outcome.ts'
import { phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'

const MOST_PARTS = 8

/** Further drives under the wrench: repeated, or in one text with `;`, `+` or spaces. */
const furtherDrives = (): Input<readonly SquareDrive[], false> => ({
  kind: 'choice',
  most: MOST_PARTS,
  ...common({}, { metric: '3/8', inch: '3/8' }),
  read: (texts, input): Read<readonly SquareDrive[]> => {
    const parts = texts.flatMap((text) => text.slice(0, 400).split(/\s*[;+]\s*|,\s+|\s+(?=\d)/))
    if (parts.length > MOST_PARTS)
      return refuse(fault('too-many', input, texts.join('; '), { most: String(MOST_PARTS) }))
    const drives = parts.map((part) => parseDrive(part, input, squareDrives))
    const faults = drives.flatMap((part) => (part.ok ? [] : part.faults))
    return faults.length > 0 ? refuse(...faults) : read(drives.flatMap((part) => (part.ok ? [part.value] : [])))
  },
  given: (value, input) => value.map((part, index) => ({ input, value: part, index, from: 'asked' })),
})

const inputs = {
  torque: torque({ needed: true }),
  length: length({
    needed: true,
    example: { metric: '250 mm', inch: '10 in' },
    ladder: {
      metric: ['75 mm', '125 mm', '250 mm', '375 mm', '500 mm', '750 mm'],
      inch: ['3 in', '5 in', '10 in', '15 in', '20 in', '30 in'],
    },
  }),
  drive: drive(),
  diameter: length({ example: { metric: '12.7 mm', inch: '1/2 in' } }),
  part: furtherDrives(),
}

interface Asked {
  readonly torque: Quantity
  readonly length: Quantity
  readonly drive?: SquareDrive | undefined
  readonly diameter?: Quantity | undefined
  readonly part?: readonly SquareDrive[] | undefined
}

// What its test torque makes of a 1/2 in square, taken as round: hardened steel stands no more.
const STRESS_AT_TEST = twistStress(driveTable['1/2'].rating, driveTable['1/2'].square)

const answerExtensionBar = (given: Asked, { of }: ResultUnits): Outcome => {
  const stack = [...(given.drive ? [given.drive] : []), ...(given.part ?? [])]
  const [first, ...others] = stack
  const diameter = given.diameter ?? fromSi(driveTable[given.drive as SquareDrive].square, of('length'))
  const T = si(given.torque)
  const twist = quantity(twistOf(T, si(given.length), si(diameter)), units['°'])
  const weakest = first ? weakestDrive(first, ...others) : undefined
  const rating = weakest ? fromSi(weakest.rating, of('torque')) : undefined
  const over = weakest && T > weakest.rating
  const tooThin = given.diameter !== undefined && twistStress(T, si(diameter)) > STRESS_AT_TEST
  const assumed: Given[] = given.diameter ? [] : [{ input: 'diameter', value: diameter, from: 'table' }]
  const cautions: Caution[] = [
    ...(over && rating && weakest ? [caution('square-too-weak', { drive: weakest.drive, rating })] : []),
    caution('no-impact'),
    caution('support-the-bar'),
    caution('critical-joint'),
  ]
  const results: Record<string, Result> = {
    twist: result(twist),
    ...(weakest && rating ? { 'weakest-part': { row: { size: fromSi(weakest.square, units.in), rating } } } : {}),
    torque: result(given.torque),
  }
  return {
    headline: tooThin
      ? phrase('extension-bar.too-thin', {
          torque: given.torque,
          diameter,
          stress: fromSi(STRESS_AT_TEST, of('stress')),
        })
      : over && rating
        ? phrase('extension-bar.too-weak', { torque: given.torque, rating })
        : phrase('extension-bar.nothing', { torque: given.torque, twist }),
    assumed,
    results,
    steps: [
      step(phrase('extension-bar.torque'), 'T = S', put`${given.torque}`, given.torque),
      step(
        phrase('extension-bar.twist'),
        'θ = T l/(G J), J = π d⁴/32',
        put`${given.torque} · ${given.length} / (${quantity(STEEL_G / 1e6, units.MPa)} · J(${diameter}))`,
        twist,
      ),
      ...(weakest && rating
        ? [step(phrase('extension-bar.weakest', { drive: weakest.drive }), 'T_test', put`${rating}`, rating)]
        : []),
    ],
    cautions,
    pointers: ['torque-figure', 'adapter-rating'],
    sources: [citations.statics, citations.twist, ...(weakest ? [weakest.from] : [])],
    related: [],
  }
}

const checkBar = ({ drive: square, diameter }: Partial<Asked>): Fault[] =>
  diameter && si(diameter) > 0.2
    ? [fault('above-limit', 'diameter', square ?? '', { limit: quantity(200, units.mm) })]
    : []

export const extensionBar = defineQuestion({
  name: 'extension-bar',
  inputs,
  results: ['twist', 'weakest-part', 'torque'],
  oneOf: [['drive', 'diameter']],
  check: checkBar,
  answer: answerExtensionBar,
})
