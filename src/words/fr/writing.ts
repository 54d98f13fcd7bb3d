// What is said where something written cannot be kept as it came, at any door.

export const writing = {
  faults: {
    'sheet-twice': {
      allowed: 'chaque ligne une fois',
      hint: 'La ligne {line} dit la même chose : enlever l’une des deux, ou donner à chacune sa propre key si les deux comptent.',
    },
    'sheet-not-utf8': {
      allowed: 'UTF-8',
      hint: 'Enregistrer la feuille en UTF-8 et l’envoyer encore une fois : sinon des lettres sont perdues.',
    },
    'text-hidden': {
      allowed: 'ce qui se voit et s’imprime',
      hint: 'Il contient un signe que personne ne voit : le saisir de nouveau à la main.',
    },
    'text-one-line': { allowed: 'une ligne', hint: 'L’écrire sur une seule ligne.' },
  },
  sentBefore:
    'Ce formulaire a déjà été envoyé avec un autre contenu, et celui-là a été conservé. S’il faut conserver aussi celui-ci, l’envoyer encore une fois.',
  carried: 'Ce qui a été saisi est toujours là. S’identifier, le revoir et l’envoyer.',
} as const
