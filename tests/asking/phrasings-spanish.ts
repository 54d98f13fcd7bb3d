// Spanish phrasings of the common questions: what is to be found in them, and the number that is to come out.
import type { Phrasing } from './phrasings.ts'

export const spanishPhrasings: readonly Phrasing[] = [
  [
    'Necesito 80 Nm en la tuerca, pata de gallo de 45 mm recta, llave dinamométrica de 400 mm. ¿A cuánto la pongo?',
    'adapter-setting answered',
    '71.9 N·m',
  ],
  [
    'llave dinamométrica de 350 mm, adaptador de 40 mm en línea, el manual dice 60 Nm. ¿Qué ajusto?',
    'adapter-setting answered',
    '53.8 N·m',
  ],
  ['Adaptador de 50 mm recto, brazo de palanca de 300 mm, quiero 45,5 Nm', 'adapter-setting answered', '39 N·m'],
  [
    'Con una pata de cuervo de 2 pulgadas recta y una llave de 16 pulgadas necesito 90 Nm. ¿A cuánto ajusto?',
    'adapter-setting answered',
    '80 N·m',
  ],
  [
    'Adaptador de 60 mm perpendicular a la llave, palanca de 420 mm, necesito 75 Nm. ¿Qué ajusto?',
    'adapter-setting answered',
    '75 N·m',
  ],
  [
    'Adaptador de 60 mm a 45 grados, palanca de 420 mm, necesito 75 Nm. ¿Qué ajusto?',
    'adapter-setting answered',
    '68.1 N·m',
  ],
  ['pata de gallo de 40 mm acodada, llave de 350 mm, necesito 80 Nm', 'adapter-setting incomplete'],
  ['pata de gallo de 40 mm que no está recta, llave de 350 mm, necesito 80 Nm', 'adapter-setting incomplete'],
  ['¿Qué ajusto para 120 Nm con un adaptador de 50 mm recto?', 'adapter-setting incomplete'],
  [
    'Llave ajustada a 60 Nm con un adaptador de 50 mm en línea y llave de 350 mm. ¿Cuál es el par real en la tuerca?',
    'adapter-reading answered',
    '68.6 N·m',
  ],
  ['¿Importa dónde agarro la llave dinamométrica con la mano?', 'does-it-matter answered'],
  ['El manual dice 80 Nm en seco y he puesto pasta de cobre. ¿Qué ajusto?', 'lubricant answered'],
  ['rosca aceitada, 100 Nm en seco según el manual, ¿cuánto menos?', 'lubricant answered'],
  ['¿Qué precarga da un tornillo M10 con 45 Nm y factor K 0,18?', 'clamp-force answered', '25 kN'],
  ['M12 8.8 en seco, 80 Nm, qué fuerza de apriete', 'clamp-force answered'],
  ['La báscula marca 22 kg a 45 cm del cuadrado, llave ajustada a 100 Nm', 'scale-check answered', '97.1 N·m'],
  ['dinamómetro 15,5 kg, a 60 cm del cuadrado, la llave salta a 90 Nm', 'scale-check answered', '91.2 N·m'],
  ['¿Cuántos Nm son 75 libras pie?', 'convert answered', '101.7 N·m'],
  ['convertir 3,5 mkg a Nm', 'convert answered', '34.3 N·m'],
  ['Se me cayó la llave dinamométrica, ¿hay que calibrar?', 'does-it-matter answered'],
  ['¿Puedo reutilizar una tuerca autoblocante?', 'does-it-matter answered'],
  ['Multiplicador 4:1, necesito 1200 Nm, ¿a cuánto pongo la llave?', 'multiplier answered', '300 N·m'],
  ['¿Cuál es el par de apriete de las tuercas de rueda?', 'maker-figure'],
  ['tornillos de rueda M14 10.9 en seco, qué par', 'maker-figure'],
  ['pinza de freno M10 10.9 en seco, qué par', 'maker-figure'],
  ['qué par para un tornillo M10 8.8 en seco', 'bolt-torque answered'],
  ['Buenos días, qué aceite necesito para el motor', 'out-of-scope'],
  ['extensión de 250 mm bajo el cuadrado, ¿cambia el par?', 'does-it-matter answered'],
]
