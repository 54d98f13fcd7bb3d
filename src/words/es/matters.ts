// What does-it-matter says of an asker’s own numbers, and its names: in the sections into which it is put.

export const matters = {
  say: {
    'matter.yes': 'sí, importa',
    'matter.no': 'no, no importa',
    'matter.depends': 'depende',
    'matter.stored-wound-up.depends': 'depende de a qué valor y cuánto tiempo, y del tipo de llave',
    'matter.re-used-nut.depends': 'depende de la tuerca y de su fabricante',
    'matter.washers.depends': 'depende de qué desliza',
    'matter.clicked-twice.depends': 'depende de cómo: despacio, o de golpe y pasando del clic',
    'matter.hand-position.depends': 'depende de la llave, y de si hay adaptador',
    'matter.changed-head.depends': 'depende de dónde está su centro',
    'matter.chained-spanner.depends': 'depende de su dirección',
    'matter.flex-head.depends': 'depende de la inclinación y de dónde mide la llave',
    'matter.swivel.depends': 'depende del ángulo del cardán',
    'matter.nothing': 'No, no importa: con estos números el par no cambia.',
    'matter.too-small':
      'No, no importa: cambia el par en {change}, menos de un cuarto de la tolerancia de la llave ({tolerance}).',
    'matter.too-small-between':
      'No, no importa: cambia el par entre {low} y {high}, menos de un cuarto de la tolerancia de la llave ({tolerance}).',
    'matter.changes': 'Sí, importa: si se deja así, cambia el par en el tornillo en {change}.',
    'matter.changes-between': 'Sí, importa: si se deja así, cambia el par en el tornillo entre {low} y {high}.',
    'matter.changes-dial':
      'Sí, importa: si se deja así, cambia el par en el tornillo en {change}; para {torque} ajustar a {setting}.',
    'matter.perhaps':
      'Depende: cambia el par entre {low} y {high}, en un extremo menos y en el otro más de un cuarto de la tolerancia de la llave ({tolerance}).',
    'matter.swivel-allowed':
      'Depende de a quién se pregunte: con un ángulo de {angle} el par oscila entre {low} y {high}, y baja más con fricción; dos manuales de motores lo permiten sin corrección.',
    'matter.at-drive':
      'No, no importa: a una llave que mide en su cuadrado le da igual dónde se agarre, mientras ningún adaptador alcance hacia delante o hacia atrás.',
    'matter.no-spring': 'No, no importa: este tipo de llave no mantiene ningún muelle cargado mientras está guardada.',
    'matter.twist':
      'No, no importa: la extensión se torsiona {twist} y transmite todo el par; solo un ángulo leído en el mango se desvía en eso.',
    'matter.over-rating':
      'Sí, importa: {torque} es el {share} de aquello a lo que se ensayan los cuadrados de este tamaño ({rating}): usar un cuadrado mayor.',
    'matter.under-rating':
      'No, no importa: en línea el par no cambia, y {torque} es el {share} de aquello a lo que se ensayan los cuadrados de este tamaño ({rating}).',
    'matter.below-fifth':
      'Sí, importa: {setting} es el {share} del máximo de la escala; por debajo de un quinto ({fifth}) las normas no garantizan nada.',
    'matter.in-range':
      'No, no importa: {setting} es el {share} del máximo de la escala, no menos de un quinto ({fifth}).',
    'matter.above-most':
      'Sí, importa: {setting} está por encima del máximo de la escala, {most}: usar una llave más grande.',
    'matter.clamp-more':
      'Sí, importa: según estos factores K la precarga cambia en {change} con el mismo clic: más apretado.',
    'matter.clamp-less':
      'Sí, importa: según estos factores K la precarga cambia en {change} con el mismo clic: más flojo.',
    'matter.clamp-same': 'No, no importa: con el mismo factor K la precarga es la misma.',
    'matter.torque': 'Lo que recibe el tornillo con la llave ajustada así',
    'matter.torque-between': 'Lo que recibe el tornillo con la llave ajustada así, de lo más bajo a lo más alto',
    'matter.change': 'Cambio respecto al valor de ajuste',
    'matter.hand-factor':
      'Par en el tornillo por cada unidad en la llave, con la mano fuera del centro de la empuñadura',
    'matter.square-doubt': 'Lo que le hace un tirón no del todo perpendicular (hacia más o hacia menos)',
    'matter.tilt':
      'Cambio del par: desde una llave que dispara por detrás de la articulación, tomada esta en el cuadrado, hasta ninguno donde mide por delante',
    'matter.tilt-pull': 'Cuánto aumenta el tirón donde la llave mide por delante de la articulación',
    'matter.swing': 'Oscilación del par en una vuelta, sin fricción; el extremo bajo',
    'matter.twist-step': 'Cuánto se torsiona la extensión, tomada como acero redondo del ancho de su cuadrado',
    'matter.rating':
      'Porcentaje del par de ensayo de los cuadrados de este tamaño; manda la capacidad de la propia pieza',
    'matter.fifth': 'El ajuste más bajo para el que las normas prometen algo',
    'matter.share': 'Porcentaje del máximo de la escala',
    'matter.full-scale': 'La tolerancia a este valor de ajuste, si es del fondo de escala',
    'matter.tolerance': 'Lo que puede dar una llave dentro de su tolerancia; medio ancho',
    'matter.jerk': 'De un tirón continuo a lo máximo que se cuenta de un tirón brusco',
    'matter.clamp': 'Cambio de la precarga con el mismo par',
    'matter.run-on': 'Lo que debe indicar la llave, sumado el par prevaleciente de la tuerca',
    'matter.link.adapter-setting': 'A cuánto ajustar con este adaptador puesto',
    'matter.link.hand-position': 'Qué hace agarrarla ahí, con la incertidumbre',
    'matter.link.pivot-offset': 'Dónde dispara esta llave, con dos tirones',
    'matter.link.end-fitting': 'A cuánto ajustar con el otro cabezal',
    'matter.link.pull': 'Con qué fuerza tirar',
    'matter.link.lubricant': 'Qué hace otro estado de la rosca',
    'matter.link.nut-factor': 'Su propio factor K, de ensayos medidos',
    'matter.link.scale-check': 'Comprobar la llave con una báscula',
    'matter.link.scale-plan': 'Planear la comprobación: qué fuerzas hay que ver',
    'matter.link.tolerance-band': 'Qué significa la tolerancia a este valor de ajuste',
    'matter.link.wrench-check': 'Comprobar la llave frente a una referencia',
    'matter.link.next-check': 'Cuándo toca la próxima comprobación',
    'matter.link.compare': 'Dos series de lecturas, con ello y sin ello: si difieren',
    'matter.link.prevailing': 'Qué debe indicar la llave con una tuerca autoblocante',
    'matter.link.clamp-force': 'Qué precarga da un par, según la fricción',
    'matter.link.multiplier': 'Qué par meter con un multiplicador de par',
    'matter.link.extension-bar': 'Cuánto se torsiona una extensión, y qué aguantan sus cuadrados',
    'matter.link.flex-head': 'Qué da un cabezal inclinado',
    'matter.link.swivel': 'Qué da un cardán en ángulo',
  },
  cautions: {
    'wheels-again':
      'Cuándo repasar el apriete de las ruedas difiere según la fuente: de {first} a {last}, una nombra {minutes} minutos de reposo. Decide el fabricante del vehículo o de la rueda.',
    'square-assumed':
      'No se dio ángulo: se supone perpendicular (90°). Si el adaptador está de otro modo, indicarlo; abajo figuran las otras direcciones.',
    'not-for-loosening': 'Una llave dinamométrica es para apretar: aflojar con otra cosa.',
    'local-rules':
      'En ruedas, equipos de elevación, presión y aeronaves, la ley o las normas del lugar pueden pedir más: quién puede hacerlo, con qué herramienta y qué se anota.',
    'one-way': 'Muchas llaves de clic miden en un solo sentido: mirarlo antes de usar una en una rosca a izquierdas.',
  },
  questions: { 'does-it-matter': '¿Importa?' },
  topics: { 'does-it-matter': '¿Importa? Extensiones, cardanes, aceite, una caída, un segundo clic, una llave barata' },
  inputs: {
    topic: {
      label: 'Tema',
      ask: 'de qué se trata, con sus propias palabras',
      measure: 'O el nombre de un tema de la lista: bars, swivel, stored-wound-up.',
    },
  },
  results: {
    'does-it-matter.verdict': 'Importa',
    'what-to-do': 'Qué hacer',
    mechanism: 'Por qué',
    'size-of-effect': 'Cuánto',
    'rating-share': 'Porcentaje del par de ensayo',
    'share-of-most': 'Porcentaje del máximo de la escala',
    'full-scale-tolerance': 'Tolerancia aquí, si es del fondo de escala',
  },
  faults: {
    'not-a-topic': {
      allowed: 'palabras que encajen con un tema, o su nombre',
      hint: 'No se encontró ningún tema en eso. Decirlo con otras palabras, o escribir uno de estos: cuidado: {care}; unión: {joint}; tirón: {pull}; alcance: {reach}; herramienta: {tool}.',
    },
    'several-topics': {
      allowed: 'un tema cada vez',
      hint: 'Eso encaja con más de un tema: escribir {topics}.',
    },
  },
} as const
