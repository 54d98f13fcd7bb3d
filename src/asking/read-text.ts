// Free text to a question: what it is about, what was taken from it as which input, what was left aside, and how else it may be read.
// Nothing is guessed with confidence: what may be several things is handed back as several things.
import { type QuestionName, questions } from '../questions/index.ts'
import { choose, isSeveral } from './choose.ts'
import { type Claim, claimsOf } from './claims.ts'
import { factsOf } from './facts.ts'
import { withoutDoubt } from './left/index.ts'
import type { Measure } from './measure.ts'
import { type Alternative, type Entry, type Inputs, inputsOf, type Proposal } from './proposal.ts'
import { type Scene, sceneOf } from './scene.ts'

export interface TextReading {
  /** `question`: one was found. `choice`: several fit as well. The others are never answered with a number. */
  readonly outcome: 'question' | 'choice' | 'maker-figure' | 'out-of-scope'
  readonly question: QuestionName | null
  readonly inputs: Inputs
  /** `span` as it was typed; empty where it was not written but follows from the rest. */
  readonly taken: ReadonlyArray<{ readonly span: string; readonly input: string; readonly text: string }>
  readonly ignored: readonly string[]
  /** Inputs that were not written so, or not for sure: shown as assumed. */
  readonly assumed: readonly string[]
  /** What this text must be asked besides what its question needs. */
  readonly asks: readonly string[]
  /** Inputs whose number is changed by what stands around it, with all of that: refused, whatever can be read of it. */
  readonly doubts: ReadonlyArray<{
    readonly input: string
    readonly raw: string
    readonly as: NonNullable<Measure['unclear']>
  }>
  readonly alternatives: readonly Alternative[]
  readonly claims: readonly Claim[]
}

const MOST_ALTERNATIVES = 6

/** Each once, and none that is the reading itself. Few are shown, so few are looked at. */
const unique = (alternatives: readonly Alternative[], main?: Alternative): Alternative[] => {
  const seen = new Set(main ? [JSON.stringify(main)] : [])
  return alternatives
    .slice(0, 3 * MOST_ALTERNATIVES)
    .filter((one) => {
      const key = JSON.stringify(one)
      return seen.has(key) ? false : seen.add(key)
    })
    .slice(0, MOST_ALTERNATIVES)
}

const spans = (scene: Scene, entries: readonly Entry[]): TextReading['taken'] =>
  entries.map(({ input, text, from }) => ({ span: from ? scene.quote(from.start, from.end) : '', input, text }))

const ignoredOf = (scene: Scene, entries: readonly Entry[]): readonly string[] =>
  [...scene.placed, ...scene.unread]
    .filter(({ start, end }) => !entries.some(({ from }) => from && from.start < end && start < from.end))
    .map(({ start, end }) => scene.quote(start, end))

const firstNumber = (text: string): string | undefined => /\d[\d.,/]*/.exec(text)?.[0]

// Where several readings are offered, what any of them uses was not left aside.
const leftByAll = (scene: Scene, alternatives: readonly Alternative[]): readonly string[] => {
  const used = new Set(alternatives.flatMap(({ inputs }) => Object.values(inputs).flat().map(firstNumber)))
  return ignoredOf(scene, []).filter((span) => !used.has(firstNumber(span)))
}

const nothing = (
  scene: Scene,
  outcome: TextReading['outcome'],
  claims: readonly Claim[],
  alternatives: readonly Alternative[] = [],
): TextReading => ({
  outcome,
  question: null,
  inputs: {},
  taken: [],
  ignored: leftByAll(scene, alternatives),
  assumed: [],
  asks: [],
  doubts: [],
  alternatives: unique(alternatives),
  claims,
})

const isOf = ({ start, end }: Scene['placed'][number], { from }: Entry): boolean =>
  from !== undefined && from.start <= start && end <= from.end

/** What a hand's place or a direction may be called, which another number must not stand for. */
const placesOf = { hand: ['hand', 'distance'], angle: ['angle', 'pull-angle'], number: [] } as const

/** What was taken from a number in doubt, as it stands or worked out; and what is in doubt and was left aside, though it matters. */
const doubtsIn = ({ placed }: Scene, { question, entries }: Proposal): TextReading['doubts'] =>
  placed.flatMap((one) => {
    const as = one.measure.unclear
    if (!as) return []
    const taken = entries.filter((entry) => isOf(one, entry)).map(({ input }) => input)
    const besides = placesOf[as].filter((name) => Object.hasOwn(questions[question].inputs, name)).slice(0, 1)
    return (taken.length > 0 ? taken : besides).map((input) => ({ input, raw: one.measure.raw, as }))
  })

const found = (scene: Scene, proposed: Proposal, claims: readonly Claim[]): TextReading => {
  const { question, asks, others } = proposed
  const doubts = doubtsIn(scene, proposed)
  // Whether something matters is said without any number: one in doubt is left aside.
  const isLeft = question === 'does-it-matter'
  const entries = isLeft
    ? proposed.entries.filter(({ input }) => !doubts.some((one) => one.input === input))
    : proposed.entries
  const main = { question, inputs: inputsOf(entries) }
  return {
    outcome: 'question',
    ...main,
    taken: spans(scene, entries),
    ignored: ignoredOf(scene, entries),
    assumed: entries.filter(({ assumed }) => assumed).map(({ input }) => input),
    asks,
    doubts: isLeft ? [] : doubts,
    alternatives: unique(others, main),
    claims,
  }
}

/** Reads a text of any length; the time it takes grows with the text and no faster. */
export const readText = (text: string): TextReading => {
  const scene = sceneOf(text)
  const facts = factsOf(scene)
  const choice = choose(facts)
  if (choice === 'maker-figure' || choice === 'out-of-scope') return nothing(scene, choice, [])
  if (isSeveral(choice)) return nothing(scene, 'choice', claimsOf(facts, undefined), choice)
  return found(scene, withoutDoubt(facts, choice), claimsOf(facts, choice))
}
