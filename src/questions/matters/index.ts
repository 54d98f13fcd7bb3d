// Every topic of does-it-matter, by slug: one that is on the list without saying anything does not compile.
import { care } from './care.ts'
import { joint } from './joint.ts'
import { pull } from './pull.ts'
import { reach } from './reach.ts'
import { tool } from './tool.ts'
import type { Matter, Slug } from './topic.ts'

export const matters: Readonly<Record<Slug, Matter>> = { ...care, ...joint, ...pull, ...reach, ...tool }
