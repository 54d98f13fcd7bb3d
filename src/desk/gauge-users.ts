// Which wrenches a gauge has checked. Checks are filed under their wrench, so that this is a walk along the record; it is made only
// where a gauge is taken back, which is hardly ever, and begins where the gauge was added.
import { checkedWith } from '../register/admit.ts'
import { foldBook } from '../register/book.ts'
import { foldTag } from '../register/parts.ts'
import { type Entry, isOf } from '../register/records.ts'
import type { RegisterStore } from '../store/lazy.ts'

const PAGE = 500
const othersTurn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve))

/** The wrenches that these entries say were checked with a gauge, whether or not it still stands. */
export const wrenchesNaming = (entries: readonly Entry[], gauge: string): string[] => {
  const named = entries
    .filter(isOf('check'))
    .filter(({ body }) => body.gauge !== undefined && foldTag(body.gauge) === foldTag(gauge))
  return [...new Map(named.map(({ body }) => [foldTag(body.wrench), body.wrench])).values()]
}

export interface GaugeWalk {
  readonly wrenches: readonly string[]
  /** The last place in the record that was looked at. */
  readonly last: number
}

export const walkForGauge = async (
  store: Pick<RegisterStore, 'history' | 'since'>,
  gauge: string,
): Promise<GaugeWalk> => {
  const first = (await store.history(gauge)).find(({ entry }) => entry.kind === 'gauge')
  const found: string[] = []
  let last = first?.seq ?? 0
  for (;;) {
    const page = await store.since(last, PAGE)
    found.push(
      ...wrenchesNaming(
        page.map(({ entry }) => entry),
        gauge,
      ),
    )
    last = page.at(-1)?.seq ?? last
    if (page.length < PAGE) break
    await othersTurn()
  }
  return { wrenches: [...new Map(found.map((tag) => [foldTag(tag), tag])).values()], last }
}

/** The first of these wrenches that has a check with the gauge which still stands. */
export const firstUser = async (
  wrenches: readonly string[],
  gauge: string,
  entriesOf: (tag: string) => Promise<readonly Entry[]>,
): Promise<string | undefined> => {
  for (const tag of wrenches) if (checkedWith(foldBook(await entriesOf(tag)), gauge)) return tag
  return undefined
}
