// The pictures of a bench run: its readings by condition, over its re-runs, and torque against clamp force. As wide as a phone or
// a message shows; each says the same in words.
import type { NumberStyle } from '../core/number-style.ts'
import type { RunDocument } from '../questions/run-document.ts'
import type { Words } from '../words/index.ts'
import type { Figure } from './drawer.ts'
import { drawFactor, drawSeries } from './run-lines.ts'
import { drawSets } from './run-sets.ts'
import type { Theme } from './theme.ts'

export interface RunLook {
  readonly words: Words
  readonly style: NumberStyle
  readonly theme: Theme
}

export const runViews = ['sets', 'series', 'factor'] as const
export type RunView = (typeof runViews)[number]

/** A picture of a run; nothing where its readings do not bear it. */
export const drawRun = (run: RunDocument, view: RunView, look: RunLook): Figure | undefined => {
  const subject = view === 'series' ? run.subjects.find(({ series }) => series.length > 0) : run.subjects[0]
  if (view === 'factor') return drawFactor(run, look)
  if (!subject) return undefined
  return view === 'series' ? drawSeries(run, subject, look) : drawSets(run, subject, look)
}

/** Those that there are, the one that answers the question first. */
export const viewsOf = (run: RunDocument): readonly RunView[] =>
  runViews.filter((view) => {
    if (view === 'factor') return run.factors.length > 0
    return run.subjects.some(({ sets, series }) =>
      view === 'series' ? series.length > 0 : sets.some(({ values }) => values.length > 0),
    )
  })
