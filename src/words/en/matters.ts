// What does-it-matter says of an asker’s own numbers, and its names: in the sections into which it is put.

export const matters = {
  say: {
    'matter.yes': 'yes, it matters',
    'matter.no': 'no, it does not matter',
    'matter.depends': 'it depends',
    'matter.stored-wound-up.depends': 'it depends on how high and how long, and on the kind of wrench',
    'matter.re-used-nut.depends': 'it depends on the nut and on its maker',
    'matter.washers.depends': 'it depends on what slides',
    'matter.clicked-twice.depends': 'it depends on how: slowly, or jerked and on past the click',
    'matter.hand-position.depends': 'it depends on the wrench, and on an adapter',
    'matter.changed-head.depends': 'it depends on where its centre lies',
    'matter.chained-spanner.depends': 'it depends on its direction',
    'matter.flex-head.depends': 'it depends on the tilt and on where the wrench senses',
    'matter.swivel.depends': 'it depends on the bend',
    'matter.nothing': 'No, it does not matter: with these numbers the torque does not change.',
    'matter.too-small':
      'No, it does not matter: it changes the torque by {change}, less than a quarter of the tolerance of the wrench ({tolerance}).',
    'matter.too-small-between':
      'No, it does not matter: it changes the torque by {low} to {high}, less than a quarter of the tolerance of the wrench ({tolerance}).',
    'matter.changes': 'Yes, it matters: left as it is, it changes the torque at the fastener by {change}.',
    'matter.changes-between':
      'Yes, it matters: left as it is, it changes the torque at the fastener by {low} to {high}.',
    'matter.changes-dial':
      'Yes, it matters: left as it is, it changes the torque at the fastener by {change}; for {torque} dial {setting}.',
    'matter.perhaps':
      'It depends: it changes the torque by {low} to {high}, at one end less and at the other more than a quarter of the tolerance of the wrench ({tolerance}).',
    'matter.swivel-allowed':
      'It depends whom you ask: bent by {angle} the torque swings by {low} to {high}, lower still with friction; two engine manuals allow that uncorrected.',
    'matter.at-drive':
      'No, it does not matter: a wrench that senses at its drive does not care where it is held, as long as no adapter reaches ahead or back.',
    'matter.no-spring': 'No, it does not matter: this kind of wrench keeps no spring loaded while it is stored.',
    'matter.twist':
      'No, it does not matter: the bar winds up by {twist} and passes the whole torque on; only an angle read at the handle is off by that.',
    'matter.over-rating':
      'Yes, it matters: {torque} is {share} of what squares of this size are tested to ({rating}): use a larger drive.',
    'matter.under-rating':
      'No, it does not matter: in line the torque does not change, and {torque} is {share} of what squares of this size are tested to ({rating}).',
    'matter.below-fifth':
      'Yes, it matters: {setting} is {share} of the highest mark; below a fifth ({fifth}) the standards promise nothing.',
    'matter.in-range': 'No, it does not matter: {setting} is {share} of the highest mark, not below a fifth ({fifth}).',
    'matter.above-most': 'Yes, it matters: {setting} is above the highest mark, {most}: take a larger wrench.',
    'matter.clamp-more':
      'Yes, it matters: by these nut factors the clamp force changes by {change} at the same click: tighter.',
    'matter.clamp-less':
      'Yes, it matters: by these nut factors the clamp force changes by {change} at the same click: looser.',
    'matter.clamp-same': 'No, it does not matter: with the same nut factor the clamp force is the same.',
    'matter.torque': 'What the fastener gets with the wrench set so',
    'matter.torque-between': 'What the fastener gets with the wrench set so, from the lowest to the highest',
    'matter.change': 'Change against the setting',
    'matter.hand-factor': 'Torque at the fastener for each unit on the wrench, with the hand off the grip centre',
    'matter.square-doubt': 'What a pull that is not quite square does to it (either way)',
    'matter.tilt':
      'Change of the torque: from a wrench that trips behind the hinge, the hinge taken at the drive, to none where it senses ahead',
    'matter.tilt-pull': 'How much harder the pull gets where the wrench senses ahead of the hinge',
    'matter.swing': 'Swing of the torque in a turn, without friction; the low end',
    'matter.twist-step': 'How far the bar winds up, taken as round steel of the width of its square',
    'matter.rating': 'Share of the test torque of squares of this size; the rating of the part itself wins',
    'matter.fifth': 'The lowest setting for which the standards promise anything',
    'matter.share': 'Share of the highest mark',
    'matter.full-scale': 'The tolerance at this setting, if it is one of full scale',
    'matter.tolerance': 'What a wrench within its tolerance may deliver; half-width',
    'matter.jerk': 'From a steady pull to the most that is told of a jerk',
    'matter.clamp': 'Change of the clamp force at the same torque',
    'matter.run-on': 'What the wrench must show, the run-on of the nut added',
    'matter.link.adapter-setting': 'What to dial with this adapter on',
    'matter.link.hand-position': 'What holding it there does, with the doubt',
    'matter.link.pivot-offset': 'Where this wrench trips, from two pulls',
    'matter.link.end-fitting': 'What to dial with the other head',
    'matter.link.pull': 'How hard to pull',
    'matter.link.lubricant': 'What another state of the threads does',
    'matter.link.nut-factor': 'Your own nut factor, from measured runs',
    'matter.link.scale-check': 'Check the wrench with a scale',
    'matter.link.scale-plan': 'Plan the check: which forces to see',
    'matter.link.tolerance-band': 'What the tolerance means at this setting',
    'matter.link.wrench-check': 'Check the wrench against a reference',
    'matter.link.next-check': 'When the next check is due',
    'matter.link.compare': 'Two sets of readings, with it and without it: do they differ',
    'matter.link.prevailing': 'What the wrench must show on a locking nut',
    'matter.link.clamp-force': 'What clamp force a torque gives, by friction',
    'matter.link.multiplier': 'What to put in with a torque multiplier',
    'matter.link.extension-bar': 'How far a bar winds up, and what its squares carry',
    'matter.link.flex-head': 'What a tilted head delivers',
    'matter.link.swivel': 'What a bent swivel delivers',
  },
  cautions: {
    'wheels-again':
      'When to torque wheels again differs by source: from {first} to {last}, one names {minutes} minutes standing. The maker of the vehicle or the wheel decides.',
    'square-assumed':
      'No angle was given: square (90°) is assumed. If the adapter stands otherwise, say so; the other directions are listed.',
    'not-for-loosening': 'A torque wrench is for tightening: loosen with something else.',
    'local-rules':
      'On wheels, lifting gear, pressure and aircraft the law or the rules of the site may ask for more: who may do it, with which tool, and what is written down.',
    'one-way': 'Many click wrenches measure in one direction only: look before you use one on a left-hand thread.',
  },
  questions: { 'does-it-matter': 'Does it matter?' },
  topics: { 'does-it-matter': 'Does it matter? Bars, swivels, oil, a drop, a second click, a cheap wrench' },
  inputs: {
    topic: {
      label: 'Topic',
      ask: 'what it is about, in your own words',
      measure: 'Or the name of a topic from the list: bars, swivel, stored-wound-up.',
    },
  },
  results: {
    'does-it-matter.verdict': 'Does it matter',
    'what-to-do': 'What to do',
    mechanism: 'Why',
    'size-of-effect': 'How much',
    'rating-share': 'Share of the test torque',
    'share-of-most': 'Share of the highest mark',
    'full-scale-tolerance': 'Tolerance here, if it is of full scale',
  },
  faults: {
    'not-a-topic': {
      allowed: 'words that fit one topic, or its name',
      hint: 'No topic was found in that. Say it in other words, or type one of these: care: {care}; joint: {joint}; pull: {pull}; reach: {reach}; tool: {tool}.',
    },
    'several-topics': {
      allowed: 'one topic at a time',
      hint: 'That fits more than one topic: type {topics}.',
    },
  },
} as const
