// French phrasings of the common questions: what is to be found in them, and the number that is to come out.
import type { Phrasing } from './phrasings.ts'

export const frenchPhrasings: readonly Phrasing[] = [
  [
    "Il me faut 80 Nm à l'écrou, patte d'oie de 45 mm tout droit, clé dynamométrique de 400 mm. Je règle combien ?",
    'adapter-setting answered',
    '71.9 N·m',
  ],
  [
    'clé dynamométrique 350 mm, adaptateur 40 mm dans l’alignement, couple demandé 60 Nm. Quel réglage ?',
    'adapter-setting answered',
    '53.8 N·m',
  ],
  ['Adaptateur 50 mm en ligne, bras de levier 300 mm, je veux 45,5 Nm', 'adapter-setting answered', '39 N·m'],
  [
    'Avec une patte de corbeau de 2 pouces droite et une clé de 16 pouces, il faut 90 Nm. Combien régler ?',
    'adapter-setting answered',
    '80 N·m',
  ],
  [
    'Adaptateur de 60 mm perpendiculaire à la clé, levier de 420 mm, il faut 75 Nm. Quel réglage ?',
    'adapter-setting answered',
    '75 N·m',
  ],
  [
    'Adaptateur de 60 mm à 45 degrés, levier de 420 mm, il faut 75 Nm. Quel réglage ?',
    'adapter-setting answered',
    '68.1 N·m',
  ],
  ['patte d’oie 40 mm coudée, clé de 350 mm, il faut 80 Nm', 'adapter-setting incomplete'],
  ['patte d’oie 40 mm, pas droite, clé de 350 mm, il faut 80 Nm', 'adapter-setting incomplete'],
  ['Quel réglage pour 120 Nm avec un adaptateur de 50 mm tout droit ?', 'adapter-setting incomplete'],
  [
    "Clé réglée à 60 Nm avec un adaptateur de 50 mm en ligne sur une clé de 350 mm. Quel couple réel sur l'écrou ?",
    'adapter-reading answered',
    '68.6 N·m',
  ],
  ['Est-ce que ça change quelque chose où je tiens la clé dynamométrique avec la main ?', 'does-it-matter answered'],
  ['Couple prescrit 80 Nm à sec, j’ai mis de la pâte cuivre. Je règle combien ?', 'lubricant answered'],
  ['filetage huilé, 100 Nm à sec dans le manuel, quel couple ?', 'lubricant answered'],
  ['Quelle précharge pour une vis M10 à 45 Nm avec un facteur K de 0,18 ?', 'clamp-force answered', '25 kN'],
  ['M12 8.8 à sec, 80 Nm, quel effort de serrage', 'clamp-force answered'],
  ['Le peson affiche 22 kg à 45 cm du carré, la clé est réglée à 100 Nm', 'scale-check answered', '97.1 N·m'],
  ['pèse-bagage 15,5 kg, à 60 cm du carré, la clé déclenche à 90 Nm', 'scale-check answered', '91.2 N·m'],
  ['Combien de Nm font 75 lb-ft ?', 'convert answered', '101.7 N·m'],
  ['convertir 3,5 mkg en Nm', 'convert answered', '34.3 N·m'],
  ['Ma clé dynamométrique est tombée, faut-il un étalonnage ?', 'does-it-matter answered'],
  ['Puis-je réutiliser un écrou autofreiné ?', 'does-it-matter answered'],
  ['Multiplicateur 4:1, il faut 1200 Nm, je règle combien sur la clé ?', 'multiplier answered', '300 N·m'],
  ['Quel est le couple de serrage des écrous de roue ?', 'maker-figure'],
  ['vis de roue M14 10.9 à sec, quel couple', 'maker-figure'],
  ['M10 10.9 à sec sur un étrier de frein, quel couple', 'maker-figure'],
  ['M10 8.8 à sec avec une rondelle frein, quel couple', 'bolt-torque answered'],
  // What was set already is no torque that is wanted.
  ["J'ai mis 80 Nm avec un adaptateur de 50 mm droit, clé de 400 mm. C'est trop serré ?", 'choice'],
  ['Bonjour, quelle huile dois-je mettre dans le moteur', 'out-of-scope'],
  ['rallonge de 250 mm sous le carré, est-ce que ça change le couple ?', 'does-it-matter answered'],
]
