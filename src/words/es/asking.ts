// What is said about free text, in the sections into which it is put: how it was read, what is not answered, what people quote.

export const asking = {
  say: {
    'ask.choice': 'Esto se puede leer de varias maneras, y las respuestas difieren: elegir la que se quiso decir.',
  },
  cautions: {
    'turn-left-aside':
      'El giro del texto se dejó aparte: un giro es una etapa propia, y ninguna palanca lo cambia. Donde el fabricante pide par y giro, todo el procedimiento es el del fabricante.',
    'quoted-one-minus':
      'La regla que usted cita, T · (1 − A/L), ajusta más bajo que T · L/(L + A), exactamente en la fracción (A/L)² del valor de ajuste correcto.',
    'quoted-one-foot':
      'La regla que usted cita, T/(1 + la longitud en pies), vale para una palanca de exactamente un pie (304,8 mm) y para ninguna otra.',
    'quoted-square-same':
      'Que un adaptador a 90° no necesita corrección es cierto, sea cual sea su longitud: no añade nada a lo largo de la llave. Que alguna distancia quede igual no es el motivo.',
    'quoted-percent-off':
      'El porcentaje que usted cita corresponde a un lubricante y a una unión; nada aquí dice que sean los suyos.',
    'quoted-bar-as-adapter':
      'La fórmula que usted cita es para un adaptador que sobresale de la llave; una extensión en línea con el cuadrado no necesita corrección.',
  },
  topics: { ask: 'Con sus propias palabras: ¿de qué se trata y qué números tiene?' },
  inputs: {
    text: {
      label: 'Con sus propias palabras',
      ask: 'la pregunta con sus propias palabras, con sus números y unidades',
      measure: 'Por ejemplo: 100 N·m, llave de 450 mm, pata de gallo de 75 mm recta hacia delante, ¿a cuánto ajusto?',
    },
  },
  results: { 'as-quoted': 'Según la regla que usted cita (suya, no calculada aquí)' },
  faults: {
    'maker-figure': {
      allowed: 'un par que usted tiene del fabricante',
      hint: 'Los pares los da el fabricante, y aquí no se da ninguno. Traiga el dato con su llave, adaptador o rosca, y se calcula a cuánto ajustar.',
    },
    'out-of-scope': {
      allowed: 'una pregunta sobre apretar a un par',
      hint: 'Aquí se calculan valores de ajuste de la llave con adaptadores, cardanes y multiplicadores, precarga y lubricantes, comprobaciones de una llave y unidades. Pregunte con sus números.',
    },
    'text-too-long': {
      allowed: 'como máximo {most} bytes',
      hint: 'Preguntar con menos palabras: la pregunta y sus números.',
    },
  },
  faces: {
    reading: 'Cómo se leyó',
    'as-input': '«{span}»: {label}, {text}',
    'as-followed': '{label}, {text}: no está escrito, se deduce del resto',
    'left-aside': 'dejado aparte: {spans}',
    alternatives: 'O quiso decir',
    'work-it-out': 'Calcular esto',
  },
  page: {
    askTitle: 'Con sus propias palabras',
    askLine: 'Preguntar con sus propias palabras',
    change: 'Cambiar los números',
  },
} as const
