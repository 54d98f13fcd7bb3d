// A process of its own that appends to a store and says each entry only once it was acknowledged: to be killed, or to be one of
// several. Arguments: address, tag, prefix of the ids, how many.
import { openStore } from '../../src/store/open.ts'
import { card, checkEntry, wrenchEntry } from './entries.ts'

const [address = '', tag = '', prefix = '', count = '0'] = process.argv.slice(2)
const store = await openStore(address)
process.stdout.write('open\n')
let last = 0
for (let n = 0; n < Number(count); ) {
  const id = `${prefix}${n}`
  const entry = n === 0 ? wrenchEntry(id, tag) : checkEntry(id, tag, n)
  // The last place is known from the last answer, unless somebody else added to the tag.
  const expects = [{ tag, seq: last }]
  const got = await store.append({ entries: [entry], expects, cards: [card(tag, { summary: { by: prefix, n } })] })
  if (got.kind === 'clash' || got.kind === 'known') throw new Error(`${id} was there before`)
  last = got.kind === 'kept' ? (got.seqs[0] as number) : got.seq
  if (got.kind === 'moved') continue
  process.stdout.write(`${id}\n`)
  n += 1
}
await store.close()
