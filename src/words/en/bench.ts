// What people read of bench runs: what is asked for when one is kept, what may be said from its readings, its pages and commands.

import { benchSay } from './bench-say.ts'

export const bench = {
  inputs: {
    run: { ask: 'the tag of the run', measure: 'As it was begun: B-01.' },
    asked: { ask: 'what the run is to tell', measure: 'One question, in a sentence.' },
    conditions: {
      ask: 'what is changed, condition by condition',
      measure: 'The first is what the others are held against. A: dry | B: oiled',
    },
    same: { ask: 'what is held the same', measure: 'Each part behind a | or on its own line.' },
    size: { ask: 'the thread size', measure: 'M12, M12x1.5, 3/8-16.' },
    class: { ask: 'the class of the fastener', measure: 'On its head: 8.8, A2-70, SAE 5.' },
    diameter: { ask: 'the nominal diameter', measure: 'Where the size does not tell it.' },
    threads: { ask: 'how threads and seat are', measure: 'Where that is held the same: dry, oiled, waxed.' },
    seat: { ask: 'the seat', measure: 'flat 18 mm x 13 mm: outer, then hole.' },
    again: { ask: 'when it is to be measured again', measure: 'Months after the first day: 1; 3; 6 months.' },
    condition: { ask: 'under which condition', measure: 'By its name: A.' },
    torque: { ask: 'the torque that was delivered', measure: 'One or many: 99.5; 101; 100.2 N·m' },
    'clamp-force': { ask: 'the clamp force', measure: 'In the same order as the torques: 24.1; 25 kN' },
    angle: { ask: 'the angle turned', measure: 'In the same order: 42°; 44°' },
    'wrench-reading': { ask: 'what the wrench said', measure: 'In the same order: 100; 100 N·m' },
    reading: { ask: 'which readings of the run', measure: 'By the number before them, as the run shows them: 2.' },
    piece: { ask: 'which piece each was', measure: 'Where the same pieces are read again: 1; 2; 3' },
  },
  cautions: {
    'bench-factor':
      'K was measured here, {run} ({condition}): {k}, the next bolt between {low} and {high}, n = {n}, {days}, {size}. It speaks for these bolts, this seat and this hand alone.',
    'bench-other-size': 'That run was on {size}, not on the size that is asked: its K may be another.',
    'bench-matters':
      'Measured here, {run}: {b} against {a} {size} ({low} to {high}), which matters (±{margin}); n = {n}, {days}.',
    'bench-small':
      'Measured here, {run}: {b} against {a} {size} ({low} to {high}), too little to matter (±{margin}); n = {n}, {days}.',
    'bench-open':
      'Measured here, {run}: {b} against {a} {size} ({low} to {high}), which does not decide it (±{margin}); n = {n}, {days}.',
  },
  asking: {
    bench: {
      label: 'Bench run',
      ask: 'a finished bench run of this shop that gives the nut factor or a verdict',
      measure: 'Its tag, and the condition behind a space: B-01 A.',
    },
  },
  labels: {
    run: 'Run',
    asked: 'What is asked',
    conditions: 'Conditions',
    same: 'Held the same',
    size: 'Thread size',
    class: 'Class',
    diameter: 'Nominal diameter',
    threads: 'Threads and seat are',
    seat: 'Seat',
    again: 'Measured again after',
    condition: 'Condition',
    torque: 'Torque delivered',
    'clamp-force': 'Clamp force',
    angle: 'Angle turned',
    'wrench-reading': 'The wrench said',
    piece: 'Pieces',
  },
  kinds: { run: 'bench run', 'run-reading': 'readings of a run', 'run-finish': 'end of a run' },
  forms: { run: 'Begin a bench run', 'run-reading': 'Add readings', 'run-finish': 'Finish the run' },
  corrections: {
    run: 'Correct the run',
    'run-reading': 'Correct readings',
    'run-finish': 'Correct the end of the run',
  },
  faults: {
    'no-such-run': {
      allowed: 'the tag of a bench run',
      hint: 'No run has this tag: look at the tag, or begin the run.',
    },
    'no-such-condition': {
      allowed: '{options}',
      hint: 'This run has no condition of that name: take one of {options}, or correct the run.',
    },
    'no-such-reading': {
      allowed: '{options}',
      hint: 'These readings are not in the run: look at the run, and type the number before them.',
    },
    'not-a-condition': {
      allowed: 'a name, and behind a colon what it is',
      hint: 'Give the condition a short name: A: dry, as delivered.',
    },
    'conditions-alike': {
      allowed: 'a name for each condition',
      hint: 'Two conditions have the same name: rename one.',
    },
    'condition-in-use': {
      allowed: 'every condition that was read under',
      hint: 'There are readings under this condition: keep it, or take those readings back first.',
    },
    'not-months': { allowed: '1 to 120 months', hint: 'Type whole months: 1; 3; 6 months.' },
    'not-planned': {
      allowed: '{options}',
      hint: 'No such re-run is planned: leave it out for the run itself, or correct the plan of the run.',
    },
    'run-finished': {
      allowed: 'a run that is under way',
      hint: 'This run is finished: begin another, or take its end back first.',
    },
    'run-full': { allowed: 'at most {most} entries', hint: 'This run is full: finish it, and begin another.' },
    'run-in-use': { allowed: 'a run without readings', hint: 'There are readings under it: take those back first.' },
    'lists-uneven': {
      allowed: 'as many as there are under {other}: {count}',
      hint: 'Readings beside each other are of the same turn of the wrench: give each list one for every turn.',
    },
    'not-a-run-reference': {
      allowed: 'the tag of a bench run, and behind a space the condition: B-01 A',
      hint: 'Name the run by its tag, and the condition behind a space: B-01 A.',
    },
    'run-not-finished': {
      allowed: 'a run that is finished',
      hint: 'This run still goes on, and may say something else tomorrow: finish it, then name it.',
    },
    'which-condition': { allowed: '{options}', hint: 'This run has several conditions: say which, {options}.' },
    'run-without-factor': {
      allowed: 'a condition with two readings or more of torque and clamp force, and the thread size',
      hint: 'This run gives no nut factor there: leave the run out, or read torque and clamp force together.',
    },
    'run-without-verdict': {
      allowed: 'a run that was read twice or more under two conditions',
      hint: 'This run says nothing yet of one condition against another: leave it out.',
    },
    'run-too-doubtful': {
      allowed: 'a run whose next bolt is known to better than half',
      hint: 'Its readings leave K between {low} and {high}: that is no number to work with. Add readings, or leave the run out.',
    },
    'one-run-wanted': { allowed: 'one run', hint: 'Name one run and one condition: B-01 A.' },
    'two-runs-wanted': {
      allowed: 'two: what K is from, then what it is to',
      hint: 'Name what you come from and then what you go to: B-01 A; B-01 B.',
    },
    'no-bench': {
      allowed: 'a desk that keeps bench runs',
      hint: 'No bench runs can be looked at here: leave the run out, or ask at the desk of the shop.',
    },
  },
  states: { planned: 'planned', 'under-way': 'under way', finished: 'finished' },
  subjects: {
    clamp: 'clamp force',
    torque: 'torque',
    angle: 'angle',
    wrench: 'reading of the wrench',
    K: 'nut factor K',
  },
  say: benchSay,
  gaps: {
    'one-condition': 'there is one condition, and nothing to hold it against.',
    'too-few': '{condition} has fewer than two readings.',
    'baseline-not-above-0': 'the mean of {condition} is not above 0.',
    'no-line': '{condition} has too few readings for a line.',
    'no-diameter': 'the thread size was not told.',
  },
  page: {
    title: 'Bench runs',
    none: 'No bench run is kept yet.',
    begin: 'Begin a run',
    add: 'Add a reading',
    many: 'Add several',
    finish: 'Finish it',
    said: 'What it says',
    ahead: 'What it can see',
    held: 'Held the same',
    readings: 'Readings',
    again: 'Measured again',
    limits: 'How far it speaks',
    sheet: 'As a sheet',
    card: 'As a picture to share',
    data: 'As data',
    back: 'All runs',
    begun: 'begun {date}',
    cite: 'A question can name it: bench={tag}.',
    day: 'Day',
  },
  offers: {
    start: 'begin a bench run: what is asked, what is held the same, what is changed',
    add: 'add readings to a bench run',
    correct: 'correct readings of a bench run: the number before them, what they are, and why',
    'take-back': 'take readings of a bench run back: the number before them, and why',
    show: 'a bench run: its verdict so far, its readings, its picture',
    finish: 'finish a bench run',
    list: 'the bench runs, by their tags',
  },
  names: { correct: 'correct', 'take-back': 'take-back', start: 'start', finish: 'finish' },
  chat: {
    kept: '{run}: kept.',
    noSuchRun: 'No bench run has this tag: look at the list.',
  },
  terminal: {
    usage: 'npm run ask -- bench [start | add | correct | take-back | show | list | finish] input="value" …',
    kept: 'Kept {id}.',
  },
  problems: {
    'no-such-run': {
      title: 'No bench run of this tag is in the register',
      next: 'The bench runs stand on their own page.',
    },
  },
  digest: 'Bench runs to be measured again',
} as const
