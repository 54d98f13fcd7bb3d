// A check document in sentences: the plan, what was read so far, what to know. Every door that shows lines shows these.

import type { CheckDocument, CheckPoint } from '../questions/check-document.ts'
import { signedText } from '../words/deviation-text.ts'
import type { Language } from '../words/index.ts'
import { render } from '../words/render.ts'

export const checkLines = (document: Omit<CheckDocument, 'lines'>, { words }: Language, most: string): string[] => {
  const { say, scale } = words.checking
  const { limit, prePulls, points, notes, rule, farEnough, means } = document
  const fill = (template: string, places: Readonly<Record<string, string>>): string =>
    render(template, (place) => places[place])

  const planned = ({ setting, share, shows, uncertainty }: CheckPoint): string => {
    const places = {
      setting: setting.text,
      share: share.text,
      low: shows.low.text,
      high: shows.high.text,
      middle: shows.middle.text,
    }
    const doubt = uncertainty ? `; ${fill(say.doubt, { doubt: uncertainty.text })}` : ''
    return `${fill(say.point, places)}${doubt}`
  }
  const soFar = ({ setting, taken, mean, deviation, spread, verdict }: CheckPoint): string[] =>
    mean && deviation && spread && verdict
      ? [
          fill(say.soFar, {
            setting: setting.text,
            count: String(taken.length),
            mean: mean.text,
            deviation: signedText(deviation, words.deviation),
            spread: spread.text,
            verdict: verdict.text,
          }),
        ]
      : []

  return [
    ...(limit ? [fill(say.limit, { limit: limit.share.text, of: scale[limit.of], by: limit.by.text })] : []),
    ...(prePulls === 1 ? [fill(say.prePull, { most })] : []),
    ...(prePulls !== undefined && prePulls > 1 ? [fill(say.prePulls, { count: String(prePulls), most })] : []),
    say.order,
    ...points.map(planned),
    ...points.flatMap(soFar),
    ...(means === undefined ? [] : [means]),
    ...(rule ? [rule.text] : []),
    ...notes.map(({ text }) => text),
    ...(farEnough ? [fill(say.runsOut, { distance: farEnough.text })] : []),
  ]
}
