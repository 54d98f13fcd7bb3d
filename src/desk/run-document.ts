// A bench run in words: what is asked, what its readings say so far, what it can see, and how far it speaks.
import { type FollowingJudged, findingsOfRun, type Outlook, type RunFindings } from '../bench/findings.ts'
import { parseSeat } from '../core/parse-seat.ts'
import { parseSize } from '../core/parse-size.ts'
import { fromSi, quantity } from '../core/quantity.ts'
import { echoReadings } from '../core/readings-text.ts'
import { type UnitSymbol, units } from '../core/unit.ts'
import { muTotal } from '../mechanics/mu-total.ts'
import { pitchOf, seatOf, seatRadiusOf, threadOf } from '../questions/joint.ts'
import type { RunDocument } from '../questions/run-document.ts'
import { quantityOf } from '../register/parts.ts'
import { isSameName, measures } from '../register/run-bodies.ts'
import type { RunFolder } from '../register/run-folders.ts'
import type { Language } from '../words/index.ts'
import { fill, gapText, setLines, subjectTold, type Teller, teller } from './run-verdicts.ts'

const openingOf = ({ opening }: RunFolder) => opening.entry.body

export const stateOf = (run: RunFolder): keyof Language['words']['bench']['states'] =>
  run.finish ? 'finished' : run.readings.length > 0 ? 'under-way' : 'planned'

/** Friction of thread and seat together, of each reading that has torque and force; none where the size does not tell it. */
const frictionsOf = (run: RunFolder, condition: string): number[] => {
  const { size: named, seat: told } = openingOf(run)
  const size = named === undefined ? undefined : parseSize(named, 'size')
  const seat = told === undefined ? undefined : parseSeat(told, 'seat')
  if (!size?.ok || !pitchOf(size.value)) return []
  const joint = { size: size.value, ...(seat?.ok ? { seat: seat.value } : {}) }
  if (!seatOf(joint)) return []
  const [thread, radius] = [threadOf(size.value), seatRadiusOf(joint)]
  return run.readings
    .filter(({ entry }) => isSameName(entry.body.condition, condition) && entry.body.again === undefined)
    .flatMap(({ entry }) => entry.body.readings)
    .flatMap(({ torque, clamp }) => (torque && clamp ? [muTotal(torque.value, clamp.value, thread, radius)] : []))
}

const factorsTold = (run: RunFolder, { factors, subjects }: RunFindings, tell: Teller): RunDocument['factors'] => {
  const { say, shown, spanned } = tell
  const plain = (value: number) => shown(quantity(value, units['1']))
  const unitFor = (subject: 'torque' | 'clamp', fallback: UnitSymbol): UnitSymbol =>
    subjects.find((one) => one.subject === subject)?.unit ??
    run.readings.flatMap(({ entry }) => entry.body.readings).find((one) => one[subject])?.[subject]?.unit ??
    fallback
  const [torqueIn, clampIn] = [units[unitFor('torque', 'N·m')], units[unitFor('clamp', 'kN')]]
  const hasSeat = openingOf(run).seat !== undefined
  return factors.map(({ condition, value: { mean, halfWidth, values } }) => {
    const k = spanned({ value: mean, low: mean - halfWidth, high: mean + halfWidth }, plain)
    const frictions = frictionsOf(run, condition)
    const mu =
      frictions.length === 0 ? undefined : plain(frictions.reduce((sum, one) => sum + one, 0) / frictions.length)
    const taken = run.readings
      .filter(({ entry }) => isSameName(entry.body.condition, condition) && entry.body.again === undefined)
      .flatMap(({ entry }) => entry.body.readings)
    return {
      condition,
      k,
      diameter: openingOf(run).diameter?.value ?? 0,
      units: { torque: torqueIn.symbol, clamp: clampIn.symbol },
      readings: taken.flatMap(({ torque, clamp }) =>
        torque && clamp
          ? [{ torque: fromSi(torque.value, torqueIn).value, clamp: fromSi(clamp.value, clampIn).value }]
          : [],
      ),
      ...(mu ? { friction: mu } : {}),
      text: [
        fill(say.factor, {
          condition,
          k: k.text,
          n: String(values.length),
          low: k.low?.text ?? '',
          high: k.high?.text ?? '',
        }),
        ...(mu ? [fill(hasSeat ? say.friction : say.frictionUsual, { condition, mu: mu.text })] : []),
      ].join(' '),
    }
  })
}

const followingTold = (
  condition: string,
  symbol: UnitSymbol,
  { gain, offset, farthest, verdict: code }: FollowingJudged,
  tell: Teller,
): RunDocument['following'][number] => {
  const { say, shown, spanned, inUnit, verdict } = tell
  const plain = (value: number) => shown(quantity(value, units['1']))
  const here = (value: number) => inUnit(value, units[symbol])
  const slope = spanned({ value: 1 + gain.value, low: 1 + gain.low, high: 1 + gain.high }, plain)
  const start = spanned(offset, here)
  const places = {
    condition,
    slope: slope.text,
    low: slope.low?.text ?? '',
    high: slope.high?.text ?? '',
    verdict: verdict(code).text,
    offset: start.text,
    far: here(farthest.y).text,
  }
  return { condition, verdict: verdict(code), slope, offset: start, text: fill(say.following, places) }
}

const outlookTold = (outlook: Outlook, tell: Teller): string[] => {
  const { say, share, marginText } = tell
  const { n, spread, isFound, smallestSeen, toSeeMargin, toTellAlike } = outlook
  return [
    fill(isFound ? say.found : say.taken, { spread: share(spread).text }),
    fill(say.sees, { n: String(n), delta: share(smallestSeen).text }),
    toSeeMargin === undefined
      ? fill(say.tooMany, { margin: marginText })
      : fill(say.toSee, { margin: marginText, n: String(toSeeMargin) }),
    ...(toTellAlike === undefined ? [] : [fill(say.toTell, { n: String(toTellAlike) })]),
  ]
}

const methodOf = ({ subjects, margin }: RunFindings, { say, share, echoed }: Teller): string[] => {
  const judged = subjects.flatMap((one) => (one.judged.told ? [one.judged.value] : []))
  const [first] = judged
  if (!first) return []
  const confidence = echoed(margin.confidence).text
  const places = { a: first.baseline, alpha: share(1 - margin.confidence).text, each: share(first.eachAt).text }
  return [
    first.each.length > 1 ? fill(say.family, places) : fill(say.usual, { confidence }),
    ...(judged.length > 1 ? [say.apart] : []),
  ]
}

const heldOf = (run: RunFolder): string[] => {
  const { same, wrench, size, 'property-class': strength, threads, seat } = openingOf(run)
  return [...[wrench, size, strength, threads, seat].filter((part) => part !== undefined), ...same]
}

const limitsOf = (run: RunFolder, readings: number, { say }: Teller): string | undefined => {
  const days = run.readings.map(({ entry }) => entry.body.date).sort()
  const [first, last] = [days[0], days.at(-1)]
  if (first === undefined || last === undefined) return undefined
  const { size, wrench } = openingOf(run)
  return fill(say.limits, {
    first,
    last,
    n: String(readings),
    size: size === undefined ? say.anySize : fill(say.oneSize, { size }),
    wrench: wrench === undefined ? say.anyWrench : fill(say.oneWrench, { wrench }),
  })
}

const readingsOf = (run: RunFolder, { style }: Teller): RunDocument['readings'] =>
  run.readings.map(({ entry: { id, by, body }, earlier }) => ({
    id,
    date: body.date,
    condition: body.condition,
    ...by,
    text: measures
      .map((measure) => body.readings.flatMap((reading) => reading[measure] ?? []))
      .filter((all) => all.length > 0)
      .map((all) => echoReadings(all.map(quantityOf), style))
      .join(' · '),
    ...(body.again === undefined ? {} : { again: body.again }),
    ...(body.note === undefined ? {} : { note: body.note }),
    corrected: earlier.length > 0,
  }))

const againTold = (run: RunFolder, today: string, { say }: Teller): RunDocument['again'] =>
  run.again.map(({ months, due, isDone }) => {
    const template = isDone ? say.done : due <= today ? say.overdue : say.due
    return { months, due, isDone, text: fill(template, { months: String(months), date: due }) }
  })

/** The document of a run as it stands on a day; `planned`: so many readings of each are meant to be taken. */
export const runDocument = (run: RunFolder, language: Language, today: string, planned?: number): RunDocument => {
  const { say, states } = language.words.bench
  const { tag, asked, date, conditions, note } = openingOf(run)
  const found = findingsOfRun(run, planned)
  const tell = teller(language, found.margin)
  const subjects = found.subjects.map((one) => subjectTold(tell, one))
  const factors = factorsTold(run, found, tell)
  const following = found.following.map(({ condition, unit, value }) => followingTold(condition, unit, value, tell))
  const outlook = found.outlook ? outlookTold(found.outlook, tell) : []
  const again = againTold(run, today, tell)
  const limits = limitsOf(run, found.readings, tell)
  const method = methodOf(found, tell)
  const whats = new Map(conditions.map(({ name, what }) => [name, what]))
  const said = [
    ...subjects.flatMap(({ verdicts, pairs, series }) => [...verdicts, ...pairs, ...series].map(({ text }) => text)),
    ...factors.map(({ text }) => text),
    ...following.map(({ text }) => text),
  ]
  const open = subjects[0]?.open ?? gapText(tell, { told: false, why: 'too-few' }, conditions[0]?.name ?? '')
  const headline =
    found.readings === 0
      ? fill(say.planned, { foresight: outlook.slice(0, 2).join(' ') }).trim()
      : (said[0] ?? fill(say.open, { why: open }))
  const state = stateOf(run)
  return {
    tag,
    asked,
    date,
    state: { code: state, text: states[state] },
    headline,
    conditions: conditions.map(({ name, what }) => ({
      name,
      what,
      readings: run.readings
        .filter(({ entry }) => isSameName(entry.body.condition, name))
        .reduce((sum, { entry }) => sum + entry.body.readings.length, 0),
    })),
    held: heldOf(run),
    margin: tell.echoed(found.margin.m),
    confidence: tell.echoed(found.margin.confidence),
    subjects,
    factors,
    following,
    method,
    outlook,
    again,
    ...(limits === undefined ? {} : { limits }),
    ...(note === undefined ? {} : { note }),
    ...(run.finish
      ? {
          end: {
            date: run.finish.entry.body.date,
            ...(run.finish.entry.body.note === undefined ? {} : { note: run.finish.entry.body.note }),
          },
        }
      : {}),
    readings: readingsOf(run, tell),
    lines: [
      ...said.filter((text) => text !== headline),
      ...subjects.slice(0, 1).flatMap((one) => setLines(tell, one, whats)),
      ...method,
      ...(run.finish ? [] : outlook.filter((text) => !headline.includes(text))),
      ...again.map(({ text }) => text),
      ...(limits === undefined ? [] : [limits]),
    ],
  }
}
