// What is said where something written cannot be kept as it came, at any door.

export const writing = {
  faults: {
    'sheet-twice': {
      allowed: 'each row once',
      hint: 'Line {line} says the same: take one of the two out, or give each a key of its own where both are meant.',
    },
    'sheet-not-utf8': {
      allowed: 'UTF-8',
      hint: 'Save the sheet as UTF-8 and send it again: letters of it would be lost.',
    },
    'text-hidden': {
      allowed: 'what can be seen and printed',
      hint: 'There is a sign in it that nobody can see: type it again by hand.',
    },
    'text-one-line': { allowed: 'one line', hint: 'Put it on one line.' },
  },
  sentBefore:
    'This form was sent before with other content, and that was kept. If this is to be kept too, send it again.',
  carried: 'What you typed is still here. Sign in, look at it again, and send it.',
} as const
