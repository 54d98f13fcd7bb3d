// A form that came too late to be kept: its fields go along through the sign-in, and come back filled in. Nothing is written by it.
import { keepables } from '../../../keeping/index.ts'
import { type Kind, kindNames } from '../../../register/records.ts'

export interface CarriedForm {
  readonly kind: Kind
  /** Only fields that such a form has. */
  readonly fields: Readonly<Record<string, string>>
}

const KIND = 'carried'
const FIELD = 'carried-'

const isKind = (text: string | undefined): text is Kind => (kindNames as readonly (string | undefined)[]).includes(text)
const belongs = (kind: Kind, name: string): boolean =>
  name === 'key' || name === 'sure' || Object.hasOwn(keepables[kind].inputs, name)

export const carriedForm = (kind: Kind, form: Readonly<Record<string, string>>): CarriedForm => ({
  kind,
  fields: Object.fromEntries(Object.entries(form).filter(([name]) => belongs(kind, name))),
})

/** As hidden fields of the sign-in form. */
export const carriedFields = ({ kind, fields }: CarriedForm): ReadonlyArray<readonly [string, string]> => [
  [KIND, kind],
  ...Object.entries(fields).map(([name, text]) => [`${FIELD}${name}`, text] as const),
]

/** What goes along with a sign-in form that was sent; undefined where nothing does. */
export const carriedIn = (form: Readonly<Record<string, string>>): CarriedForm | undefined => {
  const kind = form[KIND]
  if (!isKind(kind)) return undefined
  const fields = Object.entries(form).flatMap(([name, text]): [string, string][] =>
    name.startsWith(FIELD) ? [[name.slice(FIELD.length), text]] : [],
  )
  return carriedForm(kind, Object.fromEntries(fields))
}
