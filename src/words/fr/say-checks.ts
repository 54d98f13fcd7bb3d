// What is said of checks: a scale, a reference, tolerances, two sets of readings, the next day.

import { deviation } from './deviation.ts'

export const sayChecks = {
  'happened.dropped': 'elle est tombée',
  'happened.overloaded': 'elle a été surchargée',
  'happened.repaired': 'elle a été réparée',
  'happened.adjusted': 'elle a été réglée',
  'happened.wound-up': 'elle est restée armée',
  'happened.returned': 'elle est revenue, et personne ici ne sait ce qu’elle a subi',
  'happened.found': 'elle a été retrouvée, et personne ici ne sait ce qu’elle a subi',
  'deviation.low': deviation.low,
  'deviation.high': deviation.high,
  'deviation.right': deviation.right,
  'scale-check.torque': 'La traction donne {torque} au carré.',
  'scale-check.within':
    'Réglée à {setting}, la clé a donné {torque} : écart {deviation}, dans l’incertitude de ce contrôle ({low} à {high}).',
  'scale-check.too-wide':
    'On ne peut pas le dire : les lectures sont si éloignées l’une de l’autre que l’incertitude est de ±{band} de {torque}. Chercher l’erreur, et tirer cinq fois.',
  'scale-check.low-by-scale':
    'Pour autant que le peson soit juste : réglée à {setting}, la clé n’a donné que {torque} et donne MOINS qu’indiqué, écart {deviation}.',
  'scale-check.high-by-scale':
    'Pour autant que le peson soit juste : réglée à {setting}, la clé a donné {torque} et donne PLUS qu’indiqué, écart {deviation}.',
  'scale-check.low':
    'Réglée à {setting}, la clé n’a donné que {torque} : elle donne MOINS qu’indiqué, écart {deviation}.',
  'scale-check.high': 'Réglée à {setting}, la clé a donné {torque} : elle donne PLUS qu’indiqué, écart {deviation}.',
  'scale-check.step': 'Couple de la traction',
  'scale-check.step-mean': 'Couple de la traction moyenne',
  'scale-check.deviation':
    'Écart : ce que dit la clé par rapport à la référence (négatif : elle donne plus qu’elle ne dit)',
  'scale-check.doubt': 'Incertitude du couple à 95 % (demi-largeur)',
  'scale-plan.headline': 'À {setting}, à {distance} du carré, chaque lecture du peson doit être entre {low} et {high}.',
  'scale-plan.point': 'Force à {setting}, et la fenêtre de chaque lecture',
  'tolerance-band.band': 'Réglée à {setting}, la clé peut donner {low} à {high}.',
  'tolerance-band.inside': 'Oui : réglée à {setting}, la clé donne {low} à {high}, dans ce qui est demandé.',
  'tolerance-band.partly-outside':
    'Pas sûr : réglée à {setting}, la clé peut donner {low} à {high}, en partie hors de ce qui est demandé.',
  'tolerance-band.outside': 'Non : réglée à {setting}, la clé donne {low} à {high}, hors de ce qui est demandé.',
  'tolerance-band.beyond':
    'Ne pas régler cette clé ainsi : {setting} est au-dessus de sa graduation la plus haute, {most}. Par sa seule tolérance, ce serait {low} à {high}.',
  'tolerance-band.of-reading': 'Tolérance de la lecture (demi-largeur)',
  'tolerance-band.of-full-scale': 'Tolérance de la pleine échelle (demi-largeur)',
  'tolerance-band.share': 'C’est-à-dire, de ce réglage',
  'wrench.tolerance-besides': 'La tolérance de la clé, {tolerance} quand on ne sait rien de mieux, s’y ajoute',
  'wrench-check.pass':
    'Conforme : chaque lecture est à ±{limit} près ; la pire s’écarte de {deviation}, à {setting}, où {way}.',
  'wrench-check.pass-in-doubt':
    'Conforme avec doute : chaque lecture est à ±{limit} près, mais la marge qui reste ne dépasse pas l’erreur possible de la référence ; la pire s’écarte de {deviation}, à {setting}, où {way}.',
  'wrench-check.fail-in-doubt':
    'Non conforme avec doute : une lecture est hors de ±{limit}, mais le dépassement n’est pas plus grand que l’erreur possible de la référence ; la pire s’écarte de {deviation}, à {setting}, où {way}.',
  'wrench-check.fail':
    'Non conforme : hors de ±{limit} ; la pire lecture s’écarte de {deviation}, à {setting}, où {way}.',
  'wrench-check.low': 'la clé donne MOINS qu’indiqué',
  'wrench-check.high': 'la clé donne PLUS qu’indiqué',
  'wrench-check.right': 'la clé donne ce qu’elle indique',
  'wrench-check.limit-maker': 'La limite, celle du fabricant',
  'wrench-check.limit-class':
    'La limite de la norme pour la classe {class} des outils {type}, selon le plus grand couple',
  'wrench-check.limit-most': 'La limite de la norme selon le plus grand couple de la clé',
  'wrench-check.limit-highest':
    'La limite de la norme selon le point le plus haut, comme si c’était tout ce que peut la clé',
  'wrench-check.guard': 'Toute lecture en deçà est conforme, incertitude de la référence comprise',
  'wrench-check.point': 'À {setting} : écart de la moyenne, et où doit être chaque lecture de la référence',
  'wrench-check.worst': 'La pire de toutes les lectures, qui décide',
  'compare.higher': 'B est plus haut que A de {size} ({interval})',
  'compare.lower': 'B est plus bas que A de {size} ({interval})',
  'compare.same': 'les moyennes de B et de A sont égales ({interval})',
  'compare.interval': '{low} à {high} à {confidence}',
  'compare.no-interval': 'aucune borne ne peut être donnée : la moyenne de A ne se distingue pas de 0',
  'compare.seen-too-small-to-matter': 'Vue, trop petite pour compter : {what}, à l’intérieur de ±{margin}.',
  'compare.no-difference-that-matters': 'Pas de différence qui compte : {what}, à l’intérieur de ±{margin}.',
  'compare.a-difference-that-matters': 'Une différence qui compte : {what}, plus que {margin}.',
  'compare.seen-not-decided-whether-it-matters':
    'Vue, pas décidé si elle compte : {what}, face à une marge de ±{margin}.',
  'compare.not-decided': 'Pas décidé : {what}, face à une marge de ±{margin}.',
  'compare.mean-a': 'Moyenne de A, de {n} lectures',
  'compare.mean-b': 'Moyenne de B, de {n} lectures',
  'compare.spread-a': 'Dispersion de A (écart type, pas au-dessous de ce que cache la résolution)',
  'compare.spread-b': 'Dispersion de B (écart type, pas au-dessous de ce que cache la résolution)',
  'compare.variances': 'Rapport des variances, B sur A',
  'compare.difference': 'Différence des moyennes, B moins A, avec les deux bornes de son intervalle',
  'compare.relative':
    'La même en % de A, avec les deux bornes : la moyenne de A n’est pas exacte non plus, et cela y est compris',
  'compare.upper-bound':
    'Le maximum dont B peut dépasser A + {margin} (d’un côté) : au-dessous de 0, B reste dans la marge vers le haut',
  'compare.lower-bound':
    'Le minimum dont B peut dépasser A − {margin} (d’un côté) : au-dessus de 0, B reste dans la marge vers le bas',
  'next-check.months':
    'À faire le {date} : les mois depuis le dernier contrôle ({months}) arrivent alors à leur terme.',
  'next-check.uses': 'À faire maintenant : {uses} utilisations depuis le dernier contrôle, et {allowed} sont admises.',
  'next-check.event': 'À faire depuis le {date} : {event}, et aucun contrôle ne survit à cela.',
  'next-check.months-out': 'Jours du dernier contrôle jusqu’au terme des mois, le {date}',
  'next-check.uses-left': 'Utilisations restantes (0 ou au-dessous : à faire)',
  'next-check.event-after': 'Jours du dernier contrôle jusqu’au {date}, quand {event}',
  'event.dropped': 'elle est tombée',
  'event.overloaded': 'elle a été surchargée',
  'event.repaired': 'elle a été réparée',
  'event.modified': 'elle a été modifiée',
  'event.wound-up': 'elle était restée tendue',
} as const
