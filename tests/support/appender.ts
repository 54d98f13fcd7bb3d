// A process of its own that appends to a store and says each entry only once it was acknowledged: to be killed, or to be one of
// several. Arguments: address, tag, prefix of the ids, how many.
import { openStore } from '../../src/store/open.ts'
import { appendTo, checkEntry, wrenchEntry } from './entries.ts'

const [address = '', tag = '', prefix = '', count = '0'] = process.argv.slice(2)
const store = await openStore(address)
process.stdout.write('open\n')
for (let n = 0; n < Number(count); n++) {
  const id = `${prefix}${n}`
  const entry = n === 0 ? wrenchEntry(id, tag) : checkEntry(id, tag, n)
  // Straight from one to the next: the last place is known from the last answer, unless somebody else adds to the tag.
  await appendTo(store, tag, [entry])
  process.stdout.write(`${id}\n`)
}
await store.close()
