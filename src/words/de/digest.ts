// The weekly digest, and the settings of a server in chat.

export const digest = {
  title: 'Die Schlüssel diese Woche, {date}',
  quiet:
    'Nichts ist zu tun: kein Schlüssel ist außerhalb der Grenze, überfällig oder innerhalb von zwei Wochen fällig.',
  parts: {
    'out-of-limit': 'Außerhalb der Grenze, nicht zu verwenden',
    'check-before-use': 'Vor Gebrauch zu prüfen',
    overdue: 'Prüfung überfällig',
    soon: 'Innerhalb von zwei Wochen fällig',
    'set-aside': 'Verliehen oder verloren',
  },
  since: 'seit {date}',
  due: '{date}',
  settings: {
    channel: 'der Kanal für die Wochenübersicht, montags um sieben',
    none: 'Die Wochenübersicht geht nirgendwohin.',
    goes: 'Die Wochenübersicht geht nach <#{channel}>, montags um sieben nach der Uhr der Werkstatt.',
  },
} as const
