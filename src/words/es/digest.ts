// The weekly digest, and the settings of a server in chat.

export const digest = {
  title: 'Las llaves esta semana, {date}',
  quiet:
    'No hay nada que hacer: ninguna llave está fuera de límite, con la comprobación vencida o a menos de dos semanas de que le toque.',
  parts: {
    'out-of-limit': 'Fuera de límite, no usar',
    'check-before-use': 'Comprobar antes de usar',
    overdue: 'Comprobación vencida',
    soon: 'Toca en dos semanas o menos',
    'set-aside': 'Prestadas o perdidas',
  },
  since: 'desde {date}',
  due: '{date}',
  settings: {
    channel: 'el canal para el resumen, los lunes a las siete',
    none: 'El resumen semanal no se envía a ningún sitio.',
    goes: 'El resumen semanal se envía a <#{channel}>, los lunes a las siete según el reloj del taller.',
  },
} as const
