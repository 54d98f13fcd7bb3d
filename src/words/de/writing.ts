// What is said where something written cannot be kept as it came, at any door.

export const writing = {
  faults: {
    'sheet-twice': {
      allowed: 'jede Zeile einmal',
      hint: 'Zeile {line} sagt dasselbe: eine der beiden herausnehmen, oder jeder einen eigenen key geben, wenn beide gemeint sind.',
    },
    'sheet-not-utf8': {
      allowed: 'UTF-8',
      hint: 'Die Tabelle als UTF-8 speichern und noch einmal senden: sonst gehen Buchstaben verloren.',
    },
    'text-hidden': {
      allowed: 'was sich sehen und drucken lässt',
      hint: 'Darin steht ein Zeichen, das niemand sieht: von Hand noch einmal eingeben.',
    },
    'text-one-line': { allowed: 'eine Zeile', hint: 'Auf eine Zeile schreiben.' },
  },
  sentBefore:
    'Dieses Formular wurde schon mit anderem Inhalt gesendet, und der wurde gespeichert. Soll auch dieser gespeichert werden: noch einmal senden.',
  carried: 'Das Eingegebene ist noch da. Anmelden, noch einmal ansehen und senden.',
} as const
