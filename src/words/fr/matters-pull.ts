// Does it matter: the pull, what reaches the fastener, and the tool itself. A verdict, what to do, why, and how much for each topic.

export const mattersPull = {
  'matter.clicked-twice.verdict':
    'Cela dépend comment : un second déclic lent et voulu ajoute le plus souvent peu ; une traction par à-coup ou répétée, ou qui continue après le déclic, ajoute du couple.',
  'matter.clicked-twice.what-to-do':
    'Un seul déclic, lentement, et marquer ce qui est fait. Une traction faite plus tard montre quand l’écrou se décolle, pas à quel point il a été serré.',
  'matter.clicked-twice.mechanism':
    'Un écrou à l’arrêt demande plus pour démarrer que pour continuer, donc au même déclic lent il reste le plus souvent en place. Un à-coup apporte son élan, et après le déclic rien ne limite la traction que la main.',
  'matter.clicked-twice.size':
    'Aucune formule ne le donne : peu là où l’écrou est resté en place, plus là où on l’a vu tourner.',
  'matter.hand-position.verdict':
    'Cela dépend de la clé : une clé qui mesure à son carré n’y est pas sensible, une clé à déclic l’est un peu, une clé à barre de flexion sans poignée flottante l’est plus, et avec un adaptateur cela compte en entier.',
  'matter.hand-position.what-to-do':
    'Tirer d’une seule main sur le repère ou au milieu de la poignée, d’équerre au manche.',
  'matter.hand-position.mechanism':
    'Une clé à déclic déclenche sur un pivot derrière son carré, et une barre de flexion fléchit derrière lui : une main plus près du carré donne plus et une main plus loin donne moins. Un adaptateur ajoute au bras de la main mais pas à ce que la clé ressent.',
  'matter.hand-position.size':
    'T/S = (L − p)/L · (H + X)/(H − p), où p est 0 pour une clé qui mesure à son carré et d’habitude {low} à {high} de L pour une clé à déclic, {beamlow} à {beamhigh} pour une barre de flexion sans poignée flottante.',
  'matter.jerked.verdict':
    'Oui, cela compte : une traction par à-coup dépasse le réglage avant que quiconque puisse s’arrêter.',
  'matter.jerked.what-to-do':
    'Amener le dernier cinquième du couple régulièrement, en une demi-seconde à quatre secondes, et s’arrêter au déclic.',
  'matter.jerked.mechanism':
    'Le déclic prend un instant, la main met plus longtemps, et le bras et le manche continuent sur leur élan.',
  'matter.jerked.size': 'Aucune formule ne le donne ; on rapporte jusqu’à {more} de plus que le réglage.',
  'matter.pipe-on-the-handle.verdict':
    'Oui, cela compte : un tube déplace la main au-delà de la poignée ; cela annule ce que le fabricant de la clé garantit, et peut la casser.',
  'matter.pipe-on-the-handle.what-to-do':
    'Prendre une clé plus longue faite pour ce couple, ou un multiplicateur de couple : là où il faut tirer trop fort, la clé est trop petite.',
  'matter.pipe-on-the-handle.mechanism':
    'La traction devient plus facile alors que le couple reste presque le même : une clé à déclic donne un peu moins qu’indiqué, et avec un adaptateur le couple change avec tout le nouveau bras.',
  'matter.pipe-on-the-handle.size':
    'Sans adaptateur T/S = (L − p)/L · H/(H − p), jamais au-dessous de (L − p)/L : au plus environ {high} en moins avec une clé à déclic et {beam} avec une barre de flexion sans poignée flottante, rien avec une clé qui mesure à son carré.',
  'matter.adapter-square.verdict':
    'Non, cela ne compte pas : avec l’adaptateur d’équerre à la clé (90°), le réglage est le couple lui-même, quelle que soit sa longueur.',
  'matter.adapter-square.what-to-do':
    'Le mettre vraiment d’équerre, tirer d’équerre au manche d’une seule main sur la poignée, et régler le couple lui-même. Tout autre angle demande son propre réglage.',
  'matter.adapter-square.mechanism':
    'D’équerre au manche, il n’ajoute rien le long de la clé : E cos 90° vaut 0. L’écrou est plus loin de la main, mais la traction n’est pas d’équerre à cette ligne.',
  'matter.adapter-square.size':
    'T/S = (L + E cos θ)/L, qui vaut 1 à 90°. Une traction qui s’écarte de l’équerre de δ le change de ± tan δ · E/L : à 5°, avec un adaptateur d’un cinquième du levier, 1,75 %.',
  'matter.adapter-straight.verdict':
    'Oui, cela compte : droit devant, un adaptateur s’ajoute au levier et la fixation reçoit plus que le réglage ; droit en arrière, elle reçoit moins.',
  'matter.adapter-straight.what-to-do':
    'Mesurer le levier et l’adaptateur de centre à centre et régler S = T L/(L + E), avec E compté négatif là où il revient en arrière ; ou tourner l’adaptateur d’équerre et régler le couple lui-même.',
  'matter.adapter-straight.mechanism':
    'La main tire la fixation sur le levier et l’adaptateur ensemble, L + E, alors que la clé ne ressent que son propre L.',
  'matter.adapter-straight.size': 'T/S = (L + E)/L, donc E/L de plus que réglé : 50 sur 400 font 12,5 %.',
  'matter.bars.verdict':
    'Non, cela ne compte pas : une rallonge droit sous le carré, tenue dans l’axe, n’enlève rien à une traction lente.',
  'matter.bars.what-to-do':
    'Soutenir le carré de l’autre main, garder la rallonge dans l’axe et aussi courte que possible, et tirer lentement. La formule d’un pied-de-corbeau n’est pas faite pour cela.',
  'matter.bars.mechanism':
    'Elle est sur l’axe, donc elle n’ajoute pas de levier ; elle se tord comme un ressort et transmet tout le couple. Ce qui fait du mal, c’est pencher, fléchir et frapper.',
  'matter.bars.size': 'T = S. La rallonge se tord de θ = T l/(G J), ce qui ne fausse qu’un angle lu au manche.',
  'matter.changed-head.verdict':
    'Cela dépend d’où est son centre : seule une tête qui tient la fixation plus près ou plus loin que celle étalonnée change le couple.',
  'matter.changed-head.what-to-do':
    'Mesurer les deux têtes jusqu’à leurs centres. Si elles sont égales, régler le couple ; si elles diffèrent, régler S = T L/(L + Δ).',
  'matter.changed-head.mechanism':
    'La clé a été ajustée avec le levier jusqu’au centre de sa propre tête ; une autre longueur de tête fait un autre levier.',
  'matter.changed-head.size':
    'T/S = (L + Δ)/L, avec Δ la tête utilisée moins celle étalonnée : 30 de moins sur 360 font 8,33 % de moins.',
  'matter.chained-spanner.verdict':
    'Cela dépend de sa direction : droit devant, toute sa longueur compte, d’équerre (90°) rien n’en compte, et droit en arrière elle se retranche.',
  'matter.chained-spanner.what-to-do':
    'Mesurer du centre du carré au centre de la fixation, prendre l’angle à partir de la clé elle-même, et régler ce qui en sort. Garder la liaison à plat et la traction d’équerre.',
  'matter.chained-spanner.mechanism':
    'Une clé plate accrochée à la clé dynamométrique est un adaptateur : ce qui compte, c’est de combien elle avance le long de la clé. La taille de l’écrou n’y joue aucun rôle.',
  'matter.chained-spanner.size': 'T/S = (L + E cos θ)/L ; plusieurs maillons s’additionnent, Σ E cos θ.',
  'matter.flex-head.verdict':
    'Cela dépend de l’inclinaison et d’où la clé mesure : quelques degrés ne sont rien, à forte inclinaison, la clé peut donner moins qu’indiqué.',
  'matter.flex-head.what-to-do':
    'Garder le manche dans le plan où tourne la fixation et la douille d’équerre dessus ; s’il doit être incliné, l’incliner peu.',
  'matter.flex-head.mechanism':
    'Un manche incliné a un bras plus court autour de la fixation. Une clé qui mesure devant l’articulation demande seulement de tirer plus fort ; une clé qui déclenche derrière fait son déclic à la même traction, et le couple baisse.',
  'matter.flex-head.size':
    'Entre S et S r/L, r = h + (L − h) cos φ : avec l’articulation au carré, au plus 3,41 % en moins à 15°.',
  'matter.size-adapters.verdict':
    'Non, cela ne compte pas : dans l’axe, un réducteur de carré ne change aucun couple ; mais le plus petit carré limite ce que tout l’empilage peut porter.',
  'matter.size-adapters.what-to-do':
    'Rester au-dessous de ce que porte la pièce la plus faible, enfoncer chaque raccord à fond et tenir l’empilage dans l’axe.',
  'matter.size-adapters.mechanism':
    'Il est sur l’axe et n’ajoute pas de levier. Ce qu’un carré peut porter suit le cube de sa largeur.',
  'matter.size-adapters.size': 'T = S. De 1/2 à 3/8 in, le carré garde (3/4)³ de sa résistance, 42 %.',
  'matter.swivel.verdict':
    'Cela dépend de l’angle : deux manuels de moteur admettent jusqu’à 15° sans correction ; plus coudé, le couple oscille et se perd, et aucun réglage n’y remédie.',
  'matter.swivel.what-to-do':
    'Le garder aussi droit que possible. S’il doit être plus coudé, trouver un autre accès : aucun réglage corrigé n’est proposé.',
  'matter.swivel.mechanism':
    'Un cardan coudé ne transmet pas le couple régulièrement : deux fois par tour il donne plus et moins, et le frottement et l’effort de côté en prennent encore.',
  'matter.swivel.size':
    'Entre cos β et 1/cos β du réglage sans frottement, environ ±3,5 % à 15°, et moins encore avec.',
  'matter.digital-or-click.verdict':
    'Non, cela ne compte pas : à tolérance égale, l’un ou l’autre genre serre de même ; le dernier contrôle, la plage et une traction régulière comptent plus.',
  'matter.digital-or-click.what-to-do':
    'Prendre celle qui a votre réglage bien à l’intérieur de sa plage, dont le contrôle est à jour, et que vous pouvez lire de là où vous êtes.',
  'matter.digital-or-click.mechanism':
    'Les deux sont tenues à des limites de 4 ou 6 %. Elles diffèrent autrement : la place de la main fait varier une clé à déclic, une pile vide arrête l’autre, et une clé dans laquelle la longueur d’un adaptateur a été entrée l’a déjà corrigée.',
  'matter.tool.size':
    'S (1 ± l) pour l’une comme pour l’autre. Le frottement disperse la force de serrage bien davantage, même avec une clé juste : de ±{low} à ±{high}, disent deux listes.',
  'matter.price.verdict':
    'Non, cela ne compte pas : ce qui compte, c’est la tolérance qu’elle tient au contrôle ; une clé bon marché contrôlée vaut mieux qu’une chère qui ne l’a pas été.',
  'matter.price.what-to-do':
    'Comparer la tolérance, la plage et si un certificat est fourni ; la contrôler neuve, puis comme toute autre.',
  'matter.price.mechanism':
    'L’argent achète la finition, les pièces de rechange, des échelons plus fins et souvent la constance au fil des ans ; il n’empêche pas un ressort de se tasser, et ne sauve pas une clé qui est tombée.',
} as const
