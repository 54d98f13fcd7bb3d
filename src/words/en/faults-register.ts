// What is to be mended in what should be kept, or read from a sheet.

export const faultsRegister = {
  'sheet-unreadable': {
    allowed: 'comma-separated values (RFC 4180) in UTF-8',
    hint: 'Look at the quotes of this line: a quote inside a cell is written twice, and every one that opens closes.',
  },
  'sheet-column': {
    allowed: '{options}',
    hint: 'No column has this name: rename it in the first line, or take it out.',
  },
  'sheet-column-twice': {
    allowed: 'each column once',
    hint: 'This column is there twice: take one out.',
  },
  'sheet-empty': {
    allowed: 'a first line with the names of the columns, and a line for each entry',
    hint: 'There is nothing to read in: a sheet of wrenches begins with tag,name,wrench-type,most.',
  },
  'sheet-too-long': {
    allowed: 'at most {most} rows',
    hint: 'Send it in parts; what was read in already is known and left alone.',
  },
  'sheet-cells': {
    allowed: 'at most {most} cells',
    hint: 'This line has more cells than there are columns: put a text that holds the separator in quotes.',
  },
  'sheet-missing': {
    allowed: 'a filled cell',
    hint: 'This is needed: fill the cell, or add the column.',
  },
  'sheet-head': {
    allowed: 'id, at, role and door as an export writes them',
    hint: 'Leave id, at, role and door out for entries of your own; they belong to an export.',
  },
  'key-taken': {
    allowed: 'a new Idempotency-Key for a new entry',
    hint: 'This key was used for another entry: send a new one.',
  },
  'others-write': {
    allowed: 'one writer at a time',
    hint: 'Others are writing of this wrench: look at it again, and send it once more.',
  },
  'no-register-here': {
    allowed: 'a desk with a register of wrenches',
    hint: 'This is answered from a register of wrenches, and none can be looked at here: ask at the desk of the shop.',
  },
  'no-register': {
    allowed: 'a wrench of a register that is kept here',
    hint: 'No register is kept here: leave the wrench out and give its lever yourself.',
  },
  'wrench-not-here': {
    allowed: 'the tag of a wrench in the register',
    hint: 'No wrench of this tag is in the register: look at the tag, or leave it out and give the lever yourself.',
  },
  'not-a-tag': {
    allowed: 'letters, digits, ., - and _, at most {most}',
    hint: 'A tag begins with a letter or a digit and holds no space: W-07.',
  },
  'not-a-temperature': { allowed: '{options}', hint: 'Type degrees with their unit: {options}.' },
  'readings-not-of-way': {
    allowed: 'a force for hang and pull, a torque for tester and laboratory',
    hint: 'What was read does not go with {way}: look at the unit behind the readings, or at the way.',
  },
  'distance-not-of-way': {
    allowed: 'with hang and pull only',
    hint: 'With {way} the torque is read at once: leave the distance out, or look at the way.',
  },
  'units-differ': {
    allowed: 'one unit for all readings of a point',
    hint: 'Give every reading of a point one unit.',
  },
  'most-not-of-gauge': {
    allowed: 'most-torque for a torque-tester, most-force for the others',
    hint: 'A {type} does not read that: look at gauge-type, or use the other input.',
  },
  'no-such-wrench': {
    allowed: 'the tag of a wrench in the register',
    hint: 'Look at the tag, or add the wrench first.',
  },
  'no-such-gauge': {
    allowed: 'the tag of a gauge in the register',
    hint: 'Look at the tag, or add the gauge first.',
  },
  'no-such-entry': { allowed: 'an entry of the record', hint: 'Look up the entry again and correct that one.' },
  'tag-taken': { allowed: 'a tag that is free', hint: 'Take another tag, or correct the card that holds this one.' },
  'tag-fixed': { allowed: '{tag}', hint: 'A tag stays with its wrench or gauge: add a new card for a new tag.' },
  'superseded-already': {
    allowed: 'an entry that still stands',
    hint: 'Someone was faster: look at what stands now, and correct that.',
  },
  'entry-of-other-kind': {
    allowed: 'an entry of the same kind',
    hint: 'That entry is of another kind ({event}): withdraw it and add the right one.',
  },
  'card-in-use': {
    allowed: 'a card without a history',
    hint: 'There are checks or events under it: retire the wrench, or correct its card.',
  },
  'wrench-retired': { allowed: 'a wrench in service', hint: 'It was retired: withdraw that first if it came back.' },
  'event-without-setting': {
    allowed: 'with wound-up only',
    hint: 'Only of a wrench left wound up is the setting kept; of {event} leave it out.',
  },
  'why-missing': {
    allowed: 'a reason in a few words',
    hint: 'Say why: the old entry stays in the record beside it.',
  },
  'day-ahead': { allowed: 'up to {date}', hint: 'That day is still to come: look at the year and the month.' },
} as const
