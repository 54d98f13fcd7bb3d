// An answer document with nothing in it yet, and what every answer carries.
import type { Answer } from '../questions/answer.ts'
import type { QuestionName } from '../questions/index.ts'
import { dataVersion, engineVersion } from '../tables/version.ts'
import type { Sayer } from './say.ts'

const versions = { engine: engineVersion, data: dataVersion }

export const blank = (name: QuestionName | null): Omit<Answer, 'status' | 'headline'> => ({
  question: name,
  given: [],
  results: {},
  steps: [],
  cautions: [],
  pointers: [],
  sources: [],
  missing: [],
  faults: [],
  related: [],
  versions,
})

export const always = (say: Sayer): Answer['cautions'] => [say.caution({ code: 'maker-first' })]
