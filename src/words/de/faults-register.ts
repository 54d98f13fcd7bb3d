// What is to be mended in what should be kept, or read from a sheet.

export const faultsRegister = {
  'sheet-unreadable': {
    allowed: 'durch Komma getrennte Werte (RFC 4180) in UTF-8',
    hint: 'Die Anführungszeichen dieser Zeile ansehen: eines innerhalb einer Zelle wird doppelt geschrieben, und jedes, das öffnet, wird geschlossen.',
  },
  'sheet-column': {
    allowed: '{options}',
    hint: 'Keine Spalte heißt so: in der ersten Zeile umbenennen oder herausnehmen.',
  },
  'sheet-column-twice': {
    allowed: 'jede Spalte einmal',
    hint: 'Diese Spalte ist zweimal da: eine herausnehmen.',
  },
  'sheet-empty': {
    allowed: 'eine erste Zeile mit den Namen der Spalten, und eine Zeile für jeden Eintrag',
    hint: 'Es gibt nichts einzulesen: eine Tabelle von Schlüsseln beginnt mit tag,name,wrench-type,most.',
  },
  'sheet-too-long': {
    allowed: 'höchstens {most} Zeilen',
    hint: 'In Teilen senden; was schon eingelesen ist, wird erkannt und bleibt, wie es ist.',
  },
  'sheet-cells': {
    allowed: 'höchstens {most} Zellen',
    hint: 'Diese Zeile hat mehr Zellen, als es Spalten gibt: einen Text, der das Trennzeichen enthält, in Anführungszeichen setzen.',
  },
  'sheet-missing': {
    allowed: 'eine gefüllte Zelle',
    hint: 'Das ist nötig: die Zelle füllen oder die Spalte hinzufügen.',
  },
  'sheet-head': {
    allowed: 'id, at, role und door, wie ein Export sie schreibt',
    hint: 'id, at, role und door bei eigenen Einträgen weglassen; sie gehören zu einem Export.',
  },
  'key-taken': {
    allowed: 'ein neuer Idempotency-Key für einen neuen Eintrag',
    hint: 'Dieser Idempotency-Key wurde für einen anderen Eintrag verwendet: einen neuen senden.',
  },
  'others-write': {
    allowed: 'immer nur einer, der schreibt',
    hint: 'Andere schreiben gerade zu diesem Schlüssel: ihn noch einmal ansehen und noch einmal senden.',
  },
  'no-register-here': {
    allowed: 'eine Auskunft mit einem Verzeichnis von Schlüsseln',
    hint: 'Das wird aus einem Verzeichnis von Schlüsseln beantwortet, und hier lässt sich keines einsehen: bei der Auskunft der Werkstatt fragen.',
  },
  'no-register': {
    allowed: 'ein Schlüssel aus einem Verzeichnis, das hier geführt wird',
    hint: 'Hier wird kein Verzeichnis geführt: den Schlüssel weglassen und seine Hebellänge selbst angeben.',
  },
  'wrench-not-here': {
    allowed: 'die Kennung eines Schlüssels im Verzeichnis',
    hint: 'Kein Schlüssel mit dieser Kennung ist im Verzeichnis: die Kennung ansehen oder sie weglassen und die Hebellänge selbst angeben.',
  },
  'not-a-tag': {
    allowed: 'Buchstaben, Ziffern, ., - und _, höchstens {most}',
    hint: 'Eine Kennung beginnt mit einem Buchstaben oder einer Ziffer und enthält kein Leerzeichen: W-07.',
  },
  'not-a-temperature': { allowed: '{options}', hint: 'Grad mit Einheit eingeben: {options}.' },
  'readings-not-of-way': {
    allowed: 'eine Kraft bei hang und pull, ein Drehmoment bei tester und laboratory',
    hint: 'Was abgelesen wurde, passt nicht zu {way}: die Einheit hinter den Messwerten ansehen oder way.',
  },
  'distance-not-of-way': {
    allowed: 'nur mit hang und pull',
    hint: 'Mit {way} wird das Drehmoment unmittelbar abgelesen: den Abstand weglassen oder way ansehen.',
  },
  'units-differ': {
    allowed: 'eine Einheit für alle Messwerte eines Punkts',
    hint: 'Jedem Messwert eines Punkts dieselbe Einheit geben.',
  },
  'most-not-of-gauge': {
    allowed: 'most-torque für einen torque-tester, most-force für die anderen',
    hint: '{type} misst das nicht: gauge-type ansehen oder die andere Eingabe verwenden.',
  },
  'no-such-wrench': {
    allowed: 'die Kennung eines Schlüssels im Verzeichnis',
    hint: 'Die Kennung ansehen oder den Schlüssel zuerst eintragen.',
  },
  'no-such-gauge': {
    allowed: 'die Kennung eines Prüfmittels im Verzeichnis',
    hint: 'Die Kennung ansehen oder das Prüfmittel zuerst eintragen.',
  },
  'no-such-entry': {
    allowed: 'ein Eintrag der Aufzeichnung',
    hint: 'Den Eintrag noch einmal nachschlagen und jenen korrigieren.',
  },
  'tag-taken': {
    allowed: 'eine freie Kennung',
    hint: 'Eine andere Kennung nehmen oder die Karte korrigieren, die diese hat.',
  },
  'tag-fixed': {
    allowed: '{tag}',
    hint: 'Eine Kennung bleibt bei ihrem Schlüssel oder Prüfmittel: für eine neue Kennung eine neue Karte anlegen.',
  },
  'superseded-already': {
    allowed: 'ein Eintrag, der noch gilt',
    hint: 'Jemand war schneller: ansehen, was jetzt gilt, und das korrigieren.',
  },
  'entry-of-other-kind': {
    allowed: 'ein Eintrag derselben Art',
    hint: 'Jener Eintrag ist von anderer Art ({event}): ihn zurücknehmen und den richtigen hinzufügen.',
  },
  'card-in-use': {
    allowed: 'eine Karte ohne Vorgeschichte',
    hint: 'Unter ihr stehen Prüfungen oder Ereignisse: den Schlüssel ausmustern oder seine Karte korrigieren.',
  },
  'wrench-retired': {
    allowed: 'ein Schlüssel im Einsatz',
    hint: 'Er wurde ausgemustert: das zuerst zurücknehmen, wenn er wiedergekommen ist.',
  },
  'event-without-setting': {
    allowed: 'nur mit wound-up',
    hint: 'Nur bei einem gespannt gelagerten Schlüssel wird der Einstellwert gespeichert; bei {event} weglassen.',
  },
  'why-missing': {
    allowed: 'ein Grund in wenigen Worten',
    hint: 'Angeben, warum: der alte Eintrag bleibt daneben in der Aufzeichnung.',
  },
  'day-ahead': { allowed: 'bis {date}', hint: 'Dieser Tag kommt erst noch: Jahr und Monat ansehen.' },
} as const
