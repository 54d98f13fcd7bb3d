// How strongly a text is about something: points for what it has; below the least nothing is taken to be asked.

export const LEAST = 4

export const when = (true_: boolean, weight: number): number => (true_ ? weight : 0)
