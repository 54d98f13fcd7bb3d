// What does-it-matter says of an asker’s own numbers, and its names: in the sections into which it is put.

export const matters = {
  say: {
    'matter.yes': 'oui, ça compte',
    'matter.no': 'non, ça ne compte pas',
    'matter.depends': 'cela dépend',
    'matter.stored-wound-up.depends': 'cela dépend du réglage et de la durée, et du genre de clé',
    'matter.re-used-nut.depends': 'cela dépend de l’écrou et de son fabricant',
    'matter.washers.depends': 'cela dépend de ce qui glisse',
    'matter.clicked-twice.depends': 'cela dépend comment : lentement, ou par à-coup et au-delà du déclic',
    'matter.hand-position.depends': 'cela dépend de la clé, et d’un adaptateur',
    'matter.changed-head.depends': 'cela dépend d’où est son centre',
    'matter.chained-spanner.depends': 'cela dépend de sa direction',
    'matter.flex-head.depends': 'cela dépend de l’inclinaison et d’où la clé mesure',
    'matter.swivel.depends': 'cela dépend de l’angle du cardan',
    'matter.nothing': 'Non, cela ne compte pas : avec ces nombres, le couple ne change pas.',
    'matter.too-small':
      'Non, cela ne compte pas : cela change le couple de {change}, moins d’un quart de la tolérance de la clé ({tolerance}).',
    'matter.too-small-between':
      'Non, cela ne compte pas : le changement du couple va de {low} à {high}, moins d’un quart de la tolérance de la clé ({tolerance}).',
    'matter.changes': 'Oui, cela compte : laissé tel quel, cela change le couple à la fixation de {change}.',
    'matter.changes-between':
      'Oui, cela compte : laissé tel quel, le changement du couple à la fixation va de {low} à {high}.',
    'matter.changes-dial':
      'Oui, cela compte : laissé tel quel, cela change le couple à la fixation de {change} ; pour {torque}, régler {setting}.',
    'matter.perhaps':
      'Cela dépend : le changement du couple va de {low} à {high}, à un bout moins et à l’autre plus d’un quart de la tolérance de la clé ({tolerance}).',
    'matter.swivel-allowed':
      'Cela dépend à qui on demande : coudé de {angle}, le couple oscille de {low} à {high}, et moins encore avec le frottement ; deux manuels de moteur l’admettent sans correction.',
    'matter.at-drive':
      'Non, cela ne compte pas : une clé qui mesure à son carré n’est pas sensible à l’endroit où on la tient, tant qu’aucun adaptateur ne dépasse vers l’avant ou vers l’arrière.',
    'matter.no-spring':
      'Non, cela ne compte pas : dans ce genre de clé, aucun ressort ne reste tendu pendant le rangement.',
    'matter.twist':
      'Non, cela ne compte pas : la rallonge se tord de {twist} et transmet tout le couple ; seul un angle lu au manche en est faussé d’autant.',
    'matter.over-rating':
      'Oui, cela compte : {torque} fait {share} de ce à quoi les carrés de cette taille sont éprouvés ({rating}) : prendre un carré plus grand.',
    'matter.under-rating':
      'Non, cela ne compte pas : dans l’axe, le couple ne change pas, et {torque} fait {share} de ce à quoi les carrés de cette taille sont éprouvés ({rating}).',
    'matter.below-fifth':
      'Oui, cela compte : {setting} fait {share} de la graduation la plus haute ; au-dessous d’un cinquième ({fifth}), les normes ne garantissent rien.',
    'matter.in-range':
      'Non, cela ne compte pas : {setting} fait {share} de la graduation la plus haute, pas au-dessous d’un cinquième ({fifth}).',
    'matter.above-most':
      'Oui, cela compte : {setting} est au-dessus de la graduation la plus haute, {most} : prendre une clé plus grande.',
    'matter.clamp-more':
      'Oui, cela compte : selon ces facteurs K, la force de serrage change de {change} au même déclic : serré plus fort.',
    'matter.clamp-less':
      'Oui, cela compte : selon ces facteurs K, la force de serrage change de {change} au même déclic : serré moins fort.',
    'matter.clamp-same': 'Non, cela ne compte pas : avec le même facteur K, la force de serrage est la même.',
    'matter.torque': 'Ce que reçoit la fixation avec la clé ainsi réglée',
    'matter.torque-between': 'Ce que reçoit la fixation avec la clé ainsi réglée, du plus bas au plus haut',
    'matter.change': 'Changement par rapport au réglage',
    'matter.hand-factor': 'Couple à la fixation pour chaque unité sur la clé, la main hors du centre de poignée',
    'matter.square-doubt': 'Ce qu’y fait une traction pas tout à fait d’équerre (dans un sens ou dans l’autre)',
    'matter.tilt':
      'Changement du couple : d’une clé qui déclenche derrière l’articulation, celle-ci prise au carré, jusqu’à aucun si elle mesure devant',
    'matter.tilt-pull': 'De combien il faut tirer plus fort si la clé mesure devant l’articulation',
    'matter.swing': 'Oscillation du couple dans un tour, sans frottement ; la borne basse',
    'matter.twist-step': 'De combien la rallonge se tord, prise comme un rond d’acier de la largeur de son carré',
    'matter.rating':
      'Part du couple d’épreuve des carrés de cette taille ; la valeur admise de la pièce elle-même l’emporte',
    'matter.fifth': 'Le plus petit réglage pour lequel les normes promettent quelque chose',
    'matter.share': 'Part de la graduation la plus haute',
    'matter.full-scale': 'La tolérance à ce réglage, si elle est de la pleine échelle',
    'matter.tolerance': 'Ce que peut donner une clé dans sa tolérance ; demi-largeur',
    'matter.jerk': 'D’une traction régulière au maximum que l’on rapporte d’un à-coup',
    'matter.clamp': 'Changement de la force de serrage au même couple',
    'matter.run-on': 'Ce que la clé doit montrer, le couple d’autofreinage de l’écrou ajouté',
    'matter.link.adapter-setting': 'Quel réglage avec cet adaptateur',
    'matter.link.hand-position': 'Ce que change de la tenir là, avec l’incertitude',
    'matter.link.pivot-offset': 'Où cette clé déclenche, à partir de deux tractions',
    'matter.link.end-fitting': 'Quel réglage avec l’autre tête',
    'matter.link.pull': 'Avec quelle force tirer',
    'matter.link.lubricant': 'Ce que fait un autre état du filetage',
    'matter.link.nut-factor': 'Votre propre facteur K, à partir d’essais mesurés',
    'matter.link.scale-check': 'Contrôler la clé avec un peson',
    'matter.link.scale-plan': 'Préparer le contrôle : quelles forces lire',
    'matter.link.tolerance-band': 'Ce que signifie la tolérance à ce réglage',
    'matter.link.wrench-check': 'Contrôler la clé avec une référence',
    'matter.link.next-check': 'Quand le prochain contrôle est à faire',
    'matter.link.compare': 'Deux séries de lectures, avec et sans : diffèrent-elles',
    'matter.link.prevailing': 'Ce que la clé doit montrer sur un écrou autofreiné',
    'matter.link.clamp-force': 'Quelle force de serrage donne un couple, selon le frottement',
    'matter.link.multiplier': 'Que mettre à l’entrée d’un multiplicateur de couple',
    'matter.link.extension-bar': 'De combien une rallonge se tord, et ce que portent ses carrés',
    'matter.link.flex-head': 'Ce que donne une tête inclinée',
    'matter.link.swivel': 'Ce que donne un cardan coudé',
  },
  cautions: {
    'wheels-again':
      'Quand resserrer les roues au couple diffère selon la source : de {first} à {last}, une indique {minutes} minutes à l’arrêt. Le constructeur du véhicule ou de la roue décide.',
    'square-assumed':
      'Aucun angle n’a été indiqué : d’équerre (90°) est supposé. Si l’adaptateur est autrement, le dire ; les autres directions sont listées.',
    'not-for-loosening': 'Une clé dynamométrique sert à serrer : desserrer avec autre chose.',
    'local-rules':
      'Pour les roues, le levage, la pression et les aéronefs, la loi ou les règles du site peuvent demander plus : qui a le droit de le faire, avec quel outil, et ce qui est consigné.',
    'one-way':
      'Beaucoup de clés à déclic ne mesurent que dans un sens : regarder avant d’en utiliser une sur un filetage à gauche.',
  },
  questions: { 'does-it-matter': 'Est-ce que ça compte ?' },
  topics: {
    'does-it-matter': 'Est-ce que ça compte ? Rallonges, cardans, huile, chute, second déclic, clé bon marché',
  },
  inputs: {
    topic: {
      label: 'Sujet',
      ask: 'de quoi il s’agit, avec vos propres mots',
      measure: 'Ou le nom d’un sujet de la liste : bars, swivel, stored-wound-up.',
    },
  },
  results: {
    'does-it-matter.verdict': 'Est-ce que ça compte',
    'what-to-do': 'Que faire',
    mechanism: 'Pourquoi',
    'size-of-effect': 'De combien',
    'rating-share': 'Part du couple d’épreuve',
    'share-of-most': 'Part de la graduation la plus haute',
    'full-scale-tolerance': 'Tolérance ici, si elle est de la pleine échelle',
  },
  faults: {
    'not-a-topic': {
      allowed: 'des mots qui vont avec un sujet, ou son nom',
      hint: 'Aucun sujet n’y a été trouvé. Le dire autrement, ou taper l’un de ceux-ci : entretien : {care} ; assemblage : {joint} ; traction : {pull} ; adaptateurs et têtes : {reach} ; outil : {tool}.',
    },
    'several-topics': {
      allowed: 'un seul sujet à la fois',
      hint: 'Cela va avec plus d’un sujet : taper {topics}.',
    },
  },
} as const
