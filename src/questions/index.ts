// Every question of the desk, by name. Adding one here puts it on every door; commands/ only says where it is found.
import { adapterReading } from './adapter-reading.ts'
import { adapterSetting } from './adapter-setting.ts'
import { boltTorque } from './bolt-torque.ts'
import { clampForce } from './clamp-force.ts'
import { compare } from './compare.ts'
import { convert } from './convert.ts'
import { doesItMatter } from './does-it-matter.ts'
import { endFitting } from './end-fitting.ts'
import { extensionBar } from './extension-bar.ts'
import { flexHead } from './flex-head.ts'
import { handPosition } from './hand-position.ts'
import { lubricant } from './lubricant.ts'
import { multiplier } from './multiplier.ts'
import { nextCheck } from './next-check.ts'
import { nutFactor } from './nut-factor.ts'
import { pivotOffset } from './pivot-offset.ts'
import { prevailing } from './prevailing.ts'
import { pull } from './pull.ts'
import type { Question } from './question.ts'
import { scaleCheck } from './scale-check.ts'
import { scalePlan } from './scale-plan.ts'
import { swivel } from './swivel.ts'
import { toleranceBand } from './tolerance-band.ts'
import { turnAngle } from './turn-angle.ts'
import { whichWrench } from './which-wrench.ts'
import { wrenchCheck } from './wrench-check.ts'

export type QuestionName =
  | 'adapter-setting'
  | 'adapter-reading'
  | 'hand-position'
  | 'pivot-offset'
  | 'end-fitting'
  | 'flex-head'
  | 'swivel'
  | 'extension-bar'
  | 'multiplier'
  | 'prevailing'
  | 'pull'
  | 'convert'
  | 'lubricant'
  | 'clamp-force'
  | 'bolt-torque'
  | 'turn-angle'
  | 'nut-factor'
  | 'scale-check'
  | 'scale-plan'
  | 'tolerance-band'
  | 'wrench-check'
  | 'next-check'
  | 'compare'
  | 'which-wrench'
  | 'does-it-matter'

export const questions: { readonly [Name in QuestionName]: Question<Name> } = {
  'adapter-setting': adapterSetting,
  'adapter-reading': adapterReading,
  'hand-position': handPosition,
  'pivot-offset': pivotOffset,
  'end-fitting': endFitting,
  'flex-head': flexHead,
  swivel,
  'extension-bar': extensionBar,
  multiplier,
  prevailing,
  pull,
  convert,
  lubricant,
  'clamp-force': clampForce,
  'bolt-torque': boltTorque,
  'turn-angle': turnAngle,
  'nut-factor': nutFactor,
  'scale-check': scaleCheck,
  'scale-plan': scalePlan,
  'tolerance-band': toleranceBand,
  'wrench-check': wrenchCheck,
  'next-check': nextCheck,
  compare,
  'which-wrench': whichWrench,
  'does-it-matter': doesItMatter,
}

export const questionNames = Object.keys(questions) as readonly QuestionName[]

export const isQuestionName = (name: string): name is QuestionName => Object.hasOwn(questions, name)
