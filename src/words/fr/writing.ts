// Ce qui est dit, à toute porte, quand ce qui est écrit ne peut être conservé tel qu’il est venu.

export const writing = {
  sentBefore:
    'Ce formulaire a déjà été envoyé avec un autre contenu, et celui-là a été conservé. S’il faut conserver aussi celui-ci, l’envoyer encore une fois.',
  carried: 'Ce qui a été saisi est toujours là. S’identifier, le revoir et l’envoyer.',
} as const
