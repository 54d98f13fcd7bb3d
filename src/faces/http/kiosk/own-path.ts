// Where a page may lead on to: a path of this desk, whatever an address or a form says. What a browser could take for another
// host, and what no header may hold, leads to the start.

// No second slash or backslash behind the first, and only what stands in an address as it is sent.
const own = /^\/(?![/\\])[\x21-\x7e]{0,4000}$/

export const ownPath = (text: string | undefined): string => (text !== undefined && own.test(text) ? text : '/')
