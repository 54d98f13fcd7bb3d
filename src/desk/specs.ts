// Where the shop finds makers' figures: its own list of titles, each with a link or a shelf and what it covers. It points to a
// figure and never holds one. Kept with its history; held in memory, so that no answer waits for it.

import { type Fault, fault } from '../core/fault.ts'
import { neverBack } from '../core/never-back.ts'
import { spelledUnits } from '../core/unit.ts'
import type { By } from '../register/records.ts'
import type { RegisterStore } from '../store/lazy.ts'

export interface Spec {
  readonly id: string
  readonly title: string
  /** An address (https://…) or a shelf: "red folder, bay 2". */
  readonly where: string
  /** Words that it is for: makes of vehicle, joints, thread sizes, questions. None: for everything. */
  readonly covers: string
}

export interface Pointer {
  readonly text: string
  readonly url?: string
}

const SCOPE = 'specs'
const LONGEST = 200
const FRESH_MS = 30_000
const MOST_OFFERED = 3
const MOST_FOUND = 20
/** Words that stand in every question say nothing of what it is about. */
const LEAST_WORD = 3
const everywhere: ReadonlySet<string> = new Set(
  (
    'the and for with from what how not are does our your der die das und mit für von wie was ist nicht ein eine los las ' +
    'del con por para que una qué les des une pour avec dans est quel quelle'
  ).split(' '),
)

export const specInputs = ['title', 'where', 'covers'] as const
export type SpecTexts = Readonly<Partial<Record<(typeof specInputs)[number], string>>>

const wordsOf = (text: string): ReadonlySet<string> =>
  new Set(
    text
      .toLowerCase()
      .split(/[^\p{L}\p{N}./]+/u)
      .filter((word) => (word.length >= LEAST_WORD || /\d/.test(word)) && !everywhere.has(word)),
  )

const meet = (one: ReadonlySet<string>, other: ReadonlySet<string>): number =>
  [...one].filter((word) => other.has(word)).length

// A number with a unit of torque behind it, however it is spelled.
const figure = /\d[\d.,]*\s*([\p{L}][\p{L}·.\-*/ ]{0,18})/gu
const holdsTorque = (text: string): string | undefined => {
  for (const [whole, unit = ''] of text.matchAll(figure)) {
    const words = unit.trim().split(/\s+/)
    for (let taken = words.length; taken > 0; taken--)
      if (spelledUnits(words.slice(0, taken).join(' ')).some(({ unit: one }) => one.dimension === 'torque'))
        return whole
  }
  return undefined
}

const isAddress = (text: string): boolean => /^https?:\/\/[^\s]+$/.test(text)

const pointerOf = ({ title, where }: Spec): Pointer =>
  isAddress(where) ? { text: title, url: where } : { text: `${title}: ${where}` }

const readSpec = (texts: SpecTexts): { readonly faults: readonly Fault[]; readonly spec?: Omit<Spec, 'id'> } => {
  const faults: Fault[] = []
  for (const name of specInputs) {
    const text = texts[name]?.trim() ?? ''
    if (text === '' && name !== 'covers') faults.push(fault('empty', name, texts[name] ?? ''))
    if (text.length > LONGEST) faults.push(fault('too-long', name, text, { most: String(LONGEST) }))
    const found = holdsTorque(text)
    if (found !== undefined && !isAddress(text)) faults.push(fault('spec-holds-figure', name, text, { extra: found }))
  }
  const { title = '', where = '', covers = '' } = texts
  return faults.length > 0
    ? { faults }
    : { faults, spec: { title: title.trim(), where: where.trim(), covers: covers.trim() } }
}

export interface Specs {
  /** Those that a text is about, best first; all where it says nothing. */
  readonly find: (text: string) => Promise<readonly Spec[]>
  readonly add: (texts: SpecTexts, id: string, by: By) => Promise<readonly Fault[]>
  /** False where there is none of this id. */
  readonly remove: (id: string, by: By) => Promise<boolean>
  /** What is known at once of what covers these texts: for an answer, which never waits. */
  readonly pointersFor: (texts: readonly string[]) => readonly Pointer[]
  /** Another one whenever what `pointersFor` knows has changed. */
  readonly version: () => number
}

export const createSpecs = (store: Pick<RegisterStore, 'settings' | 'set'>, now: () => Date): Specs => {
  let known: readonly Spec[] = []
  let version = 0
  const steady = neverBack(() => now().getTime())
  let looked = Number.NEGATIVE_INFINITY

  const load = async (): Promise<readonly Spec[]> => {
    looked = steady()
    const found = Object.entries(await store.settings(SCOPE)).map(
      ([id, text]): Spec => ({ ...(JSON.parse(text) as Omit<Spec, 'id'>), id }),
    )
    if (JSON.stringify(found) !== JSON.stringify(known)) {
      known = found
      version += 1
    }
    return known
  }

  const ranked = (texts: readonly string[], all: readonly Spec[], mostly: 'about' | 'covers'): readonly Spec[] => {
    const asked = wordsOf(texts.join(' '))
    return all
      .map((spec) => {
        const about = mostly === 'about' ? `${spec.title} ${spec.where} ${spec.covers}` : spec.covers
        return { spec, score: meet(wordsOf(about), asked), isForAll: spec.covers === '' }
      })
      .filter(({ score, isForAll }) => score > 0 || (mostly === 'covers' && isForAll))
      .sort((one, other) => other.score - one.score)
      .map(({ spec }) => spec)
  }

  // Looked at again now and then, behind the answer; what it cannot be told it does without.
  const lookAgain = (): void => {
    if (steady() - looked > FRESH_MS) load().catch(() => undefined)
  }

  const set = (id: string, spec: Omit<Spec, 'id'> | undefined, by: By): Promise<void> =>
    store.set({ scope: SCOPE, name: id, value: spec ? JSON.stringify(spec) : null, at: now().toISOString(), by })

  return {
    find: async (text) => {
      const all = await load()
      return (text.trim() === '' ? all : ranked([text], all, 'about')).slice(0, MOST_FOUND)
    },
    add: async (texts, id, by) => {
      const { faults, spec } = readSpec(texts)
      if (!spec) return faults
      await set(id, spec, by)
      await load()
      return []
    },
    remove: async (id, by) => {
      if (!(await load()).some((one) => one.id === id)) return false
      await set(id, undefined, by)
      await load()
      return true
    },
    pointersFor: (texts) => {
      lookAgain()
      return known.length === 0 ? [] : ranked(texts, known, 'covers').slice(0, MOST_OFFERED).map(pointerOf)
    },
    version: () => {
      lookAgain()
      return version
    },
  }
}
