// What is to be mended in what was asked: what is allowed, and what to type next.

export const faults = {
  'unit-missing': { allowed: '{kind}: {units}', hint: 'Die Einheit angeben: {options} eingeben.' },
  'unit-unknown': { allowed: '{kind}: {units}', hint: 'Diese Einheit ist hier nicht bekannt: {options} eingeben.' },
  'adapters-unparted': {
    allowed: 'ein Adapter, oder mehrere mit ; dazwischen',
    hint: 'Zwischen Adapter ein ; setzen: 2 in; 3 in@45.',
  },
  'inches-unmarked': {
    allowed: 'Fuß und Zoll, beide gekennzeichnet',
    hint: 'Auch die Zoll kennzeichnen: 1\' 2" oder 1 ft 2 in.',
  },
  'unit-wrong-kind': { allowed: '{kind}: {units}', hint: 'Das ist eine andere Art von Größe: {options} eingeben.' },
  'pound-alone': {
    allowed: '{kind}: {units}',
    hint: 'Ein Pfund allein ist eine Kraft oder eine Masse, kein Drehmoment: {options} eingeben.',
  },
  'unit-after-plain-number': { allowed: 'eine bloße Zahl, keine Einheit', hint: '„{extra}“ weglassen.' },
  'two-readings': {
    allowed: 'eine Zahl, die sich nur auf eine Art lesen lässt',
    hint: 'Das lässt sich auf zwei Arten lesen: {readings} eingeben.',
  },
  'spec-holds-figure': {
    allowed: 'wo die Angabe steht, ohne die Angabe',
    hint: 'Hier wird nur gespeichert, wo eine Herstellerangabe steht, nie die Angabe selbst: „{extra}“ weglassen.',
  },
  'thousands-or-decimal': {
    allowed: 'eine Zahl, die sich nur auf eine Art lesen lässt',
    hint: 'Das lässt sich auf zwei Arten lesen, {readings}: {options} eingeben.',
  },
  'words-around': {
    allowed: 'eine Zahl mit ihrer Einheit, die kein Wort daneben ändert',
    hint: '„{typed}“ ist so kein eindeutiger Wert. Als einen Wert in Ziffern mit einer Einheit angeben; Auswahl, Anteil oder Summe vorher ausrechnen.',
  },
  'words-around-angle': {
    allowed: 'Grad, von geradeaus gezählt',
    hint: '„{typed}“ kann eine andere Richtung sein. Den Winkel von geradeaus an angeben: 0° geradeaus, 90° quer zum Griff, 180° zurück über den Griff.',
  },
  'words-around-hand': {
    allowed: 'eine Länge von der Mitte des Vierkants an',
    hint: '„{typed}“ zählt vom Griff her. Angeben, wie weit die Hand von der Mitte des Vierkants ist, den Griff entlang.',
  },
  'not-a-number': { allowed: '{kind}', hint: 'Mit einer Zahl beginnen: {options} eingeben.' },
  exponent: { allowed: '{kind}, ohne Exponent', hint: 'Die Zahl ausschreiben: 1000, nicht 1e3.' },
  'thousands-mark': {
    allowed: 'ein Dezimalzeichen, kein Tausenderzeichen',
    hint: 'Die Ziffern ohne Tausenderzeichen schreiben: 1234,5.',
  },
  negative: { allowed: 'mehr als 0', hint: 'Das Minuszeichen weglassen oder nachsehen, was gemeint war.' },
  'adapter-negative': {
    allowed: 'eine Länge über 0, mit @Winkel für die Richtung',
    hint: 'Ein Adapter, der zurück zeigt, wird mit @180 geschrieben: 2 in@180.',
  },
  empty: { allowed: 'ein Wert', hint: 'Einen Wert eingeben oder die Eingabe weglassen.' },
  trailing: { allowed: 'ein Wert und nichts dahinter', hint: '„{extra}“ weglassen.' },
  'unknown-input': { allowed: '{inputs}', hint: 'Diese Frage hat keine solche Eingabe: {inputs} verwenden.' },
  repeated: { allowed: 'ein Wert', hint: 'Diese Eingabe nur einmal angeben.' },
  'angle-twice': {
    allowed: 'der Winkel einmal',
    hint: 'Der Adapter hat seinen Winkel schon hinter @: angle weglassen.',
  },
  'angle-with-chain': {
    allowed: 'Länge@Winkel für jeden Adapter',
    hint: 'Bei mehreren Adaptern jeden Winkel hinter seine Länge schreiben: 2 in@0 + 3 in@45.',
  },
  'least-above-most': {
    allowed: 'weniger als {limit}',
    hint: 'Der kleinste Skalenwert liegt unter dem größten: least und most tauschen oder ihre Einheiten ansehen.',
  },
  'pulls-do-not-fit': {
    allowed: 'zwei Züge bei einem Einstellwert, die ein Schlüssel geben kann',
    hint: 'Diese zwei Züge passen nicht zu einem Schlüssel (der andere gab {at}): beide wiederholen, bei einem Einstellwert.',
  },
  'hand-at-lever': {
    allowed: 'eine Hand deutlich entfernt von der Marke der Hebellänge',
    hint: 'Mit der Hand dort, wo die Hebellänge gemessen ist, lässt sich nichts feststellen: nahe {half} ziehen.',
  },
  'pairs-uneven': {
    allowed: '{count} Werte, einer für jedes Drehmoment',
    hint: 'So viele Vorspannkräfte wie Drehmomente angeben, in derselben Reihenfolge.',
  },
  'diameter-not-size': {
    allowed: 'size oder diameter, nicht zwei verschiedene',
    hint: '{size} hat einen anderen Durchmesser: eines von beiden weglassen.',
  },
  'two-ratios': {
    allowed: 'eines von torque-ratio und turns-ratio',
    hint: 'Das aufgedruckte Verhältnis angeben: torque-ratio enthält die Verluste, turns-ratio nicht.',
  },
  'ratio-holds-losses': {
    allowed: 'efficiency nur mit turns-ratio',
    hint: 'Ein Drehmomentverhältnis enthält die Verluste schon: efficiency weglassen.',
  },
  'class-not-of-type': {
    allowed: '{options} für Typ {type}',
    hint: 'Eine solche Klasse gibt es für Typ {type} nicht: iso-type und iso-class auf dem Zertifikat ansehen.',
  },
  'readings-differ': {
    allowed: '{kind}, wie bei allen Messwerten',
    hint: 'Alle Messwerte und die Auflösung sind von einer Art: jedem dieselbe Einheit geben, oder keinem.',
  },
  'point-without-colon': {
    allowed: 'Einstellwert: Messwerte',
    hint: 'Den Einstellwert schreiben, einen Doppelpunkt, dann, was die Referenz zeigte: 100 N·m: 99,5; 101 N·m.',
  },
  'point-two-colons': {
    allowed: 'ein Doppelpunkt je Punkt',
    hint: 'Die Punkte durch | oder eine neue Zeile trennen: 40 N·m: 39,8; 40 N·m | 100 N·m: 99,5; 101 N·m.',
  },
  'point-empty': {
    allowed: 'Einstellwert: Messwerte',
    hint: 'Zwischen zwei | steht nichts: eines davon weglassen.',
  },
  'point-without-setting': {
    allowed: 'Einstellwert: Messwerte',
    hint: 'Vor den Doppelpunkt schreiben, was der Schlüssel sagt: 100 N·m: 99,5; 101 N·m.',
  },
  'point-without-readings': {
    allowed: 'Einstellwert: Messwerte',
    hint: 'Hinter den Doppelpunkt schreiben, was die Referenz zeigte: 100 N·m: 99,5; 101 N·m.',
  },
  'too-many-in-point': {
    allowed: 'höchstens {most} Messwerte je Punkt',
    hint: 'An einem Punkt nicht mehr als {most} Messwerte angeben.',
  },
  'no-such-day': { allowed: 'ein Tag des Kalenders', hint: 'Diesen Tag gibt es nicht: der Monat endet mit {last}.' },
  'year-out-of-range': {
    allowed: 'ein Jahr von {first} bis {last}',
    hint: 'Das Jahr ansehen: {first} bis {last}.',
  },
  'not-whole': { allowed: 'eine ganze Zahl', hint: 'Den Teil hinter dem Dezimalzeichen weglassen.' },
  'interval-twice': {
    allowed: 'Monate (months) einmal, Betätigungen (uses) einmal',
    hint: 'Die Monate einmal und die Betätigungen einmal angeben.',
  },
  'event-without-day': { allowed: '{event}@Jahr-Monat-Tag', hint: 'Angeben, wann: {event}@2026-03-01.' },
  'event-one-day': {
    allowed: '{event}@Jahr-Monat-Tag',
    hint: 'Das ist eine Sache eines Tages: {event}@2026-03-01. Ein Zeitraum ist für wound-up.',
  },
  'days-reversed': {
    allowed: 'der frühere Tag zuerst',
    hint: 'Den früheren Tag zuerst schreiben, dann den späteren.',
  },
  'not-a-text': {
    allowed: 'ein Text, oder eine Liste von Texten',
    hint: 'Als Text mit Einheit schreiben: "120 N·m".',
  },
  'not-an-object': { allowed: 'ein JSON-Objekt mit Eingaben', hint: 'Ein Objekt senden: {example}.' },
  'not-a-choice': { allowed: '{options}', hint: 'Eines davon eingeben: {options}.' },
  'not-a-size': {
    allowed: 'eine Gewindegröße wie {options}',
    hint: 'Das Gewinde eingeben, nicht die Schlüsselweite: {options}.',
  },
  'not-a-seat': { allowed: '{options}', hint: 'Die Auflage als Form, außen x Loch eingeben: {options}.' },
  'not-a-share': { allowed: '{options}', hint: 'Einen Prozentsatz eingeben, und wovon: {options}.' },
  'no-usual-pitch': {
    allowed: 'eine Größe der Norm, oder eine mit ihrer Steigung',
    hint: 'Für diese Größe ist keine übliche Steigung bekannt: hinter den Durchmesser schreiben, M13x1.5.',
  },
  'class-not-for-size': {
    allowed: 'eine Festigkeitsklasse, die die Norm für {size} hat',
    hint: 'Die Norm hat keine solche Festigkeitsklasse für {size}: Größe und Festigkeitsklasse ansehen.',
  },
  'friction-twice': {
    allowed: 'eines von condition, k, oder mu-threads mit mu-seat',
    hint: 'Die Reibung nur auf eine Art angeben.',
  },
  'seat-cannot-be': {
    allowed: 'ein Außendurchmesser größer als das Loch; ein Kegel von höchstens 180°; eine Kugel größer als ihr Ring',
    hint: 'Die Auflage ansehen: außen x Loch, ganzer Kegelwinkel, Radius der Kugel.',
  },
  'no-proof-load': {
    allowed: 'ein Anteil der Streckgrenze',
    hint: '{class} hat keine Prüfkraft: einen Anteil der Streckgrenze eingeben, 75 % of yield.',
  },
  'thread-part-above-torque': {
    allowed: 'weniger als {limit}',
    hint: 'Der Teil im Gewinde ist kleiner als das ganze Drehmoment: beide ansehen.',
  },
  'force-past-yield': {
    allowed: 'höchstens {limit}',
    hint: 'Über der Streckgrenze gilt die Formel nicht: sie endet bei {limit}, {turn} ab Anlage.',
  },
  'turn-or-force': {
    allowed: 'clamp-force oder turn',
    hint: 'Angeben, was bekannt ist: das andere wird ausgerechnet.',
  },
  'own-factors-and-where': {
    allowed: 'k-from und k-to, oder where',
    hint: 'Ein K-Faktor gilt für Gewinde und Auflage zusammen: where weglassen oder k-from und k-to weglassen.',
  },
  'not-a-point': {
    allowed: 'was der Schlüssel sagt, ein Doppelpunkt, was die Referenz zeigte',
    hint: 'Einen Punkt so eingeben: {example}.',
  },
  'not-a-date': { allowed: 'ein Tag des Kalenders: Jahr-Monat-Tag', hint: 'Den Tag so eingeben: 2026-03-01.' },
  'not-an-interval': {
    allowed: 'Monate (months), Betätigungen (uses) oder beides',
    hint: '12 months eingeben oder 5000 uses.',
  },
  'not-an-event': { allowed: '{options}', hint: 'Eingeben, was geschah und wann: dropped@2026-03-01.' },
  'kinds-differ': {
    allowed: 'Messwerte von einer Art',
    hint: 'Beide Sätze müssen von einer Art sein: beide in {unit} angeben oder beide als bloße Zahlen.',
  },
  'mean-not-above-zero': {
    allowed: 'Messwerte a mit einem Mittelwert über 0',
    hint: 'Ein Unterschied in % braucht einen Mittelwert von a über 0.',
  },
  'too-few-readings': {
    allowed: 'mindestens zwei Messwerte',
    hint: 'Von jedem mindestens zwei Messwerte angeben.',
  },
  'not-a-unit': { allowed: '{options}', hint: 'Eines davon eingeben: {options}.' },
  'one-value-only': {
    allowed: 'ein Wert',
    hint: 'Ein Bereich gilt nur, wo nach einem Drehmoment gefragt ist: einen Wert eingeben.',
  },
  'span-reversed': {
    allowed: 'das untere Ende zuerst',
    hint: 'Das untere Ende zuerst eingeben, dann das obere.',
  },
  'too-many': { allowed: 'höchstens {most}', hint: 'Nicht mehr als {most} angeben.' },
  'too-few': {
    allowed: 'beide Enden oder eine Toleranz',
    hint: 'Beide Enden eingeben: 90–110 N·m, oder 100 ± 10 N·m.',
  },
  'too-long': { allowed: 'höchstens {most} Zeichen', hint: 'Nur den Wert eingeben.' },
  'above-limit': {
    allowed: 'höchstens {limit}',
    hint: 'Die Zahl und ihre Einheit ansehen: höchstens {limit} ist zulässig.',
  },
  'below-limit': {
    allowed: 'mindestens {limit}',
    hint: 'Die Zahl und ihre Einheit ansehen: mindestens {limit} ist nötig.',
  },
  'pivot-and-type': {
    allowed: 'kein Kipp-Punkt, oder 0, bei einem Schlüssel, der am Vierkant misst ({type})',
    hint: 'Kipp-Punkt oder Bauart weglassen: ein Schlüssel dieser Bauart misst am Vierkant.',
  },
  'hand-inside-pivot': {
    allowed: 'eine Hand weiter vom Vierkant weg als {limit}',
    hint: 'Ein Schlüssel dieser Bauart kann bis {limit} weit außen auslösen: weiter außen ziehen oder seinen Kipp-Punkt messen und eingeben.',
  },
  'pivot-past-hand': {
    allowed: 'ein Kipp-Punkt näher am Vierkant als {limit}',
    hint: 'Die Hand muss weiter außen ziehen als am Kipp-Punkt: beide Längen ansehen.',
  },
  'head-too-long': {
    allowed: 'ein Unterschied von höchstens {limit}',
    hint: 'So lang ist kein Kopf: Vorzeichen, Zahl und Einheit ansehen.',
  },
  'hinge-past-lever': {
    allowed: 'ein Gelenk näher am Vierkant als {limit}',
    hint: 'Das Gelenk liegt zwischen Vierkant und Hand: beide Längen und ihre Einheiten ansehen.',
  },
  'hand-inside-any-pivot': {
    allowed: 'eine Hand weiter vom Vierkant weg als {limit}',
    hint: 'Manche Schlüssel lösen bis {limit} weit außen aus: weiter außen ziehen, oder seinen Kipp-Punkt oder seine Bauart (wrench-type) eingeben.',
  },
  'head-past-lever': {
    allowed: 'ein Unterschied von weniger als {limit}',
    hint: 'Ein Kopf kann nicht um mehr als die ganze Hebellänge kürzer sein: die Längen ansehen.',
  },
  'balance-past-pull': {
    allowed: 'höchstens etwa so weit wie der Zug: {limit}',
    hint: 'Der Schwerpunkt eines Schlüssels liegt zwischen Vierkant und Griff: beide Längen und ihre Einheiten ansehen.',
  },
  'weight-beats-pull': {
    allowed: 'mehr als {weight}',
    hint: 'Das Eigengewicht des Schlüssels ist größer als dieser Zug: die Kraft ansehen oder den Griff gerade hängen lassen (lie: upright).',
  },
  'too-doubtful': {
    allowed: 'eine Reichweite, deren Fehler das Drehmoment um weniger als ±{limit} ändern',
    hint: 'So nicht machen: bei so kurzer Reichweite entscheiden kleine Fehler von Hand und Maßstab über das Drehmoment, und es lässt sich keine Zahl nennen. Weiter außen halten oder den Adapter drehen oder kürzen.',
  },
  'pivot-decides': {
    allowed: 'eine Hand weiter außen oder ein bekannter Kipp-Punkt',
    hint: 'So nicht machen: mit der Hand so nah am Vierkant hängt es davon ab, wo der Schlüssel auslöst, um den Faktor {apart}. Weiter außen halten oder pivot angeben.',
  },
  'not-a-tolerance': {
    allowed: '{options}',
    hint: 'Einen Prozentsatz eingeben, und wovon, wenn nicht vom Anzeigewert: {options}.',
  },
  'behind-the-hand': {
    allowed: 'ein Adapter, der vor der Hand endet',
    hint: 'Dieser Adapter reicht {reach} zurück, bis zur Hand bei {held} oder dahinter: der Zug würde die Schraube rückwärts drehen. Einen kürzeren verwenden oder eine andere Richtung.',
  },
  'angle-stage': {
    allowed: 'nur das Drehmoment',
    hint: 'Drehmoment und Drehwinkel sind zwei Stufen: das Drehmoment eingeben; keine Hebellänge ändert den Drehwinkel.',
  },
} as const
