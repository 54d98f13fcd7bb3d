// What a page says where there is no page: what is the matter, and what to do next.

export const problems = {
  'not-found': { title: 'Hier ist nichts', next: 'Auf der Startseite neu beginnen, oder auf die Tafel sehen.' },
  'unknown-question': { title: 'Diese Frage gibt es nicht', next: 'Alle Fragen stehen auf der Startseite.' },
  'no-such-wrench': {
    title: 'Kein Schlüssel mit dieser Kennung ist im Verzeichnis',
    next: 'Die Kennung am Schlüssel ansehen und ihn auf der Tafel auswählen.',
  },
  'no-such-check': {
    title: 'Diese Prüfung gibt es nicht',
    next: 'Die Prüfungen eines Schlüssels stehen auf seiner Seite.',
  },
  'not-readable': {
    title: 'Das lässt sich nicht lesen',
    next: 'Nichts wurde gespeichert. Auf der Startseite neu beginnen.',
  },
  'too-large': {
    title: 'Das ist zu viel auf einmal',
    next: 'Nichts wurde gespeichert. Zurückgehen und weniger senden.',
  },
  'too-many': { title: 'Zu viele Fragen in kurzer Zeit', next: 'Zehn Sekunden warten und noch einmal fragen.' },
  'register-away': {
    title: 'Das Verzeichnis ist gerade nicht erreichbar',
    next: 'Fragen werden trotzdem beantwortet: die Hebellänge des Schlüssels eingeben. Oder es gleich noch einmal versuchen.',
  },
  outage: {
    title: 'Hier ist etwas ausgefallen, es liegt nicht an der Frage',
    next: 'Gleich noch einmal versuchen. Nichts, was bestätigt wurde, ist verloren.',
  },
  reference: 'Vorgang, für die, die diese Auskunft betreuen:',
  again: 'Noch einmal versuchen',
  start: 'Zur Startseite',
} as const
