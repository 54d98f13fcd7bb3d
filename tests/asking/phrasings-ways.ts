// Which way an adapter points and from where a hand is counted, as people put it: what points back is never taken for straight ahead,
// two ways at once are asked back, and a hand that is counted from elsewhere than the drive is refused. Phrases of our own.

/** Text, question with status, and what the headline holds. */
export type Phrasing = readonly [text: string, became: string, holds?: string]

const back = 'adapter-setting answered'
const asked = 'adapter-setting incomplete'

/** 60 mm straight back on a lever of 250 mm: 40 x 250 / 190 = 52.6 N·m. */
export const backPhrasings: readonly Phrasing[] = [
  'my 250 mm torque wrench with a 60mm crows foot pointing straight back at me, 40 Nm wanted',
  '250 mm wrench, 60 mm crowfoot straight back, 40 Nm',
  '250 mm wrench, 60 mm crowfoot pointing straight back toward the handle, 40 Nm',
  '250 mm wrench, 60 mm crowfoot turned straight back towards my hand, 40 Nm',
  '60 mm crowfoot folded straight back under the handle of a 250 mm wrench, 40 Nm',
  '60 mm crowfoot straight backwards on a 250 mm wrench for 40 Nm',
  '60 mm crowfoot in line but reversed on a 250 mm wrench for 40 Nm',
  '60 mm crowfoot inline pointing to my hand on a 250 mm wrench for 40 Nm',
  '60 mm crowfoot in line towards the handle on a 250 mm wrench for 40 Nm',
  'Schlüssel 250 mm, Aufsatz 60 mm gerade zurück zum Griff, 40 Nm, was einstellen?',
  'Schlüssel 250 mm, Aufsatz 60 mm in Linie zum Griff hin, 40 Nm, was einstellen?',
  'clé 250 mm, adaptateur 60 mm dans l’axe vers le manche, 40 Nm, que régler ?',
  'llave 250 mm, adaptador 60 mm en línea hacia el mango, 40 Nm, ¿qué pongo?',
].map((text) => [text, back, '52.6 N·m'])

/** Two ways at once, or one that is none: no number. */
export const unclearPhrasings: readonly Phrasing[] = [
  '60 mm crowfoot facing me straight on, 250 mm wrench, 40 Nm',
  '60 mm crowfoot straight up from the wrench, 250 mm wrench for 40 Nm',
  '60 mm crowfoot at a straight angle to a 250 mm wrench for 40 Nm',
  '60 mm crowfoot the wrong way round on a 250 mm wrench for 40 Nm',
  '50 mm crowfoot straight or at right angles on a 400 mm wrench, 80 Nm',
  '50 mm crowfoot at 30° and 60° on a 400 mm wrench, 80 Nm',
  '50 mm crowfoot straight ahead, perpendicular to the bolt, on a 400 mm wrench, 80 Nm',
  'Schlüssel 400 mm, Aufsatz 50 mm umgedreht, 100 Nm, was einstellen?',
  'clé 400 mm, adaptateur 50 mm à l’envers, 100 Nm, que régler ?',
].map((text) => [text, asked])

/** Text, and the words that are refused. */
export const handPhrasings: ReadonlyArray<readonly [text: string, words: string]> = [
  ['I choke up 60 mm on the handle, 400mm click wrench set to 80 Nm', 'choke up 60 mm'],
  ['holding the click wrench 50 mm lower than the grip line, lever is 400 mm, set 80 Nm', '50 mm lower than the grip'],
  ['holding a beam wrench 5 cm below the grip mark, lever is 400 mm, set 80 Nm', '5 cm below the grip'],
  ['hand 50 mm closer to the head than the grip of my 400 mm beam wrench, set 80 Nm', '50 mm closer to the head'],
  ['hand 50 mm past the end of my 400 mm beam wrench, set 80 Nm', '50 mm past'],
  ['I hold my 400 mm beam wrench 50 mm off the grip, 80 Nm', '50 mm off the grip'],
  ['I hold my 400 mm beam wrench 50 mm from the grip, 80 Nm', '50 mm from the grip'],
  ['I hold my 400 mm beam wrench 50 mm too short, 80 Nm', '50 mm too short'],
  ['hand is 5 cm in from the grip on a 400 mm beam wrench reading 80 Nm', '5 cm in from the grip'],
  ['gripping 4 cm up the handle, 400 mm wrench, beam, 80 Nm', '4 cm up the handle'],
  ['Ich halte den 400 mm Schlüssel 50 mm unter dem Griff, 80 Nm', '50 mm unter dem Griff'],
]

/** Counted from the drive, or of something else than a hand. */
export const drivePhrasings: readonly Phrasing[] = [
  ['my wrench is 350 mm from the grip to the drive, 50 mm crowfoot straight, want 80 Nm', back, '70 N·m'],
  ['350 mm from grip to drive, 50 mm crowfoot in line, 80 Nm', back, '70 N·m'],
  ['scale hooked 40 cm up the handle from the drive, 22 kg, set 90 Nm', 'scale-check answered', '86.3 N·m'],
  ['offset adapter moves the bolt 50mm further away than the drive, wrench 350mm, need 70Nm', back, '61.2 N·m'],
  [
    'weld-on end fitting is 30 mm shorter than the original one, grip to original centre 360 mm, want 75 Nm',
    'end-fitting answered',
    '81.8 N·m',
  ],
]

const check = 'wrench-check answered'
/** Rows of readings, each behind its setting: all of them are judged, or none. */
export const rowPhrasings: readonly Phrasing[] = [
  ['tester: 40 -> 41.2 41.0 40.8 Nm; 100 -> 102 103 101 Nm', check, '-2.91 %, at 40 N·m'],
  ['wrench 40 => 41.2, 41.0, 40.8 and 100 => 102, 103, 101 Nm', check, '-2.91 %, at 40 N·m'],
  ['40: 41.2 41.0 40.8; 100: 102 103 110 Nm is my wrench ok', check, '-9.09 %, at 100 N·m'],
  ['60 Nm -> 62 Nm, 120 Nm -> 118 Nm, tester', check, '-3.23 %, at 60 N·m'],
  ['five clicks at 100 Nm: 97 98 96 99 97', check, '4.17 %, at 100 N·m'],
  ['clicks at 100 Nm gave 97 98 96 99 97', check, '4.17 %, at 100 N·m'],
  ['wrench set 100 Nm, tester 97 98 96 99 97', check, '4.17 %, at 100 N·m'],
  ['tester: 40 -> 41.2 41.0 40.8; 100 -> 102 103 101; 200 -> 204 206 205', 'wrench-check incomplete'],
  ['40: 41.2 412 40.8; 100: 102 103 101 Nm', 'wrench-check incomplete'],
  ['wrench 1: 100 101 99, wrench 2: 103 104 102', 'compare answered', '3 %'],
]

/** A turn behind the torque is the maker's procedure: no clamp force is told of its first stage. */
export const turnedPhrasings: readonly Phrasing[] = [
  '100 Nm plus 90 degrees on m12x1.5 10.9 oiled what preload',
  'M12 10.9 dry 100 Nm then 90° clamp?',
  'M12 10.9 dry 100 Nm + 90° what clamp',
].map((text) => [text, 'maker-figure'])

export const otherPhrasings: readonly Phrasing[] = [
  ['convert 1200 in-lb', 'convert answered', '135.6 N·m'],
  ['bolt torque M8 8.8 dry zinc', 'bolt-torque answered'],
  ['M8 8.8 zinc plated dry torque', 'bolt-torque answered'],
]
