// What people read of a wrench's checks over time, and of the lists of what needs doing.

export const history = {
  title: 'Seine Prüfungen im Lauf der Zeit',
  lead: 'PRÜFUNGEN',
  last: '{setting}: {deviation}',
  within: '{deviation}, ± {doubt} %',
  bare: '{deviation}, Unsicherheit nicht bekannt',
  /** Beside the limits in the picture. */
  sideLow: 'weniger',
  sideHigh: 'mehr',
  unclear: 'nicht mehr als die Unsicherheit',
  /** The sentence of a setting: where it is, how it moves, what may be told of when. */
  now: 'Bei {setting} fand die letzte Prüfung ({date}) {deviation}; die Grenze ist ±{limit} %.',
  movesLess: 'Er liefert jedes Jahr um {slope} ± {doubt} % weniger.',
  movesMore: 'Er liefert jedes Jahr um {slope} ± {doubt} % mehr.',
  reaches: 'Die Grenze wird etwa {middle} erreicht (95 %: {first} bis {last}).',
  reachesOpen: 'Die Grenze wird etwa {middle} erreicht (95 %: {first}, oder weit später).',
  gauge: 'Das Prüfmittel wechselte dazwischen, was wie eine Drift aussehen kann.',
  since: 'Prüfungen vor der Arbeit vom {date} zählen nicht.',
  gaps: {
    'too-few': 'Weniger als vier Prüfungen zählen: kein Trend wird genannt.',
    'one-day': 'Die Prüfungen sind von einem Tag: kein Trend wird genannt.',
    'slope-not-told': 'Ob es einen Trend gibt, ist aus den Prüfungen nicht zu erkennen.',
    'out-already': 'Die Linie durch die Prüfungen liegt schon an der Grenze: kein Tag wird genannt.',
    'too-far': 'So, wie es sich ändert, liegt die Grenze zu weit voraus, um zu sagen, wann.',
  },
  reached: 'Grenze etwa {middle}',
  beyond: '{deviation}',
  caption: 'Strich: Unsicherheit. Raute: nicht bestanden. Hohl: vor letzter Arbeit.',
  altPoint: '{date}: {deviation}, {verdict}',
  passed: 'bestanden',
  failed: 'nicht bestanden',
  altMark: '{date}: {what}',
  list: {
    title: 'Was anzusehen ist',
    all: 'Alle',
    due: 'Diesen Monat fällig',
    before: 'Vor Gebrauch prüfen',
    out: 'Außerhalb der Grenze',
    never: 'Nie geprüft',
    none: 'In dieser Liste steht heute kein Schlüssel.',
  },
} as const
