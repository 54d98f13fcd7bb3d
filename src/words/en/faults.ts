// What is to be mended in what was asked: what is allowed, and what to type next.

export const faults = {
  'unit-missing': { allowed: '{kind}: {units}', hint: 'Say the unit: type {options}.' },
  'unit-unknown': { allowed: '{kind}: {units}', hint: 'That unit is not known here: type {options}.' },
  'adapters-unparted': {
    allowed: 'one adapter, or several with ; between them',
    hint: 'Put ; between adapters: 2 in; 3 in@45.',
  },
  'inches-unmarked': { allowed: 'feet and inches, both marked', hint: 'Mark the inches too: 1\' 2" or 1 ft 2 in.' },
  'unit-wrong-kind': { allowed: '{kind}: {units}', hint: 'That is another kind of quantity: type {options}.' },
  'pound-alone': {
    allowed: '{kind}: {units}',
    hint: 'A pound alone is a force or a mass, not a torque: type {options}.',
  },
  'unit-after-plain-number': { allowed: 'a plain number, no unit', hint: 'Leave out “{extra}”.' },
  'two-readings': {
    allowed: 'a number that can be read one way only',
    hint: 'This can be read two ways: type {readings}.',
  },
  'spec-holds-figure': {
    allowed: 'where the figure is found, without the figure',
    hint: 'Only where a figure is found is kept here, never the figure itself: leave out “{extra}”.',
  },
  'thousands-or-decimal': {
    allowed: 'a number that can be read one way only',
    hint: 'This can be read two ways, {readings}: type {options}.',
  },
  'words-around': {
    allowed: 'one value in digits with its unit, that no words around it change',
    hint: '“{typed}” is not one value as it stands. Say it as one value in digits with one unit, every choice, share or sum already made.',
  },
  'words-around-angle': {
    allowed: 'degrees from straight ahead of the wrench',
    hint: '“{typed}” may be another direction. Say the angle from straight ahead of the wrench: 0° straight, 90° square to the handle, 180° back along it.',
  },
  'words-around-hand': {
    allowed: 'a length from the centre of the drive',
    hint: '“{typed}” is not counted from the drive. Say how far the hand is from the centre of the drive, along the handle.',
  },
  'not-a-number': { allowed: '{kind}', hint: 'Begin with a number: type {options}.' },
  exponent: { allowed: '{kind}, no exponent', hint: 'Write the number out: 1000, not 1e3.' },
  'thousands-mark': {
    allowed: 'one decimal mark, no thousands mark',
    hint: 'Write the digits without a thousands mark: 1234.5.',
  },
  negative: { allowed: 'more than 0', hint: 'Leave out the minus sign, or look at what was meant.' },
  'adapter-negative': {
    allowed: 'a length above 0, with @angle for its direction',
    hint: 'An adapter that points back is written with @180: 2 in@180.',
  },
  empty: { allowed: 'a value', hint: 'Type a value, or leave the input out.' },
  trailing: { allowed: 'one value and nothing behind it', hint: 'Leave out “{extra}”.' },
  'unknown-input': { allowed: '{inputs}', hint: 'This question has no such input: use {inputs}.' },
  repeated: { allowed: 'one value', hint: 'Give this input once.' },
  'angle-twice': { allowed: 'the angle once', hint: 'The adapter has its angle behind @ already: leave out angle.' },
  'angle-with-chain': {
    allowed: 'length@angle for each adapter',
    hint: 'With several adapters write each angle behind its length: 2 in@0 + 3 in@45.',
  },
  'least-above-most': {
    allowed: 'less than {limit}',
    hint: 'The lowest mark lies below the highest: swap least and most, or look at their units.',
  },
  'pulls-do-not-fit': {
    allowed: 'two pulls at one setting that one wrench can give',
    hint: 'These two pulls do not fit one wrench (the other gave {at}): repeat both, at one setting.',
  },
  'hand-at-lever': {
    allowed: 'a hand well away from the lever’s mark',
    hint: 'With the hand where the lever is measured nothing can be told: pull near {half}.',
  },
  'pairs-uneven': {
    allowed: '{count} values, one for each torque',
    hint: 'Give as many clamp forces as torques, in the same order.',
  },
  'diameter-not-size': {
    allowed: 'size or diameter, not two that differ',
    hint: '{size} has another diameter: leave one of them out.',
  },
  'two-ratios': {
    allowed: 'one of torque-ratio and turns-ratio',
    hint: 'Give the ratio that is marked: torque-ratio holds the losses, turns-ratio does not.',
  },
  'ratio-holds-losses': {
    allowed: 'efficiency with turns-ratio only',
    hint: 'A torque ratio holds the losses already: leave out efficiency.',
  },
  'class-not-of-type': {
    allowed: '{options} for {type} tools',
    hint: 'There is no such class of {type} tools: look at iso-type and iso-class on the certificate.',
  },
  'readings-differ': {
    allowed: '{kind}, as all readings',
    hint: 'All readings, and the resolution, are of one kind: give each the same unit, or none.',
  },
  'point-without-colon': {
    allowed: 'setting: readings',
    hint: 'Write the setting, a colon, then what the reference showed: 100 N·m: 99.5; 101 N·m.',
  },
  'point-two-colons': {
    allowed: 'one colon a point',
    hint: 'Part the points with | or a new line: 40 N·m: 39.8; 40 N·m | 100 N·m: 99.5; 101 N·m.',
  },
  'point-empty': { allowed: 'setting: readings', hint: 'There is nothing between two |: leave one of them out.' },
  'point-without-setting': {
    allowed: 'setting: readings',
    hint: 'Write what the wrench says before the colon: 100 N·m: 99.5; 101 N·m.',
  },
  'point-without-readings': {
    allowed: 'setting: readings',
    hint: 'Write what the reference showed behind the colon: 100 N·m: 99.5; 101 N·m.',
  },
  'too-many-in-point': {
    allowed: 'at most {most} readings a point',
    hint: 'Give no more than {most} readings at one point.',
  },
  'no-such-day': { allowed: 'a day of the calendar', hint: 'There is no such day: that month ends with {last}.' },
  'year-out-of-range': { allowed: 'a year from {first} to {last}', hint: 'Look at the year: {first} to {last}.' },
  'not-whole': { allowed: 'a whole number', hint: 'Leave out the part behind the decimal mark.' },
  'interval-twice': { allowed: 'months once, uses once', hint: 'Give the months once and the uses once.' },
  'event-without-day': { allowed: '{event}@year-month-day', hint: 'Say when: {event}@2026-03-01.' },
  'event-one-day': {
    allowed: '{event}@year-month-day',
    hint: 'That is the matter of one day: {event}@2026-03-01. A span is for wound-up.',
  },
  'days-reversed': { allowed: 'the earlier day first', hint: 'Write the earlier day first, then the later.' },
  'not-a-text': { allowed: 'a text, or a list of texts', hint: 'Write it as a text with its unit: "120 N·m".' },
  'not-an-object': { allowed: 'a JSON object of inputs', hint: 'Send an object: {example}.' },
  'not-a-choice': { allowed: '{options}', hint: 'Type one of {options}.' },
  'not-a-size': { allowed: 'a thread size such as {options}', hint: 'Type the thread, not the head: {options}.' },
  'not-a-seat': { allowed: '{options}', hint: 'Type the seat as shape, outer x hole: {options}.' },
  'not-a-share': { allowed: '{options}', hint: 'Type a percentage and of what: {options}.' },
  'no-usual-pitch': {
    allowed: 'a size of the standard, or one with its pitch',
    hint: 'No usual pitch is known for this size: write it behind the diameter, M13x1.5.',
  },
  'class-not-for-size': {
    allowed: 'a class that the standard has for {size}',
    hint: 'The standard has no such class for {size}: look at size and class.',
  },
  'friction-twice': {
    allowed: 'one of condition, k, or mu-threads with mu-seat',
    hint: 'Say the friction in one way only.',
  },
  'seat-cannot-be': {
    allowed: 'an outer diameter larger than the hole; a cone of at most 180°; a ball larger than its ring',
    hint: 'Look at the seat: outer x hole, included angle, radius of the ball.',
  },
  'no-proof-load': {
    allowed: 'a share of yield',
    hint: '{class} has no proof load: type a share of yield, 75 % of yield.',
  },
  'thread-part-above-torque': {
    allowed: 'less than {limit}',
    hint: 'The part in the thread is less than the whole torque: look at both.',
  },
  'force-past-yield': {
    allowed: 'at most {limit}',
    hint: 'Past yield the formula does not hold: it stops at {limit}, {turn} from snug.',
  },
  'turn-or-force': { allowed: 'clamp-force or turn', hint: 'Give the one that is known: the other is worked out.' },
  'own-factors-and-where': {
    allowed: 'k-from and k-to, or where',
    hint: 'A nut factor is of thread and seat together: leave out where, or leave out k-from and k-to.',
  },
  'not-a-point': {
    allowed: 'what the wrench says, a colon, what the reference showed',
    hint: 'Type a point like {example}.',
  },
  'not-a-date': { allowed: 'a day of the calendar: year-month-day', hint: 'Type the day as 2026-03-01.' },
  'not-an-interval': { allowed: 'months, uses, or both', hint: 'Type 12 months, or 5000 uses.' },
  'not-an-event': { allowed: '{options}', hint: 'Type what happened and when: dropped@2026-03-01.' },
  'kinds-differ': {
    allowed: 'readings of one kind',
    hint: 'Both sets must be of one kind: give both in {unit}, or both as plain numbers.',
  },
  'mean-not-above-zero': {
    allowed: 'readings a with a mean above 0',
    hint: 'A difference in % needs a mean of a above 0.',
  },
  'too-few-readings': { allowed: 'at least two readings', hint: 'Give at least two readings of each.' },
  'not-a-unit': { allowed: '{options}', hint: 'Type one of {options}.' },
  'one-value-only': {
    allowed: 'one value',
    hint: 'A span is taken only where a torque is asked for: type one value.',
  },
  'span-reversed': { allowed: 'the lower end first', hint: 'Type the lower end first, then the higher.' },
  'too-many': { allowed: 'at most {most}', hint: 'Give no more than {most}.' },
  'too-few': { allowed: 'both ends, or a tolerance', hint: 'Type both ends: 90–110 N·m, or 100 ± 10 N·m.' },
  'too-long': { allowed: 'at most {most} characters', hint: 'Type the value alone.' },
  'above-limit': { allowed: 'at most {limit}', hint: 'Look at the number and its unit: at most {limit} is taken.' },
  'below-limit': { allowed: 'at least {limit}', hint: 'Look at the number and its unit: at least {limit} is taken.' },
  'pivot-and-type': {
    allowed: 'no pivot, or 0, with a wrench that senses at the drive ({type})',
    hint: 'Leave out the pivot or the kind of wrench: a wrench of this kind senses at its drive.',
  },
  'hand-inside-pivot': {
    allowed: 'a hand farther from the drive than {limit}',
    hint: 'A wrench of this kind may trip as far out as {limit}: pull farther out, or measure and type its pivot.',
  },
  'pivot-past-hand': {
    allowed: 'a pivot nearer the drive than {limit}',
    hint: 'The hand must pull farther out than the pivot: look at both lengths.',
  },
  'head-too-long': {
    allowed: 'a change of at most {limit}',
    hint: 'No head is so long: look at the sign, the number and its unit.',
  },
  'hinge-past-lever': {
    allowed: 'a hinge nearer the drive than {limit}',
    hint: 'The hinge lies between the drive and the hand: look at both lengths and their units.',
  },
  'hand-inside-any-pivot': {
    allowed: 'a hand farther from the drive than {limit}',
    hint: 'Some wrenches trip as far out as {limit}: pull farther out, or type its pivot or its kind (wrench-type).',
  },
  'head-past-lever': {
    allowed: 'a change of less than {limit}',
    hint: 'A head cannot be shorter by the whole lever: look at the lengths.',
  },
  'balance-past-pull': {
    allowed: 'about as far as the pull at most: {limit}',
    hint: 'A wrench balances between its drive and its grip: look at both lengths and their units.',
  },
  'weight-beats-pull': {
    allowed: 'more than {weight}',
    hint: "The wrench's own weight is more than this pull: look at the force, or hang the handle straight (lie: upright).",
  },
  'too-doubtful': {
    allowed: 'a reach whose slips change the torque by less than ±{limit}',
    hint: 'Do not do it this way: over so short a reach small slips of hand and rule decide over the torque, and no number can be given. Hold farther out, or turn or shorten the adapter.',
  },
  'pivot-decides': {
    allowed: 'a hand farther out, or a known pivot',
    hint: 'Do not do it this way: with the hand so near the drive it depends on where the wrench trips, by a factor of {apart}. Hold farther out, or give pivot.',
  },
  'not-a-tolerance': {
    allowed: '{options}',
    hint: 'Type a percentage, and of what if not of the reading: {options}.',
  },
  'behind-the-hand': {
    allowed: 'an adapter that ends ahead of the hand',
    hint: 'This adapter reaches back {reach}, to or past the hand at {held}: the pull would turn the fastener backwards. Use a shorter one or another direction.',
  },
  'angle-stage': {
    allowed: 'the torque alone',
    hint: 'Torque and turn are two stages: type the torque; no lever changes the turn.',
  },
} as const
