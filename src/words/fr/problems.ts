// What a page says where there is no page: what is the matter, and what to do next.

export const problems = {
  'not-found': { title: 'Il n’y a rien ici', next: 'Recommencer à la page de départ, ou regarder le tableau.' },
  'unknown-question': {
    title: 'Cette question n’existe pas',
    next: 'Toutes les questions sont sur la page de départ.',
  },
  'no-such-wrench': {
    title: 'Aucune clé de ce repère n’est dans le registre',
    next: 'Regarder le repère sur la clé, et la choisir sur le tableau.',
  },
  'no-such-check': { title: 'Ce contrôle n’existe pas', next: 'Les contrôles d’une clé sont sur sa page.' },
  'not-readable': {
    title: 'Cela ne peut pas être lu',
    next: 'Rien n’a été enregistré. Recommencer à la page de départ.',
  },
  'too-large': { title: 'C’est trop à la fois', next: 'Rien n’a été enregistré. Revenir et envoyer moins.' },
  'too-many': { title: 'Trop de questions en peu de temps', next: 'Attendre dix secondes et redemander.' },
  'register-away': {
    title: 'Le registre est injoignable pour le moment',
    next: 'Les questions reçoivent quand même une réponse : taper le levier de la clé. Ou réessayer dans un instant.',
  },
  outage: {
    title: 'Quelque chose a lâché ici, ce n’est pas votre question',
    next: 'Réessayer dans un instant. Rien de ce qui a été confirmé n’est perdu.',
  },
  reference: 'Référence, pour ceux qui s’occupent de ce guichet :',
  again: 'Réessayer',
  start: 'À la page de départ',
} as const
