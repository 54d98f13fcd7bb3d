// What every check of a payload writes its complaints into: a place in the payload, Discord's code for what is wrong
// there and its words. Turns complaints into the error body Discord answers with. Knows no payload.

export type Json = { [key: string]: unknown }

export interface Complaint {
  path: string
  code: string
  message: string
}

export interface Refusal {
  status: number
  body: { message: string; code: number; errors?: Json }
}

export const isRecord = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

export const isAbsent = (value: unknown): value is null | undefined => value === undefined || value === null

export class Check {
  readonly complaints: Complaint[]
  readonly path: string

  constructor(complaints: Complaint[] = [], path = '') {
    this.complaints = complaints
    this.path = path
  }

  at(key: string | number): Check {
    return new Check(this.complaints, this.path === '' ? String(key) : `${this.path}.${key}`)
  }

  say(code: string, message: string): void {
    this.complaints.push({ path: this.path, code, message })
  }

  /** The text under a key, measured in UTF-16 units (never less than Discord counts); '' where there is none. */
  text(of: Json, key: string, rule: { max: number; min?: number; needed?: boolean; pattern?: RegExp }): string {
    const here = this.at(key)
    const value = of[key]
    if (isAbsent(value)) {
      if (rule.needed) here.say('BASE_TYPE_REQUIRED', 'This field is required')
      return ''
    }
    if (typeof value !== 'string') {
      here.say('BASE_TYPE_STRING', 'Must be a string.')
      return ''
    }
    const min = rule.min ?? (rule.needed ? 1 : 0)
    if (min > 0 && value.trim() === '') here.say('BASE_TYPE_REQUIRED', 'This field is required')
    else if (value.length < min || value.length > rule.max)
      here.say('BASE_TYPE_BAD_LENGTH', `Must be between ${min} and ${rule.max} in length.`)
    else if (rule.pattern && !rule.pattern.test(value))
      here.say('STRING_TYPE_REGEX', `String value did not match validation regex ${rule.pattern}.`)
    return value
  }

  /** The objects of a list under a key; what is no object is complained of and left out. */
  list(of: Json, key: string, rule: { max: number; min?: number; needed?: boolean }): { item: Json; check: Check }[] {
    const here = this.at(key)
    const value = of[key]
    if (isAbsent(value)) {
      if (rule.needed) here.say('BASE_TYPE_REQUIRED', 'This field is required')
      return []
    }
    if (!Array.isArray(value)) {
      here.say('LIST_TYPE_CONVERT', 'Only iterables may be used in a ListType')
      return []
    }
    const min = rule.min ?? 0
    if (value.length < min || value.length > rule.max)
      here.say('BASE_TYPE_BAD_LENGTH', `Must be between ${min} and ${rule.max} in length.`)
    return value.flatMap((item: unknown, index) => {
      if (isRecord(item)) return [{ item, check: here.at(index) }]
      here.at(index).say('DICT_TYPE_CONVERT', 'Only dictionaries may be used in a DictType')
      return []
    })
  }

  whole(of: Json, key: string, rule: { min: number; max: number; needed?: boolean }): number | undefined {
    const value = of[key]
    if (isAbsent(value)) {
      if (rule.needed) this.at(key).say('BASE_TYPE_REQUIRED', 'This field is required')
      return undefined
    }
    if (typeof value === 'number' && Number.isInteger(value) && value >= rule.min && value <= rule.max) return value
    this.at(key).say('NUMBER_TYPE_RANGE', `int value should be between ${rule.min} and ${rule.max}.`)
    return undefined
  }

  flag(of: Json, key: string): boolean {
    const value = of[key]
    if (!isAbsent(value) && typeof value !== 'boolean')
      this.at(key).say('BOOLEAN_TYPE_CONVERT', 'Must be either true or false.')
    return value === true
  }
}

/** The status and body that Discord answers to these complaints; undefined where there are none. */
export function refusalOf(complaints: readonly Complaint[]): Refusal | undefined {
  if (complaints.length === 0) return undefined
  if (complaints.some((one) => one.code === 'REQUEST_ENTITY_TOO_LARGE'))
    return { status: 413, body: { message: 'Request entity too large', code: 40005 } }
  if (complaints.every((one) => one.code === 'EMPTY_MESSAGE'))
    return { status: 400, body: { message: 'Cannot send an empty message', code: 50006 } }
  const errors: Json = {}
  for (const { path, code, message } of complaints) {
    let node = errors
    for (const key of path === '' ? [] : path.split('.')) {
      const next = isRecord(node[key]) ? node[key] : {}
      node[key] = next
      node = next
    }
    node['_errors'] = [...(Array.isArray(node['_errors']) ? node['_errors'] : []), { code, message }]
  }
  return { status: 400, body: { message: 'Invalid Form Body', code: 50035, errors } }
}
