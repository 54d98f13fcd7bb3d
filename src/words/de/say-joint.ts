// What is said of the bolt and its joint: friction, lubricants, clamp force, turn.

export const sayJoint = {
  'lubricant.same': 'Die Angabe gilt für genau diesen Zustand („{from}“): wie gedruckt verwenden.',
  'lubricant.alike':
    'Für den Wechsel von „{from}“ zu „{to}“ lässt sich keine Zahl nennen: Nach den Quellen sind beide etwa gleich, und beide streuen. Den Hersteller nach einer Angabe fragen oder messen.',
  'lubricant.rougher':
    'Für den Wechsel von „{from}“ zu „{to}“ lässt sich keine Zahl nennen: Mehr Reibung kann eine lose Verbindung oder eine überlastete Schraube bedeuten. Den Hersteller nach einer Angabe fragen oder messen.',
  'lubricant.too-wide':
    'Weniger nur, wenn die Herstellerangabe für „{from}“ gilt. Gilt sie schon für „{to}“: wie gedruckt verwenden. Eine Zahl lässt sich nicht nennen: Bei „{to}“ gehen die Quellen um mehr als den Faktor zwei auseinander; den Hersteller fragen oder messen.',
  'lubricant.known':
    'Weniger nur, wenn die Herstellerangabe für „{from}“ gilt. Gilt sie schon für „{to}“: wie gedruckt verwenden. Sonst hält {typical} statt {torque} die Vorspannkraft, nach den gegebenen K-Faktoren.',
  'lubricant.reduced':
    'Weniger nur, wenn die Herstellerangabe für „{from}“ gilt. Gilt sie schon für „{to}“: wie gedruckt verwenden. Sonst höchstens {low} statt {torque}: nach keiner vorliegenden Quelle zieht das zu fest an; typisch ist {typical}.',
  'lubricant.nut-factors': 'Typische K-Faktoren, neuer durch alten',
  'lubricant.span': 'Vom niedrigsten Verhältnis, das die Quellen zulassen, bis zum höchsten',
  'lubricant.same-torque':
    'Änderung der Vorspannkraft, wenn das Drehmoment bleibt, wie es war (niedrigste bis höchste)',
  'lubricant.same-clamp': 'Drehmoment für die gemeinte Vorspannkraft (niedrigstes bis höchstes)',
  'lubricant.same-clamp-capped':
    'Drehmoment für die gemeinte Vorspannkraft (niedrigstes bis höchstes, nie über dem verlangten Drehmoment)',
  'nut-factor.one': 'Der K-Faktor ist {k}, aus einem Versuch: wie stark er streut, ist nicht bekannt.',
  'nut-factor.unseen':
    'Der K-Faktor ist {k} aus {n} Versuchen; sie zeigen nicht, wo die nächste Schraube liegen wird: mehr Versuche machen.',
  'nut-factor.several':
    'Der K-Faktor ist {k} aus {n} Versuchen; die nächste Schraube wird zwischen {low} und {high} liegen (95 %).',
  'nut-factor.run': 'Versuch {run}',
  'nut-factor.next': 'Wo die nächste Schraube liegen wird, bei 95 % (halbe Breite)',
  'bolt.by-nut-factor': 'Vorspannkraft nach dem K-Faktor (typisch)',
  'bolt.by-friction': 'Vorspannkraft nach der Reibung von Gewinde und Auflage (genaues Keilmodell)',
  'bolt.split': 'Wohin das Drehmoment geht: Dehnung, Gewinde, Auflage',
  'bolt.span': 'Von der höchsten Reibung, die die Quellen zulassen, bis zur niedrigsten',
  'bolt.proof-share': 'Anteil der Prüfkraft (typisch)',
  'bolt.yield-share': 'Anteil der Streckgrenze während des Drehens, Torsion eingerechnet (typisch)',
  'clamp-force.known': 'Mit {torque} wird die Verbindung mit {clamp} gespannt, nach der gegebenen Reibung.',
  'clamp-force.span':
    'Mit {torque} wird die Verbindung mit {low} bis {high} gespannt, typisch {clamp}: die Reibung entscheidet.',
  'clamp-force.too-much':
    'Hier {torque} nicht verwenden: wo die Reibung niedrig ist, spannt das mit {high} und geht über die Festigkeit der Schraube; den Hersteller fragen.',
  'bolt-torque.known': 'Höchstens {torque}: das spannt mit {clamp}, nach der gegebenen Reibung.',
  'bolt-torque.highest':
    'Höchstens {torque}: nach keiner vorliegenden Quelle geht das über diesen Anteil der Festigkeit; es spannt mit {low} bis {high}.',
  'bolt-torque.clamp-proof': 'Vorspannkraft bei diesem Anteil der Prüfkraft',
  'bolt-torque.clamp-yield':
    'Vorspannkraft bei diesem Anteil der Streckgrenze, Torsion eingerechnet, wo die Reibung am niedrigsten ist',
  'bolt-torque.highest-step':
    'Das höchste Drehmoment, das nicht darüber hinausgehen kann: wo die Reibung am niedrigsten ist',
  'bolt-torque.typical-step':
    'Das Drehmoment bei typischer Reibung; es kann über den Anteil hinausgehen, wo die Reibung niedriger ist',
  'bolt-torque.floor': 'Was das höchste Drehmoment noch ergibt, wo die Reibung am höchsten ist',
  'turn-angle.turn': 'Ab Anlage um {turn} drehen für {force}.',
  'turn-angle.force': '{turn} ab Anlage ergeben etwa {force}.',
  'turn-angle.bolt': 'Steifigkeit der Schraube, Kopf und eingeschraubtes Gewinde eingerechnet [kN/mm]',
  'turn-angle.joint': 'Steifigkeit der verspannten Teile, Stahl, zwei Kegel von 30° [kN/mm]',
  'turn-angle.turn-step': 'Drehwinkel ab Anlage',
  'turn-angle.force-step': 'Vorspannkraft, die der Drehwinkel ergibt',
  'nut-factor.mu-total': 'Reibung von Gewinde und Auflage als eine Zahl (Mittelwert der Versuche)',
  'nut-factor.mu-thread': 'Reibung im Gewinde (Mittelwert der Versuche)',
  'nut-factor.mu-seat': 'Reibung in der Auflage (Mittelwert der Versuche)',
  'lubricant.two-frictions': 'Gewinde und Auflage getrennt, geschmiert: {where}',
  'place.both': 'beides',
  'place.threads': 'nur das Gewinde',
  'place.seat': 'nur die Auflage',
  'condition.dry': 'trockenes Gewinde',
  'condition.oiled': 'geöltes Gewinde',
  'condition.greased': 'gefettetes Gewinde',
  'condition.anti-seize': 'Anti-Seize-Paste',
  'condition.moly': 'Molybdänpaste (MoS₂)',
  'condition.wax': 'gewachstes Gewinde',
  'condition.zinc': 'verzinkt, trocken',
  'condition.zinc-oiled': 'verzinkt, geölt',
  'condition.cadmium': 'verkadmet',
  'condition.phosphate-oiled': 'phosphatiert und geölt',
  'condition.black-oxide': 'brüniert',
  'condition.stainless-dry': 'nichtrostend, trocken',
  'condition.thread-locker': 'Schraubensicherungslack',
} as const
