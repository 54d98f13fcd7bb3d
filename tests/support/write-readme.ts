// Writes the examples and tables of README anew: `npm run docs`.
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { rewrite } from './readme.ts'

const path = join(import.meta.dirname, '../../README.md')
writeFileSync(path, await rewrite(readFileSync(path, 'utf8')))
