// What is said where something written cannot be kept as it came, at any door.

export const writing = {
  faults: {
    'sheet-twice': {
      allowed: 'cada fila una vez',
      hint: 'La línea {line} dice lo mismo: quitar una de las dos, o dar a cada una su propia key si valen ambas.',
    },
    'sheet-not-utf8': {
      allowed: 'UTF-8',
      hint: 'Guardar la hoja como UTF-8 y enviarla otra vez: de otro modo se pierden letras.',
    },
    'text-hidden': {
      allowed: 'lo que se puede ver e imprimir',
      hint: 'Contiene un signo que nadie ve: escribirlo de nuevo a mano.',
    },
    'text-one-line': { allowed: 'una línea', hint: 'Escribirlo en una sola línea.' },
  },
  sentBefore:
    'Este formulario ya se envió con otro contenido, y aquel quedó guardado. Si también hay que guardar este, enviarlo otra vez.',
  carried: 'Lo escrito sigue aquí. Entrar, volver a mirarlo y enviarlo.',
} as const
