// The units of an asker's own: they go behind a bare number that needs one, and nowhere else; what got one is told as assumed.
import { everyday } from '../core/unit.ts'
import type { Input, InputKind } from '../questions/input.ts'

export type System = 'metric' | 'inch'

const lent: Readonly<Partial<Record<InputKind, 'torque' | 'length' | 'force' | 'mass'>>> = {
  torque: 'torque',
  'torque-or-span': 'torque',
  length: 'length',
  adapters: 'length',
  force: 'force',
  mass: 'mass',
}

// A number in any of the ways in which one is typed, alone or (an adapter) before its direction.
const bare = /^\s*([\d.,½¼¾⅛⅜⅝⅞/ -]*[\d½¼¾⅛⅜⅝⅞])\s*(@.*)?$/u

/** The texts with the asker's unit behind each bare number; undefined where there is nothing to lend. */
export const withOwnUnits = (
  input: Pick<Input<unknown>, 'kind'> | undefined,
  texts: readonly string[],
  own: System | undefined,
): readonly string[] | undefined => {
  const dimension = input && lent[input.kind]
  if (own === undefined || dimension === undefined) return undefined
  const unit = everyday[dimension][own].symbol
  let isLent = false
  const whole = texts.map((text) => {
    const [, number, direction = ''] = bare.exec(text) ?? []
    if (number === undefined || (direction !== '' && input?.kind !== 'adapters')) return text
    isLent = true
    return `${number.trim()} ${unit}${direction}`
  })
  return isLent ? whole : undefined
}
