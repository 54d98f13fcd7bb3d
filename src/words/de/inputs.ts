// Each input: its name on a form, how it is asked for, how it is measured.

export const inputs = {
  torque: {
    label: 'Drehmoment',
    ask: 'das Drehmoment, das die Schraube erhalten muss',
    measure: 'Aus der Anleitung des Herstellers, mit Einheit.',
  },
  tilt: {
    label: 'Neigung',
    ask: 'wie weit der Griff aus der Geraden geneigt ist',
    measure: '0°, wo der Griff in der Ebene liegt, in der sich die Schraube dreht.',
  },
  hinge: {
    label: 'Gelenk',
    ask: 'wie weit das Gelenk vom Vierkant entfernt ist',
    measure: 'Mitte des Vierkants bis zum Stift des Gelenks.',
  },
  sensing: {
    label: 'Messstelle',
    ask: 'wo der Schlüssel misst: vor dem Gelenk (ahead) oder dahinter (behind)',
    measure: 'ahead (davor): die meisten anzeigenden und elektronischen; behind (dahinter): die meisten, die klicken.',
  },
  length: {
    label: 'Länge der Verlängerung',
    ask: 'wie lang die Verlängerungen zusammen sind',
    measure: 'Von Vierkant zu Vierkant, alle Verlängerungen zusammen.',
  },
  drive: {
    label: 'Vierkant',
    ask: 'der Vierkant der Verlängerung oder ihr Durchmesser',
    measure: '1/4, 3/8, 1/2, 3/4 oder 1 in.',
  },
  part: {
    label: 'Weitere Vierkante',
    ask: 'die Vierkante von allem, was sonst noch darunter hängt',
    measure: '1/4, 3/8, 1/2, 3/4 oder 1 in, jeder einzeln; bis zu acht.',
  },
  'torque-ratio': {
    label: 'Drehmomentverhältnis',
    ask: 'das Drehmomentverhältnis (torque-ratio) oder die Übersetzung (turns-ratio), je nach Aufschrift',
    measure: 'Auf Typenschild oder Zertifikat: Drehmoment heraus zu Drehmoment hinein, Verluste eingerechnet.',
  },
  'turns-ratio': {
    label: 'Übersetzung',
    ask: 'die Übersetzung in Umdrehungen',
    measure: 'Umdrehungen hinein für eine Umdrehung heraus; Verluste sind nicht darin.',
  },
  efficiency: {
    label: 'Wirkungsgrad',
    ask: 'der Wirkungsgrad des Drehmomentvervielfältigers',
    measure: 'Aus seinem Zertifikat, in % oder von 0 bis 1.',
  },
  'run-on': {
    label: 'Klemmdrehmoment',
    ask: 'das Drehmoment, das die Sicherungsmutter dreht, bevor sie aufliegt',
    measure: 'Ablesen, während sich die Mutter dreht, mit Einheit.',
  },
  reading: {
    label: 'Anzeigewert',
    ask: 'was der Schlüssel zeigte oder wobei er klickte',
    measure: 'Am Schlüssel ablesen, mit Einheit.',
  },
  setting: {
    label: 'Einstellwert',
    ask: 'worauf der Schlüssel eingestellt ist',
    measure: 'Am Schlüssel ablesen, mit Einheit.',
  },
  lever: {
    label: 'Hebellänge',
    ask: 'die Hebellänge des Schlüssels',
    measure:
      'Mitte des Vierkants bis Mitte des Griffs, bei dem Einstellwert, der verwendet wird; nicht die Gesamtlänge.',
  },
  adapter: {
    label: 'Adapter',
    ask: 'die Länge des Adapters, und seine Richtung, wo er nicht gerade steht',
    measure: 'Mitte des Innenvierkants bis Mitte der Schraube; nicht von Ende zu Ende, nicht die Schlüsselweite.',
  },
  angle: {
    label: 'Winkel',
    ask: 'der Winkel des Adapters zur Achse des Schlüssels selbst',
    measure:
      '0° gerade nach vorn, 90° rechtwinklig, 180° zurück zur Hand; + zu der Seite, zu der sich der Griff dreht.',
  },
  hand: {
    label: 'Hand',
    ask: 'wo die Hand wirklich zieht',
    measure: 'Mitte des Vierkants bis Mitte der Hand.',
  },
  pivot: {
    label: 'Kipp-Punkt',
    ask: 'wo der Schlüssel auslöst (pivot), oder welche Bauart er hat (wrench-type)',
    measure:
      'Mitte des Vierkants bis zum Stift, um den der Kopf kippt; zwei Züge bei einem Einstellwert verraten es (pivot-offset).',
  },
  'wrench-type': {
    label: 'Bauart des Schlüssels',
    ask: 'welche Bauart der Schlüssel hat',
    measure:
      'click (Klickschlüssel), split-beam (geteilter Balken), beam (Biegebalken), dial (Messuhr) oder electronic (elektronisch).',
  },
  tolerance: {
    label: 'Toleranz',
    ask: 'die Toleranz des Schlüssels',
    measure: 'Aus seinem Zertifikat oder seiner Anleitung, in %.',
  },
  mark: {
    label: 'Skalenschritt',
    ask: 'der Schritt zwischen zwei Teilstrichen auf der Skala des Schlüssels',
    measure: 'An der Skala ablesen, mit Einheit.',
  },
  least: {
    label: 'Kleinster Skalenwert',
    ask: 'der kleinste Skalenwert des Schlüssels',
    measure: 'An der Skala ablesen, mit Einheit.',
  },
  most: {
    label: 'Größter Skalenwert',
    ask: 'der größte Skalenwert des Schlüssels',
    measure: 'An der Skala ablesen, mit Einheit.',
  },
  'torque-at-lever': {
    label: 'Drehmoment, Hand an der Hebellänge',
    ask: 'das Drehmoment, das mit der Hand an der Hebellänge erreicht wird',
    measure: 'Auf einem Prüfgerät, bei einem Einstellwert, der Mittelwert mehrerer Züge.',
  },
  'torque-at-hand': {
    label: 'Drehmoment, Hand versetzt',
    ask: 'das Drehmoment, das mit versetzter Hand erreicht wird',
    measure: 'Auf demselben Prüfgerät beim selben Einstellwert, der Mittelwert mehrerer Züge.',
  },
  'fitting-change': {
    label: 'Unterschied der Köpfe',
    ask: 'um wie viel der verwendete Kopf länger (+) oder kürzer (-) ist',
    measure: 'Von Mitte zu Mitte: verwendeter Kopf minus der Kopf, mit dem der Schlüssel kalibriert wurde.',
  },
  quantity: {
    label: 'Größe',
    ask: 'was umzurechnen ist, mit Einheit',
    measure: 'Eine Zahl und eine Einheit, zum Beispiel 20 N·m.',
  },
  wrench: {
    label: 'Schlüssel',
    ask: 'die Kennung des Schlüssels im Verzeichnis',
    measure: 'Sie hängt beim Schlüssel und steht auf der Tafel.',
  },
  to: {
    label: 'Nach',
    ask: 'wie Gewinde und Auflage sein werden, oder die Einheit, in die umzurechnen ist',
    measure: 'Aus der Liste wählen.',
  },
  from: {
    label: 'Von',
    ask: 'für welchen Zustand des Gewindes die Herstellerangabe gilt',
    measure: 'Er steht in der Anleitung neben dem Drehmoment; wenn nicht, den Hersteller fragen.',
  },
  'k-from': {
    label: 'K-Faktor, von',
    ask: 'der K-Faktor, für den die Angabe gilt',
    measure: 'Aus eigenen Versuchen (nut-factor) oder einem Datenblatt.',
  },
  'k-to': {
    label: 'K-Faktor, nach',
    ask: 'der K-Faktor des neuen Zustands',
    measure: 'Aus eigenen Versuchen (nut-factor) oder einem Datenblatt.',
  },
  condition: {
    label: 'Zustand',
    ask: 'Zustand von Gewinde und Auflage (condition), K-Faktor (k) oder Reibung (mu-threads, mu-seat)',
    measure: 'dry (trocken), oiled (geölt), greased (gefettet), anti-seize …: so, wie die Schraube angezogen wird.',
  },
  k: {
    label: 'K-Faktor',
    ask: 'der K-Faktor',
    measure: 'Aus eigenen Versuchen (nut-factor) oder einem Datenblatt.',
  },
  'mu-threads': {
    label: 'Reibung im Gewinde',
    ask: 'die Reibung im Gewinde',
    measure: 'Aus einem Datenblatt; eine bloße Zahl wie 0,14.',
  },
  'mu-seat': {
    label: 'Reibung in der Auflage',
    ask: 'die Reibung unter Kopf oder Mutter',
    measure: 'Aus einem Datenblatt; eine bloße Zahl wie 0,14.',
  },
  'mu-from': { label: 'Reibung, von', ask: '', measure: '' },
  'mu-to': { label: 'Reibung, nach', ask: '', measure: '' },
  pitch: { label: 'Steigung', ask: '', measure: '' },
  class: {
    label: 'Festigkeitsklasse',
    ask: 'die Festigkeitsklasse der Schraube (oder ihr SAE-Grade)',
    measure: 'Auf dem Kopf eingeprägt: 8.8, 10.9, A2-70; strahlenförmige Striche sind SAE-Grades.',
  },
  seat: {
    label: 'Auflage',
    ask: 'die Auflage unter Kopf oder Mutter, außen x Loch',
    measure:
      'flat 18 mm x 13 mm (eben); cone 60° 18 mm x 13 mm (Kegel, ganzer Kegelwinkel); ball 14 mm 18 mm x 13 mm (Kugel, Radius).',
  },
  share: {
    label: 'Anteil der Festigkeit',
    ask: 'wie viel ihrer Festigkeit die Schraube nutzen darf',
    measure: '75 % of proof (der Prüfkraft), oder 90 % of yield (der Streckgrenze).',
  },
  where: {
    label: 'Wo',
    ask: 'wohin das Schmiermittel kommt: both (beides), threads (Gewinde) oder seat (Auflage)',
    measure: 'both: auf das Gewinde und unter Kopf oder Mutter.',
  },
  'grip-length': {
    label: 'Klemmlänge',
    ask: 'die Dicke, die geklemmt wird',
    measure: 'Von unter dem Kopf bis zur Auflagefläche der Mutter, Scheiben mitgezählt.',
  },
  turn: {
    label: 'Drehwinkel',
    ask: 'der Drehwinkel ab Anlage',
    measure: 'In Grad, an Mutter oder Kopf; nicht am Griff einer langen Verlängerung.',
  },
  'thread-length': {
    label: 'Gewindelänge',
    ask: 'wie viel der Schraube Gewinde hat',
    measure: 'Von ihrem Ende bis dahin, wo der Schaft beginnt.',
  },
  'thread-torque': {
    label: 'Drehmoment im Gewinde',
    ask: 'der Teil des Drehmoments, den das Gewinde aufnimmt',
    measure: 'Von einem Prüfstand, der ihn getrennt misst, einer für jeden Versuch.',
  },
  size: {
    label: 'Größe',
    ask: 'die Größe des Gewindes oder sein Durchmesser',
    measure:
      'Auf der Schraube eingeprägt oder über das Gewinde gemessen: M12, M12x1.5, 3/8-16; nicht die Schlüsselweite.',
  },
  diameter: {
    label: 'Durchmesser',
    ask: 'der Nenndurchmesser des Gewindes',
    measure: 'Über das Gewinde; nicht die Schlüsselweite.',
  },
  'clamp-force': {
    label: 'Vorspannkraft',
    ask: 'die Vorspannkraft jedes Versuchs',
    measure: 'Von einer Kraftmessscheibe oder aus der Dehnung der Schraube.',
  },
  distance: {
    label: 'Abstand',
    ask: 'wie weit vom Vierkant die Waage zieht',
    measure: 'Mitte des Vierkants bis zum Haken, am Griff entlang; in der Griffmitte.',
  },
  force: {
    label: 'Kraft',
    ask: 'was die Waage zeigte',
    measure: 'Der höchste Wert vor dem Klick, mit Einheit; das Gewicht von Haken und Eimer dazuzählen.',
  },
  'pull-angle': {
    label: 'Zugwinkel',
    ask: 'wie weit der Zug vom rechten Winkel zum Griff abweicht',
    measure: '0°, wo die Schnur rechtwinklig zum Griff steht.',
  },
  'wrench-mass': { label: 'Masse des Schlüssels', ask: 'was der Schlüssel wiegt', measure: 'Auf der Waage.' },
  'balance-point': {
    label: 'Schwerpunkt',
    ask: 'wo der Schlüssel im Gleichgewicht ist',
    measure: 'Mitte des Vierkants bis dahin, wo er auf einer Kante im Gleichgewicht liegt.',
  },
  lie: {
    label: 'Lage',
    ask: 'die Lage: level (Vierkantachse, Griff waagrecht) oder upright (Achse senkrecht oder Griff hängt)',
    measure:
      'level (Achse des Vierkants waagrecht, Griff waagrecht): sein Eigengewicht zählt; upright (Achse senkrecht oder Griff hängend): es zählt nicht.',
  },
  'pull-direction': {
    label: 'Zugrichtung',
    ask: 'ob der Zug den Griff nach unten (down) oder nach oben (up) dreht',
    measure: 'down: ein angehängtes Gewicht; up: eine nach oben gezogene Waage.',
  },
  'gauge-tolerance': {
    label: 'Toleranz der Waage',
    ask: 'wie gut die Waage ist',
    measure: 'Aus ihrer Anleitung, in %, oder gegen ein bekanntes Gewicht.',
  },
  'gauge-limit': { label: 'Höchstwert der Waage', ask: 'wie weit die Waage reicht', measure: 'Auf ihr aufgedruckt.' },
  of: {
    label: 'Toleranz bezogen auf',
    ask: 'worauf sich die Toleranz bezieht: reading (Anzeigewert) oder full-scale (Skalenendwert)',
    measure: 'Es steht in der Anleitung neben der Toleranz.',
  },
  spec: {
    label: 'Vorgabe',
    ask: 'der Bereich des Drehmoments, der vorgegeben ist',
    measure: 'Aus der Anleitung des Herstellers, beide Enden: 90–110 N·m.',
  },
  points: {
    label: 'Punkt',
    ask: 'je Einstellwert, was die Referenz zeigte: Einstellwert: Messwerte, Punkte durch | getrennt',
    measure:
      'Links, was der Schlüssel sagt, rechts, was das Prüfgerät jedes Mal zeigte; 5 Züge bei 20, 60 und 100 % der Skala, steigend.',
  },
  'iso-type': {
    label: 'Typ (ISO 6789)',
    ask: 'der Typ nach ISO 6789: indicating (anzeigend) oder setting (auslösend)',
    measure:
      'indicating (anzeigend): Messuhr, Zeiger oder Display wird abgelesen; setting (auslösend): er wird eingestellt und klickt. Steht auf seinem Zertifikat.',
  },
  'iso-class': {
    label: 'Klasse (ISO 6789)',
    ask: 'seine Klasse nach ISO 6789, ein Buchstabe von A bis G',
    measure: 'Auf seinem Zertifikat oder in seiner Anleitung.',
  },
  'gauge-uncertainty': {
    label: 'Messunsicherheit der Referenz',
    ask: 'die Messunsicherheit der Referenz, in %',
    measure: 'Aus ihrem Zertifikat: die erweiterte Messunsicherheit (k = 2).',
  },
  rule: {
    label: 'Entscheidungsregel',
    ask: 'ob die Messunsicherheit der Referenz zählt: simple (nein) oder guarded (ja)',
    measure: 'guarded braucht gauge-uncertainty.',
  },
  a: {
    label: 'Messwerte A',
    ask: 'der erste Satz Messwerte, gegen den der andere gehalten wird',
    measure: 'Zwei oder mehr von einer Art, durch ; getrennt, die Einheit einmal am Ende oder gar nicht.',
  },
  b: {
    label: 'Messwerte B',
    ask: 'der zweite Satz Messwerte',
    measure: 'Zwei oder mehr von derselben Art wie A.',
  },
  margin: {
    label: 'Schwelle',
    ask: 'ab welchem Unterschied es etwas ausmacht, in % von A',
    measure: 'Was die Arbeit verträgt: 4 % darf ein Schlüssel danebenliegen.',
  },
  confidence: {
    label: 'Vertrauensniveau',
    ask: 'wie sicher die Antwort sein muss, in %',
    measure: '95 %, wo nichts anderes verlangt ist.',
  },
  resolution: {
    label: 'Auflösung',
    ask: 'der kleinste Schritt, bis zu dem die Messwerte abgelesen wurden',
    measure: 'Die letzte Stelle oder der Teilstrich des Prüfmittels, in der Einheit der Messwerte.',
  },
  'last-check': {
    label: 'Letzte Prüfung',
    ask: 'der Tag der letzten Prüfung: Jahr-Monat-Tag',
    measure: 'Von seinem Zertifikat oder Aufkleber: 2026-03-01.',
  },
  uses: {
    label: 'Betätigungen',
    ask: 'wie oft er seit der letzten Prüfung benutzt wurde',
    measure: 'Von seinem Zähler, oder ehrlich nach oben geschätzt.',
  },
  interval: {
    label: 'Prüfintervall',
    ask: 'wie lange eine Prüfung gilt: Monate (months), Betätigungen (uses) oder beides',
    measure: 'Die eigene Regel der Werkstatt: 12 months (Monate); 5000 uses (Betätigungen).',
  },
  events: {
    label: 'Ereignis',
    ask: 'was ihm geschah, mit Tag: dropped, overloaded, repaired, modified, wound-up',
    measure:
      'dropped (heruntergefallen), overloaded (überlastet), repaired (repariert), modified (umgebaut), wound-up (gespannt liegen geblieben): was@Jahr-Monat-Tag, mehrere mit ;. Für wound-up ein Zeitraum: wound-up@2026-01-01..2026-07-01.',
  },
  'length-doubt': { label: 'Längen bekannt auf ±', ask: '', measure: '' },
  'hand-doubt': { label: 'Hand platziert auf ±', ask: '', measure: '' },
  'angle-doubt': { label: 'Winkel bekannt auf ±', ask: '', measure: '' },
  'square-doubt': { label: 'Zug rechtwinklig auf ±', ask: '', measure: '' },
  'repeat-doubt': { label: 'Ein Zug wiederholbar auf ±', ask: '', measure: '' },
  find: { label: 'Gesucht', ask: 'was gesucht ist', measure: '' },
} as const
