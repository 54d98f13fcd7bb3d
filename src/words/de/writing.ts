// Was gesagt wird, wo sich Geschriebenes nicht so behalten lässt, wie es kam.

export const writing = {
  sentBefore:
    'Dieses Formular wurde schon mit anderem Inhalt gesendet, und der wurde gespeichert. Soll auch dieser gespeichert werden: noch einmal senden.',
  carried: 'Das Eingegebene ist noch da. Anmelden, noch einmal ansehen und senden.',
} as const
