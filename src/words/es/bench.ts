// What people read of bench runs: what is asked for when one is kept, what may be said from its readings, its pages and commands.

import { benchSay } from './bench-say.ts'

export const bench = {
  inputs: {
    run: { ask: 'la etiqueta de la serie', measure: 'Tal como se empezó: B-01.' },
    asked: { ask: 'qué debe aclarar la serie', measure: 'Una pregunta, en una frase.' },
    conditions: {
      ask: 'qué se cambia, condición por condición',
      measure: 'La primera es con la que se comparan las demás. A: seco | B: aceite',
    },
    same: { ask: 'qué se deja igual', measure: 'Cada parte detrás de un | o en su propia línea.' },
    size: { ask: 'el tamaño de la rosca', measure: 'M12, M12x1,5, 3/8-16.' },
    class: { ask: 'la clase del tornillo', measure: 'En la cabeza: 8.8, A2-70, SAE 5.' },
    diameter: { ask: 'el diámetro nominal', measure: 'Donde el tamaño no lo dice.' },
    threads: { ask: 'cómo están rosca y asiento', measure: 'Donde eso se deja igual: dry, oiled, wax.' },
    seat: { ask: 'el asiento', measure: 'flat 18 mm x 13 mm: exterior, luego agujero.' },
    again: { ask: 'cuándo se mide otra vez', measure: 'Meses después del primer día: 1; 3; 6 months.' },
    condition: { ask: 'en qué condición', measure: 'Por su nombre: A.' },
    torque: { ask: 'el par entregado', measure: 'Uno o muchos: 99,5; 101; 100,2 N·m' },
    'clamp-force': { ask: 'la fuerza de apriete', measure: 'En el orden de los pares: 24,1; 25 kN' },
    angle: { ask: 'el ángulo girado', measure: 'En el mismo orden: 42°; 44°' },
    'wrench-reading': { ask: 'lo que indicó la llave', measure: 'En el mismo orden: 100; 100 N·m' },
    reading: { ask: 'qué lecturas de la serie', measure: 'Por el número que llevan delante en la serie: 2.' },
    piece: { ask: 'qué pieza fue cada vez', measure: 'Donde se miden de nuevo las mismas piezas: 1; 2; 3' },
  },
  cautions: {
    'bench-factor':
      'K se midió aquí, {run} ({condition}): {k}, el próximo tornillo entre {low} y {high}, n = {n}, {days}, {size}. Vale solo para estos tornillos, este asiento y esta mano.',
    'bench-other-size': 'Esa serie fue con {size}, no con el tamaño que se pregunta: su K puede ser otro.',
    'bench-matters':
      'Medido aquí, {run}: {b} frente a {a} {size} ({low} a {high}), lo cual importa (±{margin}); n = {n}, {days}.',
    'bench-small':
      'Medido aquí, {run}: {b} frente a {a} {size} ({low} a {high}), demasiado poco para importar (±{margin}); n = {n}, {days}.',
    'bench-open':
      'Medido aquí, {run}: {b} frente a {a} {size} ({low} a {high}), lo cual no lo decide (±{margin}); n = {n}, {days}.',
  },
  asking: {
    bench: {
      label: 'Serie de banco',
      ask: 'una serie de banco terminada de este taller, que da el factor K o un veredicto',
      measure: 'Su etiqueta y, detrás de un espacio, la condición: B-01 A.',
    },
  },
  labels: {
    run: 'Serie',
    asked: 'Qué se pregunta',
    conditions: 'Condiciones',
    same: 'Se deja igual',
    size: 'Tamaño de rosca',
    class: 'Clase',
    diameter: 'Diámetro nominal',
    threads: 'Rosca y asiento están',
    seat: 'Asiento',
    again: 'Se mide otra vez tras',
    condition: 'Condición',
    torque: 'Par entregado',
    'clamp-force': 'Fuerza de apriete',
    angle: 'Ángulo girado',
    'wrench-reading': 'La llave indicó',
    piece: 'Piezas',
  },
  kinds: { run: 'serie de banco', 'run-reading': 'lecturas de una serie', 'run-finish': 'fin de una serie' },
  forms: { run: 'Empezar una serie', 'run-reading': 'Añadir lecturas', 'run-finish': 'Terminar la serie' },
  corrections: {
    run: 'Corregir la serie',
    'run-reading': 'Corregir lecturas',
    'run-finish': 'Corregir el fin de la serie',
  },
  faults: {
    'no-such-run': {
      allowed: 'la etiqueta de una serie de banco',
      hint: 'Ninguna serie tiene esta etiqueta: mirar la etiqueta, o empezar la serie.',
    },
    'no-such-condition': {
      allowed: '{options}',
      hint: 'Esta serie no tiene ninguna condición con ese nombre: tomar una de {options}, o corregir la serie.',
    },
    'no-such-reading': {
      allowed: '{options}',
      hint: 'Esas lecturas no están en la serie: mira la serie y escribe el número que llevan delante.',
    },
    'not-a-condition': {
      allowed: 'un nombre y, tras dos puntos, qué es',
      hint: 'Dar a la condición un nombre corto: A: seco, como viene.',
    },
    'conditions-alike': {
      allowed: 'un nombre para cada condición',
      hint: 'Dos condiciones se llaman igual: cambiar el nombre de una.',
    },
    'condition-in-use': {
      allowed: 'cada condición en la que se leyó',
      hint: 'Hay lecturas en esta condición: dejarla, o anular antes esas lecturas.',
    },
    'not-months': { allowed: '1 a 120 meses', hint: 'Escribir meses enteros: 1; 3; 6 months.' },
    'not-planned': {
      allowed: '{options}',
      hint: 'No hay tal repetición prevista: omitirla para la serie misma, o corregir el plan de la serie.',
    },
    'run-finished': {
      allowed: 'una serie en curso',
      hint: 'Esta serie está terminada: empezar otra, o anular antes su fin.',
    },
    'run-full': {
      allowed: 'como mucho {most} entradas',
      hint: 'Esta serie está llena: terminarla y empezar otra.',
    },
    'run-in-use': { allowed: 'una serie sin lecturas', hint: 'Tiene lecturas: anular antes esas.' },
    'lists-uneven': {
      allowed: 'tantas como en {other}: {count}',
      hint: 'Las lecturas lado a lado son del mismo giro de la llave: dar a cada lista una por giro.',
    },
    'not-a-run-reference': {
      allowed: 'la etiqueta de una serie y, detrás de un espacio, la condición: B-01 A',
      hint: 'Nombrar la serie por su etiqueta y, detrás de un espacio, la condición: B-01 A.',
    },
    'run-not-finished': {
      allowed: 'una serie terminada',
      hint: 'Esta serie sigue, y mañana puede decir otra cosa: terminarla, y luego nombrarla.',
    },
    'which-condition': { allowed: '{options}', hint: 'Esta serie tiene varias condiciones: decir cuál, {options}.' },
    'run-without-factor': {
      allowed: 'una condición con dos o más lecturas de par y fuerza de apriete, y el tamaño de la rosca',
      hint: 'Esta serie no da ahí ningún factor K: omitirla, o leer juntos par y fuerza de apriete.',
    },
    'run-without-verdict': {
      allowed: 'una serie leída dos o más veces en dos condiciones',
      hint: 'Esta serie no dice todavía nada de una condición frente a otra: omitirla.',
    },
    'run-too-doubtful': {
      allowed: 'una serie cuyo próximo tornillo se conoce mejor que a la mitad',
      hint: 'Sus lecturas dejan K entre {low} y {high}: con eso no se puede calcular. Añadir lecturas, u omitir la serie.',
    },
    'one-run-wanted': { allowed: 'una serie', hint: 'Nombrar una serie y una condición: B-01 A.' },
    'two-runs-wanted': {
      allowed: 'dos: de dónde viene K, luego adónde va',
      hint: 'Nombrar de dónde se viene y luego adónde se va: B-01 A; B-01 B.',
    },
    'no-bench': {
      allowed: 'un puesto que guarda series de banco',
      hint: 'Aquí no se puede mirar ninguna serie de banco: omitirla, o preguntar en el puesto del taller.',
    },
  },
  states: { planned: 'prevista', 'under-way': 'en curso', finished: 'terminada' },
  subjects: {
    clamp: 'fuerza de apriete',
    torque: 'par',
    angle: 'ángulo',
    wrench: 'indicación de la llave',
    K: 'factor K',
  },
  say: benchSay,
  gaps: {
    'one-condition': 'hay una sola condición, y nada con qué compararla.',
    'too-few': '{condition} tiene menos de dos lecturas.',
    'baseline-not-above-0': 'la media de {condition} no está por encima de 0.',
    'no-line': '{condition} tiene muy pocas lecturas para una recta.',
    'no-diameter': 'no se dijo el tamaño de la rosca.',
  },
  page: {
    title: 'Series de banco',
    none: 'Todavía no hay ninguna serie de banco.',
    begin: 'Empezar una serie',
    add: 'Añadir una lectura',
    many: 'Añadir varias',
    finish: 'Terminarla',
    said: 'Qué dice',
    ahead: 'Qué puede ver',
    held: 'Se deja igual',
    readings: 'Lecturas',
    again: 'Medido otra vez',
    limits: 'Hasta dónde vale',
    sheet: 'Como hoja',
    card: 'Como imagen para compartir',
    data: 'Como datos',
    back: 'Todas las series',
    begun: 'empezada el {date}',
    cite: 'Una pregunta puede nombrarla: bench={tag}.',
    day: 'Día',
  },
  offers: {
    start: 'empezar una serie de banco: qué se pregunta, qué se deja igual, qué se cambia',
    add: 'añadir lecturas a una serie de banco',
    correct: 'corregir lecturas de una serie de banco: su número, lo correcto y por qué',
    'take-back': 'retirar lecturas de una serie de banco: su número y por qué',
    show: 'una serie de banco: qué dice hasta ahora, sus lecturas, su dibujo',
    finish: 'terminar una serie de banco',
    list: 'las series de banco, por su etiqueta',
  },
  names: { correct: 'corregir', 'take-back': 'retirar-lecturas', start: 'empezar', finish: 'terminar' },
  chat: {
    kept: '{run}: guardado.',
    noSuchRun: 'Ninguna serie de banco tiene esta etiqueta: mirar la lista.',
  },
  terminal: {
    usage: 'npm run ask -- bench [start | add | correct | take-back | show | list | finish] dato="valor" …',
    kept: '{id} está guardado.',
  },
  problems: {
    'no-such-run': {
      title: 'No hay ninguna serie de banco con esta etiqueta',
      next: 'Las series de banco están en su propia página.',
    },
  },
  digest: 'Series de banco que medir otra vez',
} as const
