// What is said of the bolt and its joint: friction, lubricants, clamp force, turn.

export const sayJoint = {
  'lubricant.same': 'El dato es justo para este estado («{from}»): usarlo tal como está impreso.',
  'lubricant.alike':
    'No se puede dar un número para pasar de «{from}» a «{to}»: según las fuentes son más o menos iguales, y ambos varían. Pedir un dato al fabricante o medir.',
  'lubricant.rougher':
    'No se puede dar un número para pasar de «{from}» a «{to}»: más fricción puede significar una unión floja o un tornillo sobrecargado. Pedir un dato al fabricante o medir.',
  'lubricant.too-wide':
    'Menos solo si el dato del fabricante es para «{from}». Si ya es para «{to}», usarlo tal como está impreso. No se puede dar un número: para «{to}» las fuentes difieren en más de dos a uno; preguntar al fabricante o medir.',
  'lubricant.known':
    'Menos solo si el dato del fabricante es para «{from}». Si ya es para «{to}», usarlo tal como está impreso. Si no, {typical} en lugar de {torque} mantiene la precarga, según los factores K dados.',
  'lubricant.reduced':
    'Menos solo si el dato del fabricante es para «{from}». Si ya es para «{to}», usarlo tal como está impreso. Si no, no más de {low} en lugar de {torque}: según ninguna fuente disponible eso aprieta de más; lo típico es {typical}.',
  'lubricant.nut-factors': 'Factores K típicos, el nuevo entre el anterior',
  'lubricant.span': 'Del cociente más bajo que admiten las fuentes al más alto',
  'lubricant.same-torque': 'Cambio de la precarga si el par se deja como estaba (del más bajo al más alto)',
  'lubricant.same-clamp': 'Par para la precarga que se pretendía (del más bajo al más alto)',
  'lubricant.same-clamp-capped':
    'Par para la precarga que se pretendía (del más bajo al más alto, nunca por encima del par especificado)',
  'nut-factor.one': 'El factor K es {k}, de un solo ensayo: no se sabe cuánto varía.',
  'nut-factor.unseen':
    'El factor K es {k}, de {n} ensayos; no muestran dónde quedará el próximo tornillo: hacer más ensayos.',
  'nut-factor.several': 'El factor K es {k}, de {n} ensayos; el próximo tornillo quedará entre {low} y {high} (95 %).',
  'nut-factor.run': 'Ensayo {run}',
  'nut-factor.next': 'Dónde quedará el próximo tornillo al 95 % (medio ancho)',
  'bolt.by-nut-factor': 'Precarga según el factor K (típica)',
  'bolt.by-friction': 'Precarga según la fricción de rosca y asiento (cuña exacta)',
  'bolt.split': 'Adónde va el par: alargamiento, rosca, asiento',
  'bolt.span': 'De la fricción más alta que admiten las fuentes a la más baja',
  'bolt.proof-share': 'Porcentaje de la carga de prueba (típico)',
  'bolt.yield-share': 'Porcentaje del límite elástico mientras gira, con la torsión incluida (típico)',
  'clamp-force.known': 'Con {torque} la unión queda con una precarga de {clamp}, según la fricción dada.',
  'clamp-force.span':
    'Con {torque} la unión queda con una precarga de {low} a {high}, típicamente {clamp}: decide la fricción.',
  'clamp-force.too-much':
    'No usar {torque} aquí: donde la fricción es baja, la precarga llega a {high} y supera la resistencia del tornillo; preguntar al fabricante.',
  'bolt-torque.known': 'Como máximo {torque}: da una precarga de {clamp}, según la fricción dada.',
  'bolt-torque.highest':
    'Como máximo {torque}: según ninguna fuente disponible supera ese porcentaje de la resistencia; da una precarga de {low} a {high}.',
  'bolt-torque.clamp-proof': 'Precarga con ese porcentaje de la carga de prueba',
  'bolt-torque.clamp-yield':
    'Precarga con ese porcentaje del límite elástico, con la torsión incluida, donde la fricción es más baja',
  'bolt-torque.highest-step': 'El par más alto que no puede superarlo: donde la fricción es más baja',
  'bolt-torque.typical-step': 'El par con fricción típica; puede superar el porcentaje donde la fricción es más baja',
  'bolt-torque.floor': 'Lo que el par más alto da todavía donde la fricción es más alta',
  'turn-angle.turn': 'Girar {turn} desde el contacto para {force}.',
  'turn-angle.force': '{turn} desde el contacto da unos {force}.',
  'turn-angle.bolt': 'Rigidez del tornillo, con la cabeza y la rosca engranada incluidas [kN/mm]',
  'turn-angle.joint': 'Rigidez de la unión, acero, dos conos de 30° [kN/mm]',
  'turn-angle.turn-step': 'Giro desde el contacto',
  'turn-angle.force-step': 'Precarga que da el giro',
  'nut-factor.mu-total': 'Fricción de rosca y asiento en un solo número (media de los ensayos)',
  'nut-factor.mu-thread': 'Fricción en la rosca (media de los ensayos)',
  'nut-factor.mu-seat': 'Fricción en el asiento (media de los ensayos)',
  'lubricant.two-frictions': 'Rosca y asiento por separado, lubricado: {where}',
  'place.both': 'ambos',
  'place.threads': 'solo la rosca',
  'place.seat': 'solo el asiento',
  'condition.dry': 'rosca seca',
  'condition.oiled': 'rosca aceitada',
  'condition.greased': 'rosca engrasada',
  'condition.anti-seize': 'pasta antigripante',
  'condition.moly': 'pasta de molibdeno',
  'condition.wax': 'rosca encerada',
  'condition.zinc': 'cincado, seco',
  'condition.zinc-oiled': 'cincado, aceitado',
  'condition.cadmium': 'cadmiado',
  'condition.phosphate-oiled': 'fosfatado y aceitado',
  'condition.black-oxide': 'pavonado (óxido negro)',
  'condition.stainless-dry': 'inoxidable en seco',
  'condition.thread-locker': 'fijador de roscas',
} as const
