// Which cautions are read before the number: the wrench that was named is not one to pull with as it is.
import type { Answer } from './answer.ts'

export const foremostCodes = ['wrench-not-to-be-used', 'failed-on', 'check-before-use'] as const

type Cautions = Answer['cautions']

const isForemost = (code: string): boolean => (foremostCodes as readonly string[]).includes(code)

/** What stands before the headline. That the wrench is out of limit does where the register says so; a verdict says it itself. */
export const foremostOf = ({ cautions }: Pick<Answer, 'cautions'>): Cautions => {
  const failed = cautions.some(({ code }) => code === 'failed-on')
  return cautions.filter(({ code }) => isForemost(code) || (failed && code === 'out-of-limit'))
}
