// The topics that people can ask about, in the order in which they are shown. Typed and explicit; no folder is scanned.
import { adapter } from './adapter.ts'
import { ask } from './ask.ts'
import { bench } from './bench.ts'
import { bolt } from './bolt.ts'
import { check } from './check.ts'
import { convert } from './convert.ts'
import { doesItMatter } from './does-it-matter.ts'
import { extension } from './extension.ts'
import { hand } from './hand.ts'
import { head } from './head.ts'
import { lubricant } from './lubricant.ts'
import { multiplier } from './multiplier.ts'
import { privacy } from './privacy.ts'
import { settings } from './settings.ts'
import { spec } from './spec.ts'
import { swivel } from './swivel.ts'
import type { Topic } from './topic.ts'
import { wrench } from './wrench.ts'

export const topics: readonly Topic[] = [
  adapter,
  hand,
  head,
  swivel,
  extension,
  multiplier,
  lubricant,
  bolt,
  check,
  wrench,
  bench,
  convert,
  doesItMatter,
  ask,
  spec,
  settings,
  privacy,
]
