// Lo que se dice, en cualquier puerta, cuando algo escrito no se puede guardar tal como llegó.

export const writing = {
  sentBefore:
    'Este formulario ya se envió con otro contenido, y aquel quedó guardado. Si también hay que guardar este, enviarlo otra vez.',
  carried: 'Lo escrito sigue aquí. Entrar, volver a mirarlo y enviarlo.',
} as const
