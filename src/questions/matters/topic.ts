// What a topic of does-it-matter is: the list by group, and what each must say. The words are elsewhere, by slug and statement.
import type { Citation } from '../../tables/citation.ts'
import type { Caution, Given, PointerKey, Result, Step } from '../outcome.ts'
import type { Phrase } from '../phrase.ts'
import type { ResultUnits } from '../question.ts'
import type { Asked } from './inputs.ts'

export const slugsByGroup = {
  care: ['calibration', 'dropped', 'loosening-with-it', 'stored-wound-up', 'under-a-fifth'],
  joint: ['anti-seize', 'oil', 're-used-nut', 'washers', 'wheel-re-torque'],
  pull: ['clicked-twice', 'hand-position', 'jerked', 'pipe-on-the-handle'],
  reach: [
    'adapter-square',
    'adapter-straight',
    'bars',
    'changed-head',
    'chained-spanner',
    'flex-head',
    'size-adapters',
    'swivel',
  ],
  tool: ['digital-or-click', 'price'],
} as const

export type Group = keyof typeof slugsByGroup
export type SlugOf<G extends Group> = (typeof slugsByGroup)[G][number]
export type Slug = SlugOf<Group>

export const groups = Object.keys(slugsByGroup) as readonly Group[]
export const slugs: readonly Slug[] = groups.flatMap((group) => slugsByGroup[group] as readonly Slug[])

export type VerdictCode = 'yes' | 'no' | 'depends'

/** What every topic says, in the order in which it is read. */
export const statements = ['verdict', 'what-to-do', 'mechanism', 'size-of-effect'] as const
export type Statement = (typeof statements)[number]

/** What the asker's own numbers add: the size of the effect, and a verdict that is theirs where the numbers decide it. */
export interface Worked {
  readonly code?: VerdictCode
  readonly headline?: Phrase
  readonly results: Readonly<Record<string, Result>>
  readonly steps: readonly Step[]
  readonly assumed: readonly Given[]
  readonly cautions: readonly Caution[]
  readonly sources: readonly Citation[]
}

/** Undefined where the numbers that it needs were not told. */
export type Work = (given: Asked, units: ResultUnits) => Worked | undefined

export interface Matter {
  readonly code: VerdictCode
  /** On what it depends, where it does. */
  readonly depends?: Phrase
  /** The size of the effect as a formula or a range, where no numbers of the asker's own are known. */
  readonly size: Phrase
  /** Where each statement is from; its standing is shown behind it. */
  readonly from: Readonly<Record<Statement, readonly Citation[]>>
  readonly cautions: readonly Caution[]
  readonly pointers: readonly PointerKey[]
  /** Tried in order; the first verdict that numbers decide is the one that leads. */
  readonly works: readonly Work[]
}

export type MattersOf<G extends Group> = Readonly<Record<SlugOf<G>, Matter>>
