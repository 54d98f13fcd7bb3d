// What is to be mended in what should be kept, or read from a sheet.

export const faultsRegister = {
  'sheet-unreadable': {
    allowed: 'valores separados por comas (RFC 4180) en UTF-8',
    hint: 'Mirar las comillas de esta línea: unas comillas dentro de una celda se escriben dobles, y todas las que se abren se cierran.',
  },
  'sheet-column': {
    allowed: '{options}',
    hint: 'Ninguna columna se llama así: cambiarle el nombre en la primera línea, o quitarla.',
  },
  'sheet-column-twice': {
    allowed: 'cada columna una vez',
    hint: 'Esta columna está dos veces: quitar una.',
  },
  'sheet-empty': {
    allowed: 'una primera línea con los nombres de las columnas, y una línea por cada entrada',
    hint: 'No hay nada que leer: una hoja de llaves empieza con tag,name,wrench-type,most.',
  },
  'sheet-too-long': {
    allowed: 'como máximo {most} filas',
    hint: 'Enviarla por partes; lo que ya se leyó se reconoce y se deja como está.',
  },
  'sheet-cells': {
    allowed: 'como máximo {most} celdas',
    hint: 'Esta línea tiene más celdas que columnas hay: poner entre comillas un texto que contenga el separador.',
  },
  'sheet-missing': {
    allowed: 'una celda rellena',
    hint: 'Esto hace falta: rellenar la celda, o añadir la columna.',
  },
  'sheet-head': {
    allowed: 'id, at, role y door tal como los escribe una exportación',
    hint: 'Omitir id, at, role y door en las entradas propias; pertenecen a una exportación.',
  },
  'key-taken': {
    allowed: 'un Idempotency-Key nuevo para una entrada nueva',
    hint: 'Este Idempotency-Key se usó para otra entrada: enviar uno nuevo.',
  },
  'others-write': {
    allowed: 'uno solo escribiendo a la vez',
    hint: 'Otros están escribiendo sobre esta llave: mirarla de nuevo y enviarlo otra vez.',
  },
  'no-register-here': {
    allowed: 'un servicio con un registro de llaves',
    hint: 'Esto se responde con un registro de llaves, y aquí no se puede consultar ninguno: preguntar en el servicio del taller.',
  },
  'no-register': {
    allowed: 'una llave de un registro que se lleve aquí',
    hint: 'Aquí no se lleva ningún registro: omitir la llave y dar su palanca a mano.',
  },
  'wrench-not-here': {
    allowed: 'la etiqueta de una llave del registro',
    hint: 'En el registro no hay ninguna llave con esta etiqueta: mirar la etiqueta, u omitirla y dar la palanca a mano.',
  },
  'not-a-tag': {
    allowed: 'letras, cifras, ., - y _, como máximo {most}',
    hint: 'Una etiqueta empieza con una letra o una cifra y no lleva espacios: W-07.',
  },
  'not-a-temperature': { allowed: '{options}', hint: 'Escribir los grados con su unidad: {options}.' },
  'readings-not-of-way': {
    allowed: 'una fuerza con hang y pull, un par con tester y laboratory',
    hint: 'Lo que se leyó no va con {way}: mirar la unidad detrás de las lecturas, o way.',
  },
  'distance-not-of-way': {
    allowed: 'solo con hang y pull',
    hint: 'Con {way} el par se lee directamente: omitir la distancia, o mirar way.',
  },
  'units-differ': {
    allowed: 'una sola unidad para todas las lecturas de un punto',
    hint: 'Dar a todas las lecturas de un punto la misma unidad.',
  },
  'most-not-of-gauge': {
    allowed: 'most-torque para un torque-tester, most-force para los demás',
    hint: '{type} no mide eso: mirar gauge-type, o usar el otro dato.',
  },
  'no-such-wrench': {
    allowed: 'la etiqueta de una llave del registro',
    hint: 'Mirar la etiqueta, o añadir primero la llave.',
  },
  'no-such-gauge': {
    allowed: 'la etiqueta de un instrumento del registro',
    hint: 'Mirar la etiqueta, o añadir primero el instrumento.',
  },
  'no-such-entry': {
    allowed: 'una entrada del historial',
    hint: 'Buscar de nuevo la entrada y corregir esa.',
  },
  'tag-taken': {
    allowed: 'una etiqueta libre',
    hint: 'Tomar otra etiqueta, o corregir la ficha que tiene esta.',
  },
  'tag-fixed': {
    allowed: '{tag}',
    hint: 'Una etiqueta se queda con su llave o instrumento: añadir una ficha nueva para una etiqueta nueva.',
  },
  'superseded-already': {
    allowed: 'una entrada que siga vigente',
    hint: 'Alguien se adelantó: mirar lo que está vigente ahora, y corregir eso.',
  },
  'entry-of-other-kind': {
    allowed: 'una entrada del mismo tipo',
    hint: 'Esa entrada es de otro tipo ({event}): anularla y añadir la correcta.',
  },
  'card-in-use': {
    allowed: 'una ficha sin historial',
    hint: 'Tiene comprobaciones o sucesos: dar de baja la llave, o corregir su ficha.',
  },
  'wrench-retired': {
    allowed: 'una llave en servicio',
    hint: 'Se dio de baja: anular primero la baja, si ha vuelto.',
  },
  'event-without-setting': {
    allowed: 'solo con wound-up',
    hint: 'Solo de una llave que se dejó tensada se guarda el valor de ajuste; con {event}, omitirlo.',
  },
  'why-missing': {
    allowed: 'un motivo en pocas palabras',
    hint: 'Decir por qué: la entrada antigua queda en el historial junto a esta.',
  },
  'day-ahead': { allowed: 'hasta el {date}', hint: 'Ese día aún no ha llegado: mirar el año y el mes.' },
} as const
