// The answer over values of the one thing that is missing: what it would be for each, so that a gap is no dead end.
import type { Answer } from '../questions/answer.ts'
import type { Ladder } from '../questions/input.ts'
import type { Given, Outcome } from '../questions/outcome.ts'
import { type FleetKnown, type Question, resultUnits } from '../questions/question.ts'
import { quantitiesOf, type Reading } from './read.ts'
import type { Sayer } from './say.ts'

const rungValues = (
  question: Question,
  reading: Reading,
  by: string,
  system: 'metric' | 'inch',
): readonly unknown[] => {
  const own = question.rungs(reading.values, by)
  if (own) return own
  const input = question.inputs[by]
  const texts = (input?.ladder as Ladder | undefined)?.[system] ?? []
  return texts.flatMap((text) => {
    const value = input?.read([text], by)
    return value?.ok ? [value.value] : []
  })
}

/** The answer over values of the one thing that is missing: 5 to 12 rows, or none where it cannot be shown so. */
export const ladder = (
  question: Question,
  reading: Reading,
  say: Sayer,
  fallback: 'metric' | 'inch',
  fleet: FleetKnown | undefined,
): { readonly ladder?: Answer['ladder']; readonly cautions: Outcome['cautions'] } => {
  const [by, ...more] = reading.missing
  if (by === undefined || more.length > 0 || (question.needsFleet && !fleet)) return { cautions: [] }
  // What every number on the ladder is under; a caution with figures of its own belongs to one rung only.
  const cautions = new Map<string, Outcome['cautions'][number]>()
  const { system } = resultUnits(quantitiesOf(reading.given), fallback)
  const input = question.inputs[by]
  const rows = rungValues(question, reading, by, system).flatMap((value) => {
    const values = { ...reading.values, [by]: value }
    if (
      question.check(values).length > 0 ||
      question.alsoNeeded(values).some((name) => values[name as keyof typeof values] === undefined)
    )
      return []
    const told = input?.given(value, by) ?? []
    const at = told[0]
    if (!at) return []
    const outcome = question.answer(
      values,
      resultUnits(quantitiesOf(ordered(question, [...reading.given, ...told])), fallback),
      fleet,
    )
    for (const one of outcome.cautions) if (Object.keys(one.with ?? {}).length === 0) cautions.set(one.code, one)
    const shown = say.given(at)
    return [
      { at: { value: shown.value, unit: shown.unit ?? '', text: shown.text }, results: say.results(outcome.results) },
    ]
  })
  return rows.length < 5
    ? { cautions: [] }
    : { ladder: { by, rows: rows.slice(0, 12) }, cautions: [...cautions.values()] }
}

const ordered = (question: Question, given: readonly Given[]): Given[] => {
  const places = new Map(Object.keys(question.inputs).map((name, place) => [name, place]))
  return [...given].sort((one, other) => (places.get(one.input) ?? 0) - (places.get(other.input) ?? 0))
}
