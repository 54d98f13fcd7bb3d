// What a page says where there is no page: what is the matter, and what to do next.

export const problems = {
  'not-found': { title: 'There is nothing here', next: 'Begin again at the start page, or look at the board.' },
  'unknown-question': { title: 'There is no such question', next: 'All questions stand on the start page.' },
  'no-such-wrench': {
    title: 'No wrench of this tag is in the register',
    next: 'Look at the tag on the wrench, and pick it on the board.',
  },
  'no-such-check': { title: 'There is no such check', next: 'The checks of a wrench stand on its page.' },
  'not-readable': {
    title: 'This cannot be read',
    next: 'Nothing was kept. Begin again at the start page.',
  },
  'too-large': { title: 'That is too much at once', next: 'Nothing was kept. Go back and send less.' },
  'too-many': { title: 'Too many questions in a short time', next: 'Wait ten seconds and ask again.' },
  'register-away': {
    title: 'The register cannot be reached just now',
    next: 'Questions are answered all the same: type the lever of the wrench. Or try again in a moment.',
  },
  outage: {
    title: 'Something here failed, not your question',
    next: 'Try again in a moment. Nothing that was acknowledged is lost.',
  },
  reference: 'Reference for those who look after this desk:',
  again: 'Try again',
  start: 'To the start page',
} as const
