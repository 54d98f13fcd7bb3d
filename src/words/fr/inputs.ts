// Each input: its name on a form, how it is asked for, how it is measured.

export const inputs = {
  torque: {
    label: 'Couple',
    ask: 'le couple que la fixation doit recevoir',
    measure: 'Du manuel du constructeur, avec son unité.',
  },
  tilt: {
    label: 'Inclinaison',
    ask: 'de combien le manche est incliné par rapport à la position droite',
    measure: '0° quand le manche est dans le plan où tourne la fixation.',
  },
  hinge: {
    label: 'Articulation',
    ask: 'à quelle distance du carré est l’articulation',
    measure: 'Du centre du carré à l’axe de l’articulation.',
  },
  sensing: {
    label: 'Où elle mesure',
    ask: 'où la clé mesure : ahead (devant l’articulation) ou behind (derrière)',
    measure:
      'ahead (devant, côté carré) : la plupart des clés à lecture directe et électroniques ; behind (derrière, côté manche) : la plupart de celles à déclic.',
  },
  length: {
    label: 'Longueur des rallonges',
    ask: 'la longueur totale des rallonges',
    measure: 'De carré à carré, toutes les rallonges ensemble.',
  },
  drive: {
    label: 'Carré',
    ask: 'le carré de la rallonge, ou son diamètre',
    measure: '1/4, 3/8, 1/2, 3/4 ou 1 in.',
  },
  part: {
    label: 'Autres carrés',
    ask: 'les carrés de ce qui est encore accroché dessous',
    measure: '1/4, 3/8, 1/2, 3/4 ou 1 in, chacun ; jusqu’à huit.',
  },
  'torque-ratio': {
    label: 'Rapport de couple',
    ask: 'le rapport de couple (torque-ratio) ou de tours (turns-ratio), celui qui est marqué',
    measure: 'Sur sa plaque ou son certificat : couple de sortie pour le couple d’entrée, pertes comprises.',
  },
  'turns-ratio': {
    label: 'Rapport de tours',
    ask: 'le rapport de tours',
    measure: 'Tours à l’entrée pour un tour à la sortie ; les pertes n’y sont pas.',
  },
  efficiency: {
    label: 'Rendement',
    ask: 'le rendement du multiplicateur',
    measure: 'De son certificat, en % ou de 0 à 1.',
  },
  'run-on': {
    label: 'Couple d’autofreinage',
    ask: 'le couple qui fait tourner l’écrou autofreiné avant qu’il vienne en appui',
    measure: 'Le lire pendant que l’écrou tourne, avec son unité.',
  },
  reading: {
    label: 'Lecture',
    ask: 'ce que la clé a montré, ou où elle a fait son déclic',
    measure: 'Le lire sur la clé, avec son unité.',
  },
  setting: {
    label: 'Réglage',
    ask: 'à quoi la clé est réglée',
    measure: 'Le lire sur la clé, avec son unité.',
  },
  lever: {
    label: 'Levier',
    ask: 'le levier de la clé',
    measure: 'Du centre du carré au centre de la poignée, au réglage qui sera utilisé ; pas la longueur hors tout.',
  },
  adapter: {
    label: 'Adaptateur',
    ask: 'la longueur de l’adaptateur, et sa direction s’il n’est pas droit devant',
    measure: 'Du centre du trou carré au centre de la fixation ; pas d’un bout à l’autre, pas l’ouverture de la clé.',
  },
  angle: {
    label: 'Angle',
    ask: 'l’angle de l’adaptateur par rapport à l’axe de la clé',
    measure: '0° droit devant, 90° d’équerre, 180° en arrière, vers la main ; + vers le côté où tourne le manche.',
  },
  hand: {
    label: 'Main',
    ask: 'où la main tire vraiment',
    measure: 'Du centre du carré au milieu de la main.',
  },
  pivot: {
    label: 'Pivot',
    ask: 'où la clé déclenche (pivot), ou de quel genre elle est (wrench-type)',
    measure:
      'Du centre du carré à l’axe sur lequel la tête bascule ; deux tractions au même réglage le donnent (pivot-offset).',
  },
  'wrench-type': {
    label: 'Genre de clé',
    ask: 'quel genre de clé c’est',
    measure:
      'click (à déclic), split-beam (à barre fendue), beam (à barre de flexion), dial (à cadran) ou electronic (électronique).',
  },
  tolerance: {
    label: 'Tolérance',
    ask: 'la tolérance de la clé',
    measure: 'De son certificat ou de sa notice, en %.',
  },
  mark: {
    label: 'Échelon',
    ask: 'le pas entre deux graduations de l’échelle de la clé',
    measure: 'Le lire sur l’échelle, avec son unité.',
  },
  least: {
    label: 'Minimum',
    ask: 'la graduation la plus basse de la clé',
    measure: 'La lire sur l’échelle, avec son unité.',
  },
  most: {
    label: 'Maximum',
    ask: 'la graduation la plus haute de la clé',
    measure: 'La lire sur l’échelle, avec son unité.',
  },
  'torque-at-lever': {
    label: 'Couple, main au levier',
    ask: 'le couple atteint avec la main au levier',
    measure: 'Sur un testeur, à un même réglage, la moyenne de plusieurs tractions.',
  },
  'torque-at-hand': {
    label: 'Couple, main déplacée',
    ask: 'le couple atteint avec la main déplacée',
    measure: 'Sur le même testeur au même réglage, la moyenne de plusieurs tractions.',
  },
  'fitting-change': {
    label: 'Différence de tête',
    ask: 'de combien la tête utilisée est plus longue (+) ou plus courte (-)',
    measure: 'De centre à centre : tête utilisée moins la tête avec laquelle la clé a été étalonnée.',
  },
  quantity: {
    label: 'Grandeur',
    ask: 'ce qui est à convertir, avec son unité',
    measure: 'Un nombre et une unité, comme 20 N·m.',
  },
  wrench: {
    label: 'Clé',
    ask: 'le repère de la clé dans le registre',
    measure: 'Il est accroché avec la clé et figure au tableau.',
  },
  to: {
    label: 'Vers',
    ask: 'l’état futur du filetage et de l’appui, ou l’unité dans laquelle convertir',
    measure: 'Choisir dans la liste.',
  },
  from: {
    label: 'De',
    ask: 'l’état du filetage pour lequel vaut la valeur du constructeur',
    measure: 'Il figure à côté du couple dans le manuel ; sinon, demander au constructeur.',
  },
  'k-from': {
    label: 'Facteur K, avant',
    ask: 'le facteur K pour lequel vaut la valeur',
    measure: 'De vos propres essais (nut-factor) ou d’une fiche technique.',
  },
  'k-to': {
    label: 'Facteur K, après',
    ask: 'le facteur K du nouvel état',
    measure: 'De vos propres essais (nut-factor) ou d’une fiche technique.',
  },
  condition: {
    label: 'État',
    ask: 'l’état filetage et appui (condition), son facteur K (k), ou ses frottements (mu-threads, mu-seat)',
    measure:
      'dry (sec), oiled (huilé), greased (graissé), anti-seize (antigrippant) … : tel que la fixation sera serrée.',
  },
  k: {
    label: 'Facteur K',
    ask: 'le facteur K',
    measure: 'De vos propres essais (nut-factor) ou d’une fiche technique.',
  },
  'mu-threads': {
    label: 'Frottement dans le filetage',
    ask: 'le frottement dans le filetage',
    measure: 'D’une fiche technique ; un nombre simple comme 0,14.',
  },
  'mu-seat': {
    label: 'Frottement à l’appui',
    ask: 'le frottement sous la tête ou sous l’écrou',
    measure: 'D’une fiche technique ; un nombre simple comme 0,14.',
  },
  'mu-from': { label: 'Frottement, avant', ask: '', measure: '' },
  'mu-to': { label: 'Frottement, après', ask: '', measure: '' },
  pitch: { label: 'Pas', ask: '', measure: '' },
  class: {
    label: 'Classe',
    ask: 'la classe ou le grade de la fixation',
    measure: 'Frappé sur sa tête : 8.8, 10.9, A2-70 ; des traits en rayons sont des grades SAE.',
  },
  seat: {
    label: 'Appui',
    ask: 'l’appui sous la tête ou l’écrou, diamètre extérieur x trou',
    measure:
      'flat (plat) 18 mm x 13 mm ; cone (cône) 60° 18 mm x 13 mm (angle total) ; ball (bombé) 14 mm 18 mm x 13 mm (rayon).',
  },
  share: {
    label: 'Part de la résistance',
    ask: 'quelle part de sa résistance la vis peut utiliser',
    measure: '75 % of proof (de la charge d’épreuve), ou 90 % of yield (de la limite d’élasticité).',
  },
  where: {
    label: 'Où',
    ask: 'où va le lubrifiant : both (les deux), threads (filetage) ou seat (appui)',
    measure: 'both : sur le filetage et sous la tête ou l’écrou.',
  },
  'grip-length': {
    label: 'Longueur serrée',
    ask: 'l’épaisseur qui est serrée',
    measure: 'Du dessous de la tête à la face de l’écrou, rondelles comprises.',
  },
  turn: {
    label: 'Rotation',
    ask: 'la rotation à partir de l’accostage',
    measure: 'En degrés, à l’écrou ou à la tête ; pas au manche d’une longue rallonge.',
  },
  'thread-length': {
    label: 'Longueur filetée',
    ask: 'quelle longueur de la vis est filetée',
    measure: 'De son bout jusqu’au début de la tige lisse.',
  },
  'thread-torque': {
    label: 'Couple dans le filetage',
    ask: 'la part du couple que prend le filetage',
    measure: 'D’un banc d’essai qui la mesure à part, une pour chaque essai.',
  },
  size: {
    label: 'Taille',
    ask: 'la taille du filetage, ou son diamètre',
    measure: 'Frappée sur la vis ou mesurée sur le filetage : M12, M12x1.5, 3/8-16 ; pas la taille de la tête.',
  },
  diameter: {
    label: 'Diamètre',
    ask: 'le diamètre nominal du filetage',
    measure: 'Sur le filetage ; pas la taille de la tête.',
  },
  'clamp-force': {
    label: 'Force de serrage',
    ask: 'la force de serrage de chaque essai',
    measure: 'D’une rondelle de mesure de force, ou de l’allongement de la vis.',
  },
  distance: {
    label: 'Distance',
    ask: 'à quelle distance du carré tire le peson',
    measure: 'Du centre du carré au crochet, le long du manche ; au centre de la poignée.',
  },
  force: {
    label: 'Force',
    ask: 'ce que le peson a montré',
    measure: 'La plus haute valeur avant le déclic, avec son unité ; ajouter le poids du crochet et du seau.',
  },
  'pull-angle': {
    label: 'Angle de traction',
    ask: 'de combien la traction s’écarte de l’équerre au manche',
    measure: '0° quand la corde est d’équerre au manche.',
  },
  'wrench-mass': { label: 'Masse de la clé', ask: 'ce que pèse la clé', measure: 'Sur le peson.' },
  'balance-point': {
    label: 'Point d’équilibre',
    ask: 'où la clé est en équilibre',
    measure: 'Du centre du carré à l’endroit où elle tient en équilibre sur une arête.',
  },
  lie: {
    label: 'Position',
    ask: 'position : level (axe du carré et manche horizontaux), upright (axe vertical, ou manche pendant)',
    measure: 'level : son propre poids compte ; upright : il ne compte pas.',
  },
  'pull-direction': {
    label: 'Sens de traction',
    ask: 'si la traction fait tourner le manche vers le bas (down) ou vers le haut (up)',
    measure: 'down : un poids pendu dessus ; up : un peson tiré vers le haut.',
  },
  'gauge-tolerance': {
    label: 'Tolérance du peson',
    ask: 'la précision du peson',
    measure: 'De sa notice, en %, ou face à un poids connu.',
  },
  'gauge-limit': { label: 'Limite du peson', ask: 'jusqu’où va le peson', measure: 'Imprimé dessus.' },
  of: {
    label: 'Tolérance de',
    ask: 'de quoi est la tolérance : reading (de la lecture) ou full-scale (de la pleine échelle)',
    measure: 'Cela figure à côté de la tolérance dans la notice.',
  },
  spec: {
    label: 'Plage demandée',
    ask: 'la plage de couple qui est demandée',
    measure: 'Du manuel du constructeur, les deux bornes : 90–110 N·m.',
  },
  points: {
    label: 'Point',
    ask: 'chaque réglage avec ce que la référence a montré : réglage: lectures, points séparés par |',
    measure:
      'À gauche ce que dit la clé, à droite ce que le testeur a montré chaque fois ; 5 tractions à 20, 60 et 100 % de l’échelle, en montant.',
  },
  'iso-type': {
    label: 'Type (ISO 6789)',
    ask: 'son type selon ISO 6789 : indicating (à lecture directe) ou setting (à déclenchement)',
    measure:
      'indicating : on lit un cadran, une barre ou un afficheur ; setting : on la règle et elle fait un déclic. Sur son certificat.',
  },
  'iso-class': {
    label: 'Classe (ISO 6789)',
    ask: 'sa classe selon ISO 6789, une lettre de A à G',
    measure: 'Sur son certificat ou dans sa notice.',
  },
  'gauge-uncertainty': {
    label: 'Incertitude de la référence',
    ask: 'l’incertitude de la référence, en %',
    measure: 'De son certificat : l’incertitude élargie (k = 2).',
  },
  rule: {
    label: 'Règle de décision',
    ask: 'si l’incertitude de la référence compte : simple (non) ou guarded (oui)',
    measure: 'guarded demande gauge-uncertainty.',
  },
  a: {
    label: 'Lectures A',
    ask: 'la première série de lectures, à laquelle l’autre est comparée',
    measure: 'Deux ou plus d’une même sorte, séparées par ;, l’unité une seule fois à la fin ou pas du tout.',
  },
  b: {
    label: 'Lectures B',
    ask: 'la seconde série de lectures',
    measure: 'Deux ou plus de la même sorte que A.',
  },
  margin: {
    label: 'Marge',
    ask: 'à partir de quelle différence cela compte, en % de A',
    measure: 'Ce que le travail supporte : 4 % est ce dont une clé peut s’écarter.',
  },
  confidence: {
    label: 'Confiance',
    ask: 'à quel point la réponse doit être sûre, en %',
    measure: '95 % si rien d’autre n’est demandé.',
  },
  resolution: {
    label: 'Résolution',
    ask: 'le plus petit pas auquel les lectures ont été faites',
    measure: 'Le dernier chiffre ou l’échelon de l’instrument, dans l’unité des lectures.',
  },
  'last-check': {
    label: 'Dernier contrôle',
    ask: 'le jour du dernier contrôle : année-mois-jour',
    measure: 'De son certificat ou de son étiquette : 2026-03-01.',
  },
  uses: {
    label: 'Utilisations',
    ask: 'combien de fois elle a servi depuis le dernier contrôle',
    measure: 'De son compteur, ou une bonne estimation vers le haut.',
  },
  interval: {
    label: 'Intervalle',
    ask: 'combien de temps vaut un contrôle : months (mois), uses (utilisations), ou les deux',
    measure: 'La règle de l’atelier : 12 months; 5000 uses.',
  },
  events: {
    label: 'Événement',
    ask: 'ce qui lui est arrivé, avec le jour : dropped, overloaded, repaired, modified, wound-up',
    measure:
      'événement@année-mois-jour, plusieurs avec ;. dropped : tombée, overloaded : surchargée, repaired : réparée, modified : modifiée, wound-up : laissée tendue. Une période pour wound-up : wound-up@2026-01-01..2026-07-01.',
  },
  'length-doubt': { label: 'Longueurs connues à ±', ask: '', measure: '' },
  'hand-doubt': { label: 'Main placée à ±', ask: '', measure: '' },
  'angle-doubt': { label: 'Angles connus à ±', ask: '', measure: '' },
  'square-doubt': { label: 'Traction d’équerre à ±', ask: '', measure: '' },
  'repeat-doubt': { label: 'Une traction se répète à ±', ask: '', measure: '' },
  find: { label: 'Chercher', ask: 'ce qui est à trouver', measure: '' },
} as const
