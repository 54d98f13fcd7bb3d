// THE RECORD: what the register keeps, entry by entry. Entries are only ever added; a later one may supersede an earlier one.
// Shapes and their types; no clock, no ids, no store: those are handed in with the entry.
import { z } from 'zod'
import { checkBody, eventBody, gaugeBody, usesBody, withdrawalBody, wrenchBody } from './bodies.ts'
import { runBody, runFinishBody, runReadingBody } from './run-bodies.ts'

/** Every kind of entry and the shape of what it holds. A new kind is a line here. */
export const kinds = {
  wrench: wrenchBody,
  gauge: gaugeBody,
  check: checkBody,
  event: eventBody,
  uses: usesBody,
  run: runBody,
  'run-reading': runReadingBody,
  'run-finish': runFinishBody,
  withdrawal: withdrawalBody,
} as const

export type Kind = keyof typeof kinds
export type BodyOf<K extends Kind> = z.infer<(typeof kinds)[K]>

export type WrenchCard = BodyOf<'wrench'>
export type GaugeCard = BodyOf<'gauge'>
export type Check = BodyOf<'check'>
export type WrenchEvent = BodyOf<'event'>
export type UsesCount = BodyOf<'uses'>

/** As what one wrote: a mechanic notes checks, events, uses and bench runs; a keeper also cards and corrections; import is a file read in. */
export const roles = ['mechanic', 'keeper', 'import'] as const
/** By which door it came in. */
export const doors = ['chat', 'http', 'kiosk', 'terminal'] as const

export const bySchema = z.strictObject({ role: z.enum(roles), door: z.enum(doors) }).readonly()
export type By = z.infer<typeof bySchema>

const idSchema = z.string().regex(/^[A-Za-z0-9_-]{1,64}$/)

/** The fields of every entry, besides its kind and what it holds. */
export const headShape = {
  id: idSchema,
  /** When it was recorded, an instant in UTC; when it happened is in the body. */
  at: z.iso.datetime(),
  by: bySchema,
  /** The entry that this one replaces, and why; always both or neither. */
  supersedes: idSchema.optional(),
  why: z.string().trim().min(1).max(500).optional(),
  /** The sender's own name for it: the same key a second time is the same entry. */
  key: z
    .string()
    .regex(/^[\x21-\x7e]{1,128}$/)
    .optional(),
}

export interface Head {
  readonly id: string
  readonly at: string
  readonly by: By
  readonly supersedes?: string | undefined
  readonly why?: string | undefined
  readonly key?: string | undefined
}

/** One entry of the record, of one kind or of any. */
export type Entry<K extends Kind = Kind> = {
  readonly [P in K]: Head & { readonly kind: P; readonly body: BodyOf<P> }
}[K]

/** What is to be recorded, before it has an id and a time. */
export type Draft<K extends Kind = Kind> = {
  readonly [P in K]: Omit<Head, 'id' | 'at'> & { readonly kind: P; readonly body: BodyOf<P> }
}[K]

const entryOf = <K extends Kind>(kind: K) => z.strictObject({ ...headShape, kind: z.literal(kind), body: kinds[kind] })

/** Any entry, for what comes from a file or a store. */
export const entrySchema = z
  .discriminatedUnion('kind', [
    entryOf('wrench'),
    entryOf('gauge'),
    entryOf('check'),
    entryOf('event'),
    entryOf('uses'),
    entryOf('run'),
    entryOf('run-reading'),
    entryOf('run-finish'),
    entryOf('withdrawal'),
  ])
  .refine(({ supersedes, why }) => (supersedes === undefined) === (why === undefined), { path: ['why'] })
  .refine(({ kind, supersedes }) => kind !== 'withdrawal' || supersedes !== undefined, { path: ['supersedes'] })
  .readonly()
  .meta({ id: 'Entry' })

// A kind of the table that the schema above leaves out stops this line from compiling.
type Known = z.infer<typeof entrySchema>['kind']
export const kindNames = Object.keys(kinds) as Kind[] satisfies Known[]

/** An entry with its id and time put in. */
export const entryFrom = (draft: Draft, id: string, at: string): Entry => ({ ...draft, id, at })

/** Whether an entry is of a kind, told to the types as well. */
export const isOf =
  <K extends Kind>(kind: K) =>
  (entry: Entry): entry is Extract<Entry, { readonly kind: K }> =>
    entry.kind === kind

/** The tag that an entry belongs to; a withdrawal has none of its own. */
export const tagOf = (entry: Pick<Entry, 'kind' | 'body'>): string | undefined => {
  if ('tag' in entry.body) return entry.body.tag
  if ('run' in entry.body) return entry.body.run
  return 'wrench' in entry.body ? entry.body.wrench : undefined
}
