// What does-it-matter says of an asker’s own numbers, and its names: in the sections into which it is put.

export const matters = {
  say: {
    'matter.yes': 'ja, es macht etwas aus',
    'matter.no': 'nein, es macht nichts aus',
    'matter.depends': 'es kommt darauf an',
    'matter.stored-wound-up.depends': 'es kommt darauf an, wie hoch und wie lange, und auf die Bauart des Schlüssels',
    'matter.re-used-nut.depends': 'es kommt auf die Mutter und ihren Hersteller an',
    'matter.washers.depends': 'es kommt darauf an, was gleitet',
    'matter.clicked-twice.depends': 'es kommt darauf an, wie: langsam, oder ruckartig und über den Klick hinaus',
    'matter.hand-position.depends': 'es kommt auf den Schlüssel an, und auf einen Adapter',
    'matter.changed-head.depends': 'es kommt darauf an, wo seine Mitte liegt',
    'matter.chained-spanner.depends': 'es kommt auf seine Richtung an',
    'matter.flex-head.depends': 'es kommt auf die Neigung an und darauf, wo der Schlüssel misst',
    'matter.swivel.depends': 'es kommt auf den Beugewinkel an',
    'matter.nothing': 'Nein, das macht nichts aus: mit diesen Zahlen ändert sich das Drehmoment nicht.',
    'matter.too-small':
      'Nein, das macht nichts aus: es ändert das Drehmoment um {change}, weniger als ein Viertel der Toleranz des Schlüssels ({tolerance}).',
    'matter.too-small-between':
      'Nein, das macht nichts aus: es ändert das Drehmoment um {low} bis {high}, weniger als ein Viertel der Toleranz des Schlüssels ({tolerance}).',
    'matter.changes': 'Ja, das macht etwas aus: unkorrigiert ändert es das Drehmoment an der Schraube um {change}.',
    'matter.changes-between':
      'Ja, das macht etwas aus: unkorrigiert ändert es das Drehmoment an der Schraube um {low} bis {high}.',
    'matter.changes-dial':
      'Ja, das macht etwas aus: unkorrigiert ändert es das Drehmoment an der Schraube um {change}; für {torque} auf {setting} einstellen.',
    'matter.perhaps':
      'Es kommt darauf an: es ändert das Drehmoment um {low} bis {high}, am einen Ende weniger und am anderen mehr als ein Viertel der Toleranz des Schlüssels ({tolerance}).',
    'matter.swivel-allowed':
      'Es kommt darauf an, wen man fragt: um {angle} abgewinkelt, schwankt das Drehmoment um {low} bis {high}, mit Reibung noch niedriger; zwei Motorenhandbücher erlauben das unkorrigiert.',
    'matter.at-drive':
      'Nein, das macht nichts aus: einem Schlüssel, der am Vierkant misst, ist es gleich, wo er gehalten wird, solange kein Adapter nach vorn oder zurück reicht.',
    'matter.no-spring': 'Nein, das macht nichts aus: diese Bauart hält beim Lagern keine Feder gespannt.',
    'matter.twist':
      'Nein, das macht nichts aus: die Verlängerung verdreht sich um {twist} und gibt das ganze Drehmoment weiter; nur ein am Griff abgelesener Winkel ist um so viel falsch.',
    'matter.over-rating':
      'Ja, das macht etwas aus: {torque} sind {share} dessen, worauf Vierkante dieser Größe geprüft werden ({rating}): einen größeren Vierkant verwenden.',
    'matter.under-rating':
      'Nein, das macht nichts aus: in Linie ändert sich das Drehmoment nicht, und {torque} sind {share} dessen, worauf Vierkante dieser Größe geprüft werden ({rating}).',
    'matter.below-fifth':
      'Ja, das macht etwas aus: {setting} sind {share} des größten Skalenwerts; unter einem Fünftel ({fifth}) sichern die Normen nichts zu.',
    'matter.in-range':
      'Nein, das macht nichts aus: {setting} sind {share} des größten Skalenwerts, nicht unter einem Fünftel ({fifth}).',
    'matter.above-most':
      'Ja, das macht etwas aus: {setting} liegt über dem größten Skalenwert, {most}: einen größeren Schlüssel nehmen.',
    'matter.clamp-more':
      'Ja, das macht etwas aus: nach diesen K-Faktoren ändert sich die Vorspannkraft beim selben Klick um {change}: fester.',
    'matter.clamp-less':
      'Ja, das macht etwas aus: nach diesen K-Faktoren ändert sich die Vorspannkraft beim selben Klick um {change}: loser.',
    'matter.clamp-same': 'Nein, das macht nichts aus: mit demselben K-Faktor ist die Vorspannkraft dieselbe.',
    'matter.torque': 'Was die Schraube erhält, wenn der Schlüssel so eingestellt ist',
    'matter.torque-between':
      'Was die Schraube erhält, wenn der Schlüssel so eingestellt ist, vom niedrigsten bis zum höchsten Wert',
    'matter.change': 'Änderung gegenüber dem Einstellwert',
    'matter.hand-factor': 'Drehmoment an der Schraube je Einheit am Schlüssel, mit der Hand abseits der Griffmitte',
    'matter.square-doubt': 'Was ein nicht ganz rechtwinkliger Zug daran ändert (in beide Richtungen)',
    'matter.tilt':
      'Änderung des Drehmoments: von einem Schlüssel, der hinter dem Gelenk auslöst, das Gelenk am Vierkant angenommen, bis zu keiner, wo er vor dem Gelenk misst',
    'matter.tilt-pull': 'Um wie viel die Zugkraft wächst, wo der Schlüssel vor dem Gelenk misst',
    'matter.swing': 'Schwankung des Drehmoments in einer Umdrehung, ohne Reibung; das untere Ende',
    'matter.twist-step':
      'Wie weit sich die Verlängerung verdreht, angenommen als runder Stahl mit der Breite ihres Vierkants',
    'matter.rating':
      'Anteil am Prüfdrehmoment von Vierkanten dieser Größe; was auf dem Teil selbst angegeben ist, geht vor',
    'matter.fifth': 'Die kleinste Einstellung, für die die Normen etwas versprechen',
    'matter.share': 'Anteil am größten Skalenwert',
    'matter.full-scale': 'Die Toleranz bei diesem Einstellwert, falls sie sich auf den Skalenendwert bezieht',
    'matter.tolerance': 'Was ein Schlüssel innerhalb seiner Toleranz liefern kann; halbe Breite',
    'matter.jerk': 'Von einem gleichmäßigen Zug bis zum Meisten, was von einem Ruck berichtet wird',
    'matter.clamp': 'Änderung der Vorspannkraft bei gleichem Drehmoment',
    'matter.run-on': 'Was der Schlüssel zeigen muss, das Klemmdrehmoment der Mutter dazugezählt',
    'matter.link.adapter-setting': 'Was mit diesem Adapter einzustellen ist',
    'matter.link.hand-position': 'Was es ausmacht, ihn dort zu halten, mit der Unsicherheit',
    'matter.link.pivot-offset': 'Wo dieser Schlüssel auslöst, aus zwei Zügen',
    'matter.link.end-fitting': 'Was mit dem anderen Kopf einzustellen ist',
    'matter.link.pull': 'Wie fest zu ziehen ist',
    'matter.link.lubricant': 'Was ein anderer Zustand des Gewindes ausmacht',
    'matter.link.nut-factor': 'Der eigene K-Faktor, aus gemessenen Versuchen',
    'matter.link.scale-check': 'Den Schlüssel mit einer Waage prüfen',
    'matter.link.scale-plan': 'Die Prüfung planen: welche Kräfte zu sehen sein müssen',
    'matter.link.tolerance-band': 'Was die Toleranz bei diesem Einstellwert bedeutet',
    'matter.link.wrench-check': 'Den Schlüssel gegen eine Referenz prüfen',
    'matter.link.next-check': 'Wann die nächste Prüfung fällig ist',
    'matter.link.compare': 'Zwei Sätze Messwerte, mit und ohne: unterscheiden sie sich',
    'matter.link.prevailing': 'Was der Schlüssel bei einer Sicherungsmutter zeigen muss',
    'matter.link.clamp-force': 'Welche Vorspannkraft ein Drehmoment ergibt, nach der Reibung',
    'matter.link.multiplier': 'Was in einen Drehmomentvervielfältiger einzuleiten ist',
    'matter.link.extension-bar': 'Wie weit sich eine Verlängerung verdreht, und was ihre Vierkante tragen',
    'matter.link.flex-head': 'Was ein geneigter Kopf liefert',
    'matter.link.swivel': 'Was ein abgewinkeltes Kardangelenk liefert',
  },
  cautions: {
    'wheels-again':
      'Wann Räder nachzuziehen sind, ist je nach Quelle verschieden: nach {first} bis {last}, eine nennt {minutes} Minuten Stehen. Der Hersteller des Fahrzeugs oder des Rads entscheidet.',
    'square-assumed':
      'Es war kein Winkel angegeben: rechtwinklig (90°) ist angenommen. Steht der Adapter anders, das angeben; die anderen Richtungen sind aufgeführt.',
    'not-for-loosening': 'Ein Drehmomentschlüssel ist zum Anziehen da: mit etwas anderem lösen.',
    'local-rules':
      'Bei Rädern, Hebezeug, Druckgeräten und Luftfahrzeugen können Gesetz oder Betriebsregeln mehr verlangen: wer es tun darf, mit welchem Werkzeug, und was aufgeschrieben wird.',
    'one-way': 'Viele Klickschlüssel messen nur in einer Richtung: vor dem Einsatz an einem Linksgewinde nachsehen.',
  },
  questions: { 'does-it-matter': 'Macht das etwas aus?' },
  topics: {
    'does-it-matter': 'Macht das etwas aus? Verlängerung, Gelenk, Öl, Sturz, zweiter Klick, billiger Schlüssel',
  },
  inputs: {
    topic: {
      label: 'Thema',
      ask: 'worum es geht, in eigenen Worten',
      measure: 'Oder der Name eines Themas aus der Liste: bars, swivel, stored-wound-up.',
    },
  },
  results: {
    'does-it-matter.verdict': 'Macht es etwas aus',
    'what-to-do': 'Was zu tun ist',
    mechanism: 'Warum',
    'size-of-effect': 'Wie viel',
    'rating-share': 'Anteil am Prüfdrehmoment',
    'share-of-most': 'Anteil am größten Skalenwert',
    'full-scale-tolerance': 'Toleranz hier, falls vom Skalenendwert',
  },
  faults: {
    'not-a-topic': {
      allowed: 'Worte, die zu einem Thema passen, oder sein Name',
      hint: 'Darin wurde kein Thema gefunden. Mit anderen Worten sagen oder eines von diesen eingeben: Pflege: {care}; Verbindung: {joint}; Zug: {pull}; Reichweite: {reach}; Werkzeug: {tool}.',
    },
    'several-topics': {
      allowed: 'ein Thema auf einmal',
      hint: 'Das passt zu mehr als einem Thema: {topics} eingeben.',
    },
  },
} as const
