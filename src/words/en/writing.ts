// What is said where something written cannot be kept as it came, at any door.

export const writing = {
  sentBefore:
    'This form was sent before with other content, and that was kept. If this is to be kept too, send it again.',
  carried: 'What you typed is still here. Sign in, look at it again, and send it.',
} as const
