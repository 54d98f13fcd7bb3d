// What is said of checks: a scale, a reference, tolerances, two sets of readings, the next day.

import { deviation } from './deviation.ts'

export const sayChecks = {
  'happened.dropped': 'er fiel herunter',
  'happened.overloaded': 'er wurde überlastet',
  'happened.repaired': 'er wurde repariert',
  'happened.adjusted': 'er wurde justiert',
  'happened.wound-up': 'er lag gespannt da',
  'happened.returned': 'er kam zurück, und niemand hier weiß, was ihm geschah',
  'happened.found': 'er wurde wiedergefunden, und niemand hier weiß, was ihm geschah',
  'deviation.low': deviation.low,
  'deviation.high': deviation.high,
  'deviation.right': deviation.right,
  'scale-check.torque': 'Der Zug gibt {torque} am Vierkant.',
  'scale-check.within':
    'Auf {setting} eingestellt, gab der Schlüssel {torque}: Abweichung {deviation}, innerhalb der Unsicherheit dieser Prüfung ({low} bis {high}).',
  'scale-check.too-wide':
    'Es lässt sich nicht sagen: Die Messwerte liegen so weit auseinander, dass die Unsicherheit ±{band} von {torque} ist. Den Fehler suchen und fünfmal ziehen.',
  'scale-check.low-by-scale':
    'Soweit die Waage stimmt: auf {setting} eingestellt, gab der Schlüssel nur {torque} und liefert ZU WENIG, Abweichung {deviation}.',
  'scale-check.high-by-scale':
    'Soweit die Waage stimmt: auf {setting} eingestellt, gab der Schlüssel {torque} und liefert ZU VIEL, Abweichung {deviation}.',
  'scale-check.low':
    'Auf {setting} eingestellt, gab der Schlüssel nur {torque}: er liefert ZU WENIG, Abweichung {deviation}.',
  'scale-check.high':
    'Auf {setting} eingestellt, gab der Schlüssel {torque}: er liefert ZU VIEL, Abweichung {deviation}.',
  'scale-check.step': 'Drehmoment des Zugs',
  'scale-check.step-mean': 'Drehmoment des mittleren Zugs',
  'scale-check.deviation':
    'Abweichung: was der Schlüssel sagt, gegen die Referenz (negativ: er liefert mehr, als er sagt)',
  'scale-check.doubt': 'Unsicherheit des Drehmoments bei 95 % (halbe Breite)',
  'scale-plan.headline':
    'Bei {setting}, {distance} vom Vierkant, muss jeder Wert der Waage zwischen {low} und {high} liegen.',
  'scale-plan.point': 'Kraft bei {setting}, und das Fenster für jeden Messwert',
  'tolerance-band.band': 'Auf {setting} eingestellt, kann der Schlüssel {low} bis {high} liefern.',
  'tolerance-band.inside':
    'Ja: auf {setting} eingestellt, liefert der Schlüssel {low} bis {high}, innerhalb der Vorgabe.',
  'tolerance-band.partly-outside':
    'Nicht sicher: auf {setting} eingestellt, kann der Schlüssel {low} bis {high} liefern, teilweise außerhalb der Vorgabe.',
  'tolerance-band.outside':
    'Nein: auf {setting} eingestellt, liefert der Schlüssel {low} bis {high}, außerhalb der Vorgabe.',
  'tolerance-band.beyond':
    'Diesen Schlüssel so nicht einstellen: {setting} liegt über seinem größten Skalenwert, {most}. Nach seiner Toleranz allein wären das {low} bis {high}.',
  'tolerance-band.of-reading': 'Toleranz vom Anzeigewert (halbe Breite)',
  'tolerance-band.of-full-scale': 'Toleranz vom Skalenendwert (halbe Breite)',
  'tolerance-band.share': 'Das ist, von diesem Einstellwert',
  'wrench.tolerance-besides':
    'Die Toleranz des Schlüssels, {tolerance}, wo nichts Besseres bekannt ist, kommt noch dazu',
  'wrench-check.pass':
    'Bestanden: jeder Messwert liegt innerhalb ±{limit}; der schlechteste weicht um {deviation} ab, bei {setting}: {way}.',
  'wrench-check.pass-in-doubt':
    'Eher bestanden, unsicher: jeder Messwert liegt innerhalb ±{limit}, der schlechteste aber um weniger, als die Referenz danebenliegen kann; er weicht um {deviation} ab, bei {setting}: {way}.',
  'wrench-check.fail-in-doubt':
    'Eher nicht bestanden, unsicher: ein Messwert liegt außerhalb ±{limit}, aber um weniger, als die Referenz danebenliegen kann; der schlechteste weicht um {deviation} ab, bei {setting}: {way}.',
  'wrench-check.fail':
    'Nicht bestanden: außerhalb ±{limit}; der schlechteste Messwert weicht um {deviation} ab, bei {setting}: {way}.',
  'wrench-check.low': 'er liefert ZU WENIG',
  'wrench-check.high': 'er liefert ZU VIEL',
  'wrench-check.right': 'er liefert, was er sagt',
  'wrench-check.limit-maker': 'Die Grenze, vom Hersteller selbst',
  'wrench-check.limit-class': 'Die Grenze der Norm für Klasse {class}, Typ {type}, nach dem größten Drehmoment',
  'wrench-check.limit-most': 'Die Grenze der Norm nach dem größten Drehmoment des Schlüssels',
  'wrench-check.limit-highest':
    'Die Grenze der Norm nach dem höchsten Punkt, als wäre das alles, was der Schlüssel kann',
  'wrench-check.guard': 'Jeder Messwert innerhalb dieses Werts ist bestanden, auch mit der Unsicherheit der Referenz',
  'wrench-check.point': 'Bei {setting}: Abweichung des Mittelwerts, und wo jeder Messwert der Referenz liegen muss',
  'wrench-check.worst': 'Der schlechteste Messwert von allen, der entscheidet',
  'compare.higher': 'B ist um {size} höher als A ({interval})',
  'compare.lower': 'B ist um {size} niedriger als A ({interval})',
  'compare.same': 'die Mittelwerte von B und A sind gleich ({interval})',
  'compare.interval': '{low} bis {high} bei {confidence}',
  'compare.no-interval': 'Enden lassen sich nicht angeben: der Mittelwert von A hebt sich nicht von 0 ab',
  'compare.seen-too-small-to-matter': 'Erkennbar, zu klein, um etwas auszumachen: {what}, innerhalb ±{margin}.',
  'compare.no-difference-that-matters': 'Kein Unterschied, der etwas ausmacht: {what}, innerhalb ±{margin}.',
  'compare.a-difference-that-matters': 'Ein Unterschied, der etwas ausmacht: {what}, mehr als {margin}.',
  'compare.seen-not-decided-whether-it-matters':
    'Erkennbar, nicht entschieden, ob es etwas ausmacht: {what}, gegen eine Schwelle von ±{margin}.',
  'compare.not-decided': 'Nicht entschieden: {what}, gegen eine Schwelle von ±{margin}.',
  'compare.mean-a': 'Mittelwert von A, aus {n} Messwerten',
  'compare.mean-b': 'Mittelwert von B, aus {n} Messwerten',
  'compare.spread-a': 'Streuung von A (Standardabweichung, nicht unter dem, was die Auflösung verbirgt)',
  'compare.spread-b': 'Streuung von B (Standardabweichung, nicht unter dem, was die Auflösung verbirgt)',
  'compare.variances': 'Verhältnis der Varianzen, B durch A',
  'compare.difference': 'Unterschied der Mittelwerte, B minus A, mit beiden Enden seines Bereichs',
  'compare.relative':
    'Dasselbe in % von A, mit beiden Enden: auch der Mittelwert von A ist nicht genau, und das ist darin enthalten',
  'compare.upper-bound':
    'Um wie viel B höchstens über A plus {margin} liegen kann (einseitig): unter 0 bleibt B nach oben innerhalb',
  'compare.lower-bound':
    'Um wie viel B mindestens über A minus {margin} liegt (einseitig): über 0 bleibt B nach unten innerhalb',
  'next-check.months': 'Fällig am {date}: dann laufen die Monate seit der letzten Prüfung ab ({months}).',
  'next-check.uses': 'Jetzt fällig: {uses} Betätigungen seit der letzten Prüfung, und {allowed} sind erlaubt.',
  'next-check.event': 'Fällig seit {date}: {event}, und damit gilt die letzte Prüfung nicht mehr.',
  'next-check.months-out': 'Tage von der letzten Prüfung, bis die Monate ablaufen, am {date}',
  'next-check.uses-left': 'Verbleibende Betätigungen (0 oder darunter: fällig)',
  'next-check.event-after': 'Tage von der letzten Prüfung bis {date}: {event}',
  'event.dropped': 'er ist heruntergefallen',
  'event.overloaded': 'er wurde überlastet',
  'event.repaired': 'er wurde repariert',
  'event.modified': 'er wurde umgebaut',
  'event.wound-up': 'er war gespannt liegen geblieben',
} as const
