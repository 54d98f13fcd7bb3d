// Each input: its name on a form, how it is asked for, how it is measured.

export const inputs = {
  torque: {
    label: 'Par',
    ask: 'el par que debe recibir el tornillo',
    measure: 'Del manual del fabricante, con su unidad.',
  },
  tilt: {
    label: 'Inclinación',
    ask: 'cuánto está inclinado el mango respecto a recto',
    measure: '0° donde el mango está en el plano en que gira el tornillo.',
  },
  hinge: {
    label: 'Articulación',
    ask: 'a qué distancia del cuadrado está la articulación',
    measure: 'Del centro del cuadrado al pasador de la articulación.',
  },
  sensing: {
    label: 'Dónde mide',
    ask: 'dónde mide la llave: por delante de la articulación (ahead) o por detrás (behind)',
    measure:
      'ahead (delante): la mayoría de las indicadoras y electrónicas; behind (detrás): la mayoría de las que hacen clic.',
  },
  length: {
    label: 'Longitud de la extensión',
    ask: 'cuánto miden las extensiones juntas',
    measure: 'De cuadrado a cuadrado, todas las extensiones juntas.',
  },
  drive: {
    label: 'Cuadrado',
    ask: 'el cuadrado de la extensión, o su diámetro',
    measure: '1/4, 3/8, 1/2, 3/4 o 1 in.',
  },
  part: {
    label: 'Otros cuadrados',
    ask: 'los cuadrados de lo demás que cuelga debajo',
    measure: '1/4, 3/8, 1/2, 3/4 o 1 in, cada uno; hasta ocho.',
  },
  'torque-ratio': {
    label: 'Relación de par',
    ask: 'la relación de par (torque-ratio) o la de vueltas (turns-ratio), la que esté marcada',
    measure: 'En su placa o certificado: par de salida por par de entrada, con las pérdidas incluidas.',
  },
  'turns-ratio': {
    label: 'Relación de vueltas',
    ask: 'la relación de vueltas',
    measure: 'Vueltas de entrada por una vuelta de salida; las pérdidas no están incluidas.',
  },
  efficiency: {
    label: 'Rendimiento',
    ask: 'el rendimiento del multiplicador',
    measure: 'De su certificado, en % o de 0 a 1.',
  },
  'run-on': {
    label: 'Par prevaleciente',
    ask: 'el par que hace girar la tuerca autoblocante antes de que asiente',
    measure: 'Leerlo mientras la tuerca gira, con su unidad.',
  },
  reading: {
    label: 'Lectura',
    ask: 'lo que indicó la llave, o a cuánto hizo clic',
    measure: 'Leerlo en la llave, con su unidad.',
  },
  setting: {
    label: 'Valor de ajuste',
    ask: 'a cuánto está ajustada la llave',
    measure: 'Leerlo en la llave, con su unidad.',
  },
  lever: {
    label: 'Palanca',
    ask: 'la palanca de la llave (longitud de palanca)',
    measure:
      'Del centro del cuadrado al centro de la empuñadura, con el valor de ajuste que se va a usar; no la longitud total.',
  },
  adapter: {
    label: 'Adaptador',
    ask: 'la longitud del adaptador, y su dirección donde no esté recto',
    measure: 'Del centro del agujero cuadrado al centro del tornillo; no de punta a punta, no la medida de la boca.',
  },
  angle: {
    label: 'Ángulo',
    ask: 'el ángulo del adaptador respecto al eje de la propia llave',
    measure:
      '0° recto hacia delante, 90° perpendicular, 180° hacia atrás, hacia la mano; + hacia el lado al que gira el mango.',
  },
  hand: {
    label: 'Mano',
    ask: 'dónde tira realmente la mano',
    measure: 'Del centro del cuadrado al centro de la mano.',
  },
  pivot: {
    label: 'Pivote',
    ask: 'dónde dispara la llave (pivot), o de qué tipo es (wrench-type)',
    measure:
      'Del centro del cuadrado al pasador sobre el que bascula el cabezal; dos tirones a un mismo valor de ajuste lo revelan (pivot-offset).',
  },
  'wrench-type': {
    label: 'Tipo de llave',
    ask: 'qué tipo de llave es',
    measure:
      'click (de clic), split-beam (de viga partida), beam (de viga), dial (de reloj) o electronic (electrónica).',
  },
  tolerance: {
    label: 'Tolerancia',
    ask: 'la tolerancia de la llave',
    measure: 'De su certificado o manual, en %.',
  },
  mark: {
    label: 'División de escala',
    ask: 'el paso entre dos trazos de la escala de la llave',
    measure: 'Leerlo en la escala, con su unidad.',
  },
  least: {
    label: 'Mínimo de la escala',
    ask: 'el mínimo de la escala de la llave',
    measure: 'Leerlo en la escala, con su unidad.',
  },
  most: {
    label: 'Máximo de la escala',
    ask: 'el máximo de la escala de la llave',
    measure: 'Leerlo en la escala, con su unidad.',
  },
  'torque-at-lever': {
    label: 'Par, mano donde la palanca',
    ask: 'el par alcanzado con la mano donde se mide la palanca',
    measure: 'En un comprobador, a un mismo valor de ajuste, la media de varios tirones.',
  },
  'torque-at-hand': {
    label: 'Par, mano desplazada',
    ask: 'el par alcanzado con la mano desplazada',
    measure: 'En el mismo comprobador al mismo valor de ajuste, la media de varios tirones.',
  },
  'fitting-change': {
    label: 'Diferencia de cabezal',
    ask: 'cuánto más largo (+) o más corto (-) es el cabezal usado',
    measure: 'De centro a centro: cabezal usado menos el cabezal con el que se calibró la llave.',
  },
  quantity: {
    label: 'Magnitud',
    ask: 'qué convertir, con su unidad',
    measure: 'Un número y una unidad, como 20 N·m.',
  },
  wrench: {
    label: 'Llave',
    ask: 'la etiqueta de la llave en el registro',
    measure: 'Cuelga con la llave y figura en el tablero.',
  },
  to: {
    label: 'A',
    ask: 'cómo estarán rosca y asiento, o la unidad a la que convertir',
    measure: 'Elegir uno de la lista.',
  },
  from: {
    label: 'De',
    ask: 'para qué estado de la rosca es el dato del fabricante',
    measure: 'Figura junto al par en el manual; si no, preguntar al fabricante.',
  },
  'k-from': {
    label: 'Factor K, antes',
    ask: 'el factor K para el que es el dato',
    measure: 'De sus propios ensayos (nut-factor) o de una hoja de datos.',
  },
  'k-to': {
    label: 'Factor K, después',
    ask: 'el factor K del nuevo estado',
    measure: 'De sus propios ensayos (nut-factor) o de una hoja de datos.',
  },
  condition: {
    label: 'Estado',
    ask: 'estado de rosca y asiento (condition), su factor K (k) o su fricción (mu-threads, mu-seat)',
    measure:
      'dry (seco), oiled (aceitado), greased (engrasado), anti-seize (antigripante) …: tal como se va a apretar el tornillo.',
  },
  k: {
    label: 'Factor K',
    ask: 'el factor K',
    measure: 'De sus propios ensayos (nut-factor) o de una hoja de datos.',
  },
  'mu-threads': {
    label: 'Fricción en la rosca',
    ask: 'la fricción en la rosca',
    measure: 'De una hoja de datos; un número solo como 0,14.',
  },
  'mu-seat': {
    label: 'Fricción en el asiento',
    ask: 'la fricción bajo la cabeza o la tuerca',
    measure: 'De una hoja de datos; un número solo como 0,14.',
  },
  'mu-from': { label: 'Fricción, antes', ask: '', measure: '' },
  'mu-to': { label: 'Fricción, después', ask: '', measure: '' },
  pitch: { label: 'Paso', ask: '', measure: '' },
  class: {
    label: 'Clase',
    ask: 'la clase o el grado del tornillo',
    measure: 'Grabada en su cabeza: 8.8, 10.9, A2-70; las rayas radiales son grados SAE.',
  },
  seat: {
    label: 'Asiento',
    ask: 'el asiento bajo la cabeza o la tuerca, exterior x agujero',
    measure:
      'flat 18 mm x 13 mm (plano); cone 60° 18 mm x 13 mm (cono, ángulo total); ball 14 mm 18 mm x 13 mm (bola, radio).',
  },
  share: {
    label: 'Parte de la resistencia',
    ask: 'cuánta de su resistencia puede usar el tornillo',
    measure: '75 % of proof (de la carga de prueba), o 90 % of yield (del límite elástico).',
  },
  where: {
    label: 'Dónde',
    ask: 'dónde va el lubricante: both (ambos), threads (rosca) o seat (asiento)',
    measure: 'both: en la rosca y bajo la cabeza o la tuerca.',
  },
  'grip-length': {
    label: 'Longitud de apriete',
    ask: 'el espesor que queda apretado',
    measure: 'De debajo de la cabeza a la cara de la tuerca, arandelas incluidas.',
  },
  turn: {
    label: 'Giro',
    ask: 'el giro desde el contacto',
    measure: 'En grados, en la tuerca o la cabeza; no en el mango de una extensión larga.',
  },
  'thread-length': {
    label: 'Longitud de rosca',
    ask: 'cuánto del tornillo está roscado',
    measure: 'De su punta a donde empieza la caña.',
  },
  'thread-torque': {
    label: 'Par en la rosca',
    ask: 'la parte del par que se lleva la rosca',
    measure: 'De un banco de ensayo que la mide por separado, una por cada ensayo.',
  },
  size: {
    label: 'Tamaño',
    ask: 'el tamaño de la rosca, o su diámetro',
    measure: 'Grabado en el tornillo o medido sobre la rosca: M12, M12x1.5, 3/8-16; no la medida de la cabeza.',
  },
  diameter: {
    label: 'Diámetro',
    ask: 'el diámetro nominal de la rosca',
    measure: 'Sobre la rosca; no la medida de la cabeza.',
  },
  'clamp-force': {
    label: 'Precarga',
    ask: 'la precarga de cada ensayo',
    measure: 'De una arandela de medición de fuerza, o del alargamiento del tornillo.',
  },
  distance: {
    label: 'Distancia',
    ask: 'a qué distancia del cuadrado tira la báscula',
    measure: 'Del centro del cuadrado al gancho, a lo largo del mango; en el centro de la empuñadura.',
  },
  force: {
    label: 'Fuerza',
    ask: 'lo que indicó la báscula',
    measure: 'El valor más alto antes del clic, con su unidad; sumar el peso del gancho y del cubo.',
  },
  'pull-angle': {
    label: 'Ángulo del tirón',
    ask: 'cuánto se desvía el tirón de la perpendicular al mango',
    measure: '0° donde la cuerda está perpendicular al mango.',
  },
  'wrench-mass': { label: 'Masa de la llave', ask: 'cuánto pesa la llave', measure: 'En la báscula.' },
  'balance-point': {
    label: 'Punto de equilibrio',
    ask: 'dónde queda en equilibrio la llave',
    measure: 'Del centro del cuadrado a donde queda en equilibrio sobre un canto.',
  },
  lie: {
    label: 'Posición',
    ask: 'la posición: level (eje del cuadrado y mango horizontales) o upright (eje vertical o mango colgando)',
    measure:
      'level (eje del cuadrado horizontal, mango horizontal): su peso propio cuenta; upright (eje vertical, o mango colgando): no cuenta.',
  },
  'pull-direction': {
    label: 'Dirección del tirón',
    ask: 'si el tirón gira el mango hacia abajo (down) o hacia arriba (up)',
    measure: 'down: un peso colgado de él; up: una báscula que tira hacia arriba.',
  },
  'gauge-tolerance': {
    label: 'Tolerancia de la báscula',
    ask: 'lo buena que es la báscula',
    measure: 'De su manual, en %, o frente a un peso conocido.',
  },
  'gauge-limit': {
    label: 'Límite de la báscula',
    ask: 'hasta dónde llega la báscula',
    measure: 'Impreso en ella.',
  },
  of: {
    label: 'Tolerancia de',
    ask: 'de qué es la tolerancia: reading (de la lectura) o full-scale (del fondo de escala)',
    measure: 'Figura junto a la tolerancia en el manual.',
  },
  spec: {
    label: 'Intervalo especificado',
    ask: 'el intervalo de par que se especifica',
    measure: 'Del manual del fabricante, los dos extremos: 90–110 N·m.',
  },
  points: {
    label: 'Punto',
    ask: 'cada ajuste con lo que indicó la referencia: ajuste: lecturas, puntos separados por |',
    measure:
      'A la izquierda lo que dice la llave, a la derecha lo que indicó el comprobador cada vez; 5 tirones al 20, 60 y 100 % de la escala, de menor a mayor.',
  },
  'iso-type': {
    label: 'Tipo (ISO 6789)',
    ask: 'el tipo de herramienta según ISO 6789: indicating (indicadora) o setting (de disparo)',
    measure:
      'indicating (indicadora): se lee un reloj, una viga o una pantalla; setting (de disparo): se ajusta y hace clic. En su certificado.',
  },
  'iso-class': {
    label: 'Clase (ISO 6789)',
    ask: 'su clase según ISO 6789, una letra de la A a la G',
    measure: 'En su certificado o en su manual.',
  },
  'gauge-uncertainty': {
    label: 'Incertidumbre de la referencia',
    ask: 'la incertidumbre de la referencia, en %',
    measure: 'De su certificado: la incertidumbre expandida (k = 2).',
  },
  rule: {
    label: 'Regla de decisión',
    ask: 'si cuenta la incertidumbre de la referencia: simple (no) o guarded (sí)',
    measure: 'guarded necesita gauge-uncertainty.',
  },
  a: {
    label: 'Lecturas A',
    ask: 'la primera serie de lecturas, con la que se compara la otra',
    measure: 'Dos o más de un mismo tipo, separadas por ;, la unidad una vez al final o ninguna.',
  },
  b: {
    label: 'Lecturas B',
    ask: 'la segunda serie de lecturas',
    measure: 'Dos o más del mismo tipo que A.',
  },
  margin: {
    label: 'Umbral',
    ask: 'a partir de qué diferencia importa, en % de A',
    measure: 'Lo que admite el trabajo: 4 % es lo que puede desviarse una llave.',
  },
  confidence: {
    label: 'Confianza',
    ask: 'lo segura que debe ser la respuesta, en %',
    measure: '95 % donde no se pide otra cosa.',
  },
  resolution: {
    label: 'Resolución',
    ask: 'el paso más pequeño con el que se leyeron las lecturas',
    measure: 'La última cifra o el trazo del instrumento, en la unidad de las lecturas.',
  },
  'last-check': {
    label: 'Última comprobación',
    ask: 'el día de la última comprobación: año-mes-día',
    measure: 'De su certificado o pegatina: 2026-03-01.',
  },
  uses: {
    label: 'Usos',
    ask: 'cuántas veces se usó desde la última comprobación',
    measure: 'De su contador, o una estimación honrada hacia arriba.',
  },
  interval: {
    label: 'Plazo',
    ask: 'cuánto vale una comprobación: meses (months), usos (uses), o ambos',
    measure: 'La regla del propio taller: 12 months (meses); 5000 uses (usos).',
  },
  events: {
    label: 'Suceso',
    ask: 'qué le pasó, con el día: dropped, overloaded, repaired, modified, wound-up',
    measure:
      'dropped (se cayó), overloaded (se sobrecargó), repaired (se reparó), modified (se modificó), wound-up (se dejó tensada): qué@año-mes-día, varios con ;. Un periodo para wound-up: wound-up@2026-01-01..2026-07-01.',
  },
  'length-doubt': { label: 'Longitudes conocidas a ±', ask: '', measure: '' },
  'hand-doubt': { label: 'Mano colocada a ±', ask: '', measure: '' },
  'angle-doubt': { label: 'Ángulos conocidos a ±', ask: '', measure: '' },
  'square-doubt': { label: 'Tirón perpendicular a ±', ask: '', measure: '' },
  'repeat-doubt': { label: 'Un tirón se repite a ±', ask: '', measure: '' },
  find: { label: 'Buscar', ask: 'qué buscar', measure: '' },
} as const
