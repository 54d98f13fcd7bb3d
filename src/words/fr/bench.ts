// What people read of bench runs: what is asked for when one is kept, what may be said from its readings, its pages and commands.

import { benchSay } from './bench-say.ts'

export const bench = {
  inputs: {
    run: { ask: 'le repère de la série', measure: 'Comme elle a commencé : B-01.' },
    asked: { ask: 'ce que la série doit dire', measure: 'Une question, en une phrase.' },
    conditions: {
      ask: 'ce qui change, condition par condition',
      measure: 'La première sert de référence aux autres. A: sec | B: huilé',
    },
    same: { ask: 'ce qui reste pareil', measure: 'Chaque partie après un | ou sur sa propre ligne.' },
    size: { ask: 'la taille du filetage', measure: 'M12, M12x1,5, 3/8-16.' },
    class: { ask: 'la classe de la vis', measure: 'Sur la tête : 8.8, A2-70, SAE 5.' },
    diameter: { ask: 'le diamètre nominal', measure: 'Là où la taille ne le dit pas.' },
    threads: { ask: 'l’état du filetage et de l’appui', measure: 'Là où il reste pareil : dry, oiled, wax.' },
    seat: { ask: 'l’appui', measure: 'flat 18 mm x 13 mm : extérieur, puis trou.' },
    again: { ask: 'quand mesurer de nouveau', measure: 'Mois après le premier jour : 1; 3; 6 months.' },
    condition: { ask: 'dans quelle condition', measure: 'Par son nom : A.' },
    torque: { ask: 'le couple délivré', measure: 'Un ou plusieurs : 99,5; 101; 100,2 N·m' },
    'clamp-force': { ask: 'l’effort de serrage', measure: 'Dans l’ordre des couples : 24,1; 25 kN' },
    angle: { ask: 'l’angle tourné', measure: 'Dans le même ordre : 42°; 44°' },
    'wrench-reading': { ask: 'ce que disait la clé', measure: 'Dans le même ordre : 100; 100 N·m' },
    reading: { ask: 'quelles mesures de la série', measure: 'Par le numéro devant elles dans la série : 2.' },
    piece: { ask: 'quelle pièce chaque fois', measure: 'Là où les mêmes pièces sont remesurées : 1; 2; 3' },
  },
  cautions: {
    'bench-factor':
      'K a été mesuré ici, {run} ({condition}) : {k}, la prochaine vis entre {low} et {high}, n = {n}, {days}, {size}. Cela ne vaut que pour ces vis, cet appui et cette main.',
    'bench-other-size': 'Cette série portait sur {size}, pas sur la taille demandée : son K peut être autre.',
    'bench-matters':
      'Mesuré ici, {run} : {b} contre {a} {size} ({low} à {high}), ce qui compte (±{margin}) ; n = {n}, {days}.',
    'bench-small':
      'Mesuré ici, {run} : {b} contre {a} {size} ({low} à {high}), trop peu pour compter (±{margin}) ; n = {n}, {days}.',
    'bench-open':
      'Mesuré ici, {run} : {b} contre {a} {size} ({low} à {high}), ce qui ne tranche pas (±{margin}) ; n = {n}, {days}.',
  },
  asking: {
    bench: {
      label: 'Série d’essais',
      ask: 'une série d’essais terminée de cet atelier, qui donne le facteur K ou un verdict',
      measure: 'Son repère et, après une espace, la condition : B-01 A.',
    },
  },
  labels: {
    run: 'Série',
    asked: 'Ce qui est demandé',
    conditions: 'Conditions',
    same: 'Reste pareil',
    size: 'Taille du filetage',
    class: 'Classe',
    diameter: 'Diamètre nominal',
    threads: 'État du filetage et de l’appui',
    seat: 'Appui',
    again: 'Mesuré de nouveau après',
    condition: 'Condition',
    torque: 'Couple délivré',
    'clamp-force': 'Effort de serrage',
    angle: 'Angle tourné',
    'wrench-reading': 'La clé disait',
    piece: 'Pièces',
  },
  kinds: { run: 'série d’essais', 'run-reading': 'mesures d’une série', 'run-finish': 'fin d’une série' },
  forms: { run: 'Commencer une série', 'run-reading': 'Ajouter des mesures', 'run-finish': 'Terminer la série' },
  corrections: {
    run: 'Corriger la série',
    'run-reading': 'Corriger des mesures',
    'run-finish': 'Corriger la fin de la série',
  },
  faults: {
    'no-such-run': {
      allowed: 'le repère d’une série d’essais',
      hint: 'Aucune série n’a ce repère : regarder le repère, ou commencer la série.',
    },
    'no-such-condition': {
      allowed: '{options}',
      hint: 'Cette série n’a pas de condition de ce nom : prendre {options}, ou corriger la série.',
    },
    'no-such-reading': {
      allowed: '{options}',
      hint: 'Ces mesures ne sont pas dans la série : regardez la série et tapez le numéro devant elles.',
    },
    'not-a-condition': {
      allowed: 'un nom et, après deux-points, ce que c’est',
      hint: 'Donner à la condition un nom court : A: sec, comme livré.',
    },
    'conditions-alike': {
      allowed: 'un nom pour chaque condition',
      hint: 'Deux conditions portent le même nom : en renommer une.',
    },
    'condition-in-use': {
      allowed: 'chaque condition sous laquelle on a mesuré',
      hint: 'Il y a des mesures sous cette condition : la garder, ou retirer d’abord ces mesures.',
    },
    'not-months': { allowed: '1 à 120 mois', hint: 'Taper des mois entiers : 1; 3; 6 months.' },
    'not-planned': {
      allowed: '{options}',
      hint: 'Aucune reprise de ce genre n’est prévue : l’omettre pour la série elle-même, ou corriger son plan.',
    },
    'run-finished': {
      allowed: 'une série en cours',
      hint: 'Cette série est terminée : en commencer une autre, ou retirer d’abord sa fin.',
    },
    'run-full': {
      allowed: 'au plus {most} entrées',
      hint: 'Cette série est pleine : la terminer et en commencer une autre.',
    },
    'run-in-use': { allowed: 'une série sans mesures', hint: 'Elle porte des mesures : les retirer d’abord.' },
    'lists-uneven': {
      allowed: 'autant que sous {other} : {count}',
      hint: 'Les mesures côte à côte sont du même geste : donner à chaque liste une valeur par geste.',
    },
    'not-a-run-reference': {
      allowed: 'le repère d’une série et, après une espace, la condition : B-01 A',
      hint: 'Nommer la série par son repère et, après une espace, la condition : B-01 A.',
    },
    'run-not-finished': {
      allowed: 'une série terminée',
      hint: 'Cette série continue et dira peut-être autre chose demain : la terminer, puis la nommer.',
    },
    'which-condition': { allowed: '{options}', hint: 'Cette série a plusieurs conditions : dire laquelle, {options}.' },
    'run-without-factor': {
      allowed: 'une condition avec au moins deux mesures de couple et d’effort, et la taille du filetage',
      hint: 'Cette série n’y donne aucun facteur K : l’omettre, ou mesurer couple et effort ensemble.',
    },
    'run-without-verdict': {
      allowed: 'une série mesurée au moins deux fois sous deux conditions',
      hint: 'Cette série ne dit encore rien d’une condition contre une autre : l’omettre.',
    },
    'run-too-doubtful': {
      allowed: 'une série dont la prochaine vis est connue mieux qu’à moitié',
      hint: 'Ses mesures laissent K entre {low} et {high} : on ne calcule pas avec cela. Ajouter des mesures, ou omettre la série.',
    },
    'one-run-wanted': { allowed: 'une série', hint: 'Nommer une série et une condition : B-01 A.' },
    'two-runs-wanted': {
      allowed: 'deux : d’où vient K, puis où il va',
      hint: 'Nommer d’où l’on vient, puis où l’on va : B-01 A; B-01 B.',
    },
    'no-bench': {
      allowed: 'un poste qui garde des séries d’essais',
      hint: 'Aucune série d’essais ne peut être regardée ici : l’omettre, ou demander au poste de l’atelier.',
    },
  },
  states: { planned: 'prévue', 'under-way': 'en cours', finished: 'terminée' },
  subjects: {
    clamp: 'effort de serrage',
    torque: 'couple',
    angle: 'angle',
    wrench: 'indication de la clé',
    K: 'facteur K',
  },
  say: benchSay,
  gaps: {
    'one-condition': 'il y a une seule condition, et rien à quoi la comparer.',
    'too-few': '{condition} a moins de deux mesures.',
    'baseline-not-above-0': 'la moyenne de {condition} n’est pas au-dessus de 0.',
    'no-line': '{condition} a trop peu de mesures pour une droite.',
    'no-diameter': 'la taille du filetage n’a pas été dite.',
  },
  page: {
    title: 'Séries d’essais',
    none: 'Aucune série d’essais n’est encore gardée.',
    begin: 'Commencer une série',
    add: 'Ajouter une mesure',
    many: 'En ajouter plusieurs',
    finish: 'La terminer',
    said: 'Ce qu’elle dit',
    ahead: 'Ce qu’elle peut voir',
    held: 'Reste pareil',
    readings: 'Mesures',
    again: 'Mesuré de nouveau',
    limits: 'Jusqu’où elle vaut',
    sheet: 'En tableau',
    card: 'En image à partager',
    data: 'En données',
    back: 'Toutes les séries',
    begun: 'commencée le {date}',
    cite: 'Une question peut la nommer : bench={tag}.',
    day: 'Jour',
  },
  offers: {
    start: 'commencer une série d’essais : ce qui est demandé, ce qui reste pareil, ce qui change',
    add: 'ajouter des mesures à une série d’essais',
    correct: 'corriger des mesures d’une série d’essais : leur numéro, ce qui est juste, et pourquoi',
    'take-back': 'retirer des mesures d’une série d’essais : leur numéro, et pourquoi',
    show: 'une série d’essais : ce qu’elle dit jusqu’ici, ses mesures, son dessin',
    finish: 'terminer une série d’essais',
    list: 'les séries d’essais, par leur repère',
  },
  names: { correct: 'corriger', 'take-back': 'retirer-mesures', start: 'commencer', finish: 'terminer' },
  chat: {
    kept: '{run} : gardé.',
    noSuchRun: 'Aucune série d’essais n’a ce repère : regarder la liste.',
  },
  terminal: {
    usage: 'npm run ask -- bench [start | add | correct | take-back | show | list | finish] entrée="valeur" …',
    kept: '{id} est gardé.',
  },
  problems: {
    'no-such-run': {
      title: 'Aucune série d’essais n’a ce repère',
      next: 'Les séries d’essais sont sur leur propre page.',
    },
  },
  digest: 'Séries d’essais à mesurer de nouveau',
} as const
