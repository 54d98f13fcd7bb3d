// What to mind beside an answer, and where the maker’s own figure stands.

export const cautions = {
  'maker-first':
    'La valeur et la procédure du constructeur passent d’abord ; ici se calcule le réglage pour une valeur que vous avez déjà.',
  'critical-joint':
    'Roues, freins, direction, ceintures de sécurité, levage, pression, aéronefs : une personne qualifiée et la procédure du constructeur décident.',
  'one-hand':
    'Tirer par la poignée seulement : une seconde main sur la tête change le couple dès qu’un adaptateur dépasse vers l’avant ou vers l’arrière.',
  'points-back':
    'L’adaptateur revient en arrière, vers la main, de {reach} : le réglage est PLUS HAUT que le couple. S’assurer de la direction.',
  'far-back':
    'Il revient en arrière sur plus de la moitié du levier : de petites erreurs de longueur ou de main changent beaucoup le couple. Faire autrement si possible.',
  'direction-assumed':
    'Sans angle indiqué, on suppose droit devant. Si un adaptateur est à un angle, le dire : cela change le résultat.',
  'keep-square':
    'L’adaptateur est sur le côté : tirer d’équerre au manche, sinon le couple change avec la direction de la traction.',
  'already-corrected':
    'Si la valeur du constructeur est liée à un outil spécial ou à une longueur de levier donnée, ou si la longueur de l’adaptateur a été entrée dans la clé, elle est déjà corrigée : ne pas corriger deux fois.',
  'side-load':
    'Une tête inclinée pousse la douille de côté : la tenir d’équerre, et redresser le manche s’il y a la place.',
  'lower-still':
    'Le frottement et l’effort de côté en prennent encore plus, environ {loss} en tout à un grand angle du cardan : la valeur basse n’est pas un plancher.',
  'no-corrected-setting':
    'Aucun réglage corrigé ne peut être donné pour un cardan : sa position dans le tour n’est pas connue.',
  'square-too-weak':
    'Le carré le plus faible de l’empilage est le {drive} in, éprouvé à {rating} : il faut un carré plus grand.',
  'no-impact': 'Seulement avec une traction lente : un outil à chocs perd du couple dans chaque rallonge.',
  'support-the-bar':
    'Garder la rallonge dans l’axe et tenir sa tête : une rallonge qui penche fait basculer la douille.',
  'which-ratio':
    'Quel rapport est marqué ? Un rapport de couple contient déjà les pertes ; un rapport de tours (d’engrenage) ne les contient pas.',
  'reaction-arm':
    'Le bras de réaction repousse avec tout le couple de sortie : l’appuyer contre quelque chose qui tient, et garder les mains à distance.',
  'run-on-while-turning':
    'Lire le couple d’autofreinage pendant que l’écrou tourne, avant qu’il vienne en appui ; le constructeur dit combien est admis, et quand le remplacer.',
  'run-on-through-adapter': 'Un couple d’autofreinage lu à travers un adaptateur se convertit d’abord, comme le reste.',
  'past-strength':
    'Là où le frottement est faible, ce couple dépasse la charge d’épreuve ou la limite d’élasticité de la vis.',
  'from-snug':
    'À partir de l’accostage : les pièces sont en plein contact avant le début du compte de la rotation. Si l’accostage n’est pas sûr, la rotation ne l’est pas non plus.',
  'yield-not-checked':
    'Aucune classe n’a été indiquée : on n’a donc pas vérifié si la limite d’élasticité est dépassée.',
  'no-pipe':
    'Un tube sur le manche déplace la main au-delà de la poignée et annule ce que le fabricant de la clé garantit.',
  'run-on-large':
    'Le couple d’autofreinage ({extra}) est plus grand que le couple lui-même : revoir les deux unités ; un écrou aussi dur à tourner est abîmé.',
  'friction-wide':
    'D’une source à l’autre, le frottement de cet état varie de plus d’un facteur deux : à ce couple, la vis peut être bien moins serrée que sa part. Demander au constructeur, ou mesurer couple et force de serrage sur cet assemblage.',
  'own-factor-holds-seat':
    'Votre propre facteur K contient déjà l’appui sur lequel il a été mesuré : l’appui indiqué ici n’y change rien.',
  'class-of-other-system':
    'Cette classe appartient à l’autre système que la taille : regarder de nouveau le marquage de la tête.',
  'pivot-unusual': 'Une clé de ce genre déclenche d’habitude entre {low} et {high} : revoir le pivot.',
  'floating-grip':
    'Si la poignée de cette clé à barre de flexion bascule sur un axe, la traction est à cet axe où que soit la main, et rien de ceci ne s’applique.',
  'hard-pull': 'Personne ne tire {pull} régulièrement : prendre un levier plus long ou un multiplicateur.',
  'points-missing':
    'Toute l’échelle n’a pas été contrôlée : la norme veut {shares} % du plus grand réglage, en montant.',
  'beyond-range': 'Le réglage {setting} est hors de la plage de la clé ({limit}).',
  'end-beyond-range':
    'Une partie de ce qui est demandé exige un réglage hors de la plage de la clé : {setting}, alors qu’elle s’arrête à {limit}. Rester dans sa plage.',
  'factor-twelve':
    'Une autre unité était-elle voulue ? {got} demande un réglage hors de la plage de la clé, {meant} serait dedans.',
  'factor-ten':
    'La virgule a-t-elle glissé ? {got} demande un réglage hors de la plage de la clé, {meant} serait dedans.',
  'lever-unusual':
    'Un levier de {lever} sort de ce qu’ont les clés à main ({low} à {high}) : revoir le nombre et son unité.',
  'adapter-longer':
    'L’adaptateur ({adapter}) est plus long que la clé elle-même ({lever}) : revoir les deux nombres et leurs unités.',
  'below-a-fifth':
    'Au-dessous d’un cinquième de l’échelle ({fifth}), rien n’est garanti : prendre une clé plus petite.',
  'click-once':
    'Tirer lentement et régulièrement, et s’arrêter au déclic : un à-coup, ou tirer de nouveau et dépasser le déclic, ajoute du couple (pratique courante).',
  'which-fitting':
    'Ici le levier est pris comme mesuré jusqu’au centre de la tête avec laquelle la clé a été étalonnée. S’il a été mesuré avec l’autre tête, le dire.',
  'steady-pull': 'Tirer vers soi, bien campé sur ses pieds, prêt à ce que la fixation cède.',
  'which-condition':
    'Chercher si la valeur du constructeur vaut pour un filetage sec ou lubrifié : cela décide si quoi que ce soit peut être changé.',
  'estimate-only':
    'Les valeurs de frottement sont des estimations tirées de tables ; elles varient d’une vis à l’autre et d’une source à l’autre.',
  'k-unlikely':
    'On ne connaît aucun assemblage avec un tel facteur K (ils sont entre environ 0,05 et 0,6) : revoir les unités, la taille et les lectures.',
  galling: 'Inox sur inox grippe : serrer lentement, avec un lubrifiant prévu pour cela.',
  'yield-fastener':
    'Jamais pour des fixations serrées à la limite d’élasticité ou au couple et à l’angle : suivre la procédure du constructeur telle quelle.',
  'one-joint':
    'Ce facteur K appartient à ce filetage, cet appui, cette finition et ce lubrifiant, et à des pièces neuves ; des vis réutilisées diffèrent.',
  'gauge-too-coarse':
    'Le peson ({gauge}) est trop grossier pour juger une clé à ±4 % : il ne devrait pas être moins bon que {quarter}.',
  'gauge-unknown':
    'La tolérance propre du peson n’est pas indiquée et n’est pas dans l’incertitude : le vérifier avec un poids connu.',
  'own-weight':
    'Avec l’axe du carré à l’horizontale, le poids de la clé compte aussi : donner wrench-mass, balance-point, lie et pull-direction.',
  'not-accredited': 'Un contrôle à l’atelier n’est pas un étalonnage accrédité.',
  'gauge-runs-out': 'Le peson s’arrête à {limit} : tirer à {distance} du carré ou plus loin.',
  'gauge-quarter': 'Le peson ne devrait pas être moins bon que {quarter}, un quart de la limite.',
  'out-of-limit':
    'Ne pas utiliser cette clé là où le couple compte tant qu’elle n’a pas été ajustée et contrôlée de nouveau.',
  'limit-assumed':
    'La limite de ±{limit} a été supposée, pas indiquée : donner la tolérance du fabricant, ou iso-type et iso-class.',
  'reference-unknown':
    'La qualité de la référence n’a pas été indiquée : elle ne devrait pas être moins bonne que {quarter}, un quart de la limite.',
  'reference-too-coarse':
    'La référence ({gauge}) est trop grossière pour cette limite : elle ne devrait pas être moins bonne que {quarter}, un quart de celle-ci.',
  'few-readings': 'Moins de 5 lectures à un point : la norme en demande 5, et davantage en montre davantage.',
  'alike-no-resolution':
    'Toutes les lectures de {set} sont égales : la résolution cache leur dispersion, et la réponse est plus sûre qu’elle ne devrait. Donner resolution.',
  'alike-resolution': 'Toutes les lectures de {set} sont égales : leur dispersion est tirée de la résolution.',
  'mean-near-zero':
    'La moyenne de A ne se distingue pas de 0, si bien qu’un pourcentage de celle-ci ne dit pas grand-chose : comparer d’autres lectures.',
  'independent-readings':
    'Ceci vaut pour des lectures qui ne dépendent pas les unes des autres : prendre A et B dans un ordre mélangé, sur des assemblages pas encore serrés ; un écrou déjà serré montre son décollage.',
  'tolerance-of-scale':
    'La tolérance de {wrench} est de {tolerance} de la pleine échelle : au-dessous de sa graduation la plus haute, la clé peut donc s’écarter de plus que la tolérance prise ici. Donner tolerance comme part de ce réglage.',
  'wrench-not-to-be-used': '{wrench} est mise de côté ou réformée dans le registre : prendre une autre clé.',
  'failed-on': 'Le dernier contrôle de {wrench}, le {date}, l’a trouvée hors de sa limite.',
  'check-before-use': 'Contrôler {wrench} avant de l’utiliser là où le couple compte. Le {date} : {what}.',
  'never-checked': 'Aucun contrôle de {wrench} n’est dans le registre.',
  'due-since': 'Le contrôle de {wrench} est à faire depuis le {date}.',
  'last-check':
    'Au dernier contrôle de {wrench}, le {date}, elle était {deviation} à {setting}. Il est rappelé ici, pas compté dans la réponse.',
  'check-due': 'Tant qu’elle n’a pas été contrôlée, ne pas utiliser cette clé là où le couple compte.',
  'event-before-check': 'Ce qui est arrivé avant le dernier contrôle est couvert par ce contrôle.',
  'wound-up-briefly':
    'Rester tendue moins d’un mois change peu ; des mois près de la pleine échelle peuvent enlever bien plus d’un dixième.',
  'store-low': 'La ranger à sa graduation la plus basse, pas au-dessous.',
  'uses-not-counted': 'Les utilisations n’ont pas été indiquées : elles peuvent être épuisées avant les mois.',
  'tolerance-is-not-all': 'Ceci est la clé seule : la main, les longueurs et le frottement s’y ajoutent.',
  'unit-on-wrench':
    'Lire l’unité sur la clé elle-même avant de régler : N·m, lbf·ft et lbf·in sont côte à côte sur beaucoup de clés.',
} as const

export const pointers = {
  'multiplier-plate': 'Rapport et limite : la plaque ou le certificat du multiplicateur.',
  'torque-figure':
    'Valeur de couple : le manuel d’atelier du constructeur pour cette fixation précise, avec l’état du filetage et l’outil pour lesquels elle est donnée.',
  'adapter-rating':
    'Couple admis par l’adaptateur lui-même : son fabricant ; il limite le couple à la fixation, pas le réglage.',
  'wrench-manual': 'Longueur du levier, plage et tolérance : la notice ou le certificat d’étalonnage de la clé.',
  'lubricant-maker': 'La fiche technique du fabricant du lubrifiant : facteur K ou frottement pour cette finition.',
  'calibration-lab': 'Un certificat : un laboratoire d’étalonnage accrédité (ISO 6789).',
} as const
