// What a page says where there is no page: what is the matter, and what to do next.

export const problems = {
  'not-found': { title: 'Aquí no hay nada', next: 'Empezar de nuevo en la página de inicio, o mirar el tablero.' },
  'unknown-question': { title: 'Esa pregunta no existe', next: 'Todas las preguntas están en la página de inicio.' },
  'no-such-wrench': {
    title: 'En el registro no hay ninguna llave con esta etiqueta',
    next: 'Mirar la etiqueta en la llave y elegirla en el tablero.',
  },
  'no-such-check': { title: 'Esa comprobación no existe', next: 'Las comprobaciones de una llave están en su página.' },
  'not-readable': {
    title: 'Esto no se puede leer',
    next: 'No se guardó nada. Empezar de nuevo en la página de inicio.',
  },
  'too-large': { title: 'Es demasiado de una vez', next: 'No se guardó nada. Volver atrás y enviar menos.' },
  'too-many': { title: 'Demasiadas preguntas en poco tiempo', next: 'Esperar diez segundos y preguntar de nuevo.' },
  'register-away': {
    title: 'El registro no está accesible en este momento',
    next: 'Las preguntas se responden igualmente: escribir la palanca de la llave. O intentarlo de nuevo dentro de un momento.',
  },
  outage: {
    title: 'Ha fallado algo aquí, no su pregunta',
    next: 'Intentarlo de nuevo dentro de un momento. No se ha perdido nada de lo que se confirmó.',
  },
  reference: 'Referencia para quienes mantienen este servicio:',
  again: 'Intentar de nuevo',
  start: 'A la página de inicio',
} as const
