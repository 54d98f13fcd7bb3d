// What is to be mended in what should be kept, or read from a sheet.

export const faultsRegister = {
  'sheet-unreadable': {
    allowed: 'valeurs séparées par des virgules (RFC 4180) en UTF-8',
    hint: 'Revoir les guillemets de cette ligne : un guillemet dans une cellule s’écrit deux fois, et chacun qui s’ouvre se ferme.',
  },
  'sheet-column': {
    allowed: '{options}',
    hint: 'Aucune colonne ne porte ce nom : la renommer dans la première ligne, ou l’enlever.',
  },
  'sheet-column-twice': {
    allowed: 'chaque colonne une fois',
    hint: 'Cette colonne est là deux fois : en enlever une.',
  },
  'sheet-empty': {
    allowed: 'une première ligne avec les noms des colonnes, et une ligne par entrée',
    hint: 'Il n’y a rien à lire : une feuille de clés commence par tag,name,wrench-type,most.',
  },
  'sheet-too-long': {
    allowed: 'au plus {most} lignes',
    hint: 'L’envoyer en plusieurs parties ; ce qui a déjà été lu est connu et laissé tel quel.',
  },
  'sheet-cells': {
    allowed: 'au plus {most} cellules',
    hint: 'Cette ligne a plus de cellules qu’il n’y a de colonnes : mettre entre guillemets un texte qui contient le séparateur.',
  },
  'sheet-missing': {
    allowed: 'une cellule remplie',
    hint: 'Ceci est nécessaire : remplir la cellule, ou ajouter la colonne.',
  },
  'sheet-head': {
    allowed: 'id, at, role et door tels qu’une exportation les écrit',
    hint: 'Omettre id, at, role et door pour vos propres entrées ; ils appartiennent à une exportation.',
  },
  'key-taken': {
    allowed: 'une nouvelle Idempotency-Key pour une nouvelle entrée',
    hint: 'Cette Idempotency-Key a servi pour une autre entrée : en envoyer une nouvelle.',
  },
  'others-write': {
    allowed: 'un seul rédacteur à la fois',
    hint: 'D’autres écrivent sur cette clé : la regarder de nouveau, et renvoyer.',
  },
  'no-register-here': {
    allowed: 'un guichet avec un registre de clés',
    hint: 'La réponse vient d’un registre de clés, et aucun ne peut être consulté ici : demander au guichet de l’atelier.',
  },
  'no-register': {
    allowed: 'une clé d’un registre tenu ici',
    hint: 'Aucun registre n’est tenu ici : omettre la clé et donner vous-même son levier.',
  },
  'wrench-not-here': {
    allowed: 'le repère d’une clé du registre',
    hint: 'Aucune clé de ce repère n’est dans le registre : revoir le repère, ou l’omettre et donner vous-même le levier.',
  },
  'not-a-tag': {
    allowed: 'lettres, chiffres, ., - et _, au plus {most}',
    hint: 'Un repère commence par une lettre ou un chiffre et ne contient pas d’espace : W-07.',
  },
  'not-a-temperature': { allowed: '{options}', hint: 'Taper les degrés avec leur unité : {options}.' },
  'readings-not-of-way': {
    allowed: 'une force pour hang et pull, un couple pour tester et laboratory',
    hint: 'Ce qui a été lu ne va pas avec « {way} » : revoir l’unité derrière les lectures, ou la manière.',
  },
  'distance-not-of-way': {
    allowed: 'avec hang et pull seulement',
    hint: 'Avec « {way} », le couple se lit directement : omettre la distance, ou revoir la manière.',
  },
  'units-differ': {
    allowed: 'une seule unité pour toutes les lectures d’un point',
    hint: 'Donner à chaque lecture d’un point la même unité.',
  },
  'most-not-of-gauge': {
    allowed: 'most-torque pour un torque-tester, most-force pour les autres',
    hint: '« {type} » ne lit pas cela : revoir gauge-type, ou utiliser l’autre entrée.',
  },
  'no-such-wrench': {
    allowed: 'le repère d’une clé du registre',
    hint: 'Revoir le repère, ou ajouter d’abord la clé.',
  },
  'no-such-gauge': {
    allowed: 'le repère d’un instrument du registre',
    hint: 'Revoir le repère, ou ajouter d’abord l’instrument.',
  },
  'no-such-entry': { allowed: 'une entrée du registre', hint: 'Rechercher l’entrée et corriger celle-là.' },
  'tag-taken': {
    allowed: 'un repère libre',
    hint: 'Prendre un autre repère, ou corriger la fiche qui porte celui-ci.',
  },
  'tag-fixed': {
    allowed: '{tag}',
    hint: 'Un repère reste avec sa clé ou son instrument : ajouter une nouvelle fiche pour un nouveau repère.',
  },
  'superseded-already': {
    allowed: 'une entrée encore valable',
    hint: 'Quelqu’un a été plus rapide : regarder ce qui vaut maintenant, et corriger cela.',
  },
  'entry-of-other-kind': {
    allowed: 'une entrée de la même sorte',
    hint: 'Cette entrée est d’une autre sorte ({event}) : la retirer et ajouter la bonne.',
  },
  'card-in-use': {
    allowed: 'une fiche sans historique',
    hint: 'Il y a des contrôles ou des événements dessous : réformer la clé, ou corriger sa fiche.',
  },
  'wrench-retired': {
    allowed: 'une clé en service',
    hint: 'Elle a été réformée : retirer d’abord cette réforme si la clé est revenue.',
  },
  'event-without-setting': {
    allowed: 'avec wound-up (laissée tendue) seulement',
    hint: 'Le réglage n’est enregistré que pour une clé laissée tendue ; pour « {event} », l’omettre.',
  },
  'why-missing': {
    allowed: 'une raison en quelques mots',
    hint: 'Dire pourquoi : l’ancienne entrée reste à côté dans le registre.',
  },
  'day-ahead': {
    allowed: 'jusqu’au {date}',
    hint: 'Ce jour est encore à venir : revoir l’année et le mois.',
  },
} as const
