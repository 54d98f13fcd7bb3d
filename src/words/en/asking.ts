// What is said about free text, in the sections into which it is put: how it was read, what is not answered, what people quote.

export const asking = {
  say: {
    'ask.choice': 'This can be read in several ways, and the answers differ: pick the one that is meant.',
  },
  cautions: {
    'turn-left-aside':
      'The turn in the text was left aside: a turn is a stage of its own, and no lever changes it. Where the maker asks for torque and turn, the whole procedure is the maker’s.',
    'quoted-one-minus':
      'The rule that you quote, T · (1 − A/L), sets lower than T · L/(L + A), by exactly the share (A/L)² of the right setting.',
    'quoted-one-foot':
      'The rule that you quote, T/(1 + the length in feet), holds for a lever of exactly one foot and for no other.',
    'quoted-square-same':
      'That an adapter at 90° needs no correction is right, whatever its length: it adds nothing along the wrench. That some distance stays the same is not the reason.',
    'quoted-percent-off':
      'The percentage that you quote belongs to one lubricant and one joint; nothing here says that it is yours.',
    'quoted-bar-as-adapter':
      'The formula that you quote is for an adapter that reaches out from the wrench; a bar in line with the drive wants no correction.',
  },
  topics: { ask: 'In your own words: what is it, and which numbers do you have?' },
  inputs: {
    text: {
      label: 'In your own words',
      ask: 'the question in your own words, with its numbers and units',
      measure: 'Such as: 75 lb-ft, 18 in wrench, 3 in crowfoot straight, what do I set?',
    },
  },
  results: { 'as-quoted': 'By the rule that you quote (yours, not worked out here)' },
  faults: {
    'maker-figure': {
      allowed: 'a torque that you have from the maker',
      hint: 'Torque figures are the maker’s to give, and none is given here. Bring the figure with your wrench, adapter or threads, and what to dial is worked out.',
    },
    'out-of-scope': {
      allowed: 'a question about tightening to a torque',
      hint: 'This works out wrench settings with adapters, swivels and multipliers, clamp force and lubricants, checks of a wrench, and units. Ask with your numbers.',
    },
    'text-too-long': { allowed: 'at most {most} bytes', hint: 'Ask in fewer words: the question and its numbers.' },
  },
  faces: {
    reading: 'How it was read',
    'as-input': '“{span}”: {label}, {text}',
    'as-followed': '{label}, {text}: not written, it follows from the rest',
    'left-aside': 'left aside: {spans}',
    alternatives: 'Or did you mean',
    'work-it-out': 'Work this out',
  },
  page: { askTitle: 'In your own words', askLine: 'Ask in your own words', change: 'Change the numbers' },
} as const
