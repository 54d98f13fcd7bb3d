// does-it-matter: a short verdict on what people ask over the bench, why, how much, what to do; with the asker's own numbers where told.
import { type Fault, fault } from '../core/fault.ts'
import { writeQuantity } from '../core/quantity-text.ts'
import type { Citation } from '../tables/citation.ts'
import { checkHead } from './end-fitting.ts'
import { matters } from './matters/index.ts'
import { type Asked, inputs, STEEPEST } from './matters/inputs.ts'
import { linksOf } from './matters/links.ts'
import { type Matter, type Slug, type Statement, statements, type VerdictCode, type Worked } from './matters/topic.ts'
import type { Caution, Outcome, Result, TextResult } from './outcome.ts'
import { type Phrase, phrase } from './phrase.ts'
import { defineQuestion, type ResultUnits } from './question.ts'
import { checkReach, firstOf } from './reach.ts'
import { checkDoubt } from './reach-doubt.ts'

const sayOf = (slug: Slug, matter: Matter, statement: Exclude<Statement, 'verdict'>): Phrase =>
  statement === 'size-of-effect' ? matter.size : phrase(`matter.${slug}.${statement}`)

/** Each statement with the standing of what it is from. */
const told = (slug: Slug, matter: Matter): Record<string, Result> =>
  Object.fromEntries(
    statements.flatMap((statement) => {
      if (statement === 'verdict') return []
      const standings = [...new Set(matter.from[statement].map(({ standing }) => standing))]
      return [[statement, { code: slug, say: sayOf(slug, matter, statement), standings }]]
    }),
  )

const answers = {
  yes: phrase('matter.yes'),
  no: phrase('matter.no'),
  depends: phrase('matter.depends'),
} as const satisfies Record<VerdictCode, Phrase>

/** The short answer. What the asker's own numbers decide is worked out; else it stands as its sources do. */
const verdictOf = (matter: Matter, decided: Worked | undefined): TextResult =>
  decided?.code
    ? { code: decided.code, say: answers[decided.code], standings: ['worked out'] }
    : {
        code: matter.code,
        say: matter.depends ?? answers[matter.code],
        standings: [...new Set(matter.from.verdict.map(({ standing }) => standing))],
      }

const unique = (cautions: readonly Caution[]): Caution[] => [
  ...new Map(cautions.map((caution) => [caution.code, caution])).values(),
]

const workedOut = (given: Asked, matter: Matter, units_: ResultUnits): readonly Worked[] =>
  matter.works.flatMap((work) => work(given, units_) ?? [])

const answerDoesItMatter = (given: Asked, units_: ResultUnits): Outcome => {
  const slug = given.topic
  const matter = matters[slug]
  const worked = workedOut(given, matter, units_)
  const decided = worked.find(({ headline }) => headline !== undefined)
  const sources: Citation[] = [
    ...statements.flatMap((statement) => matter.from[statement]),
    ...worked.flatMap((one) => one.sources),
  ]
  const numbers: Record<string, Result> = Object.fromEntries(worked.flatMap(({ results }) => Object.entries(results)))
  const assumed = new Map(worked.flatMap((one) => one.assumed).map((one) => [`${one.input} ${one.index}`, one]))
  return {
    headline: decided?.headline ?? phrase(`matter.${slug}.verdict`),
    assumed: [...assumed.values()],
    results: { verdict: verdictOf(matter, decided), ...numbers, ...told(slug, matter) },
    steps: worked.flatMap(({ steps }) => steps),
    // What the numbers say comes first; one that is said of the topic too is said once.
    cautions: unique([...worked.flatMap(({ cautions }) => cautions), ...matter.cautions]),
    pointers: matter.pointers,
    sources,
    related: linksOf(given),
  }
}

type Told = { readonly [Name in keyof Asked]?: Exclude<Asked[Name], undefined> }

const checkMatter = (given: Told): readonly Fault[] => {
  const { angle, topic } = given
  const steep = topic === 'swivel' && angle && Math.abs(angle.value) > STEEPEST.value
  const reach = { ...given, adapter: given.adapter ?? [] }
  const known = given.adapter || given.pivot || given['wrench-type']
  return [
    ...firstOf(
      () => checkReach(reach),
      () => (known ? checkDoubt(reach, given.adapter ? 'adapter' : 'hand') : []),
    ),
    ...checkHead(given),
    ...(steep ? [fault('above-limit', 'angle', writeQuantity(angle), { limit: STEEPEST })] : []),
  ]
}

export const doesItMatter = defineQuestion({
  name: 'does-it-matter',
  inputs,
  results: [
    'verdict',
    'change',
    'torque',
    'factor',
    'setting',
    'directions',
    'twist',
    'rating',
    'rating-share',
    'share-of-most',
    'full-scale-tolerance',
    'clamp-change',
    'final-torque',
    'what-to-do',
    'mechanism',
    'size-of-effect',
  ],
  check: checkMatter,
  answer: answerDoesItMatter,
})
