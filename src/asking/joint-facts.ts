// What a text says of a joint: thread, class, nut factors, friction, and the state of its threads before and after.
import { type Condition, conditions } from '../tables/conditions.ts'
import { findThread } from '../tables/threads.ts'
import type { Cue, CueTag } from './cues.ts'
import type { Length } from './lengths.ts'
import { siOf, textOf } from './measure.ts'
import { nearest, type Placed, type Scene } from './scene.ts'

export interface Told {
  readonly text: string
  readonly from: { readonly start: number; readonly end: number }
  readonly assumed?: boolean
}

const factorTags: ReadonlySet<CueTag> = new Set<CueTag>(['k-factor', 'friction'])

const coarse = (length: Length): string | undefined => {
  const { measure } = length
  const metric = measure.unit?.system === 'metric'
  const thread = findThread(metric ? 'metric' : 'inch', siOf(measure))
  if (!thread) return undefined
  if (metric) return `M${Math.round(siOf(measure) * 1e6) / 1e3}`
  return `${thread.name}`
}

/** The thread: named, or the diameter of a bolt, taken as coarse and shown as assumed. */
export const sizeOf = (scene: Scene, lengths: readonly Length[]): Told | undefined => {
  const named = scene.placed.find(({ measure }) => measure.kind === 'size')
  if (named) return { text: textOf(named.measure), from: named }
  const bolts = lengths.filter(({ role }) => role === 'size')
  const [bolt] = bolts
  const text = bolt && bolts.every(({ measure }) => measure.value === bolt.measure.value) ? coarse(bolt) : undefined
  return bolt && text !== undefined ? { text, from: bolt, assumed: true } : undefined
}

const gradeWord = /(?:grade|gr|class|sae)\.?\s?(\d{1,2}(?:\.\d)?)(?![\d.])/

/** The class: 8.8, A2-70, grade 5. */
export const classOf = (scene: Scene): Told | undefined => {
  const named = scene.placed.find(({ measure }) => measure.kind === 'class')
  if (named) return { text: textOf(named.measure), from: named }
  const found = gradeWord.exec(scene.folded)
  if (!found) return undefined
  const from = { start: found.index, end: found.index + found[0].length }
  const grade = found[1] as string
  return { text: grade.includes('.') && grade !== '8.2' ? grade : `SAE ${grade}`, from }
}

export interface NutFactor extends Placed {
  /** The state of threads that stands beside it. */
  readonly state?: string
}

const HELD = 5
const isState = ({ tag }: Cue): boolean => tag === 'state'
const passable = new Set(['k', 'factor', 'is', 'of', 'with', 'the', 'when', 'for', '='])

/** The state of threads that a nut factor is of: right behind it, else before it or a little further behind, in the same breath. */
const beside = (scene: Scene, placed: Placed): Cue | undefined => {
  const within = (step: 1 | -1, most: number): Cue | undefined => {
    for (let away = 1; away <= most; away++) {
      const at = placed.at + step * away
      const cue = (step === 1 ? scene.cuesAt(at) : scene.cuesBefore(at + 1)).find(isState)
      if (cue) return cue
      const piece = scene.pieces[at]
      const text = piece?.kind === 'word' || piece?.kind === 'mark' ? piece.text : undefined
      if (text === undefined || !passable.has(text)) return undefined
    }
    return undefined
  }
  return within(1, 1) ?? within(-1, 3) ?? within(1, 3)
}

/** Nut factors: small plain numbers held by the word, and those that follow one in the same breath. */
export const nutFactorsOf = (scene: Scene): readonly NutFactor[] => {
  const found: NutFactor[] = []
  for (const placed of scene.placed) {
    const { kind, value } = placed.measure
    if (kind !== 'bare' || value <= 0 || value >= 1) continue
    const near = nearest(scene, placed, factorTags)
    const last = found.at(-1)
    const follows = last !== undefined && placed.at - last.at <= 4
    if (!(near && near.score > HELD && near.cue.tag === 'k-factor') && !follows) continue
    const state = beside(scene, placed)?.name
    found.push({ ...placed, ...(state === undefined ? {} : { state }) })
  }
  return found
}

export const frictionsOf = (scene: Scene): readonly Placed[] =>
  scene.placed.filter((placed) => {
    const { kind, value } = placed.measure
    const near = nearest(scene, placed, factorTags)
    return kind === 'bare' && value > 0 && value < 1 && near?.cue.tag === 'friction' && near.score > HELD
  })

export interface States {
  readonly from?: Cue
  readonly to?: Cue
  /** A lubricant is meant, but not which. */
  readonly general: boolean
}

const isCondition = (name: string | undefined): name is Condition => conditions.some((one) => one === name)

const word = (scene: Scene, at: number): string => {
  const piece = scene.pieces[at]
  return piece?.kind === 'word' ? piece.text : ''
}

const figureWords = new Set([
  'spec',
  'specs',
  'figure',
  'figures',
  'book',
  'manual',
  'value',
  'values',
  'torque',
  'printed',
  'number',
  'numbers',
  'says',
  'given',
  'for',
  'assumes',
  'quoted',
  'says',
])

/** `the dry figure`, `80 Nm dry`, `spec is for oiled`: the state that a figure is for. */
const ofTheFigure = (scene: Scene, cue: Cue): boolean => {
  const before = scene.pieces[cue.first - 1]
  const after = scene.pieces[cue.next]
  if (before?.kind === 'measure' && before.measure.kind === 'quantity') return true
  if (after?.kind === 'measure' && after.measure.unit?.dimension === 'torque') return true
  return (
    [1, 2].some((ahead) => figureWords.has(word(scene, cue.next - 1 + ahead))) ||
    [1, 2, 3].some((back) => figureWords.has(word(scene, cue.first - back)))
  )
}

const isBehindTorque = (scene: Scene, cue: Cue): boolean => {
  const before = scene.pieces[cue.first - 1]
  return before?.kind === 'measure' && before.measure.unit?.dimension === 'torque'
}

/** `spec is for oiled`, `oiled spec 100 Nm`, in so many words. */
const isForFigure = (scene: Scene, cue: Cue): boolean =>
  (word(scene, cue.first - 1) === 'for' && [2, 3, 4, 5].some((back) => specWords.has(word(scene, cue.first - back)))) ||
  ['spec', 'specs', 'figure'].includes(word(scene, cue.next))

const specWords = new Set(['spec', 'specs', 'figure', 'torque', 'value', 'book', 'manual', 'number'])

const orJoined = (scene: Scene, cue: Cue): boolean =>
  word(scene, cue.first - 1) === 'or' || word(scene, cue.next) === 'or'

const finishes: ReadonlySet<string | undefined> = new Set(['zinc', 'cadmium', 'black-oxide'])

/** `dry zinc`, `zinc plated, dry` is one state: that of the finish without a lubricant. */
const isOfFinish = ({ name, first, next }: Cue, all: readonly Cue[]): boolean =>
  name === 'dry' && all.some((one) => finishes.has(one.name) && (one.first === next || one.next === first))

/** Which state the figure is for, and which the threads are in; what is only asked about (`dry or oiled?`) is neither. */
export const statesOf = (scene: Scene): States => {
  const named = scene.cues.filter(({ tag, name }) => tag === 'state' && isCondition(name))
  const cues = named.filter((cue) => !isOfFinish(cue, named))
  const dryAsked = scene.cues.some((cue) => cue.name === 'dry' && orJoined(scene, cue))
  const said = dryAsked ? cues.filter((cue) => !orJoined(scene, cue)) : cues
  const general = scene.has('lubricant')
  const lubricated = said.filter(({ name, denied }) => name !== 'dry' && !denied)
  const dry = said.find(({ name, denied }) => name === 'dry' && !denied)
  // `oil or anti-seize` is one of two: which, is asked.
  const open = !dryAsked && lubricated.some((cue) => orJoined(scene, cue))
  const to = open ? undefined : (lubricated.find((cue) => !ofTheFigure(scene, cue)) ?? lubricated[0])
  const from = open
    ? dry
    : (lubricated.find((cue) => cue !== to && ofTheFigure(scene, cue) && cue.name !== to?.name) ??
      (dry && (to || ofTheFigure(scene, dry)) ? dry : undefined))
  // `140 Nm oiled, but I did them dry`, `spec is for oiled, mine are dry`: the figure is for oil.
  const figured = lubricated.find((cue) => isBehindTorque(scene, cue) || isForFigure(scene, cue))
  const isAlone = lubricated.every(({ name }) => name === figured?.name)
  if (!open && dry && !ofTheFigure(scene, dry) && figured && isAlone) return { from: figured, to: dry, general }
  if (to === undefined && dry && !from && !open) return { to: dry, general }
  return { ...(from ? { from } : {}), ...(to ? { to } : {}), general: general || open }
}
