// What is said of the way from the hand to the fastener: adapters, heads, swivels, bars, multipliers, pulls, units.

export const sayReach = {
  'adapter.reach':
    'De combien les adaptateurs avancent le long de la clé, devant le carré (négatif : en arrière, vers la main)',
  'adapter.effective': 'Le levier sur lequel la main tire vraiment la fixation',
  'adapter.factor': 'Couple à la fixation pour chaque unité sur la clé (certains manuels impriment l’inverse)',
  'adapter.factor-hand':
    'Couple à la fixation pour chaque unité sur la clé, la main hors du centre de poignée (certains manuels impriment l’inverse)',
  'adapter.straight-assumed': 'Avec l’adaptateur droit devant, ce qui n’a pas été indiqué : {answer}',
  'adapter-setting.set': 'Régler {setting} sur la clé : la fixation reçoit {torque}.',
  'adapter-setting.same': 'Régler {setting}, le couple lui-même : cet adaptateur n’ajoute rien au levier.',
  'adapter-setting.span':
    'Régler {setting} sur la clé ({low} à {high} pour les bornes) : la fixation reçoit {torque}, le milieu de ce qui est demandé.',
  'adapter-setting.span-part':
    'Régler {setting} sur la clé : la fixation reçoit {torque}, le milieu de ce qui est demandé. Du reste, cette clé ne fait que {from} à {to}.',
  'adapter-setting.open':
    'Régler {setting} sur la clé, le côté sûr : avec la main hors du centre de poignée, le bon réglage pour {torque} est entre cette valeur et {high}.',
  'adapter-setting.open-span':
    'Régler {from} à {to} sur la clé : avec la main hors du centre de poignée, cela garde la fixation dans ce qui est demandé, où que la clé déclenche.',
  'adapter-setting.open-none':
    'Aucun réglage n’est sûr de rester dans ce qui est demandé : avec la main hors du centre de poignée, {torque} peut exiger {setting} ou {high}. Tirer au centre de poignée, ou mesurer où la clé déclenche.',
  'adapter-setting.part':
    'Cette clé ne peut faire qu’une partie de ce qui est demandé : y régler {from} à {to}. Le milieu, {torque}, exigerait {setting}, hors de sa plage.',
  'adapter-setting.beyond':
    'Ne pas utiliser cette clé ainsi : {torque} à la fixation exigerait {setting}, hors de sa plage ; avec l’adaptateur d’équerre (90°), le réglage est le couple lui-même.',
  'adapter-setting.beyond-all':
    'Ne pas utiliser cette clé ainsi : {torque} à la fixation exigerait {setting}, hors de sa plage. Prendre une autre clé.',
  'adapter-setting.setting': 'Quel réglage',
  'adapter-setting.pivot-unknown':
    'On ne sait pas où la clé déclenche, et hors du centre de poignée cela compte : le réglage aux deux bornes de ce qui est habituel',
  'adapter-setting.ends': 'Les réglages pour les deux bornes de ce qui est demandé',
  'adapter-setting.tolerance-alone':
    'Ce que la clé elle-même peut faire de ce réglage par sa seule tolérance de {tolerance}',
  'adapter-setting.inside': 'L’incertitude reste dans ce qui est demandé ; largeur de la bande à 95 %',
  'adapter-setting.not-inside':
    'L’incertitude ne reste PAS dans ce qui est demandé : mieux mesurer ou prendre une meilleure clé ; largeur de la bande à 95 %',
  'adapter-reading.got': 'Avec {reading} sur la clé, la fixation a reçu {torque} (95 % : {low} à {high}).',
  'adapter-reading.torque': 'Ce que la fixation a reçu',
  'adapter-reading.pivot-unknown':
    'On ne sait pas où la clé déclenche, et hors du centre de poignée cela compte : le couple aux deux bornes de ce qui est habituel',
  'doubt.one': 'Incertitude à 95 %, due surtout à {first}',
  'doubt.two': 'Incertitude à 95 %, due surtout à {first}, puis à {second}',
  'cause.wrench': 'la tolérance de la clé',
  'cause.lever': 'la longueur du levier',
  'cause.adapter': 'la longueur de l’adaptateur',
  'cause.hand': 'la place de la main',
  'cause.angle': 'l’angle de l’adaptateur',
  'cause.square': 'une traction qui n’est pas d’équerre au manche',
  'cause.pivot': 'l’endroit où la clé déclenche',
  'hand-position.none':
    'La fixation reçoit {torque} : une clé qui mesure au carré n’est pas sensible à l’endroit où on la tient.',
  'hand-position.at-grip': 'La fixation reçoit {torque} : tenue là où elle a été étalonnée, le réglage est le couple.',
  'hand-position.more': 'Réglée à {setting} et tenue plus près du carré, la clé donne {torque} : {change} de plus.',
  'hand-position.less': 'Réglée à {setting} et tenue plus loin du carré, la clé donne {torque} ({change}).',
  'hand-position.open-more':
    'Réglée à {setting} et tenue plus près du carré, la clé donne {low} à {high} selon où elle déclenche (95 %), au milieu {torque} : {change} de plus.',
  'hand-position.open-less':
    'Réglée à {setting} et tenue plus loin du carré, la clé donne {low} à {high} selon où elle déclenche (95 %), au milieu {torque} ({change}).',
  'hand-position.torque': 'Ce que reçoit la fixation',
  'hand-position.change': 'Changement par rapport au réglage',
  'pivot-offset.found': 'La clé déclenche à {pivot} derrière son carré (95 % : {low} à {high}).',
  'pivot-offset.not-from-zero':
    'Le pivot ne se distingue pas de 0 : {pivot}, avec une incertitude de {low} à {high}. Refaire les deux tractions et prendre des moyennes, la main vers le milieu du manche.',
  'pivot-offset.impossible':
    'Ces deux tractions ne vont pas avec une même clé : {pivot} n’est pas possible (95 % : {low} à {high}). Refaire les deux tractions.',
  'pivot-offset.ratio': 'Couple avec la main déplacée, sur couple avec la main au levier',
  'pivot-offset.pivot': 'Distance du carré au pivot',
  'pivot-offset.doubt': 'Incertitude à 95 % (demi-largeur)',
  'end-fitting.set': 'Régler {setting} sur la clé : la fixation reçoit {torque} à travers cette tête.',
  'end-fitting.span':
    'Régler {setting} sur la clé ({low} à {high} pour les bornes) : la fixation reçoit {torque} à travers cette tête, le milieu de ce qui est demandé.',
  'end-fitting.used': 'Levier avec la tête utilisée',
  'end-fitting.factor': 'Couple à la fixation pour chaque unité sur la clé (certains manuels impriment l’inverse)',
  'end-fitting.setting': 'Quel réglage',
  'which.best': '{wrench} : régler {setting} pour {torque} à la fixation.',
  'which.care':
    '{wrench}, avec précaution : régler {setting} pour {torque} à la fixation, et lire pourquoi ci-dessous.',
  'which.none': 'Aucune clé de l’atelier ne peut faire {torque} aujourd’hui ; la raison est à côté de chacune.',
  'which.empty': 'Aucune clé n’est encore dans le registre : en ajouter une, et le choix se fera parmi elles.',
  'which.same': 'Rien n’allonge la clé : elle se règle au couple lui-même',
  'which.step': 'À quoi se règle {wrench}, selon son levier dans le registre',
  'which.work-out': 'Le calculer avec {wrench}, avec son incertitude',
  'pull.pull': 'Tirer {pull}, d’équerre au manche, à {at} du carré pour {torque}.',
  'pull.step': 'Traction, d’équerre au manche',
  'convert.is': '{from} fait {value}.',
  'convert.span': '{low} à {high}, au milieu {value}.',
  'convert.step': 'Une unité {unit} en {to}, fois le nombre',
  'flex-head.ahead':
    'La fixation reçoit {torque}, ce que dit la clé à {setting} : elle mesure devant l’articulation ; seule la traction augmente.',
  'flex-head.behind': 'Réglée à {setting} et inclinée, la clé donne {torque} : elle déclenche derrière l’articulation.',
  'flex-head.unknown':
    'Avec la clé réglée à {setting} et inclinée, la fixation reçoit {low} à {high} : selon que la clé mesure devant son articulation ou derrière.',
  'flex-head.arm': 'Le bras que laisse l’inclinaison',
  'flex-head.torque-ahead':
    'Mesure devant l’articulation (la plupart des clés à lecture directe et électroniques) : le couple est celui qu’elle dit',
  'flex-head.torque-behind': 'Déclenchement derrière l’articulation : la même traction sur un bras plus court',
  'flex-head.straight': 'Traction avec le manche droit',
  'swivel.band':
    'Avec {setting} sur la clé et un angle du cardan de {angle}, la fixation reçoit {low} à {high}, ou moins encore : aucun réglage ne peut le compenser.',
  'swivel.straight': 'Un cardan qui n’est pas coudé transmet {torque}.',
  'swivel.low': 'Le plus bas dans un tour, sans frottement',
  'swivel.high': 'Le plus haut dans un tour, sans frottement',
  'swivel.allowed': 'Deux manuels de moteur admettent cet angle sans correction',
  'swivel.not-allowed':
    'Au-delà de ce que deux manuels de moteur admettent sans correction : le redresser, ou atteindre la fixation autrement',
  'extension-bar.too-thin':
    'Ne pas utiliser cette rallonge : {torque} sollicite {diameter} d’acier au-delà de ce à quoi les carrés sont éprouvés ({stress}) ; elle plierait ou casserait.',
  'extension-bar.nothing':
    'La rallonge n’enlève rien : la fixation reçoit {torque} sous une traction lente et droite. Elle se tord de {twist}.',
  'extension-bar.too-weak':
    'Ne pas utiliser cet empilage pour {torque} : son carré le plus faible est éprouvé à {rating}.',
  'extension-bar.torque': 'Une rallonge dans l’axe tourne avec le carré : le couple de sortie est le couple d’entrée',
  'extension-bar.twist': 'Torsion de la rallonge, prise comme ronde ; elle fausse les angles lus au manche',
  'extension-bar.weakest': 'Ce à quoi est éprouvé le carré le plus faible, {drive} in',
  'multiplier.set': 'Mettre {input} à l’entrée du multiplicateur pour {torque}.',
  'multiplier.lowest':
    'Ne pas mettre plus de {input} à l’entrée pour {torque} selon le rapport de tours : le plus bas, au meilleur rendement ; avec plus de pertes, il peut en falloir jusqu’à {high}.',
  'multiplier.torque-ratio': 'Ce qui entre, selon le rapport de couple marqué (les pertes y sont)',
  'multiplier.lowest-step': 'Ce qui entre au meilleur rendement',
  'multiplier.highest-step': 'Ce qui entre au plus mauvais rendement',
  'prevailing.set': 'Serrer jusqu’à ce que la clé montre {final} : {torque} et le couple d’autofreinage de {run}.',
  'prevailing.span': 'Serrer jusqu’à ce que la clé montre {low} à {high}, au milieu {final}.',
  'prevailing.final': 'Couple demandé et couple d’autofreinage ensemble (aéronautique : toujours)',
  'prevailing.army-adds':
    'Un manuel d’armée ne l’ajoute qu’à partir d’un tiers du couple demandé : ici, il l’ajoute aussi',
  'prevailing.army-leaves-out':
    'Un manuel d’armée ne l’ajoute qu’à partir d’un tiers du couple demandé : ici, il l’omet. Les sources diffèrent ; demander au constructeur',
  'related.direction': 'La même chose avec l’adaptateur à {angle}',
  'related.reading': 'Ce que reçoit la fixation quand la clé montre {setting}',
  'related.setting': 'Quel réglage pour {torque}',
  'incomplete.one': 'Il manque une indication : {ask}.',
  'incomplete.several': 'Il manque des indications : {ask}.',
  'refused.one': 'Cela ne peut pas être calculé tel quel : {hint}',
  'refused.several': 'Cela ne peut pas être calculé tel quel ; plusieurs entrées sont à revoir. D’abord : {hint}',
} as const
