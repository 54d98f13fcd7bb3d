// The weekly digest, and the settings of a server in chat.

export const digest = {
  title: 'The wrenches this week, {date}',
  quiet: 'Nothing needs doing: no wrench is out of limit, overdue or due within two weeks.',
  parts: {
    'out-of-limit': 'Out of limit, not to be used',
    'check-before-use': 'To be checked before use',
    overdue: 'Check overdue',
    soon: 'Due within two weeks',
    'set-aside': 'Lent or lost',
  },
  since: 'since {date}',
  due: '{date}',
  settings: {
    channel: 'the channel for the digest, Mondays at seven',
    none: 'The weekly digest goes nowhere.',
    goes: 'The weekly digest goes to <#{channel}>, Mondays at seven by the clock of the shop.',
  },
} as const
