// What people read of a wrench's checks over time, and of the lists of what needs doing.

export const history = {
  title: 'Ses contrôles au fil du temps',
  lead: 'CONTRÔLES',
  last: '{setting} : {deviation}',
  within: '{deviation}, ± {doubt} %',
  bare: '{deviation}, incertitude inconnue',
  /** Beside the limits in the picture. */
  sideLow: 'moins',
  sideHigh: 'plus',
  unclear: 'pas plus que son incertitude',
  /** The sentence of a setting: where it is, how it moves, what may be told of when. */
  now: 'À {setting}, le dernier contrôle ({date}) a trouvé {deviation} ; sa limite est ±{limit} %.',
  movesLess: 'Elle donne {slope} ± {doubt} % de moins par an.',
  movesMore: 'Elle donne {slope} ± {doubt} % de plus par an.',
  reaches: 'La limite sera atteinte vers {middle} (95 % : {first} à {last}).',
  reachesOpen: 'La limite sera atteinte vers {middle} (95 % : {first}, ou bien plus tard).',
  gauge: 'L’instrument a changé entre-temps, ce qui peut ressembler à une dérive.',
  since: 'Les contrôles d’avant l’intervention du {date} ne comptent pas.',
  gaps: {
    'too-few': 'Moins de quatre contrôles comptent : aucune tendance n’est donnée.',
    'one-day': 'Les contrôles sont du même jour : aucune tendance n’est donnée.',
    'slope-not-told': 'Les contrôles ne distinguent pas une tendance de son absence.',
    'out-already': 'La droite à travers ses contrôles est déjà à la limite : aucun jour n’est donné.',
    'too-far': 'À ce rythme, la limite est trop loin pour dire quand.',
  },
  reached: 'limite vers {middle}',
  beyond: '{deviation}',
  caption: 'Barre : incertitude. Losange : échec. Creux : avant intervention.',
  altPoint: '{date} : {deviation}, {verdict}',
  passed: 'conforme',
  failed: 'non conforme',
  altMark: '{date} : {what}',
  list: {
    title: 'À regarder',
    all: 'Toutes',
    due: 'À contrôler ce mois-ci',
    before: 'À contrôler avant emploi',
    out: 'Hors limite',
    never: 'Jamais contrôlées',
    none: 'Aucune clé n’est dans cette liste aujourd’hui.',
  },
} as const
