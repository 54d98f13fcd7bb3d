// What a form offers to pick from: the wrenches and gauges of the shop, and of the run that is meant its conditions.
import type { Shop } from '../../../desk/shop.ts'
import type { KeepParts } from './keep-form.tsx'

const MOST_TAGS = 200

export const tagsToPick = async (register: Shop, run: string | undefined): Promise<KeepParts['tags']> => {
  const [page, gauges] = await Promise.all([register.board(MOST_TAGS), register.gauges()])
  const found = run === undefined || run === '' ? undefined : await register.runs.one(run)
  return {
    // A list that is not whole would hide the wrench that is meant: then its tag is typed.
    ...(page.next === undefined ? { wrench: page.rows.map(({ folder }) => folder.tag) } : {}),
    gauge: gauges.map(({ body }) => body.tag),
    ...(found ? { condition: found.folder.opening.entry.body.conditions.map(({ name }) => name) } : {}),
  }
}
