// Entity tags of pure answers: the same for the same address, inputs, language and versions.
import { createHash } from 'node:crypto'
import type { Desk } from '../../../desk/desk.ts'
import { dataVersion, engineVersion } from '../../../tables/version.ts'
import { languageFor } from '../../../words/index.ts'

export const tagOf = (desk: Desk, name: string, raw: unknown, accepted: string | undefined): string => {
  const { locale } = languageFor(accepted, desk.locale)
  const key = JSON.stringify([name, raw, locale, desk.system, desk.pointersVersion(), engineVersion, dataVersion])
  return `"${createHash('sha256').update(key).digest('base64url').slice(0, 27)}"`
}

/** False where a client's If-None-Match holds the tag: it has the answer already. */
export const wantsOther = (header: string | undefined, tag: string): boolean =>
  header === undefined || !header.split(',').some((one) => one.trim().replace(/^W\//, '') === tag || one.trim() === '*')
