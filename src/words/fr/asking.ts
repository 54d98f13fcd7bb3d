// What is said about free text, in the sections into which it is put: how it was read, what is not answered, what people quote.

export const asking = {
  say: {
    'ask.choice':
      'Ce texte peut se lire de plusieurs façons, et les réponses diffèrent : choisir celle qui est voulue.',
  },
  cautions: {
    'turn-left-aside':
      'La rotation du texte a été laissée de côté : une rotation est une étape à part, et aucun levier ne la change. Si le constructeur demande un couple et une rotation, toute la procédure est celle du constructeur.',
    'quoted-one-minus':
      'La règle citée, T · (1 − A/L), règle plus bas que T · L/(L + A) : il manque à la fixation exactement la part (A/L)² du couple.',
    'quoted-one-foot':
      'La règle citée, T/(1 + la longueur en pieds), vaut pour un levier d’exactement un pied et pour aucun autre.',
    'quoted-square-same':
      'Il est exact qu’un adaptateur à 90° ne demande aucune correction, quelle que soit sa longueur : il n’ajoute rien le long de la clé. Qu’une certaine distance reste la même n’en est pas la raison.',
    'quoted-percent-off':
      'Le pourcentage cité appartient à un seul lubrifiant et à un seul assemblage ; rien ici ne dit que c’est le vôtre.',
    'quoted-bar-as-adapter':
      'La formule citée vaut pour un adaptateur qui s’écarte de la clé ; une rallonge dans l’axe du carré ne demande aucune correction.',
  },
  topics: { ask: 'Avec vos propres mots : de quoi s’agit-il, et quels chiffres avez-vous ?' },
  inputs: {
    text: {
      label: 'Avec vos propres mots',
      ask: 'la question avec vos propres mots, avec ses chiffres et ses unités',
      measure: 'Par exemple : 100 N·m, clé de 450 mm, pied-de-corbeau de 75 mm droit devant, je règle combien ?',
    },
  },
  results: { 'as-quoted': 'Selon la règle citée (la vôtre, pas calculée ici)' },
  faults: {
    'maker-figure': {
      allowed: 'un couple donné par le constructeur',
      hint: 'C’est au constructeur de donner les couples de serrage ; aucun n’est donné ici. Indiquer sa valeur avec votre clé, votre adaptateur ou votre filetage, et le réglage sera calculé.',
    },
    'out-of-scope': {
      allowed: 'une question sur le serrage au couple',
      hint: 'Ici se calculent les réglages de clé avec adaptateurs, cardans et multiplicateurs, la force de serrage et les lubrifiants, les contrôles de clé et les unités. Poser la question avec vos chiffres.',
    },
    'text-too-long': {
      allowed: 'au plus {most} octets',
      hint: 'Demander en moins de mots : la question et ses chiffres.',
    },
  },
  faces: {
    reading: 'Comment c’est lu',
    'as-input': '« {span} » : {label}, {text}',
    'as-followed': '{label}, {text} : pas écrit, déduit du reste',
    'left-aside': 'laissé de côté : {spans}',
    alternatives: 'Ou bien s’agit-il de',
    'work-it-out': 'Calculer ceci',
  },
  page: {
    askTitle: 'Avec vos propres mots',
    askLine: 'Demander avec vos propres mots',
    change: 'Changer les chiffres',
  },
} as const
