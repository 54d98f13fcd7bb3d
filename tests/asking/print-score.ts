// Prints how the reader scores on questions as people ask them: the half it was tuned on, and the half that was set aside.
import { more, scoreMore } from '../support/asked-more.ts'
import { asked, isAside, isGood, score, table } from '../support/asked-score.ts'

const line = (text: string): void => void process.stdout.write(`${text}\n`)
const tunedOnly = process.argv.includes('--tuned')

for (const [name, items] of [
  ['tuned on', asked.filter((item) => !isAside(item))],
  ...(tunedOnly ? [] : [['set aside', asked.filter(isAside)] as const]),
] as const) {
  const scored = score(items)
  line(`\n${name} (${items.length})`)
  for (const row of table(scored)) line(row)
  for (const { item, answer, verdict } of scored) {
    if (!isGood(verdict)) line(`  ${verdict}: ${item.id} ${item.kind}: ${answer.question ?? '-'} ${answer.status}`)
  }
}

if (!tunedOnly) {
  const scored = scoreMore(more)
  const right = scored.filter(({ verdict }) => verdict === 'right').length
  line(`\na second set (${more.length}): ${right} right, ${((100 * right) / more.length).toFixed(1)} %`)
  for (const { item, answer, verdict } of scored)
    if (verdict !== 'right') line(`  ${verdict}: ${item.id}: ${answer.question ?? '-'} ${answer.status}`)
}
