// What the kiosk's pages say beside the answers: number entry, a shared screen, the way to a phone, how far to trust it all.

export const kiosk = {
  nearestMarks: 'Nächste Striche der Skala',
  markGives: '{setting} einstellen gibt {torque}',
  topTasks: 'Oft gefragt',
  more: 'Alles Weitere',
  inHand: 'Der Schlüssel in der Hand',
  allWrenches: 'Alle Schlüssel',
  lost: 'Der Server ist nicht erreichbar. Was zu sehen ist, bleibt; Neues wird erst ausgerechnet, wenn er wieder da ist.',
  behind: 'Das beantwortet, was vorher eingegeben war.',
  readFirst: 'Vor dem Benutzen des Schlüssels lesen',
  wasRead: 'Gelesen: Antwort zeigen',
  slip: 'Noch einmal ansehen, bevor diese Zahl verwendet wird',
  asTyped: 'Es stimmt, wie eingegeben: Antwort zeigen',
  keypad: 'Tasten',
  next: 'Weiter',
  erase: 'Löschen',
  clear: 'Leeren',
  close: 'Tasten zu',
  byAngle: 'Richtung',
  noUnit:
    'Keine Einheit neben der gedruckten Angabe? Nicht raten: im Kopf der Tabelle oder auf den ersten Seiten des Buchs nachsehen. Einheit unbekannt, keine Zahl: 100 kann 100 N·m (74 lbf·ft), 100 lbf·ft (136 N·m) oder 100 lbf·in (11 N·m) sein.',
  angleTitle: 'Wohin zeigt der Adapter?',
  angleHelp:
    'In der Zeichnung dort berühren, wo die Schraube ist. Der Griff liegt links; plus ist die Seite, zu der er sich dreht.',
  nowLength: 'Jetzt die Länge',
  take: 'Übernehmen',
  leave: 'Abbrechen',
  straight: 'gerade nach vorn',
  square: 'rechtwinklig',
  back: 'zurück zur Hand',
  idleTitle: 'Noch da?',
  idleText: 'Dieser Bildschirm beginnt von vorn in',
  seconds: 's',
  stay: 'Ich bin da',
  takeAlong: 'Diese Antwort mitnehmen',
  qrAlt: 'Ein Code für ein Telefon: er öffnet diese Seite',
  qrNone:
    'Ein Telefon kann diese Adresse nicht öffnen. PUBLIC_URL auf die Adresse setzen, unter der Telefone diese Auskunft erreichen.',
  print: 'Zum Drucken die Druckfunktion des Browsers verwenden: die Seite hat eine Form für Papier.',
  screen: 'Dieser Bildschirm',
  screenLead:
    'Wie dieser eine Bildschirm die Auskunft zeigt. Es wird in diesem Browser gespeichert und sonst nirgends.',
  cardText:
    'Eine Bankkarte an die Zeichnung halten und die Zeichnung so breit machen wie die Karte: dann sind Tasten so groß, wie sie angegeben sind.',
  wider: 'breiter',
  narrower: 'schmaler',
  perMm: 'Bildpunkte je Millimeter',
  keySize: 'Höhe einer Taste in Millimetern',
  distance: 'Aus welchem Abstand gelesen wird',
  distances: { near: 'in der Hand', arm: 'auf Armlänge', far: 'zwei Schritte entfernt' },
  shared: 'Beginnt von selbst von vorn',
  never: 'nie',
  minutes: { '60': 'nach einer Minute', '120': 'nach zwei Minuten', '300': 'nach fünf Minuten' },
  ownKeys: 'Tasten auf dem Bildschirm',
  keysWhen: { touch: 'wo es einen Touchscreen gibt', always: 'immer' },
  save: 'Für diesen Bildschirm speichern',
  saved: 'Gespeichert.',
  contrast: 'Kontrast',
  contrasts: { usual: 'wie üblich', high: 'schwarz und weiß' },
  about: 'Wie verlässlich das ist',
  aboutLead:
    'Hier wird die Rechnung eines Hebels gemacht und mit Tabellen aus Büchern gearbeitet, mit der Unsicherheit, die dazugehört. Die eigene Verbindung kennt es nicht.',
  aboutPoints: {
    maker:
      'Angabe und Verfahren des Herstellers gehen vor. Diese Auskunft nennt nie ein Drehmoment des Herstellers und ändert nie eines durch Raten.',
    people:
      'Räder, Bremsen, Lenkung, Sicherheitsgurte, Hebezeug, Druckgeräte und Luftfahrzeuge: eine qualifizierte Person entscheidet, nach dem Verfahren des Herstellers und den örtlichen Regeln.',
    band: 'Ein Band ist, wo 95 von 100 Ergebnissen liegen, wenn Längen, Hand und Schlüssel so gut sind wie üblich; was ohne Angabe angenommen wurde, ist als angenommen aufgeführt.',
    friction:
      'Die Reibung von Gewinde und Auflage liegt zwischen Büchern um den Faktor zwei auseinander. Eine Vorspannkraft aus einem Drehmoment ist ein Bereich, und der Bereich ist die Antwort.',
    silence: 'Wo sich keine Zahl nennen lässt, wird das gesagt, und was zu messen oder wer zu fragen ist.',
    check:
      'Eine Prüfung in der Werkstatt zeigt, ob ein Schlüssel seine Grenze noch hält, so gut die Waage es erlaubt. Sie ist keine akkreditierte Kalibrierung.',
    wrong: 'Alles, was falsch aussieht, ist falsch, bis das Gegenteil gezeigt ist: anhalten und fragen.',
  },
  aboutSources: 'Woher die Zahlen kommen',
} as const
