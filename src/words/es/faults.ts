// What is to be mended in what was asked: what is allowed, and what to type next.

export const faults = {
  'unit-missing': { allowed: '{kind}: {units}', hint: 'Indicar la unidad: escribir {options}.' },
  'unit-unknown': { allowed: '{kind}: {units}', hint: 'Esa unidad no se conoce aquí: escribir {options}.' },
  'adapters-unparted': {
    allowed: 'un adaptador, o varios con ; entre ellos',
    hint: 'Poner ; entre los adaptadores: 2 in; 3 in@45.',
  },
  'inches-unmarked': {
    allowed: 'pies y pulgadas, ambos marcados',
    hint: 'Marcar también las pulgadas: 1\' 2" o 1 ft 2 in.',
  },
  'unit-wrong-kind': { allowed: '{kind}: {units}', hint: 'Eso es otro tipo de magnitud: escribir {options}.' },
  'pound-alone': {
    allowed: '{kind}: {units}',
    hint: 'Una libra sola es una fuerza o una masa, no un par: escribir {options}.',
  },
  'unit-after-plain-number': { allowed: 'un número solo, sin unidad', hint: 'Quitar «{extra}».' },
  'two-readings': {
    allowed: 'un número que se pueda leer de una sola manera',
    hint: 'Esto se puede leer de dos maneras: escribir {readings}.',
  },
  'spec-holds-figure': {
    allowed: 'dónde está el dato, sin el dato',
    hint: 'Aquí solo se guarda dónde está un dato del fabricante, nunca el dato mismo: quitar «{extra}».',
  },
  'thousands-or-decimal': {
    allowed: 'un número que se pueda leer de una sola manera',
    hint: 'Esto se puede leer de dos maneras, {readings}: escribir {options}.',
  },
  'words-around': {
    allowed: 'un número con su unidad, que ninguna palabra de al lado cambie',
    hint: '“{typed}” no es un valor claro tal como está. Decirlo en un valor en cifras con una unidad, con la elección, la parte o la suma ya hecha.',
  },
  'words-around-angle': {
    allowed: 'grados contados desde recto',
    hint: '“{typed}” puede ser otra dirección. Decir el ángulo desde recto delante de la llave: 0° recto, 90° a escuadra con el mango, 180° hacia atrás por el mango.',
  },
  'words-around-hand': {
    allowed: 'una longitud desde el centro del cuadrado',
    hint: '“{typed}” se cuenta desde el mango. Decir a qué distancia del centro del cuadrado está la mano, a lo largo del mango.',
  },
  'not-a-number': { allowed: '{kind}', hint: 'Empezar con un número: escribir {options}.' },
  exponent: { allowed: '{kind}, sin exponente', hint: 'Escribir el número completo: 1000, no 1e3.' },
  'thousands-mark': {
    allowed: 'un signo decimal, sin separador de miles',
    hint: 'Escribir las cifras sin separador de miles: 1234,5.',
  },
  negative: { allowed: 'más de 0', hint: 'Quitar el signo menos, o mirar qué se quería decir.' },
  'adapter-negative': {
    allowed: 'una longitud mayor que 0, con @ángulo para su dirección',
    hint: 'Un adaptador que apunta hacia atrás se escribe con @180: 2 in@180.',
  },
  empty: { allowed: 'un valor', hint: 'Escribir un valor, u omitir el dato.' },
  trailing: { allowed: 'un valor y nada detrás', hint: 'Quitar «{extra}».' },
  'unknown-input': { allowed: '{inputs}', hint: 'Esta pregunta no tiene ese dato: usar {inputs}.' },
  repeated: { allowed: 'un valor', hint: 'Dar este dato una sola vez.' },
  'angle-twice': {
    allowed: 'el ángulo una vez',
    hint: 'El adaptador ya tiene su ángulo detrás de @: omitir angle.',
  },
  'angle-with-chain': {
    allowed: 'longitud@ángulo para cada adaptador',
    hint: 'Con varios adaptadores, escribir cada ángulo detrás de su longitud: 2 in@0 + 3 in@45.',
  },
  'least-above-most': {
    allowed: 'menos de {limit}',
    hint: 'El mínimo de la escala está por debajo del máximo: intercambiar least y most, o mirar sus unidades.',
  },
  'pulls-do-not-fit': {
    allowed: 'dos tirones a un mismo valor de ajuste que una misma llave pueda dar',
    hint: 'Estos dos tirones no encajan en una misma llave (el otro dio {at}): repetir los dos, a un mismo valor de ajuste.',
  },
  'hand-at-lever': {
    allowed: 'una mano bien apartada de la marca de la palanca',
    hint: 'Con la mano donde se mide la palanca no se puede saber nada: tirar cerca de {half}.',
  },
  'pairs-uneven': {
    allowed: '{count} valores, uno por cada par',
    hint: 'Dar tantas precargas como pares, en el mismo orden.',
  },
  'diameter-not-size': {
    allowed: 'size o diameter, no dos que difieran',
    hint: '{size} tiene otro diámetro: omitir uno de los dos.',
  },
  'two-ratios': {
    allowed: 'uno de torque-ratio y turns-ratio',
    hint: 'Dar la relación que está marcada: torque-ratio incluye las pérdidas, turns-ratio no.',
  },
  'ratio-holds-losses': {
    allowed: 'efficiency solo con turns-ratio',
    hint: 'Una relación de par ya incluye las pérdidas: omitir efficiency.',
  },
  'class-not-of-type': {
    allowed: '{options} para el tipo {type}',
    hint: 'No existe esa clase para el tipo {type}: mirar iso-type e iso-class en el certificado.',
  },
  'readings-differ': {
    allowed: '{kind}, como todas las lecturas',
    hint: 'Todas las lecturas, y la resolución, son de un mismo tipo: dar a cada una la misma unidad, o ninguna.',
  },
  'point-without-colon': {
    allowed: 'valor de ajuste: lecturas',
    hint: 'Escribir el valor de ajuste, dos puntos, y luego lo que indicó la referencia: 100 N·m: 99,5; 101 N·m.',
  },
  'point-two-colons': {
    allowed: 'un solo signo de dos puntos por punto',
    hint: 'Separar los puntos con | o una línea nueva: 40 N·m: 39,8; 40 N·m | 100 N·m: 99,5; 101 N·m.',
  },
  'point-empty': { allowed: 'valor de ajuste: lecturas', hint: 'No hay nada entre dos |: quitar uno de ellos.' },
  'point-without-setting': {
    allowed: 'valor de ajuste: lecturas',
    hint: 'Escribir lo que dice la llave antes de los dos puntos: 100 N·m: 99,5; 101 N·m.',
  },
  'point-without-readings': {
    allowed: 'valor de ajuste: lecturas',
    hint: 'Escribir lo que indicó la referencia detrás de los dos puntos: 100 N·m: 99,5; 101 N·m.',
  },
  'too-many-in-point': {
    allowed: 'como máximo {most} lecturas por punto',
    hint: 'No dar más de {most} lecturas en un punto.',
  },
  'no-such-day': { allowed: 'un día del calendario', hint: 'Ese día no existe: ese mes termina el {last}.' },
  'year-out-of-range': { allowed: 'un año de {first} a {last}', hint: 'Mirar el año: de {first} a {last}.' },
  'not-whole': { allowed: 'un número entero', hint: 'Quitar la parte detrás del signo decimal.' },
  'interval-twice': {
    allowed: 'los meses (months) una vez, los usos (uses) una vez',
    hint: 'Dar los meses una vez y los usos una vez.',
  },
  'event-without-day': { allowed: '{event}@año-mes-día', hint: 'Decir cuándo: {event}@2026-03-01.' },
  'event-one-day': {
    allowed: '{event}@año-mes-día',
    hint: 'Eso es cosa de un solo día: {event}@2026-03-01. Un periodo es para wound-up.',
  },
  'days-reversed': {
    allowed: 'primero el día anterior',
    hint: 'Escribir primero el día anterior, luego el posterior.',
  },
  'not-a-text': {
    allowed: 'un texto, o una lista de textos',
    hint: 'Escribirlo como texto con su unidad: "120 N·m".',
  },
  'not-an-object': { allowed: 'un objeto JSON de datos', hint: 'Enviar un objeto: {example}.' },
  'not-a-choice': { allowed: '{options}', hint: 'Escribir uno de estos: {options}.' },
  'not-a-size': {
    allowed: 'un tamaño de rosca como {options}',
    hint: 'Escribir la rosca, no la cabeza: {options}.',
  },
  'not-a-seat': { allowed: '{options}', hint: 'Escribir el asiento como forma, exterior x agujero: {options}.' },
  'not-a-share': { allowed: '{options}', hint: 'Escribir un porcentaje y de qué: {options}.' },
  'no-usual-pitch': {
    allowed: 'un tamaño de la norma, o uno con su paso',
    hint: 'No se conoce un paso habitual para este tamaño: escribirlo detrás del diámetro, M13x1.5.',
  },
  'class-not-for-size': {
    allowed: 'una clase que la norma tenga para {size}',
    hint: 'La norma no tiene esa clase para {size}: mirar el tamaño y la clase.',
  },
  'friction-twice': {
    allowed: 'uno de condition, k, o mu-threads con mu-seat',
    hint: 'Indicar la fricción de una sola manera.',
  },
  'seat-cannot-be': {
    allowed: 'un diámetro exterior mayor que el agujero; un cono de como máximo 180°; una bola mayor que su anillo',
    hint: 'Mirar el asiento: exterior x agujero, ángulo total del cono, radio de la bola.',
  },
  'no-proof-load': {
    allowed: 'un porcentaje del límite elástico',
    hint: '{class} no tiene carga de prueba: escribir un porcentaje del límite elástico, 75 % of yield.',
  },
  'thread-part-above-torque': {
    allowed: 'menos de {limit}',
    hint: 'La parte en la rosca es menor que el par completo: mirar los dos.',
  },
  'force-past-yield': {
    allowed: 'como máximo {limit}',
    hint: 'Más allá del límite elástico la fórmula no vale: termina en {limit}, {turn} desde el contacto.',
  },
  'turn-or-force': { allowed: 'clamp-force o turn', hint: 'Dar el que se conoce: el otro se calcula.' },
  'own-factors-and-where': {
    allowed: 'k-from y k-to, o where',
    hint: 'Un factor K es de rosca y asiento juntos: omitir where, u omitir k-from y k-to.',
  },
  'not-a-point': {
    allowed: 'lo que dice la llave, dos puntos, lo que indicó la referencia',
    hint: 'Escribir un punto así: {example}.',
  },
  'not-a-date': { allowed: 'un día del calendario: año-mes-día', hint: 'Escribir el día así: 2026-03-01.' },
  'not-an-interval': {
    allowed: 'meses (months), usos (uses), o ambos',
    hint: 'Escribir 12 months, o 5000 uses.',
  },
  'not-an-event': { allowed: '{options}', hint: 'Escribir qué pasó y cuándo: dropped@2026-03-01.' },
  'kinds-differ': {
    allowed: 'lecturas de un mismo tipo',
    hint: 'Las dos series deben ser de un mismo tipo: dar las dos en {unit}, o las dos como números solos.',
  },
  'mean-not-above-zero': {
    allowed: 'lecturas a con una media mayor que 0',
    hint: 'Una diferencia en % necesita una media de a mayor que 0.',
  },
  'too-few-readings': {
    allowed: 'al menos dos lecturas',
    hint: 'Dar al menos dos lecturas de cada una.',
  },
  'not-a-unit': { allowed: '{options}', hint: 'Escribir uno de estos: {options}.' },
  'one-value-only': {
    allowed: 'un solo valor',
    hint: 'Un intervalo se admite solo donde se pide un par: escribir un solo valor.',
  },
  'span-reversed': {
    allowed: 'primero el extremo inferior',
    hint: 'Escribir primero el extremo inferior, luego el superior.',
  },
  'too-many': { allowed: 'como máximo {most}', hint: 'No dar más de {most}.' },
  'too-few': {
    allowed: 'los dos extremos, o una tolerancia',
    hint: 'Escribir los dos extremos: 90–110 N·m, o 100 ± 10 N·m.',
  },
  'too-long': { allowed: 'como máximo {most} caracteres', hint: 'Escribir solo el valor.' },
  'above-limit': {
    allowed: 'como máximo {limit}',
    hint: 'Mirar el número y su unidad: se admite como máximo {limit}.',
  },
  'below-limit': {
    allowed: 'al menos {limit}',
    hint: 'Mirar el número y su unidad: se admite al menos {limit}.',
  },
  'pivot-and-type': {
    allowed: 'ningún pivote, o 0, con una llave que mide en el cuadrado ({type})',
    hint: 'Omitir el pivote o el tipo de llave: una llave de este tipo mide en su cuadrado.',
  },
  'hand-inside-pivot': {
    allowed: 'una mano más lejos del cuadrado que {limit}',
    hint: 'Una llave de este tipo puede disparar hasta a {limit} del cuadrado: tirar más afuera, o medir y escribir su pivote.',
  },
  'pivot-past-hand': {
    allowed: 'un pivote más cerca del cuadrado que {limit}',
    hint: 'La mano debe tirar más afuera que el pivote: mirar las dos longitudes.',
  },
  'head-too-long': {
    allowed: 'una diferencia de como máximo {limit}',
    hint: 'Ningún cabezal es tan largo: mirar el signo, el número y su unidad.',
  },
  'hinge-past-lever': {
    allowed: 'una articulación más cerca del cuadrado que {limit}',
    hint: 'La articulación está entre el cuadrado y la mano: mirar las dos longitudes y sus unidades.',
  },
  'hand-inside-any-pivot': {
    allowed: 'una mano más lejos del cuadrado que {limit}',
    hint: 'Algunas llaves disparan hasta a {limit} del cuadrado: tirar más afuera, o escribir su pivote o su tipo (wrench-type).',
  },
  'head-past-lever': {
    allowed: 'una diferencia de menos de {limit}',
    hint: 'Un cabezal no puede ser más corto en más que toda la palanca: mirar las longitudes.',
  },
  'balance-past-pull': {
    allowed: 'como máximo más o menos tan lejos como el tirón: {limit}',
    hint: 'Una llave queda en equilibrio entre su cuadrado y su empuñadura: mirar las dos longitudes y sus unidades.',
  },
  'weight-beats-pull': {
    allowed: 'más de {weight}',
    hint: 'El peso propio de la llave es mayor que este tirón: mirar la fuerza, o dejar el mango colgando recto (lie: upright).',
  },
  'too-doubtful': {
    allowed: 'un alcance cuyos errores cambien el par en menos de ±{limit}',
    hint: 'No hacerlo así: con un alcance tan corto, pequeños errores de mano y de regla deciden el par, y no se puede dar un número. Agarrar más afuera, o girar o acortar el adaptador.',
  },
  'pivot-decides': {
    allowed: 'una mano más afuera, o un pivote conocido',
    hint: 'No hacerlo así: con la mano tan cerca del cuadrado depende de dónde dispara la llave, por un factor de {apart}. Agarrar más afuera, o dar pivot.',
  },
  'not-a-tolerance': {
    allowed: '{options}',
    hint: 'Escribir un porcentaje, y de qué si no es de la lectura: {options}.',
  },
  'behind-the-hand': {
    allowed: 'un adaptador que termine por delante de la mano',
    hint: 'Este adaptador llega {reach} hacia atrás, hasta la mano a {held} o más allá: el tirón giraría el tornillo al revés. Usar uno más corto u otra dirección.',
  },
  'angle-stage': {
    allowed: 'solo el par',
    hint: 'Par y giro son dos etapas: escribir el par; ninguna palanca cambia el giro.',
  },
} as const
