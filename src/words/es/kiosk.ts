// What the kiosk's pages say beside the answers: number entry, a shared screen, the way to a phone, how far to trust it all.

export const kiosk = {
  topTasks: 'Lo más preguntado',
  more: 'Todo lo demás',
  inHand: 'La llave en su mano',
  allWrenches: 'Todas las llaves',
  lost: 'No se puede conectar con el servidor. Lo que se ve permanece; no se calcula nada nuevo hasta que vuelva.',
  behind: 'Esto responde a lo que se escribió antes.',
  slip: 'Mirar otra vez antes de usar este número',
  asTyped: 'Es lo que se escribió: ver la respuesta',
  keypad: 'Teclas',
  next: 'Siguiente',
  erase: 'Borrar',
  clear: 'Vaciar',
  close: 'Cerrar teclas',
  byAngle: 'Dirección',
  noUnit:
    '¿No hay unidad junto al dato impreso? No adivinar: mirar el encabezado de la tabla o las primeras páginas del libro. Unidad desconocida, ningún número: 100 puede ser 100 N·m (74 lbf·ft), 100 lbf·ft (136 N·m) o 100 lbf·in (11 N·m).',
  angleTitle: '¿Hacia dónde apunta el adaptador?',
  angleHelp:
    'Tocar el dibujo donde está el tornillo. El mango queda a la izquierda; más (+) es el lado hacia el que gira.',
  nowLength: 'Ahora la longitud',
  take: 'Usar esto',
  leave: 'Cancelar',
  straight: 'recto hacia delante',
  square: 'perpendicular',
  back: 'atrás, hacia la mano',
  idleTitle: '¿Sigue ahí?',
  idleText: 'Esta pantalla empieza de nuevo en',
  seconds: 's',
  stay: 'Aquí estoy',
  takeAlong: 'Llevarse esta respuesta',
  qrAlt: 'Un código para un teléfono: abre esta página',
  qrNone:
    'Un teléfono no puede abrir esta dirección. Poner en PUBLIC_URL la dirección con la que los teléfonos llegan a este servicio.',
  print: 'Para imprimirla, usar la función de imprimir del navegador: la página tiene una forma para papel.',
  screen: 'Esta pantalla',
  screenLead: 'Cómo muestra el servicio esta pantalla. Se guarda en este navegador y en ningún otro sitio.',
  cardText:
    'Poner una tarjeta bancaria contra el dibujo y hacer el dibujo tan ancho como la tarjeta: así las teclas miden lo que dicen.',
  wider: 'más ancho',
  narrower: 'más estrecho',
  perMm: 'Puntos de pantalla por milímetro',
  keySize: 'Altura de una tecla en milímetros',
  distance: 'A qué distancia se lee',
  distances: { near: 'en la mano', arm: 'a un brazo de distancia', far: 'a dos pasos' },
  shared: 'Empieza de nuevo sola',
  never: 'nunca',
  minutes: { '60': 'tras un minuto', '120': 'tras dos minutos', '300': 'tras cinco minutos' },
  ownKeys: 'Teclas en la pantalla',
  keysWhen: { touch: 'donde hay pantalla táctil', always: 'siempre' },
  save: 'Guardar para esta pantalla',
  saved: 'Guardado.',
  contrast: 'Contraste',
  contrasts: { usual: 'normal', high: 'blanco y negro' },
  about: 'Hasta dónde fiarse',
  aboutLead:
    'Hace las cuentas de una palanca y usa las tablas de los libros, con la incertidumbre que les corresponde. No conoce ninguna unión suya.',
  aboutPoints: {
    maker:
      'El dato y el procedimiento del fabricante van primero. Este servicio nunca da un par del fabricante, y nunca cambia uno por suposición.',
    people:
      'Ruedas, frenos, dirección, cinturones de seguridad, elevación, presión y aeronaves: decide una persona cualificada, según el procedimiento del fabricante y las normas locales.',
    band: 'Una banda es donde quedan 95 de cada 100 resultados si longitudes, mano y llave son tan buenas como es habitual; lo que se tomó sin haberse indicado figura como supuesto.',
    friction:
      'La fricción de roscas y asientos varía de uno a dos entre libros. Una precarga calculada a partir de un par es un intervalo, y el intervalo es la respuesta.',
    silence: 'Donde no se puede dar un número, lo dice, y también qué medir o a quién preguntar.',
    check:
      'Una comprobación en el taller dice si una llave sigue dentro de su límite, hasta donde la báscula lo permite. No es una calibración acreditada.',
    wrong: 'Todo lo que parece mal está mal mientras no se demuestre lo contrario: parar y preguntar.',
  },
  aboutSources: 'De dónde salen los números',
} as const
