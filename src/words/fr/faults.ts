// What is to be mended in what was asked: what is allowed, and what to type next.

export const faults = {
  'unit-missing': { allowed: '{kind} : {units}', hint: 'Indiquer l’unité : taper {options}.' },
  'unit-unknown': { allowed: '{kind} : {units}', hint: 'Cette unité n’est pas connue ici : taper {options}.' },
  'adapters-unparted': {
    allowed: 'un adaptateur, ou plusieurs séparés par ;',
    hint: 'Mettre ; entre les adaptateurs : 50 mm; 75 mm@45.',
  },
  'inches-unmarked': {
    allowed: 'pieds et pouces, tous deux marqués',
    hint: 'Marquer aussi les pouces : 1\' 2" ou 1 ft 2 in.',
  },
  'unit-wrong-kind': { allowed: '{kind} : {units}', hint: 'C’est une autre sorte de grandeur : taper {options}.' },
  'pound-alone': {
    allowed: '{kind} : {units}',
    hint: 'Une livre seule est une force ou une masse, pas un couple : taper {options}.',
  },
  'unit-after-plain-number': { allowed: 'un nombre simple, sans unité', hint: 'Enlever « {extra} ».' },
  'two-readings': {
    allowed: 'un nombre qui ne se lit que d’une façon',
    hint: 'Ceci peut se lire de deux façons : taper {readings}.',
  },
  'spec-holds-figure': {
    allowed: 'où se trouve la valeur, sans la valeur',
    hint: 'Ici on ne garde que l’endroit d’une valeur du constructeur, jamais la valeur : retirer « {extra} ».',
  },
  'thousands-or-decimal': {
    allowed: 'un nombre qui ne se lit que d’une façon',
    hint: 'Cela se lit de deux façons, {readings} : taper {options}.',
  },
  'words-around': {
    allowed: 'un nombre avec son unité, qu’aucun mot voisin ne change',
    hint: '« {typed} » n’est pas une valeur claire telle quelle. La dire en une valeur en chiffres avec une unité, le choix, la part ou la somme déjà faits.',
  },
  'words-around-angle': {
    allowed: 'des degrés comptés depuis tout droit',
    hint: '« {typed} » peut être une autre direction. Dire l’angle depuis tout droit devant la clé : 0° tout droit, 90° d’équerre avec le manche, 180° en arrière le long du manche.',
  },
  'words-around-hand': {
    allowed: 'une longueur depuis le centre du carré',
    hint: '« {typed} » se compte depuis le manche. Dire à quelle distance du centre du carré est la main, le long du manche.',
  },
  'not-a-number': { allowed: '{kind}', hint: 'Commencer par un nombre : taper {options}.' },
  exponent: { allowed: '{kind}, sans exposant', hint: 'Écrire le nombre en entier : 1000, pas 1e3.' },
  'thousands-mark': {
    allowed: 'une seule marque décimale, pas de séparateur de milliers',
    hint: 'Écrire les chiffres sans séparateur de milliers : 1234,5.',
  },
  negative: { allowed: 'plus que 0', hint: 'Enlever le signe moins, ou revoir ce qui était voulu.' },
  'adapter-negative': {
    allowed: 'une longueur au-dessus de 0, avec @angle pour sa direction',
    hint: 'Un adaptateur tourné vers l’arrière s’écrit avec @180 : 50 mm@180.',
  },
  empty: { allowed: 'une valeur', hint: 'Taper une valeur, ou omettre cette entrée.' },
  trailing: { allowed: 'une valeur et rien derrière', hint: 'Enlever « {extra} ».' },
  'unknown-input': { allowed: '{inputs}', hint: 'Cette question n’a pas une telle entrée : utiliser {inputs}.' },
  repeated: { allowed: 'une valeur', hint: 'Donner cette entrée une seule fois.' },
  'angle-twice': {
    allowed: 'l’angle une seule fois',
    hint: 'L’adaptateur a déjà son angle derrière @ : omettre angle.',
  },
  'angle-with-chain': {
    allowed: 'longueur@angle pour chaque adaptateur',
    hint: 'Avec plusieurs adaptateurs, écrire chaque angle derrière sa longueur : 50 mm@0 + 75 mm@45.',
  },
  'least-above-most': {
    allowed: 'moins que {limit}',
    hint: 'La graduation la plus basse est au-dessous de la plus haute : échanger least et most, ou revoir leurs unités.',
  },
  'pulls-do-not-fit': {
    allowed: 'deux tractions à un même réglage qu’une même clé peut donner',
    hint: 'Ces deux tractions ne vont pas avec une même clé (l’autre a donné {at}) : refaire les deux, au même réglage.',
  },
  'hand-at-lever': {
    allowed: 'une main bien à l’écart du point du levier',
    hint: 'Avec la main là où le levier est mesuré, on ne peut rien dire : tirer vers {half}.',
  },
  'pairs-uneven': {
    allowed: '{count} valeurs, une pour chaque couple',
    hint: 'Donner autant de forces de serrage que de couples, dans le même ordre.',
  },
  'diameter-not-size': {
    allowed: 'size ou diameter, pas deux qui diffèrent',
    hint: '{size} a un autre diamètre : omettre l’un des deux.',
  },
  'two-ratios': {
    allowed: 'un seul de torque-ratio et turns-ratio',
    hint: 'Donner le rapport qui est marqué : torque-ratio contient les pertes, turns-ratio ne les contient pas.',
  },
  'ratio-holds-losses': {
    allowed: 'efficiency avec turns-ratio seulement',
    hint: 'Un rapport de couple contient déjà les pertes : omettre efficiency.',
  },
  'class-not-of-type': {
    allowed: '{options} pour les outils {type}',
    hint: 'Il n’y a pas une telle classe d’outils {type} : revoir iso-type et iso-class sur le certificat.',
  },
  'readings-differ': {
    allowed: '{kind}, comme toutes les lectures',
    hint: 'Toutes les lectures, et la résolution, sont d’une même sorte : donner à chacune la même unité, ou aucune.',
  },
  'point-without-colon': {
    allowed: 'réglage: lectures',
    hint: 'Écrire le réglage, deux-points, puis ce que la référence a montré : 100 N·m: 99,5; 101 N·m.',
  },
  'point-two-colons': {
    allowed: 'un seul deux-points par point',
    hint: 'Séparer les points avec | ou une nouvelle ligne : 40 N·m: 39,8; 40 N·m | 100 N·m: 99,5; 101 N·m.',
  },
  'point-empty': { allowed: 'réglage: lectures', hint: 'Il n’y a rien entre deux | : en enlever un.' },
  'point-without-setting': {
    allowed: 'réglage: lectures',
    hint: 'Écrire avant le deux-points ce que dit la clé : 100 N·m: 99,5; 101 N·m.',
  },
  'point-without-readings': {
    allowed: 'réglage: lectures',
    hint: 'Écrire derrière le deux-points ce que la référence a montré : 100 N·m: 99,5; 101 N·m.',
  },
  'too-many-in-point': {
    allowed: 'au plus {most} lectures par point',
    hint: 'Ne pas donner plus de {most} lectures à un point.',
  },
  'no-such-day': {
    allowed: 'un jour du calendrier',
    hint: 'Ce jour n’existe pas : ce mois finit le {last}.',
  },
  'year-out-of-range': {
    allowed: 'une année de {first} à {last}',
    hint: 'Revoir l’année : {first} à {last}.',
  },
  'not-whole': { allowed: 'un nombre entier', hint: 'Enlever la partie derrière la virgule.' },
  'interval-twice': {
    allowed: 'months (mois) une fois, uses (utilisations) une fois',
    hint: 'Donner months une fois et uses une fois.',
  },
  'event-without-day': { allowed: '{event}@année-mois-jour', hint: 'Dire quand : {event}@2026-03-01.' },
  'event-one-day': {
    allowed: '{event}@année-mois-jour',
    hint: 'C’est l’affaire d’un seul jour : {event}@2026-03-01. Une période est pour wound-up (laissée tendue).',
  },
  'days-reversed': {
    allowed: 'le jour le plus ancien d’abord',
    hint: 'Écrire d’abord le jour le plus ancien, puis le plus récent.',
  },
  'not-a-text': {
    allowed: 'un texte, ou une liste de textes',
    hint: 'L’écrire comme un texte avec son unité : "120 N·m".',
  },
  'not-an-object': { allowed: 'un objet JSON d’entrées', hint: 'Envoyer un objet : {example}.' },
  'not-a-choice': { allowed: '{options}', hint: 'Taper l’un de {options}.' },
  'not-a-size': {
    allowed: 'une taille de filetage comme {options}',
    hint: 'Taper le filetage, pas la tête : {options}.',
  },
  'not-a-seat': { allowed: '{options}', hint: 'Taper l’appui comme forme, extérieur x trou : {options}.' },
  'not-a-share': { allowed: '{options}', hint: 'Taper un pourcentage et de quoi : {options}.' },
  'no-usual-pitch': {
    allowed: 'une taille de la norme, ou une avec son pas',
    hint: 'Aucun pas usuel n’est connu pour cette taille : l’écrire derrière le diamètre, M13x1.5.',
  },
  'class-not-for-size': {
    allowed: 'une classe que la norme a pour {size}',
    hint: 'La norme n’a pas une telle classe pour {size} : revoir size et class.',
  },
  'friction-twice': {
    allowed: 'un seul de condition, k, ou mu-threads avec mu-seat',
    hint: 'Indiquer le frottement d’une seule façon.',
  },
  'seat-cannot-be': {
    allowed:
      'un diamètre extérieur plus grand que le trou ; un cône d’au plus 180° ; un bombé plus grand que son anneau',
    hint: 'Revoir l’appui : extérieur x trou, angle total, rayon du bombé.',
  },
  'no-proof-load': {
    allowed: 'une part de la limite d’élasticité (yield)',
    hint: '{class} n’a pas de charge d’épreuve : taper une part de la limite d’élasticité, 75 % of yield.',
  },
  'thread-part-above-torque': {
    allowed: 'moins que {limit}',
    hint: 'La part dans le filetage est moins que le couple entier : revoir les deux.',
  },
  'force-past-yield': {
    allowed: 'au plus {limit}',
    hint: 'Au-delà de la limite d’élasticité, la formule ne vaut pas : elle s’arrête à {limit}, {turn} à partir de l’accostage.',
  },
  'turn-or-force': {
    allowed: 'clamp-force ou turn',
    hint: 'Donner celui qui est connu : l’autre est calculé.',
  },
  'own-factors-and-where': {
    allowed: 'k-from et k-to, ou where',
    hint: 'Un facteur K vaut pour le filetage et l’appui ensemble : omettre where, ou omettre k-from et k-to.',
  },
  'not-a-point': {
    allowed: 'ce que dit la clé, deux-points, ce que la référence a montré',
    hint: 'Taper un point comme {example}.',
  },
  'not-a-date': { allowed: 'un jour du calendrier : année-mois-jour', hint: 'Taper le jour comme 2026-03-01.' },
  'not-an-interval': {
    allowed: 'months (mois), uses (utilisations), ou les deux',
    hint: 'Taper 12 months, ou 5000 uses.',
  },
  'not-an-event': {
    allowed: '{options}',
    hint: 'Taper ce qui est arrivé et quand : dropped@2026-03-01 (tombée).',
  },
  'kinds-differ': {
    allowed: 'des lectures d’une même sorte',
    hint: 'Les deux séries doivent être d’une même sorte : donner les deux en {unit}, ou les deux en nombres simples.',
  },
  'mean-not-above-zero': {
    allowed: 'des lectures a dont la moyenne est au-dessus de 0',
    hint: 'Une différence en % demande une moyenne de a au-dessus de 0.',
  },
  'too-few-readings': { allowed: 'au moins deux lectures', hint: 'Donner au moins deux lectures de chacune.' },
  'not-a-unit': { allowed: '{options}', hint: 'Taper l’un de {options}.' },
  'one-value-only': {
    allowed: 'une valeur',
    hint: 'Une plage n’est prise que là où un couple est demandé : taper une valeur.',
  },
  'span-reversed': {
    allowed: 'la borne basse d’abord',
    hint: 'Taper d’abord la borne basse, puis la haute.',
  },
  'too-many': { allowed: 'au plus {most}', hint: 'Ne pas donner plus de {most}.' },
  'too-few': {
    allowed: 'les deux bornes, ou une tolérance',
    hint: 'Taper les deux bornes : 90–110 N·m, ou 100 ± 10 N·m.',
  },
  'too-long': { allowed: 'au plus {most} caractères', hint: 'Taper la valeur seule.' },
  'above-limit': {
    allowed: 'au plus {limit}',
    hint: 'Revoir le nombre et son unité : au plus {limit} est accepté.',
  },
  'below-limit': {
    allowed: 'au moins {limit}',
    hint: 'Revoir le nombre et son unité : au moins {limit} est accepté.',
  },
  'pivot-and-type': {
    allowed: 'pas de pivot, ou 0, avec une clé qui mesure au carré ({type})',
    hint: 'Omettre le pivot ou le genre de clé : une clé de ce genre mesure à son carré.',
  },
  'hand-inside-pivot': {
    allowed: 'une main plus loin du carré que {limit}',
    hint: 'Une clé de ce genre peut déclencher jusqu’à {limit} du carré : tirer plus loin, ou mesurer et taper son pivot.',
  },
  'pivot-past-hand': {
    allowed: 'un pivot plus près du carré que {limit}',
    hint: 'La main doit tirer plus loin du carré que le pivot : revoir les deux longueurs.',
  },
  'head-too-long': {
    allowed: 'un écart de {limit} au plus',
    hint: 'Aucune tête n’est aussi longue : revoir le signe, le nombre et son unité.',
  },
  'hinge-past-lever': {
    allowed: 'une articulation plus près du carré que {limit}',
    hint: 'L’articulation se trouve entre le carré et la main : revoir les deux longueurs et leurs unités.',
  },
  'hand-inside-any-pivot': {
    allowed: 'une main plus loin du carré que {limit}',
    hint: 'Certaines clés déclenchent jusqu’à {limit} : tirer plus loin, ou taper leur pivot ou leur type (wrench-type).',
  },
  'head-past-lever': {
    allowed: 'un changement de moins de {limit}',
    hint: 'Une tête ne peut pas être raccourcie de tout le levier : revoir les longueurs.',
  },
  'balance-past-pull': {
    allowed: 'au plus environ aussi loin que la traction : {limit}',
    hint: 'Une clé est en équilibre entre son carré et sa poignée : revoir les deux longueurs et leurs unités.',
  },
  'weight-beats-pull': {
    allowed: 'plus que {weight}',
    hint: 'Le poids de la clé elle-même est plus que cette traction : revoir la force, ou laisser pendre le manche (lie: upright).',
  },
  'too-doubtful': {
    allowed: 'une distance dont les erreurs changent le couple de moins de ±{limit}',
    hint: 'Ne pas faire ainsi : sur une distance aussi courte, de petites erreurs de main et de mesure décident du couple, et aucun nombre ne peut être donné. Tenir plus loin du carré, ou tourner ou raccourcir l’adaptateur.',
  },
  'pivot-decides': {
    allowed: 'une main plus loin du carré, ou un pivot connu',
    hint: 'Ne pas faire ainsi : avec la main si près du carré, tout dépend d’où la clé déclenche, d’un facteur {apart}. Tenir plus loin du carré, ou donner pivot.',
  },
  'not-a-tolerance': {
    allowed: '{options}',
    hint: 'Taper un pourcentage, et de quoi si ce n’est pas de la lecture : {options}.',
  },
  'behind-the-hand': {
    allowed: 'un adaptateur qui finit devant la main',
    hint: 'Cet adaptateur revient en arrière de {reach}, jusqu’à la main à {held} ou au-delà : la traction tournerait la fixation à l’envers. En prendre un plus court ou une autre direction.',
  },
  'angle-stage': {
    allowed: 'le couple seul',
    hint: 'Couple et rotation sont deux étapes : taper le couple ; aucun levier ne change la rotation.',
  },
} as const
