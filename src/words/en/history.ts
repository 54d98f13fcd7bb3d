// What people read of a wrench's checks over time, and of the lists of what needs doing.

export const history = {
  title: 'Its checks over time',
  lead: 'CHECKS',
  last: '{setting}: {deviation}',
  within: '{deviation}, ± {doubt} %',
  bare: '{deviation}, its doubt is not known',
  /** Beside the limits in the picture. */
  sideLow: 'less',
  sideHigh: 'more',
  unclear: 'no more than its doubt',
  /** The sentence of a setting: where it is, how it moves, what may be told of when. */
  now: 'At {setting} the last check ({date}) found {deviation}; its limit is ±{limit} %.',
  movesLess: 'It gives less by {slope} ± {doubt} % a year.',
  movesMore: 'It gives more by {slope} ± {doubt} % a year.',
  reaches: 'It reaches its limit about {middle} (95 %: {first} to {last}).',
  reachesOpen: 'It reaches its limit about {middle} (95 %: {first}, or far later).',
  gauge: 'The gauge changed in between, which may look like a drift.',
  since: 'Checks before the work of {date} do not count.',
  gaps: {
    'too-few': 'Fewer than four checks count: no trend is told.',
    'one-day': 'The checks are of one day: no trend is told.',
    'slope-not-told': 'The checks do not tell a trend from none.',
    'out-already': 'The line through its checks stands at the limit already: no day is told.',
    'too-far': 'At this pace its limit is too far ahead to tell when.',
  },
  reached: 'limit about {middle}',
  beyond: '{deviation}',
  caption: 'Bar: doubt. Diamond: failed. Hollow: before the last work.',
  altPoint: '{date}: {deviation}, {verdict}',
  passed: 'passed',
  failed: 'failed',
  altMark: '{date}: {what}',
  list: {
    title: 'What to look at',
    all: 'All',
    due: 'Due this month',
    before: 'Check before use',
    out: 'Out of limit',
    never: 'Never checked',
    none: 'No wrench is in this list today.',
  },
} as const
