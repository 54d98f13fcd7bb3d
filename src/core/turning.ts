// Marks that turn the direction of writing round. Behind one of them in a name, the numbers of a page are seen backwards: 120 as 021.
// None is taken any more; what was kept with one is shown without.

const turning = /[\u202A-\u202E\u2066-\u2069]/g

export const unturned = (text: string): string => text.replace(turning, '')
