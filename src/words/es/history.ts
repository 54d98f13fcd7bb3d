// What people read of a wrench's checks over time, and of the lists of what needs doing.

export const history = {
  title: 'Sus comprobaciones en el tiempo',
  lead: 'COMPROBACIONES',
  last: '{setting}: {deviation}',
  within: '{deviation}, ± {doubt} %',
  bare: '{deviation}, incertidumbre no conocida',
  /** Beside the limits in the picture. */
  sideLow: 'menos',
  sideHigh: 'más',
  unclear: 'no más que su incertidumbre',
  /** The sentence of a setting: where it is, how it moves, what may be told of when. */
  now: 'A {setting}, la última comprobación ({date}) encontró {deviation}; su límite es ±{limit} %.',
  movesLess: 'Cada año da un {slope} ± {doubt} % menos.',
  movesMore: 'Cada año da un {slope} ± {doubt} % más.',
  reaches: 'Alcanza su límite hacia {middle} (95 %: {first} a {last}).',
  reachesOpen: 'Alcanza su límite hacia {middle} (95 %: {first}, o mucho más tarde).',
  gauge: 'El instrumento cambió entretanto, lo que puede parecer una deriva.',
  since: 'Las comprobaciones anteriores al trabajo del {date} no cuentan.',
  gaps: {
    'too-few': 'Cuentan menos de cuatro comprobaciones: no se indica tendencia.',
    'one-day': 'Las comprobaciones son de un solo día: no se indica tendencia.',
    'slope-not-told': 'Las comprobaciones no permiten distinguir si hay tendencia o no.',
    'out-already': 'La línea de sus comprobaciones ya está en el límite: no se indica fecha.',
    'too-far': 'A este ritmo su límite queda demasiado lejos para decir cuándo.',
  },
  reached: 'límite hacia {middle}',
  beyond: '{deviation}',
  caption: 'Barra: incertidumbre. Rombo: no conf. Hueco: antes del último trabajo.',
  altPoint: '{date}: {deviation}, {verdict}',
  passed: 'conforme',
  failed: 'no conforme',
  altMark: '{date}: {what}',
  list: {
    title: 'Qué mirar',
    all: 'Todas',
    due: 'Tocan este mes',
    before: 'Comprobar antes de usar',
    out: 'Fuera de límite',
    never: 'Nunca comprobadas',
    none: 'Hoy no hay ninguna llave en esta lista.',
  },
} as const
