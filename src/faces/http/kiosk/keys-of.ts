// Which keys the keypad shows for a field, by the kind of its declared input: the units it takes, the marks its text may hold.
// Kinds that are words, days or choices have none: they are typed on a keyboard, or chosen.
import type { Input, InputKind } from '../../../questions/input.ts'

export type System = 'metric' | 'inch'

interface KindKeys {
  readonly metric: string
  readonly inch: string
  readonly marks?: string
}

const torques = { metric: 'N·m|lbf·ft|lbf·in', inch: 'lbf·ft|lbf·in|N·m' }
const lengths = { metric: 'mm|cm|in', inch: 'in|mm|cm' }
const readings = { metric: 'N·m|lbf·ft|N|mm', inch: 'lbf·ft|lbf·in|lbf|in' }
const bare = { metric: '', inch: '' }
const percents = { metric: '%', inch: '%' }

const keys: Readonly<Partial<Record<InputKind, KindKeys>>> = {
  torque: torques,
  'torque-or-span': { ...torques, marks: '-' },
  length: { ...lengths, marks: '/' },
  adapters: { ...lengths, marks: '/ + -' },
  angle: { metric: '°', inch: '°', marks: '-' },
  force: { metric: 'kg|N|lb', inch: 'lb|kg|N' },
  mass: { metric: 'kg|g|lb', inch: 'lb|oz|kg' },
  percent: percents,
  tolerance: percents,
  share: percents,
  temperature: { metric: '°C|°F', inch: '°F|°C', marks: '-' },
  number: bare,
  count: bare,
  size: { metric: 'mm|in', inch: 'in|mm', marks: 'M x / - #' },
  seat: { metric: 'mm|in', inch: 'in|mm', marks: 'flat cone ball × ° /' },
  quantity: { metric: 'N·m|lbf·ft|mm|in|kg|lb', inch: 'lbf·ft|N·m|in|mm|lb|kg', marks: '- /' },
  readings: { ...readings, marks: ';' },
  reading: readings,
  points: { ...torques, marks: ': ; |' },
}

/** The attributes by which the script knows the keys of a field; none where the keypad does not open. */
export const keysOf = ({ kind }: Pick<Input<unknown>, 'kind'>, system: System) => {
  const own = keys[kind]
  return own && { 'data-keys': own[system], 'data-marks': own.marks ?? '' }
}
