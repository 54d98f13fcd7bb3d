// Our own phrasings of each kind of question: what is to be found in them, and the number that is to come out.
// A row: the text, the question and its status (or the fault), and one number in SI-free form as it is shown.

export type Phrasing = readonly [text: string, found: string, shown?: string]

export const phrasings: readonly Phrasing[] = [
  // What to dial with an adapter on.
  [
    'got a 3 in crowfoot on my 18 in clicker, book says 75 lb-ft, straight, what do I set?',
    'adapter-setting answered',
    '64.3 lbf·ft',
  ],
  [
    'Torque is 120 Nm, crows foot sticks straight out 45 mm, wrench 380mm centre to centre. Setting?',
    'adapter-setting answered',
    '107.3 N·m',
  ],
  [
    'need 85 lbs on this nut with a 2" crowfoot, wrench measures 15" from drive to grip',
    'adapter-setting answered',
    '75 lbf·ft',
  ],
  [
    'wrench is 400 mm long, adaptor 60 mm, torque spec 90 N.m., adaptor straight. what should I dial',
    'adapter-setting answered',
    '78.3 N·m',
  ],
  ['crow foot 1 3/4", lever 14 1/2 in, spec 60 ft lbs', 'adapter-setting answered', '53.5 lbf·ft'],
  [
    'what do i set my 500mm torque wrench to for 200nm with a 100 mm extension straight out in front',
    'adapter-setting answered',
    '166.7 N·m',
  ],
  [
    'Offset adapter moves the bolt 50mm further away than the drive, wrench 350mm, need 70Nm',
    'adapter-setting answered',
    '61.3 N·m',
  ],
  [
    'dogbone adapter, 2.25 in hole to hole, 16 inch wrench, in line, 55 ft-lbs desired at the nut',
    'adapter-setting answered',
    '48.2 lbf·ft',
  ],
  ['crowfoot 40mm, wrench 300mm, 50Nm at 45 degrees', 'adapter-setting answered', '45.7 N·m'],
  ['torque 75 lbf-ft, L = 18", A = 3" crowfoot, straight', 'adapter-setting answered', '64.3 lbf·ft'],
  ['adapter 50 mm pointing back at the handle, wrench 400 mm, 60 Nm', 'adapter-setting answered', '68.6 N·m'],
  [
    'two adapters chained, 40 mm and 60 mm, both straight, wrench 500 mm, want 100 Nm',
    'adapter-setting answered',
    '83.3 N·m',
  ],
  [
    'crowfoot 2 in straight and then a second adapter 3 in at 90 degrees, wrench 20 in, 100 ft-lb',
    'adapter-setting answered',
    '90.9 lbf·ft',
  ],
  // The jaw is no length, a bend without an angle is asked, a number without a unit too.
  ['using a 19mm crowfoot on a 3/8 drive click wrench, want 40 ft lb', 'adapter-setting incomplete'],
  ['crowfoot goes round the corner, 2 inch, wrench 18 inch, 60 ft lb', 'adapter-setting incomplete'],
  ['crowfoot bent off to the side a bit, 40 mm, lever 350 mm, 80 Nm', 'adapter-setting incomplete'],
  ['crowfoot at 30 degrees. wrench length 450. adapter 50. torque 120', 'adapter-setting incomplete'],
  ['wrench is 24 in end to end, crowfoot 2 in, 80 ft lb', 'adapter-setting incomplete'],
  // What the fastener got.
  [
    'Set wrench to 60 Nm with a 50mm crowfoot in line on a 350 mm wrench. What did the nut actually get?',
    'adapter-reading answered',
    '68.6 N·m',
  ],
  // Bars, heads, swivels, the hand, multipliers.
  ['long extension absorbs torque when torquing lug nuts to 100 ft lbs?', 'does-it-matter answered'],
  ['does using a 250 mm extension straight down to the plug change anything? 25Nm', 'does-it-matter answered'],
  [
    'open end insert is 20 mm longer than the ratchet insert, wrench 300 mm to the ratchet centre, 50 Nm',
    'end-fitting answered',
    '46.9 N·m',
  ],
  ['changed the head on my 14x18 wrench, do I need to change the setting', 'does-it-matter answered'],
  ['does it matter where I hold a click type torque wrench', 'does-it-matter answered'],
  [
    'choked up on the handle, hand at 8 in instead of 16 in, wrench set to 50 ft lb, click type',
    'hand-position answered',
  ],
  ['can I slip a pipe over my torque wrench for 200 ft lbs?', 'does-it-matter answered'],
  ['how hard do I have to pull on a 24 inch handle for 250 ft lbs', 'pull answered', '125 lbf'],
  ['flex head ratchet torque wrench bent 20 degrees, 80 Nm, 400mm long', 'flex-head answered'],
  ['u-joint at 30 deg, wrench set to 40 ft-lb', 'swivel answered'],
  ['can I torque through a wobbler?', 'does-it-matter answered'],
  ['torque multiplier 4:1, need 600 ft lb', 'multiplier answered', '150 lbf·ft'],
  ['need 1200 Nm with a 5 to 1 multiplier', 'multiplier answered', '240 N·m'],
  ['need 1,200 Nm with a 5:1 multiplier', 'multiplier refused'],
  // Joints.
  ['spec is 80 ft lb dry, using anti-seize, what should I use?', 'lubricant answered'],
  ['anti seize on lug nuts, how much do I back off from 100 ft lbs? someone said 25%', 'lubricant incomplete'],
  ['K = 0.2 dry and 0.12 with moly, spec 50 ft lb dry. new torque?', 'lubricant answered', '30 lbf·ft'],
  ['M12 8.8 bolt dry, 80 Nm, what clamp load', 'clamp-force answered'],
  ['what clamp force do I get from 45 Nm on M10, K 0.18', 'clamp-force answered', '25 kN'],
  ['want 20 kN in an M10, k=0.15, what torque', 'clamp-force answered', '20 kN'],
  ['max torque for M10 10.9 oiled', 'bolt-torque answered'],
  ['1/2-13 grade 8 bolt, lightly oiled, what torque', 'bolt-torque answered'],
  ['what is the nut factor if 100 Nm gave 40 kN in an M12 bolt', 'nut-factor answered', '0.208'],
  // Checks and care.
  ['bathroom scale shows 22 kg at 45 cm from the drive, wrench set at 100 Nm', 'scale-check answered'],
  ['hung a 20 lb weight 18 inches out, it clicked at 32 ft lb, is it right', 'scale-check answered', '30 lbf·ft'],
  ['what should my fish scale read at 16 inches for 60 ft lbs', 'pull answered', '45 lbf'],
  ['tester gave 98.5 99.2 98.8 Nm with the wrench set to 100', 'wrench-check answered'],
  ['set to 50 ft lb, tester read 52, 51.5, 52.2 ft lb. wrench is 4%. pass?', 'wrench-check answered'],
  ['my wrench is ±4%, set to 90 Nm, what could the bolt really be at?', 'tolerance-band answered', '90 N·m'],
  ['last calibrated 2025-03-01, when is it due', 'next-check answered'],
  ['left my clicker wound up at 100 all winter, is it ruined', 'does-it-matter answered'],
  ['fell off the roof of the van, still accurate?', 'does-it-matter answered'],
  ['my two torque wrenches disagree, one clicks at 60 and the other shows 66 ft lb', 'compare incomplete'],
  ['A: 99.5 101 100.2 Nm and B: 103 104.5 103.8 Nm, do they differ?', 'compare answered'],
  // Units.
  ['convert 85 ft lbs to nm', 'convert answered', '115.2 N·m'],
  ['how many inch pounds is 12 Nm', 'convert answered', '106.2 lbf·in'],
  ['8 kgm to ft lbs', 'convert answered', '57.9 lbf·ft'],
  ['my book says 110 kg.cm but wrench is in Nm', 'convert answered', '10.79 N·m'],
  ['is 20 ft lb the same as 240 in lb', 'convert answered', '240 lbf·in'],
  // The maker's figure is never given; what is none of ours is said to be so.
  ['what is the torque spec for the rear axle nut on a 2009 scooter?', 'maker-figure'],
  ['torque for spark plugs in a 5.7 v8?', 'maker-figure'],
  ['anyone know the torque for M8 water pump bolts', 'maker-figure'],
  ['how tight should wheel nuts be on a small van', 'maker-figure'],
  ['whats the head bolt torque sequence for my tractor', 'maker-figure'],
  ['rod bolts: 30 ft lb + 60 degrees, is that right?', 'maker-figure'],
  ['hello', 'out-of-scope'],
  ['how do I remove a rusted exhaust bolt', 'out-of-scope'],
  ['whats the weather', 'out-of-scope'],
  ['my brakes squeak', 'out-of-scope'],
]
