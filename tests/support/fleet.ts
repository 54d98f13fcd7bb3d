// A small fleet for questions that choose among the shop's wrenches, as the desk would lend it.
import type { Loan } from '../../src/desk/read.ts'
import { type QuestionName, questions } from '../../src/questions/index.ts'
import { foldBook } from '../../src/register/book.ts'
import { card, m, nm } from '../register/shop.ts'

const book = foldBook([
  card('W-07', { name: 'Half-inch click wrench', least: nm(40), most: nm(200), lever: m(380, 'mm'), unit: 'N·m' }),
  card('W-02', { name: 'Three-eighths click wrench', least: nm(10), most: nm(60), lever: m(260, 'mm'), unit: 'N·m' }),
  card('W-11', {
    name: 'Long split-beam wrench',
    'wrench-type': 'split-beam',
    least: nm(60),
    most: nm(340),
    lever: undefined,
    unit: 'N·m',
  }),
  ...Array.from({ length: 13 }, (_, n) => card(`S-${n + 1}`, { least: nm(1), most: nm(5), unit: 'N·m' })),
])

/** What is lent to a question; nothing to those that need nothing of it. */
export const loanFor = (name: QuestionName): Loan | undefined =>
  questions[name].needsFleet
    ? { inputs: {}, faults: [], cautions: [], fleet: { book, now: { today: '2026-06-01' } } }
    : undefined
