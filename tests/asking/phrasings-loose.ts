// Phrasings of the same kinds, looser: units that stand once, readings behind a colon, what a thing is told by the side. Our own.
import type { Phrasing } from './phrasings.ts'

export const loosePhrasings: readonly Phrasing[] = [
  [
    'set 40 N.m on the clicker (L=250mm) with a 60 mm adapter pointing forward, torque at bolt?',
    'adapter-reading answered',
    '49.6 N·m',
  ],
  [
    'Set 80 lb-ft with crowfoot (2in) inline, wrench 16in grip centre to drive. Did I undertorque?',
    'adapter-reading answered',
    '90 lbf·ft',
  ],
  ['some angle, no idea which, 18in wrench 2in crowfoot, 80 ftlb', 'adapter-setting incomplete'],
  [
    '15mm crowfoot for the injector line, spec 22Nm, the crowfoot centre is 34mm from the drive, wrench 270mm. straight ahead',
    'adapter-setting answered',
    '19.54 N·m',
  ],
  ['24 inch long 1/2 drive extension and 100 ft lb, how much do i lose', 'extension-bar answered', '23.4°'],
  ['torque wrench 18 inches, extension 6 inches straight up from socket', 'extension-bar incomplete'],
  [
    'holding it 10 inches from the drive instead of 16, set at 60 ft lb, clicker',
    'hand-position answered',
    '62.4 lbf·ft',
  ],
  ['How hard do I have to pull for 300 Nm with a 1 m bar', 'pull answered', '300 N'],
  ['how much force at 450mm for 110 Nm', 'pull answered', '244 N'],
  ['tilted the flex head by 15 degrees, 100Nm dialled, 450mm', 'flex-head answered', '96.6 N·m'],
  [
    'head 24 mm longer than the stock one on my 350mm interchangeable head wrench, 50 Nm',
    'end-fitting answered',
    '46.8 N·m',
  ],
  // A ratio of turns with its efficiency is no torque ratio: 800 / (5.2 · 0.85).
  ['I have a geared multiplier 5.2:1 turns, 85% eff, output needs 800Nm', 'multiplier answered', '181 N·m'],
  // A nut factor belongs to the state that stands beside it, whichever comes first.
  ['put moly on the studs, k 0.12 vs 0.2 dry, 60 ft lb, 7/16', 'lubricant answered', '36 lbf·ft'],
  ['k moly 0.12, k dry 0.2, 80 Nm', 'lubricant answered', '48 N·m'],
  ['k dry 0.2, k moly 0.12, 80 Nm', 'lubricant answered', '48 N·m'],
  ["oiled threads vs dry at 80Nm M12, what's the difference in clamp load", 'lubricant answered'],
  ['turn angle for M10 with 60mm grip to get 30kN', 'turn-angle answered', '41.1°'],
  ['M10 bolt 80mm grip length to get 40 kN from snug what angle', 'turn-angle answered', '67.1°'],
  ['tighten M12 45 degrees past snug, grip 40 mm, how much clamp?', 'turn-angle answered', '68.1 kN'],
  // What was read stands behind the setting once; the setting is the one that has a unit.
  ['tested on tester at 150 ft-lb: 144 145 143', 'wrench-check answered', '150 lbf·ft'],
  ['Checked at 100 ft-lb got 92, 93, 92.5. pass?', 'wrench-check answered', '100 lbf·ft'],
  ['wrench ±4% set 120 Nm what range could it really be', 'tolerance-band answered', '115.2 N·m'],
  // Of the full scale: 2 % of 300 are 6 at 60.
  ["Got a wrench spec'd ±2% FS, 0-300 Nm. At 60 Nm error?", 'tolerance-band answered', '54 N·m'],
  ['3/8 drive wrench 5-75 ft lb range, is 8 ft lbs ok on it?', 'does-it-matter answered', '(15 lbf·ft'],
  ['clicker 20-200 Nm is good at 25 Nm?', 'does-it-matter answered', '(40 N·m'],
  // A spec is not so wide that it could be taken for the range of a wrench.
  ['spec 20-24 Nm, wrench set to 22 Nm ok?', 'out-of-scope'],
  // The range of a wrench is no torque that anybody wants.
  [
    'wrench 40-200 Nm, 400 mm lever, need 100 Nm with 50 mm crowfoot straight ahead',
    'adapter-setting answered',
    '88.9 N·m',
  ],
  ['need weight to test my 100 Nm wrench at 60 Nm, hang at 0.5 m', 'pull answered', '120 N'],
  ['what should the scale read at 30 cm for 45 Nm', 'pull answered', '150 N'],
  ['left my click wrench wound to 120 ft lb for 6 months is it ruined', 'does-it-matter answered'],
  ['does jerking it matter', 'does-it-matter answered'],
  ['last calibrated january 2025, 6000 clicks since, still good?', 'next-check answered'],
  ['calibrated in March 2026, when is the next one due', 'next-check answered', 'March 1, 2027'],
  // A direction that is tied to one link is not said of the others; one that may be of both is asked.
  ['adapter 50mm@45 + 30mm on a 400 mm wrench 60Nm', 'adapter-setting answered', '51.6 N·m'],
  ['adapters 50 mm + 30 mm straight on a 400 mm wrench 60Nm', 'adapter-setting answered', '50 N·m'],
  ['adapters 50 mm + 30 mm at 45 degrees on a 400 mm wrench 60Nm', 'adapter-setting incomplete'],
  ['crowfoot 50 mm, at 45, wrench 400 mm, 50 Nm', 'adapter-setting incomplete'],
  ['certificate dated 12 May 2024, still ok?', 'next-check answered', 'May 12, 2025'],
  ['last calibrated May 3rd, 2026, due?', 'next-check answered', 'May 3, 2027'],
  // What a tester showed is judged, with the wrench's own tolerance.
  ['0.5% tester, wrench 4%: 103.8 at 100 Nm pass?', 'wrench-check answered', '±4 %'],
  [
    'wrench 20-100, checked 20: 20.4 20.6 20.3, 60: 61 60.5 61.2, 100: 101 102 101.5 Nm',
    'wrench-check answered',
    '100 N·m',
  ],
  ['compare 99.8 100.2 100.1 to 103.9 104.2 104.0 margin 3%', 'compare incomplete'],
  ['is 104 vs 100 significant', 'compare incomplete'],
  ['30 lb pull at 2 feet gives how much torque', 'scale-check answered', '60 lbf·ft'],
  ['yield share of M8 10.9 at 35 Nm oiled', 'clamp-force answered'],
  ['scale 12.5 inch from center, 48 lb, set 50 ft lb', 'scale-check answered', '50 lbf·ft'],
  ['scale off by 2%, 30kg at 35 cm set 100 Nm', 'scale-check answered', '103 N·m'],
  // How long a pipe is says nothing of where the hand is on it.
  ['slid a 24" pipe on my 18" click wrench set to 100 ft lb', 'hand-position incomplete'],
  [
    'i put a 12" cheater on a 20" click wrench set at 120 ft lb, hand at 30 in',
    'hand-position answered',
    '117.5 lbf·ft',
  ],
  ['K dry .20, K lubed .14, spec 90 Nm dry -> lubed?', 'lubricant answered', '63 N·m'],
  ['nut factor if 45 Nm gives 18.6 kN on M12?', 'nut-factor answered', '0.202'],
  ['how many newtons in 5 kgf', 'convert answered', '49 N'],
  ['wobble ext slightly bent at 10 deg, 25 Nm', 'swivel answered', '24.6 N·m'],
  ['uni joint changes the torque yes/no', 'does-it-matter answered'],
  ['oil on lug studs bad?', 'lubricant incomplete'],
  ['how many ft lb for the lug nuts on my van', 'maker-figure'],
]
