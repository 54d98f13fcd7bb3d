// What is said about free text, in the sections into which it is put: how it was read, what is not answered, what people quote.

export const asking = {
  say: {
    'ask.choice': 'Das lässt sich auf mehrere Arten lesen, und die Antworten unterscheiden sich: die gemeinte wählen.',
  },
  cautions: {
    'turn-left-aside':
      'Der Drehwinkel im Text blieb beiseite: Ein Drehwinkel ist eine eigene Stufe, und keine Hebellänge ändert ihn. Wo der Hersteller Drehmoment und Drehwinkel verlangt, gilt für den ganzen Ablauf der Hersteller.',
    'quoted-one-minus':
      'Die angeführte Regel, T · (1 − A/L), stellt niedriger ein als T · L/(L + A), um genau den Anteil (A/L)² des richtigen Einstellwerts.',
    'quoted-one-foot':
      'Die angeführte Regel, T/(1 + Länge in Fuß), gilt für eine Hebellänge von genau einem Fuß (304,8 mm) und für keine andere.',
    'quoted-square-same':
      'Dass ein Adapter bei 90° keine Korrektur braucht, stimmt, wie lang er auch ist: Er fügt längs des Schlüssels nichts hinzu. Dass irgendein Abstand gleich bleibt, ist nicht der Grund.',
    'quoted-percent-off':
      'Der angeführte Prozentsatz gehört zu einem Schmiermittel und einer Verbindung; nichts hier besagt, dass es diese sind.',
    'quoted-bar-as-adapter':
      'Die angeführte Formel ist für einen Adapter, der vom Schlüssel weg ragt; eine Verlängerung in Linie mit dem Vierkant braucht keine Korrektur.',
  },
  topics: { ask: 'In eigenen Worten: Worum geht es, und welche Zahlen liegen vor?' },
  inputs: {
    text: {
      label: 'In eigenen Worten',
      ask: 'die Frage in eigenen Worten, mit ihren Zahlen und Einheiten',
      measure: 'Zum Beispiel: 100 N·m, Schlüssel 450 mm, Krähenfuß 75 mm gerade nach vorn, was stelle ich ein?',
    },
  },
  results: { 'as-quoted': 'Nach der angeführten Regel (aus der Frage, nicht hier ausgerechnet)' },
  faults: {
    'maker-figure': {
      allowed: 'ein Drehmoment, das vom Hersteller vorliegt',
      hint: 'Drehmomente gibt der Hersteller vor, hier wird keines genannt. Die Herstellerangabe mit Schlüssel, Adapter oder Gewinde eingeben, dann wird ausgerechnet, was einzustellen ist.',
    },
    'out-of-scope': {
      allowed: 'eine Frage zum Anziehen auf ein Drehmoment',
      hint: 'Ausgerechnet werden hier Einstellwerte mit Adaptern, Kardangelenken und Drehmomentvervielfältigern, Vorspannkraft und Schmiermittel, Prüfungen eines Schlüssels und Einheiten. Mit den eigenen Zahlen fragen.',
    },
    'text-too-long': {
      allowed: 'höchstens {most} Byte',
      hint: 'Mit weniger Worten fragen: die Frage und ihre Zahlen.',
    },
  },
  faces: {
    reading: 'Wie es gelesen wurde',
    'as-input': '„{span}“: {label}, {text}',
    'as-followed': '{label}, {text}: steht nicht da, folgt aus dem Übrigen',
    'left-aside': 'beiseitegelassen: {spans}',
    alternatives: 'Oder war gemeint',
    'work-it-out': 'Dies ausrechnen',
  },
  page: { askTitle: 'In eigenen Worten', askLine: 'In eigenen Worten fragen', change: 'Zahlen ändern' },
} as const
