// Each input: its name on a form, how it is asked for, how it is measured.

export const inputs = {
  torque: {
    label: 'Torque',
    ask: 'the torque that the fastener must get',
    measure: "From the maker's manual, with its unit.",
  },
  tilt: {
    label: 'Tilt',
    ask: 'how far the handle is tilted from straight',
    measure: '0° where the handle lies in the plane in which the fastener turns.',
  },
  hinge: {
    label: 'Hinge',
    ask: 'how far the hinge is from the drive',
    measure: 'Centre of the square drive to the pin of the hinge.',
  },
  sensing: {
    label: 'Sensing',
    ask: 'where the wrench senses: ahead of the hinge or behind it',
    measure: 'ahead: most indicating and electronic wrenches; behind: most that click.',
  },
  length: {
    label: 'Length of the bar',
    ask: 'how long the bars are together',
    measure: 'From square to square, all bars together.',
  },
  drive: {
    label: 'Drive',
    ask: 'the square drive of the bar, or its diameter',
    measure: '1/4, 3/8, 1/2, 3/4 or 1 in.',
  },
  part: {
    label: 'Further drives',
    ask: 'the square drives of what else hangs under it',
    measure: '1/4, 3/8, 1/2, 3/4 or 1 in, each; up to eight.',
  },
  'torque-ratio': {
    label: 'Torque ratio',
    ask: 'the torque ratio (torque-ratio) or the turns ratio (turns-ratio), whichever is marked',
    measure: 'On its plate or certificate: torque out for torque in, losses counted.',
  },
  'turns-ratio': {
    label: 'Turns ratio',
    ask: 'the turns ratio',
    measure: 'Turns in for one turn out; losses are not in it.',
  },
  efficiency: {
    label: 'Efficiency',
    ask: 'the efficiency of the multiplier',
    measure: 'From its certificate, in % or from 0 to 1.',
  },
  'run-on': {
    label: 'Run-on torque',
    ask: 'the torque that turns the locking nut before it seats',
    measure: 'Read it while the nut turns, with its unit.',
  },
  reading: {
    label: 'Reading',
    ask: 'what the wrench showed or clicked at',
    measure: 'Read it off the wrench, with its unit.',
  },
  setting: {
    label: 'Setting',
    ask: 'what the wrench is dialled to',
    measure: 'Read it off the wrench, with its unit.',
  },
  lever: {
    label: 'Lever',
    ask: 'the lever of the wrench',
    measure: 'Centre of the square drive to the centre of the grip, at the setting to be used; not the overall length.',
  },
  adapter: {
    label: 'Adapter',
    ask: 'the length of the adapter, and its direction where it is not straight',
    measure: 'Centre of the square hole to the centre of the fastener; not end to end, not the jaw size.',
  },
  angle: {
    label: 'Angle',
    ask: "the angle of the adapter from the wrench's own axis",
    measure: '0° straight ahead, 90° square, 180° back toward the hand; + toward the side the handle turns to.',
  },
  hand: {
    label: 'Hand',
    ask: 'where the hand really pulls',
    measure: 'Centre of the square drive to the middle of the hand.',
  },
  pivot: {
    label: 'Pivot',
    ask: 'where the wrench trips (pivot), or what kind it is (wrench-type)',
    measure:
      'Centre of the square drive to the pin on which the head tips; two pulls at one setting tell it (pivot-offset).',
  },
  'wrench-type': {
    label: 'Kind of wrench',
    ask: 'what kind of wrench it is',
    measure: 'click, split-beam, beam, dial or electronic.',
  },
  tolerance: {
    label: 'Tolerance',
    ask: 'the tolerance of the wrench',
    measure: 'From its certificate or manual, in %.',
  },
  mark: {
    label: 'Mark',
    ask: "the step between two marks of the wrench's scale",
    measure: 'Read it off the scale, with its unit.',
  },
  least: { label: 'Least', ask: 'the lowest mark of the wrench', measure: 'Read it off the scale, with its unit.' },
  most: { label: 'Most', ask: 'the highest mark of the wrench', measure: 'Read it off the scale, with its unit.' },
  'torque-at-lever': {
    label: 'Torque, hand at the lever',
    ask: 'the torque reached with the hand at the lever',
    measure: 'On a tester, at one setting, the mean of several pulls.',
  },
  'torque-at-hand': {
    label: 'Torque, hand moved',
    ask: 'the torque reached with the hand moved',
    measure: 'On the same tester at the same setting, the mean of several pulls.',
  },
  'fitting-change': {
    label: 'Change of the head',
    ask: 'how much longer (+) or shorter (-) the used head is',
    measure: 'Centre to centre: used head minus the head that the wrench was calibrated with.',
  },
  quantity: {
    label: 'Quantity',
    ask: 'what to convert, with its unit',
    measure: 'A number and a unit, such as 20 N·m.',
  },
  wrench: {
    label: 'Wrench',
    ask: 'the tag of the wrench in the register',
    measure: 'It hangs with the wrench and stands on the board.',
  },
  to: {
    label: 'To',
    ask: 'what the threads and seat will be, or the unit to convert to',
    measure: 'Pick one of the list.',
  },
  from: {
    label: 'From',
    ask: "which state of threads the maker's figure is for",
    measure: 'It stands beside the torque figure in the manual; if it does not, ask the maker.',
  },
  'k-from': {
    label: 'Nut factor, from',
    ask: 'the nut factor that the figure is for',
    measure: 'From your own runs (nut-factor) or a data sheet.',
  },
  'k-to': {
    label: 'Nut factor, to',
    ask: 'the nut factor of the new state',
    measure: 'From your own runs (nut-factor) or a data sheet.',
  },
  condition: {
    label: 'State',
    ask: 'the state of threads and seat (condition), its nut factor (k), or its friction (mu-threads, mu-seat)',
    measure: 'dry, oiled, greased, anti-seize …: as the fastener will be tightened.',
  },
  k: { label: 'Nut factor', ask: 'the nut factor', measure: 'From your own runs (nut-factor) or a data sheet.' },
  'mu-threads': {
    label: 'Friction in the threads',
    ask: 'the friction in the threads',
    measure: 'From a data sheet; a plain number such as 0.14.',
  },
  'mu-seat': {
    label: 'Friction in the seat',
    ask: 'the friction under the head or nut',
    measure: 'From a data sheet; a plain number such as 0.14.',
  },
  'mu-from': { label: 'Friction, from', ask: '', measure: '' },
  'mu-to': { label: 'Friction, to', ask: '', measure: '' },
  pitch: { label: 'Pitch', ask: '', measure: '' },
  class: {
    label: 'Class',
    ask: 'the class or grade of the fastener',
    measure: 'Stamped on its head: 8.8, 10.9, A2-70; radial lines are SAE grades.',
  },
  seat: {
    label: 'Seat',
    ask: 'the seat under the head or nut, outer x hole',
    measure: 'flat 18 mm x 13 mm; cone 60° 18 mm x 13 mm (included angle); ball 14 mm 18 mm x 13 mm (radius).',
  },
  share: {
    label: 'Share of strength',
    ask: 'how much of its strength the bolt may use',
    measure: '75 % of proof, or 90 % of yield.',
  },
  where: {
    label: 'Where',
    ask: 'where the lubricant goes: both, threads or seat',
    measure: 'both: on threads and under the head or nut.',
  },
  'grip-length': {
    label: 'Grip length',
    ask: 'the thickness that is clamped',
    measure: 'From under the head to the face of the nut, washers counted.',
  },
  turn: {
    label: 'Turn',
    ask: 'the turn from snug',
    measure: 'In degrees, at the nut or head; not at the handle of a long bar.',
  },
  'thread-length': {
    label: 'Thread length',
    ask: 'how much of the bolt is threaded',
    measure: 'From its end to where the shank begins.',
  },
  'thread-torque': {
    label: 'Torque in the thread',
    ask: 'the part of the torque that the thread takes',
    measure: 'From a test stand that measures it apart, one for each run.',
  },
  size: {
    label: 'Size',
    ask: 'the size of the thread, or its diameter',
    measure: 'Stamped on the bolt or measured over the threads: M12, M12x1.5, 3/8-16; not the size of the head.',
  },
  diameter: {
    label: 'Diameter',
    ask: 'the nominal diameter of the thread',
    measure: 'Over the threads; not the size of the head.',
  },
  'clamp-force': {
    label: 'Clamp force',
    ask: 'the clamp force of each run',
    measure: 'From a load washer, or the stretch of the bolt.',
  },
  distance: {
    label: 'Distance',
    ask: 'how far from the drive the scale pulls',
    measure: 'Centre of the square drive to the hook, along the handle; at the grip centre.',
  },
  force: {
    label: 'Force',
    ask: 'what the scale showed',
    measure: 'The highest value before the click, with its unit; add the weight of hook and bucket.',
  },
  'pull-angle': {
    label: 'Pull angle',
    ask: 'how far the pull is from square to the handle',
    measure: '0° where the cord stands square to the handle.',
  },
  'wrench-mass': { label: 'Mass of the wrench', ask: 'what the wrench weighs', measure: 'On the scale.' },
  'balance-point': {
    label: 'Balance point',
    ask: 'where the wrench balances',
    measure: 'Centre of the square drive to where it balances on an edge.',
  },
  lie: {
    label: 'Lie',
    ask: 'how the wrench lies: level (drive axis horizontal, handle level) or upright (drive axis vertical, or handle hanging)',
    measure: 'level: its own weight counts; upright: it does not.',
  },
  'pull-direction': {
    label: 'Pull direction',
    ask: 'whether the pull turns the handle down or up',
    measure: 'down: a weight hung on it; up: a scale pulled upward.',
  },
  'gauge-tolerance': {
    label: 'Tolerance of the scale',
    ask: 'how good the scale is',
    measure: 'From its manual, in %, or against a known weight.',
  },
  'gauge-limit': { label: 'Limit of the scale', ask: 'how far the scale goes', measure: 'Printed on it.' },
  of: {
    label: 'Tolerance of',
    ask: 'what the tolerance is of: reading or full-scale',
    measure: 'It stands beside the tolerance in the manual.',
  },
  spec: {
    label: 'Asked span',
    ask: 'the span of torque that is asked for',
    measure: "From the maker's manual, both ends: 90–110 N·m.",
  },
  points: {
    label: 'Point',
    ask: 'each setting with what the reference showed: setting: readings, points parted by |',
    measure:
      'Left what the wrench says, right what the tester showed each time; 5 pulls at 20, 60 and 100 % of the scale, rising.',
  },
  'iso-type': {
    label: 'Type (ISO 6789)',
    ask: 'what type of tool it is by ISO 6789: indicating or setting',
    measure: 'indicating: a dial, a beam or a display is read; setting: it is dialled and clicks. On its certificate.',
  },
  'iso-class': {
    label: 'Class (ISO 6789)',
    ask: 'its class by ISO 6789, a letter from A to G',
    measure: 'On its certificate or in its manual.',
  },
  'gauge-uncertainty': {
    label: 'Uncertainty of the reference',
    ask: 'how uncertain the reference is, in %',
    measure: 'From its certificate: the expanded uncertainty (k = 2).',
  },
  rule: {
    label: 'Decision rule',
    ask: 'whether the uncertainty of the reference counts: simple (no) or guarded (yes)',
    measure: 'guarded needs gauge-uncertainty.',
  },
  a: {
    label: 'Readings A',
    ask: 'the first set of readings, which the other is held against',
    measure: 'Two or more of one kind, parted by ;, the unit once at the end or none at all.',
  },
  b: {
    label: 'Readings B',
    ask: 'the second set of readings',
    measure: 'Two or more of the same kind as A.',
  },
  margin: {
    label: 'Margin',
    ask: 'how much of a difference matters, in % of A',
    measure: 'What the job can bear: 4 % is what a wrench may be off.',
  },
  confidence: {
    label: 'Confidence',
    ask: 'how sure the answer must be, in %',
    measure: '95 % where nothing else is asked.',
  },
  resolution: {
    label: 'Resolution',
    ask: 'the smallest step that the readings were read to',
    measure: 'The last digit or mark of the gauge, in the unit of the readings.',
  },
  'last-check': {
    label: 'Last check',
    ask: 'the day of the last check: year-month-day',
    measure: 'From its certificate or label: 2026-03-01.',
  },
  uses: {
    label: 'Uses',
    ask: 'how often it was used since the last check',
    measure: 'From its counter, or a fair guess upward.',
  },
  interval: {
    label: 'Interval',
    ask: 'how long a check lasts: months, uses, or both',
    measure: "The shop's own rule: 12 months; 5000 uses.",
  },
  events: {
    label: 'Event',
    ask: 'what happened to it, with the day: dropped, overloaded, repaired, modified, wound-up',
    measure: 'what@year-month-day, several with ;. A span for wound-up: wound-up@2026-01-01..2026-07-01.',
  },
  'length-doubt': { label: 'Lengths known to ±', ask: '', measure: '' },
  'hand-doubt': { label: 'Hand placed to ±', ask: '', measure: '' },
  'angle-doubt': { label: 'Angles known to ±', ask: '', measure: '' },
  'square-doubt': { label: 'Pull square to ±', ask: '', measure: '' },
  'repeat-doubt': { label: 'One pull repeats to ±', ask: '', measure: '' },
  find: { label: 'Find', ask: 'what to find', measure: '' },
} as const
