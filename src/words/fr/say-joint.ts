// What is said of the bolt and its joint: friction, lubricants, clamp force, turn.

export const sayJoint = {
  'lubricant.same': 'La valeur vaut pour cet état, « {from} » : l’utiliser telle qu’imprimée.',
  'lubricant.alike':
    'Aucun nombre ne peut être donné pour passer de « {from} » à « {to} » : selon les sources, les deux sont à peu près égaux, et les deux sont dispersés. Demander une valeur au constructeur, ou mesurer.',
  'lubricant.rougher':
    'Aucun nombre ne peut être donné pour passer de « {from} » à « {to} » : plus de frottement peut signifier un assemblage trop peu serré ou une vis surchargée. Demander une valeur au constructeur, ou mesurer.',
  'lubricant.too-wide':
    'Moins seulement si la valeur du constructeur vaut pour « {from} ». Si elle vaut déjà pour « {to} », l’utiliser telle qu’imprimée. Aucun nombre ne peut être donné : les sources diffèrent de plus d’un facteur deux pour « {to} » ; demander au constructeur ou mesurer.',
  'lubricant.known':
    'Moins seulement si la valeur du constructeur vaut pour « {from} ». Si elle vaut déjà pour « {to} », l’utiliser telle qu’imprimée. Sinon, {typical} au lieu de {torque} garde la force de serrage, selon les facteurs K donnés.',
  'lubricant.reduced':
    'Moins seulement si la valeur du constructeur vaut pour « {from} ». Si elle vaut déjà pour « {to} », l’utiliser telle qu’imprimée. Sinon, pas plus de {low} au lieu de {torque} : selon aucune source disponible cela ne serre trop ; typique : {typical}.',
  'lubricant.nut-factors': 'Facteurs K typiques, nouveau sur ancien',
  'lubricant.span': 'Du plus bas rapport que les sources permettent au plus haut',
  'lubricant.same-torque':
    'Changement de la force de serrage si le couple est laissé comme il était (du plus bas au plus haut)',
  'lubricant.same-clamp': 'Couple pour la force de serrage voulue (du plus bas au plus haut)',
  'lubricant.same-clamp-capped':
    'Couple pour la force de serrage voulue (du plus bas au plus haut, jamais au-dessus du couple demandé)',
  'nut-factor.one': 'Le facteur K est {k}, d’un seul essai : sa dispersion n’est pas connue.',
  'nut-factor.unseen':
    'Le facteur K est {k}, de {n} essais ; ils ne montrent pas où sera la prochaine vis : faire plus d’essais.',
  'nut-factor.several': 'Le facteur K est {k}, de {n} essais ; la prochaine vis sera entre {low} et {high} (95 %).',
  'nut-factor.run': 'Essai {run}',
  'nut-factor.next': 'Où sera la prochaine vis à 95 % (demi-largeur)',
  'bolt.by-nut-factor': 'Force de serrage par le facteur K (typique)',
  'bolt.by-friction': 'Force de serrage par le frottement du filetage et de l’appui (coin exact)',
  'bolt.split': 'Où va le couple : allongement, filetage, appui',
  'bolt.span': 'Du plus haut frottement que les sources permettent au plus bas',
  'bolt.proof-share': 'Part de la charge d’épreuve (typique)',
  'bolt.yield-share': 'Part de la limite d’élasticité pendant la rotation, torsion comprise (typique)',
  'clamp-force.known': 'Avec {torque}, la force de serrage est de {clamp}, selon le frottement donné.',
  'clamp-force.span':
    'Avec {torque}, la force de serrage est de {low} à {high}, typiquement {clamp} : le frottement décide.',
  'clamp-force.too-much':
    'Ne pas utiliser {torque} ici : là où le frottement est faible, la force de serrage atteint {high} et dépasse la résistance de la vis ; demander au constructeur.',
  'bolt-torque.known': 'Au plus {torque} : la force de serrage est de {clamp}, selon le frottement donné.',
  'bolt-torque.highest':
    'Au plus {torque} : selon aucune source disponible cela ne dépasse cette part de la résistance ; la force de serrage est de {low} à {high}.',
  'bolt-torque.clamp-proof': 'Force de serrage à cette part de la charge d’épreuve',
  'bolt-torque.clamp-yield':
    'Force de serrage à cette part de la limite d’élasticité, torsion comprise, là où le frottement est le plus bas',
  'bolt-torque.highest-step': 'Le plus haut couple qui ne peut pas la dépasser : là où le frottement est le plus bas',
  'bolt-torque.typical-step':
    'Le couple au frottement typique ; il peut dépasser la part là où le frottement est plus bas',
  'bolt-torque.floor': 'Ce que le plus haut couple donne encore là où le frottement est le plus haut',
  'turn-angle.turn': 'Tourner de {turn} à partir de l’accostage pour {force}.',
  'turn-angle.force': '{turn} à partir de l’accostage donne environ {force}.',
  'turn-angle.bolt': 'Raideur de la vis, tête et filetage en prise comptés [kN/mm]',
  'turn-angle.joint': 'Raideur de l’assemblage, acier, deux cônes de 30° [kN/mm]',
  'turn-angle.turn-step': 'Rotation à partir de l’accostage',
  'turn-angle.force-step': 'Force de serrage que donne la rotation',
  'nut-factor.mu-total': 'Frottement du filetage et de l’appui en un seul nombre (moyenne des essais)',
  'nut-factor.mu-thread': 'Frottement dans le filetage (moyenne des essais)',
  'nut-factor.mu-seat': 'Frottement à l’appui (moyenne des essais)',
  'lubricant.two-frictions': 'Filetage et appui à part, lubrifié : {where}',
  'place.both': 'les deux',
  'place.threads': 'filetage seul',
  'place.seat': 'appui seul',
  'condition.dry': 'filetage sec',
  'condition.oiled': 'filetage huilé',
  'condition.greased': 'filetage graissé',
  'condition.anti-seize': 'antigrippant',
  'condition.moly': 'pâte au molybdène',
  'condition.wax': 'filetage ciré',
  'condition.zinc': 'zingué, sec',
  'condition.zinc-oiled': 'zingué, huilé',
  'condition.cadmium': 'cadmié',
  'condition.phosphate-oiled': 'phosphaté et huilé',
  'condition.black-oxide': 'oxyde noir',
  'condition.stainless-dry': 'inox sec',
  'condition.thread-locker': 'frein-filet',
} as const
