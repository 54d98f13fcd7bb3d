// What people read of bench runs: what is asked for when one is kept, what may be said from its readings, its pages and commands.

import { benchSay } from './bench-say.ts'

export const bench = {
  inputs: {
    run: { ask: 'die Kennung der Messreihe', measure: 'Wie sie begonnen wurde: B-01.' },
    asked: { ask: 'was die Messreihe zeigen soll', measure: 'Eine Frage, in einem Satz.' },
    conditions: {
      ask: 'was geändert wird, Bedingung für Bedingung',
      measure: 'An der ersten werden die anderen gemessen. A: trocken | B: geölt',
    },
    same: { ask: 'was gleich bleibt', measure: 'Jeder Teil hinter einem | oder in eigener Zeile.' },
    size: { ask: 'die Gewindegröße', measure: 'M12, M12x1,5, 3/8-16.' },
    class: { ask: 'die Festigkeitsklasse', measure: 'Auf dem Kopf: 8.8, A2-70, SAE 5.' },
    diameter: { ask: 'der Nenndurchmesser', measure: 'Wo die Größe ihn nicht nennt.' },
    threads: { ask: 'wie Gewinde und Auflage sind', measure: 'Wo das gleich bleibt: dry, oiled, wax.' },
    seat: { ask: 'die Auflage', measure: 'flat 18 mm x 13 mm: außen, dann Loch.' },
    again: { ask: 'wann wieder gemessen wird', measure: 'Monate nach dem ersten Tag: 1; 3; 6 months.' },
    condition: { ask: 'unter welcher Bedingung', measure: 'Mit ihrem Namen: A.' },
    torque: { ask: 'das abgegebene Drehmoment', measure: 'Eines oder viele: 99,5; 101; 100,2 N·m' },
    'clamp-force': { ask: 'die Klemmkraft', measure: 'In der Reihenfolge der Drehmomente: 24,1; 25 kN' },
    angle: { ask: 'der Drehwinkel', measure: 'In derselben Reihenfolge: 42°; 44°' },
    'wrench-reading': { ask: 'was der Schlüssel anzeigte', measure: 'In derselben Reihenfolge: 100; 100 N·m' },
    reading: { ask: 'welche Messwerte der Reihe', measure: 'Mit der Nummer davor, wie die Reihe sie zeigt: 2.' },
    piece: { ask: 'welches Stück jedes Mal', measure: 'Wo dieselben Stücke wieder gemessen werden: 1; 2; 3' },
  },
  cautions: {
    'bench-factor':
      'K wurde hier gemessen, {run} ({condition}): {k}, die nächste Schraube zwischen {low} und {high}, n = {n}, {days}, {size}. Das spricht nur für diese Schrauben, diese Auflage und diese Hand.',
    'bench-other-size': 'Diese Reihe war an {size}, nicht an der gefragten Größe: ihr K kann ein anderes sein.',
    'bench-matters':
      'Hier gemessen, {run}: {b} gegen {a} {size} ({low} bis {high}), das macht etwas aus (±{margin}); n = {n}, {days}.',
    'bench-small':
      'Hier gemessen, {run}: {b} gegen {a} {size} ({low} bis {high}), zu wenig, um etwas auszumachen (±{margin}); n = {n}, {days}.',
    'bench-open':
      'Hier gemessen, {run}: {b} gegen {a} {size} ({low} bis {high}), das entscheidet es nicht (±{margin}); n = {n}, {days}.',
  },
  asking: {
    bench: {
      label: 'Messreihe',
      ask: 'eine abgeschlossene Messreihe dieser Werkstatt, die den K-Wert oder ein Urteil gibt',
      measure: 'Ihre Kennung, hinter einem Leerzeichen die Bedingung: B-01 A.',
    },
  },
  labels: {
    run: 'Messreihe',
    asked: 'Was gefragt ist',
    conditions: 'Bedingungen',
    same: 'Gleich gehalten',
    size: 'Gewindegröße',
    class: 'Festigkeitsklasse',
    diameter: 'Nenndurchmesser',
    threads: 'Gewinde und Auflage sind',
    seat: 'Auflage',
    again: 'Wieder gemessen nach',
    condition: 'Bedingung',
    torque: 'Abgegebenes Drehmoment',
    'clamp-force': 'Klemmkraft',
    angle: 'Drehwinkel',
    'wrench-reading': 'Anzeige des Schlüssels',
    piece: 'Stücke',
  },
  kinds: { run: 'Messreihe', 'run-reading': 'Messwerte einer Reihe', 'run-finish': 'Ende einer Reihe' },
  forms: { run: 'Messreihe beginnen', 'run-reading': 'Messwerte eintragen', 'run-finish': 'Messreihe abschließen' },
  corrections: {
    run: 'Messreihe berichtigen',
    'run-reading': 'Messwerte berichtigen',
    'run-finish': 'Ende der Messreihe berichtigen',
  },
  faults: {
    'no-such-run': {
      allowed: 'die Kennung einer Messreihe',
      hint: 'Keine Messreihe hat diese Kennung: die Kennung ansehen oder die Reihe beginnen.',
    },
    'no-such-condition': {
      allowed: '{options}',
      hint: 'Diese Reihe hat keine Bedingung dieses Namens: eine von {options} nehmen oder die Reihe berichtigen.',
    },
    'no-such-reading': {
      allowed: '{options}',
      hint: 'Diese Messwerte stehen nicht in der Reihe: die Reihe ansehen und die Nummer davor eingeben.',
    },
    'not-a-condition': {
      allowed: 'ein Name, und hinter einem Doppelpunkt, was es ist',
      hint: 'Der Bedingung einen kurzen Namen geben: A: trocken, wie geliefert.',
    },
    'conditions-alike': {
      allowed: 'ein Name für jede Bedingung',
      hint: 'Zwei Bedingungen heißen gleich: eine umbenennen.',
    },
    'condition-in-use': {
      allowed: 'jede Bedingung, unter der gemessen wurde',
      hint: 'Unter dieser Bedingung stehen Messwerte: sie behalten oder diese Werte zuerst zurücknehmen.',
    },
    'not-months': { allowed: '1 bis 120 Monate', hint: 'Ganze Monate eingeben: 1; 3; 6 months.' },
    'not-planned': {
      allowed: '{options}',
      hint: 'Eine solche Wiederholung ist nicht geplant: weglassen für die Reihe selbst oder den Plan berichtigen.',
    },
    'run-finished': {
      allowed: 'eine Messreihe, die läuft',
      hint: 'Diese Messreihe ist abgeschlossen: eine neue beginnen oder zuerst ihr Ende zurücknehmen.',
    },
    'run-full': {
      allowed: 'höchstens {most} Einträge',
      hint: 'Diese Messreihe ist voll: abschließen und eine neue beginnen.',
    },
    'run-in-use': {
      allowed: 'eine Messreihe ohne Messwerte',
      hint: 'Es stehen Messwerte darunter: diese zuerst zurücknehmen.',
    },
    'lists-uneven': {
      allowed: 'so viele wie unter {other}: {count}',
      hint: 'Messwerte nebeneinander gehören zum selben Zug: jeder Liste einen Wert für jeden Zug geben.',
    },
    'not-a-run-reference': {
      allowed: 'die Kennung einer Messreihe, hinter einem Leerzeichen die Bedingung: B-01 A',
      hint: 'Die Reihe mit ihrer Kennung nennen, dahinter die Bedingung: B-01 A.',
    },
    'run-not-finished': {
      allowed: 'eine abgeschlossene Messreihe',
      hint: 'Diese Reihe läuft noch und sagt morgen vielleicht etwas anderes: erst abschließen, dann nennen.',
    },
    'which-condition': { allowed: '{options}', hint: 'Diese Reihe hat mehrere Bedingungen: sagen, welche, {options}.' },
    'run-without-factor': {
      allowed: 'eine Bedingung mit zwei oder mehr Messwerten von Drehmoment und Klemmkraft, und die Gewindegröße',
      hint: 'Diese Reihe gibt dort keinen K-Wert: weglassen, oder Drehmoment und Klemmkraft zusammen messen.',
    },
    'run-without-verdict': {
      allowed: 'eine Reihe, die unter zwei Bedingungen je zweimal oder öfter gemessen wurde',
      hint: 'Diese Reihe sagt noch nichts über eine Bedingung gegen eine andere: weglassen.',
    },
    'run-too-doubtful': {
      allowed: 'eine Reihe, deren nächste Schraube besser als zur Hälfte bekannt ist',
      hint: 'Ihre Messwerte lassen K zwischen {low} und {high}: damit lässt sich nicht rechnen. Mehr messen oder weglassen.',
    },
    'one-run-wanted': { allowed: 'eine Reihe', hint: 'Eine Reihe und eine Bedingung nennen: B-01 A.' },
    'two-runs-wanted': {
      allowed: 'zwei: woher K kommt, dann wohin',
      hint: 'Nennen, woher, und dann, wohin: B-01 A; B-01 B.',
    },
    'no-bench': {
      allowed: 'ein Platz, an dem Messreihen gespeichert sind',
      hint: 'Hier lassen sich keine Messreihen ansehen: weglassen, oder am Platz der Werkstatt fragen.',
    },
  },
  states: { planned: 'geplant', 'under-way': 'läuft', finished: 'abgeschlossen' },
  subjects: {
    clamp: 'Klemmkraft',
    torque: 'Drehmoment',
    angle: 'Drehwinkel',
    wrench: 'Anzeige des Schlüssels',
    K: 'K-Wert',
  },
  say: benchSay,
  gaps: {
    'one-condition': 'es gibt eine Bedingung, und nichts, woran sie gemessen wird.',
    'too-few': '{condition} hat weniger als zwei Messwerte.',
    'baseline-not-above-0': 'der Mittelwert von {condition} liegt nicht über 0.',
    'no-line': '{condition} hat zu wenige Messwerte für eine Linie.',
    'no-diameter': 'die Gewindegröße ist nicht genannt.',
  },
  page: {
    title: 'Messreihen',
    none: 'Noch ist keine Messreihe gespeichert.',
    begin: 'Messreihe beginnen',
    add: 'Messwert eintragen',
    many: 'Mehrere eintragen',
    finish: 'Abschließen',
    said: 'Was sie sagt',
    ahead: 'Was sie erkennen kann',
    held: 'Gleich gehalten',
    readings: 'Messwerte',
    again: 'Wieder gemessen',
    limits: 'Wie weit sie spricht',
    sheet: 'Als Tabelle',
    card: 'Als Bild zum Teilen',
    data: 'Als Daten',
    back: 'Alle Messreihen',
    begun: 'begonnen am {date}',
    cite: 'Eine Frage kann sie nennen: bench={tag}.',
    day: 'Tag',
  },
  offers: {
    start: 'eine Messreihe beginnen: was gefragt ist, was gleich bleibt, was sich ändert',
    add: 'Messwerte in eine Messreihe eintragen',
    correct: 'Messwerte einer Messreihe berichtigen: ihre Nummer, was richtig ist, und warum',
    'take-back': 'Messwerte einer Messreihe zurücknehmen: ihre Nummer, und warum',
    show: 'eine Messreihe: was sie bisher sagt, ihre Messwerte, ihr Bild',
    finish: 'eine Messreihe abschließen',
    list: 'die Messreihen, nach ihrer Kennung',
  },
  names: { correct: 'berichtigen', 'take-back': 'zurücknehmen', start: 'beginnen', finish: 'abschließen' },
  chat: {
    kept: '{run}: gespeichert.',
    noSuchRun: 'Keine Messreihe hat diese Kennung: in der Liste nachsehen.',
  },
  terminal: {
    usage: 'npm run ask -- bench [start | add | correct | take-back | show | list | finish] eingabe="wert" …',
    kept: '{id} ist gespeichert.',
  },
  problems: {
    'no-such-run': {
      title: 'Keine Messreihe mit dieser Kennung ist im Verzeichnis',
      next: 'Die Messreihen stehen auf ihrer eigenen Seite.',
    },
  },
  digest: 'Messreihen, die wieder zu messen sind',
} as const
