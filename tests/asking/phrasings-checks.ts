// What was set and what a reference showed, in either order and in many words; how far off a wrench is, and to which side. Taken the
// wrong way round, a wrench that delivers too little is told to deliver too much. Our own.
import type { Phrasing } from './phrasings.ts'

const low = 'where it delivers LOW'
const high = 'where it delivers HIGH'

export const checkPhrasings: readonly Phrasing[] = [
  [
    'tester read 97 Nm with the wrench set at 100 Nm, 4% wrench',
    'wrench-check answered',
    `off by 3.09 %, at 100 N·m, ${low}`,
  ],
  ['wrench set to 80 ft lb, tester says 83 ft lb. in spec?', 'wrench-check answered', `-3.61 %, at 80 lbf·ft, ${high}`],
  ['set 80 Nm, got 76.5 Nm on the tester, ok?', 'wrench-check answered', `4.58 %, at 80 N·m, ${low}`],
  ['At 100 Nm the tester showed 104.5 Nm, fail?', 'wrench-check answered', `at 100 N·m, ${high}`],
  ['the checker shows 58 Nm at a 60 Nm setting', 'wrench-check answered', `at 60 N·m, ${low}`],
  ['tester 57.5 Nm, wrench 60 Nm', 'wrench-check answered', `at 60 N·m, ${low}`],
  ['clicks at 57.5 Nm on the tester when set to 60 Nm', 'wrench-check answered', `at 60 N·m, ${low}`],
  ['wrench clicked at 60 Nm, the transducer saw 57 Nm', 'wrench-check answered', `at 60 N·m, ${low}`],
  ['101.2 Nm at 100 Nm on the torque tester', 'wrench-check answered', `at 100 N·m, ${high}`],
  [
    'as found: 62 Nm at 60 Nm, 4 % tolerance',
    'wrench-check answered',
    `within ±4 %; the worst is off by -3.23 %, at 60 N·m, ${high}`,
  ],
  ['dial on the wrench said 60 Nm, the reference said 57', 'wrench-check answered', `at 60 N·m, ${low}`],
  ['Wrench at 60 reads 58 on the tester, Nm', 'wrench-check answered', `at 60 N·m, ${low}`],
  ['measured 41.5 Nm with tester, target 40 Nm', 'wrench-check answered', `at 40 N·m, ${high}`],
  ['my clicker gives 47 Nm at 50 Nm on a transducer', 'wrench-check answered', `at 50 N·m, ${low}`],
  ['set 100 lb ft and it measured 96 lb ft', 'wrench-check answered', `at 100 lbf·ft, ${low}`],
  ['I set 25 Nm and the lab measured 24.1 Nm, wrench is 4%', 'wrench-check answered', `at 25 N·m, ${low}`],
  ['calibration cert: nominal 60 Nm, actual 61.3 Nm', 'wrench-check answered', `at 60 N·m, ${high}`],
  ['cal cert 61.3 Nm actual 60 Nm nominal', 'wrench-check answered', `at 60 N·m, ${high}`],
  // Which was set nobody says: two figures of a certificate may be before and after.
  ['cert says as found 97 Nm, as left 100 Nm', 'choice'],
  [
    'Prüfgerät zeigt 97 Nm, Schlüssel auf 100 Nm eingestellt, in Ordnung?',
    'wrench-check answered',
    `at 100 N·m, ${low}`,
  ],
  ['El comprobador marca 57 Nm con la llave puesta a 60 Nm, ¿pasa?', 'wrench-check answered', `at 60 N·m, ${low}`],
  ['clé réglée sur 60 Nm, le contrôleur de couple indique 62 Nm', 'wrench-check answered', `at 60 N·m, ${high}`],
  // A share of full scale: 2 % of 300 are 6, and 10 % at 60.
  [
    'wrench is ±2% of full scale, 300 Nm max. Tester showed 57.5 Nm at 60 Nm. pass?',
    'wrench-check answered',
    `within ±10 %; the worst is off by 4.35 %, at 60 N·m, ${low}`,
  ],
  ['wrench is ±2% of full scale. Tester showed 57.5 Nm at 60 Nm. pass?', 'wrench-check incomplete'],
  ['my wrench clicks at 92 when I set 100 Nm, 4 percent wrench', 'wrench-check answered', `8.7 %, at 100 N·m, ${low}`],
  ['check 100 Nm reading 108 Nm', 'wrench-check answered', `at 100 N·m, ${high}`],
  ['set 40 tester says 41.2 40.9 41.0 Nm', 'wrench-check answered', `at 40 N·m, ${high}`],
  // Each of one row at its own of the other; and no reading is so far from its setting.
  ['checked at 20, 60 and 100 Nm: 20.5, 61, 102 Nm', 'wrench-check answered', `-2.44 %, at 20 N·m, ${high}`],
  ['tester showed 20.5, 61, 102 Nm at 20, 60, 100 Nm', 'wrench-check answered', `-2.44 %, at 20 N·m, ${high}`],
  ['tester says 12 Nm at 100 Nm', 'wrench-check incomplete'],
  // How far off it is, and to which side.
  [
    'my wrench is 3 Nm low at 100 Nm, is that within 4%?',
    'wrench-check answered',
    `within ±4 %; the worst is off by 3.09 %, at 100 N·m, ${low}`,
  ],
  [
    'It clicked 5 Nm early at 120 Nm. Class ±4 %. Pass?',
    'wrench-check answered',
    `outside ±4 %; the worst reading is off by 4.35 %, at 120 N·m, ${low}`,
  ],
  ['tester reads 2 Nm high when the wrench is set to 40 Nm', 'wrench-check answered', `-4.76 %, at 40 N·m, ${high}`],
  ['set at 100 ft lb the tester came up 3 ft lb short', 'wrench-check answered', `at 100 lbf·ft, ${low}`],
  ['tester 4 ft-lb over at 75 ft-lb, ±4 % wrench', 'wrench-check answered', `-5.06 %, at 75 lbf·ft, ${high}`],
  ['1.5 Nm under at 25 Nm on the test bench', 'wrench-check answered', `6.38 %, at 25 N·m, ${low}`],
  ['my torque wrench is low by 2.5 Nm at 50 Nm', 'wrench-check answered', `at 50 N·m, ${low}`],
  ["my buddy's tester says 5 in-lb low at 120 in-lb", 'wrench-check answered', `at 120 lbf·in, ${low}`],
  ['clicker goes off 5 Nm late, set at 60 Nm, how much do I really get', 'wrench-check answered', `at 60 N·m, ${high}`],
  [
    'my wrench is 3% low at 100 Nm',
    'wrench-check answered',
    `within ±4 %; the worst is off by 3.09 %, at 100 N·m, ${low}`,
  ],
  [
    'der Schlüssel löst 3 Nm zu früh bei 100 Nm aus, Toleranz 4 %',
    'wrench-check answered',
    `3.09 %, at 100 N·m, ${low}`,
  ],
  ['ma clé déclenche 3 Nm trop tôt à 100 Nm, tolérance 4 %', 'wrench-check answered', `3.09 %, at 100 N·m, ${low}`],
  [
    'mi llave salta 3 Nm demasiado pronto a 100 Nm, tolerancia 4 %',
    'wrench-check answered',
    `3.09 %, at 100 N·m, ${low}`,
  ],
  // To which side nobody says, or it is said of the wrench's own scale.
  ['Is 4 Nm off ok? tester says ±2% FS, wrench is 0-300 Nm. At 60 Nm', 'choice'],
  ['wrench is out by 6 Nm at 150', 'choice'],
  ['wrench out 10 %, what do I set for 100 Nm', 'choice'],
  ['off by 2 Nm at 50 Nm, is that a fail at 4%?', 'choice'],
  ['it reads 2 Nm high when set to 40 Nm, tolerance 4 percent', 'choice'],
  // How much would matter is the asker's own.
  [
    'compare 100.2 100.4 99.8 vs 101.9 102.2 101.7 margin 2%',
    'compare answered',
    'not decided whether it matters: B is 1.798 % higher than A (1.149 % to 2.45 % at 95 %), against a margin of ±2 %',
  ],
  ['A 48.9 49.3 49.0, B 51.2 50.8 51.0, does 5% matter', 'compare answered', 'inside ±5 %'],
  [
    'compare 100.2 100.4 99.8 Nm against 101.9 102.2 101.7 Nm, a difference under 1 % does not matter, 99 % sure',
    'compare answered',
    'at 99 %), against a margin of ±1 %',
  ],
  ['compare 100.2 100.4 99.8 vs 101.9 102.2 101.7, margin 2% or 3%', 'compare incomplete'],
  // 500 / (5 · 0.88): what a multiplier loses is no part of its torque ratio.
  ['multiplier ratio 5:1 loses 12%, need 500 Nm', 'multiplier answered', '113.6 N·m'],
  [
    'crowfoot 50 mm straight, 400 mm wrench, tolerance 3 %, 100 Nm what do I set',
    'adapter-setting answered',
    '88.9 N·m',
  ],
  // The figure is for oil, and the threads are dry: nothing is taken off, and no less is enough.
  [
    'spec is for oiled threads 60 Nm, mine are dry M12',
    'lubricant answered',
    'going from oiled threads to dry threads',
  ],
  ['K=0.2 dry, K=0.15 oil, spec 100 Nm is for oil, bolts are dry', 'lubricant answered', 'from oiled threads to dry'],
  // Words of side that are none.
  ['20 Nm high tensile bolt M8?', 'clamp-force incomplete'],
  ['torque M10 to 45 Nm, 5 Nm lower than spec 50 Nm ok?', 'out-of-scope'],
  ['went 5 Nm over spec of 90 Nm, is that bad', 'out-of-scope'],
]
