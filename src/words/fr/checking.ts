// What people read while a wrench is checked and in the report of a check: the plan, what is asked next, the verdict so far.

export const checking = {
  faults: {
    'reading-by-ten': {
      allowed: 'environ {low} à {high} à {setting} ; tel quel avec sure: {reading}',
      hint: 'Était-ce {options} ? Retaper la lecture.',
    },
    'reading-in-other-unit': {
      allowed: 'environ {low} à {high} à {setting} ; tel quel avec sure: {reading}',
      hint: 'Quelle unité l’instrument montre-t-il : était-ce {options} ?',
    },
    'gauge-not-of-way': {
      allowed: '{options}',
      hint: '« {type} » ne lit pas ce qu’il faut pour « {way} » : revoir l’instrument, ou la manière.',
    },
    'weight-is-enough': {
      allowed: 'une clé que son propre poids ne fait pas tourner',
      hint: 'Le poids de la clé donne à lui seul plus que le point le plus bas : laisser pendre le manche (lie: upright), ou tirer vers le haut.',
    },
    'reading-not-asked': {
      allowed: 'une lecture quand une lecture est demandée',
      hint: 'Tout ce que le plan demande a été lu : enregistrer le contrôle, ou ajouter des lectures derrière un point.',
    },
  },
  say: {
    planned: 'Régler {wrench} à {settings} dans cet ordre, {readings} lectures à chaque réglage.',
    asking: '{taken} lectures sur {all} sont entrées. Jusqu’ici : {verdict}.',
    whole: 'Toutes les lectures sont entrées : {verdict}.',
    incomplete: 'Pour le plan, il manque encore : {inputs}.',
    refused: 'Corriger ce qui est listé ; rien n’en a été pris.',
    prePull: 'D’abord la tirer une fois jusqu’à {most}, sans noter.',
    prePulls: 'D’abord la tirer {count} fois jusqu’à {most}, sans noter.',
    next: 'Régler {setting}. Lecture {nth} sur {of} : que montre l’instrument ? ({low} à {high} est dans la limite)',
    point: '{setting} ({share}) : l’instrument montre {low} à {high}, au mieux {middle}',
    doubt: 'incertitude de la référence ±{doubt}',
    soFar: '{setting}, lectures : {count} ; moyenne {mean}, écart {deviation}, étendue {spread} : {verdict}',
    limit: 'Admis : ±{limit} {of}, {by}.',
    report: '{wrench}, {state} : {verdict}.',
    runsOut: 'Il suffirait à partir de {distance}.',
    gaugeEnds: 'L’instrument va jusqu’à {most}, ce point demande jusqu’à {high} : prendre un autre instrument.',
    gaugeEndsAt:
      'L’instrument va jusqu’à {most}, ce point demande jusqu’à {high} : prendre un autre instrument, ou tirer à partir de {distance}.',
    order: 'Ordre : en montant. Laisser la clé déclencher une fois par lecture, et la détendre avant la suivante.',
  },
  by: {
    card: 'selon la fiche de cette clé',
    class: 'selon sa classe, ISO 6789-1',
    most: 'selon son plus grand couple, ISO 6789',
  },
  scale: { reading: 'de la lecture', 'full-scale': 'de la pleine échelle' },
  rules: {
    simple:
      'Simple : conforme tant que chaque lecture est dans la limite ; l’incertitude de la référence n’est pas connue.',
    guarded:
      'Avec bande de garde : conforme tant que chaque lecture est dans la limite moins l’incertitude de la référence (ILAC-G8) ; plus près que cela, il y a doute.',
  },
  notes: {
    'gauge-runs-out': 'L’instrument ne va pas aussi loin que le point le plus haut l’exige.',
    'gauge-most-unknown': 'On ne sait pas jusqu’où va l’instrument : le regarder avant le point le plus haut.',
    'marks-unknown':
      'Les graduations de la clé ne sont pas connues : prendre la graduation la plus proche, et dire laquelle.',
    'kind-by-type':
      'Outil à lecture directe ou à déclenchement : déduit de son fonctionnement ; sa fiche ne le dit pas.',
    'unit-on-wrench': 'Une lecture s’écarte d’un quart ou plus : une autre unité a-t-elle été lue sur la clé ?',
    'beyond-most': 'Un point est au-dessus du plus grand couple de la clé.',
    'beyond-gauge':
      'Une lecture dépasse ce que l’instrument montre : son incertitude n’y est pas connue, et rien n’est dit conforme sans réserve.',
    'below-a-fifth': 'Un point est au-dessous d’un cinquième du plus grand couple, où rien n’est garanti.',
    'gauge-unknown': 'L’incertitude de l’instrument n’est pas connue : le verdict la prend comme nulle.',
    'gauge-too-coarse':
      'La référence est plus grossière qu’un quart de la limite : près de la limite, le verdict reste en doute.',
    'gauge-day-unknown': 'On ne sait pas quand l’instrument lui-même a été contrôlé pour la dernière fois.',
    'gauge-overdue': 'L’instrument lui-même n’a pas été contrôlé depuis un an.',
    'own-weight-open': 'La position de la clé n’est pas indiquée : son propre poids n’est pas compté.',
    'distance-not-lever':
      'Elle n’est pas tirée à son levier : une clé à déclenchement peut déclencher à une autre valeur.',
    'temperature-outside': 'Il ne faisait pas entre 18 et 28 °C, comme le veut la norme.',
    'few-points': 'La norme demande plus de points.',
    'few-readings': 'La norme demande plus de lectures par point.',
    'limit-by-most': 'Ni tolérance ni classe sur sa fiche : la limite suit son plus grand couple.',
  },
  /** What a verdict means for whoever holds the wrench. */
  means: {
    pass: 'D’après ces lectures, elle peut servir.',
    'pass-in-doubt':
      'D’après ces lectures, elle peut servir ; si près de la limite, l’instrument ne peut le dire avec certitude. La contrôler encore avec un plus fin.',
    'fail-in-doubt':
      'Ne pas l’employer : une lecture est dehors, de moins que ce que l’instrument peut dire. La contrôler encore avec un plus fin.',
    fail: 'Ne pas l’employer : la mettre de côté, la faire régler ou réparer.',
  },
  states: { 'as-found': 'en l’état', 'as-left': 'après ajustage' },
  ways: {
    hang: 'un poids pendu au manche',
    pull: 'un peson tiré au manche',
    tester: 'un testeur sous le carré',
    laboratory: 'dans un laboratoire',
  },
  kinds: {
    click: 'clé à déclic',
    'split-beam': 'clé à barre fendue',
    beam: 'clé à barre de flexion',
    dial: 'clé à cadran',
    electronic: 'clé électronique',
  },
  weights: {
    level: 'compté : manche horizontal, {mass}, équilibre à {balance}, traction {direction}',
    upright: 'ne compte pas dans cette position',
    open: 'pas compté : la position n’est pas indiquée',
    down: 'vers le bas',
    up: 'vers le haut',
  },
  standing: 'Contrôle de l’atelier lui-même, pas un étalonnage accrédité.',
  terminal: {
    mend: 'À corriger',
    needed: 'Il manque encore',
    retype: 'Retaper la lecture ; ou yes (oui), si l’instrument a montré {reading}.',
    stop: 'Une ligne vide termine.',
    keep: 'Enregistrer ce contrôle ? yes (oui) ou no (non)',
    kept: 'Enregistré sous {id}. Son rapport : /wrench/{tag}/check/{id}',
    notKept: 'Pas enregistré. Pour continuer à partir d’ici :',
  },
  page: {
    title: 'Contrôle de {wrench} le {date}',
    wrench: 'Clé',
    serial: 'numéro',
    lever: 'levier',
    gauge: 'Contrôlée avec',
    noGauge: 'moyen non indiqué',
    checked: 'lui-même contrôlé le {date}',
    tolerance: 'tolérance {tolerance}',
    uncertainty: 'Incertitude de la référence',
    way: 'Comment',
    state: 'État',
    distance: 'Tirée à',
    weight: 'Poids propre de la clé',
    temperature: 'Température',
    remarks: 'Remarques',
    limit: 'Limite',
    rule: 'Règle',
    verdict: 'Verdict',
    setting: 'Réglée à',
    window: 'Dans la limite',
    read: 'Instrument',
    torque: 'Couple',
    mean: 'Moyenne',
    deviation: 'Écart',
    spread: 'Étendue',
    allowed: 'Admis',
    doubt: 'Incertitude',
    know: 'À savoir',
    companion: 'Le contrôle du même jour, {state} : {verdict}',
    later: 'Un contrôle plus récent a pris sa place de dernier contrôle.',
    signed: 'Contrôlé par',
    kept: 'Entrée {id}, enregistrée {at}',
    back: 'Tout sur {wrench}',
    link: 'Rapport du contrôle du {date}, {state}',
  },
} as const
