// What the kiosk's pages say beside the answers: number entry, a shared screen, the way to a phone, how far to trust it all.

export const kiosk = {
  topTasks: 'Le plus demandé',
  more: 'Tout le reste',
  inHand: 'La clé que vous avez en main',
  allWrenches: 'Toutes les clés',
  lost: 'Le serveur est injoignable. Ce que vous voyez reste ; rien de nouveau n’est calculé avant son retour.',
  behind: 'Ceci répond à ce qui était tapé avant.',
  slip: 'Vérifier avant d’utiliser ce nombre',
  asTyped: 'C’est bien tapé : montrer la réponse',
  keypad: 'Touches',
  next: 'Suivant',
  erase: 'Effacer',
  clear: 'Vider',
  close: 'Fermer',
  byAngle: 'Direction',
  noUnit:
    'Pas d’unité à côté de la valeur imprimée ? Ne pas deviner : regarder l’en-tête de la table ou les premières pages du livre. Unité inconnue, pas de nombre : 100 peut être 100 N·m (74 lbf·ft), 100 lbf·ft (136 N·m) ou 100 lbf·in (11 N·m).',
  angleTitle: 'Dans quelle direction va l’adaptateur ?',
  angleHelp:
    'Toucher le dessin là où est la fixation. Le manche est à gauche ; plus est le côté vers lequel il tourne.',
  nowLength: 'Maintenant la longueur',
  take: 'Prendre',
  leave: 'Abandonner',
  straight: 'droit devant',
  square: 'd’équerre',
  back: 'vers la main',
  idleTitle: 'Toujours là ?',
  idleText: 'Cet écran repart du début dans',
  seconds: 's',
  stay: 'Je suis là',
  takeAlong: 'Emporter cette réponse',
  qrAlt: 'Un code pour un téléphone : il ouvre cette page',
  qrNone:
    'Un téléphone ne peut pas ouvrir cette adresse. Régler PUBLIC_URL sur l’adresse par laquelle les téléphones joignent ce guichet.',
  print: 'Pour l’imprimer, utiliser l’impression du navigateur : la page a une forme pour le papier.',
  screen: 'Cet écran',
  screenLead: 'Comment cet écran-ci montre le guichet. C’est enregistré dans ce navigateur et nulle part ailleurs.',
  cardText:
    'Tenir une carte bancaire contre le dessin, et le rendre aussi large que la carte : les touches ont alors la taille annoncée.',
  wider: 'plus large',
  narrower: 'plus étroit',
  perMm: 'Points de l’écran par millimètre',
  keySize: 'Hauteur d’une touche en millimètres',
  distance: 'À quelle distance on lit',
  distances: { near: 'en main', arm: 'à bout de bras', far: 'à deux pas' },
  shared: 'Retour au début après',
  never: 'jamais',
  minutes: { '60': 'une minute', '120': 'deux minutes', '300': 'cinq minutes' },
  ownKeys: 'Touches à l’écran',
  keysWhen: { touch: 'si l’écran est tactile', always: 'toujours' },
  save: 'Enregistrer pour cet écran',
  saved: 'Enregistré.',
  contrast: 'Contraste',
  contrasts: { usual: 'habituel', high: 'noir et blanc' },
  about: 'Jusqu’où s’y fier',
  aboutLead:
    'Il fait l’arithmétique d’un levier et des tables des livres, avec l’incertitude qui va avec. Il ne connaît aucun de vos assemblages.',
  aboutPoints: {
    maker:
      'La valeur et la procédure du constructeur passent d’abord. Ce guichet ne donne jamais un couple de constructeur, et n’en change jamais un au jugé.',
    people:
      'Roues, freins, direction, ceintures de sécurité, levage, pression et aéronefs : une personne qualifiée décide, selon la procédure du constructeur et les règles locales.',
    band: 'Une bande est là où tombent 95 résultats sur 100 si les longueurs, la main et la clé sont aussi bonnes que d’habitude ; ce qui a été pris sans être indiqué est marqué comme supposé.',
    friction:
      'Le frottement des filetages et des appuis varie du simple au double d’un livre à l’autre. Une force de serrage tirée d’un couple est une plage, et la plage est la réponse.',
    silence: 'Là où aucun nombre ne peut être donné, il le dit, et ce qu’il faut mesurer ou à qui demander.',
    check:
      'Un contrôle à l’atelier dit si une clé tient encore sa limite, aussi bien que le peson le permet. Ce n’est pas un étalonnage accrédité.',
    wrong: 'Tout ce qui paraît faux est faux jusqu’à preuve du contraire : s’arrêter, et demander.',
  },
  aboutSources: 'D’où viennent les chiffres',
} as const
