// German phrasings of the common questions: what is to be found in them, and the number that is to come out.
import type { Phrasing } from './phrasings.ts'

export const germanPhrasings: readonly Phrasing[] = [
  [
    'Was stelle ich ein für 95 Nm mit einem Aufsatz von 45 mm an einem Schlüssel von 380 mm?',
    'adapter-setting answered',
    '84.9 N·m',
  ],
  [
    'Ich brauche 80 Nm an der Schraube, Hahnenfußschlüssel gerade mit Stichmaß 45 mm, Drehmomentschlüssel 400 mm. Was stelle ich ein?',
    'adapter-setting answered',
    '71.9 N·m',
  ],
  [
    'Drehmomentschluessel 350 mm, Hahnenfuss 40mm geradeaus, Vorgabe 60 Nm. Was muss ich einstellen?',
    'adapter-setting answered',
    '53.8 N·m',
  ],
  [
    'Adapter 50 mm in einer Linie, Hebelarm 300 mm, soll 45,5 Nm sein, was soll ich einstellen',
    'adapter-setting answered',
    '39 N·m',
  ],
  ['Hahnenfuß 2 Zoll gerade, Schlüssel 16 Zoll, 90 Nm gefordert. Einstellung?', 'adapter-setting answered', '80 N·m'],
  [
    'Adapter 60 mm rechtwinklig zum Schlüssel, Hebel 420 mm, 75 Nm soll. Was stelle ich ein?',
    'adapter-setting answered',
    '75 N·m',
  ],
  [
    'Adapter 60 mm unter 45 Grad, Hebel 420 mm, 75 Nm soll. Was stelle ich ein?',
    'adapter-setting answered',
    '68.1 N·m',
  ],
  ['Hahnenfuß 40 mm, um die Ecke, Schlüssel 350 mm, 80 Nm soll', 'adapter-setting incomplete'],
  ['Hahnenfuß 40 mm, nicht gerade, Schlüssel 350 mm, 80 Nm soll', 'adapter-setting incomplete'],
  ['Hahnenfuß SW 19, Schlüssel 400 mm, 70 Nm', 'adapter-setting incomplete'],
  ['Was stelle ich mit einem Adapter von 50 mm bei 120 Nm ein, gerade?', 'adapter-setting incomplete'],
  [
    'Drehmomentschlüssel auf 60 Nm eingestellt, mit 50 mm Adapter gerade, Schlüssel 350 mm. Was kommt an der Mutter tatsächlich an?',
    'adapter-reading answered',
    '68.6 N·m',
  ],
  [
    'Ich halte den Schlüssel mit der Hand bei 300 mm statt bei der Griffmitte 400 mm, auf 80 Nm eingestellt, Knackschlüssel. Macht das was aus?',
    'hand-position answered',
  ],
  ['Macht es etwas aus, wo ich den Drehmomentschlüssel mit der Hand halte?', 'does-it-matter answered'],
  ['Vorgabe 80 Nm trocken, ich habe Kupferpaste drauf. Was stelle ich ein?', 'lubricant answered'],
  ['Gewinde geölt, 100 Nm laut Handbuch trocken, wie viel Nm weniger?', 'lubricant answered'],
  [
    'Welche Vorspannkraft habe ich bei einer M10 Schraube mit 45 Nm und K-Faktor 0,18?',
    'clamp-force answered',
    '25 kN',
  ],
  ['M12 8.8 trocken, 80 Nm, welche Klemmkraft', 'clamp-force answered'],
  [
    'Kofferwaage zeigt 22 kg bei 45 cm vom Vierkant, Schlüssel auf 100 Nm eingestellt',
    'scale-check answered',
    '97.1 N·m',
  ],
  ['Federwaage 15,5 kg, Abstand 60 cm vom Vierkant, Schlüssel klickt bei 90 Nm', 'scale-check answered', '91.2 N·m'],
  ['Wie viel Nm sind 75 lb-ft?', 'convert answered', '101.7 N·m'],
  ['3,5 mkg in Nm umrechnen', 'convert answered', '34.3 N·m'],
  ['8 kpm sind wie viel Nm', 'convert answered', '78.5 N·m'],
  ['Mein Drehmomentschlüssel ist mir runtergefallen, muss ich ihn kalibrieren?', 'does-it-matter answered'],
  ['Kann ich eine selbstsichernde Mutter wiederverwenden?', 'does-it-matter answered'],
  ['Kraftvervielfältiger 4:1, brauche 1200 Nm, was stelle ich ein', 'multiplier answered', '300 N·m'],
  ['Welches Drehmoment für die Radschrauben?', 'maker-figure'],
  ['Radschrauben M14 10.9 trocken, welches Drehmoment', 'maker-figure'],
  ['M8 8.8 an der Bremse, K 0,2, welches Drehmoment', 'maker-figure'],
  ['M12 10.9 Querlenker, trocken, welches Drehmoment', 'maker-figure'],
  ['M10 8.8 trocken, welches Drehmoment', 'bolt-torque answered'],
  ['Wie fest müssen die Zylinderkopfschrauben?', 'maker-figure'],
  ['Guten Morgen, welches Öl brauche ich', 'out-of-scope'],
  ['Verlängerung 250 mm unter dem Vierkant, ändert das was am Drehmoment?', 'does-it-matter answered'],
]
