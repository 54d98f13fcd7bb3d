// What a bench run lends to a question that names it: its own K with where the next bolt will lie, as a text that anybody could
// have typed; or its verdict. Told as measured here, with how much and when, and never mixed with what books say.
import { findingsOfRun } from '../bench/findings.ts'
import { type Fault, fault } from '../core/fault.ts'
import { writeNumber } from '../core/number-style.ts'
import { parseRunReferences, type RunReference } from '../core/parse-run-reference.ts'
import { parseSize } from '../core/parse-size.ts'
import { quantity } from '../core/quantity.ts'
import { units } from '../core/unit.ts'
import type { QuestionName } from '../questions/index.ts'
import { type Caution, caution } from '../questions/outcome.ts'
import { isSameName } from '../register/run-bodies.ts'
import type { RunFolder } from '../register/run-folders.ts'
import type { Citation } from '../tables/citation.ts'
import type { Loan, RawInputs } from './read.ts'
import type { Shop } from './shop.ts'

/** Which inputs a question takes K for; as many runs are named as there are. None: the run's verdict is told. */
const takes: Readonly<Partial<Record<QuestionName, readonly string[]>>> = {
  'clamp-force': ['k'],
  'bolt-torque': ['k'],
  lubricant: ['k-from', 'k-to'],
  'does-it-matter': [],
}
/** Which take the run's thread size as well, where the asker tells none. */
const takesSize: ReadonlySet<string> = new Set(['clamp-force', 'bolt-torque'])

const INPUT = 'bench'
const FIGURES = 4

interface Lent {
  readonly inputs: RawInputs
  readonly faults: readonly Fault[]
  readonly cautions: readonly Caution[]
  readonly sources: readonly Citation[]
}
const nothing: Lent = { inputs: {}, faults: [], cautions: [], sources: [] }
const refusedFor = (tell: Fault['tell'], got: string, facts: Parameters<typeof fault>[3] = {}): Lent => ({
  ...nothing,
  faults: [fault(tell, INPUT, got, facts)],
})

const daysOf = (run: RunFolder): string => {
  const days = run.readings.map(({ entry }) => entry.body.date).sort()
  const [first, last] = [days[0] ?? '', days.at(-1) ?? '']
  return first === last ? first : `${first} … ${last}`
}

/** The run as a source: what it was about, when, and how far it speaks. */
const sourceOf = (run: RunFolder, n: number): Citation => {
  const { tag, asked, size, wrench } = run.opening.entry.body
  const where = [daysOf(run), `n = ${n}`, size, wrench].filter((part) => part !== undefined).join(', ')
  return { title: `${tag}: ${asked}`, where, standing: 'measured here' }
}

const figures = (value: number): string => writeNumber(Number(value.toPrecision(FIGURES)))
const plain = (value: number) => quantity(Number(value.toPrecision(FIGURES)), units['1'])

/** K of the condition that is meant. A run that goes on may say something else tomorrow: only a finished one is lent. */
const factorLent = (
  run: RunFolder,
  { tag, condition }: RunReference,
  input: string,
  asked: RawInputs,
  lendsSize: boolean,
): Lent => {
  const { conditions, size } = run.opening.entry.body
  const names = conditions.map(({ name }) => name)
  if (!run.finish) return refusedFor('run-not-finished', tag)
  if (condition === undefined && names.length > 1)
    return refusedFor('which-condition', tag, { options: names.map((name) => `${tag} ${name}`) })
  const meant = condition === undefined ? names[0] : names.find((name) => isSameName(name, condition))
  if (meant === undefined) return refusedFor('no-such-condition', condition ?? '', { options: names })
  const found = findingsOfRun(run).factors.find((one) => one.condition === meant)?.value
  if (!found) return refusedFor('run-without-factor', tag)
  const { mean, halfWidth, values } = found
  const [low, high] = [mean - halfWidth, mean + halfWidth]
  if (low < mean / 2) return refusedFor('run-too-doubtful', tag, { low: figures(low), high: figures(high) })
  const told = typeof asked['size'] === 'string' ? parseSize(asked['size'], 'size') : undefined
  const isOther = size !== undefined && told?.ok === true && told.value.name !== size
  return {
    inputs: {
      [input]: `${figures(mean)} ± ${figures(halfWidth)}`,
      ...(lendsSize && size !== undefined ? { size } : {}),
    },
    faults: [],
    cautions: [
      caution('bench-factor', {
        run: tag,
        condition: meant,
        k: plain(mean),
        low: plain(low),
        high: plain(high),
        n: String(values.length),
        days: daysOf(run),
        size: size ?? '–',
      }),
      ...(isOther ? [caution('bench-other-size', { run: tag, size })] : []),
    ],
    sources: [sourceOf(run, values.length)],
  }
}

/** What the run says of its question, for a topic that it is held beside. */
const verdictLent = (run: RunFolder, { tag }: RunReference): Lent => {
  if (!run.finish) return refusedFor('run-not-finished', tag)
  const { margin, subjects, readings } = findingsOfRun(run)
  const judged = subjects[0]?.judged
  const told = judged?.told
    ? judged.value.each.flatMap(({ condition, comparison }) =>
        comparison.told ? [{ condition, ...comparison.value }] : [],
      )
    : []
  const [first] = told
  if (!first || !judged?.told) return refusedFor('run-without-verdict', tag)
  const share = (fraction: number) => quantity(fraction * 100, units['%'])
  const cautions = told.slice(0, 1).map(({ condition, difference, verdict }) => {
    const places = {
      run: tag,
      a: judged.value.baseline,
      b: condition,
      size: share(difference.value),
      low: share(difference.low ?? difference.value),
      high: share(difference.high ?? difference.value),
      margin: share(margin.m),
      n: String(readings),
      days: daysOf(run),
    }
    if (verdict === 'a-difference-that-matters') return caution('bench-matters', places)
    return caution(verdict === 'not-decided' || verdict === 'seen-not-decided' ? 'bench-open' : 'bench-small', places)
  })
  return { inputs: {}, faults: [], cautions, sources: [sourceOf(run, readings)] }
}

const referencesIn = (name: QuestionName, raw: RawInputs): readonly RunReference[] | undefined => {
  const told = raw[INPUT]
  const texts =
    typeof told === 'string' ? [told] : Array.isArray(told) ? told.filter((one) => typeof one === 'string') : []
  if (texts.length === 0 || !Object.hasOwn(takes, name)) return undefined
  const read = parseRunReferences(texts, INPUT, 2)
  return read.ok ? read.value : undefined
}

const lentBy = async (
  shop: Shop,
  name: QuestionName,
  references: readonly RunReference[],
  raw: RawInputs,
): Promise<Lent[]> => {
  const inputs = takes[name] ?? []
  const wanted = Math.max(inputs.length, 1)
  if (references.length !== wanted)
    return [
      refusedFor(wanted === 2 ? 'two-runs-wanted' : 'one-run-wanted', references.map(({ tag }) => tag).join('; ')),
    ]
  return Promise.all(
    references.map(async (reference, n) => {
      const found = await shop.runs.one(reference.tag)
      if (!found) return refusedFor('no-such-run', reference.tag)
      const input = inputs[n]
      // A number that the asker tells goes before: then nothing of the bench is in it, and nothing is cited.
      if (input !== undefined && raw[input] !== undefined) return nothing
      return input === undefined
        ? verdictLent(found.folder, reference)
        : factorLent(found.folder, reference, input, raw, takesSize.has(name))
    }),
  )
}

/** What the runs that a question names lend it; undefined where it names none, or none that can be read. */
export const benchLoan = (shop: Shop, name: QuestionName, raw: RawInputs): Promise<Loan> | undefined => {
  const references = referencesIn(name, raw)
  if (!references) return undefined
  return lentBy(shop, name, references, raw).then((all) => {
    const inputs = Object.assign({}, ...all.map((one) => one.inputs)) as RawInputs
    // What the asker tells besides goes before; then nothing of the bench is in that number.
    const used = Object.keys(inputs).filter((input) => raw[input] === undefined)
    return {
      inputs,
      faults: all.flatMap(({ faults }) => faults),
      cautions: all.flatMap(({ cautions }) => cautions),
      sources: all.flatMap(({ sources }) => sources),
      bench: new Set(used),
    }
  })
}
