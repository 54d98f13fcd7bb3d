// By which names this desk may be written to. A name of the wide world can be pointed at the shop's own machine by whoever owns it,
// and a page of theirs is then, for a browser, a page of the desk's: so only numbers, names that nobody can own, and PUBLIC_URL's.

/** Names that no registry gives away: bare ones, and those kept for local networks. */
const local = /^[^.]+$|\.(?:local|lan|internal|home\.arpa|localhost|test)$/
const numbers = /^\d{1,3}(?:\.\d{1,3}){3}$|^\[[0-9a-f:.]+\]$/

const nameOf = (address: string): string | undefined =>
  URL.canParse(address) ? new URL(address).hostname.replace(/\.$/, '') : undefined

/** `host`: as it came with the request, with its port. */
export const isOwnHost = (host: string, publicUrl: string | undefined): boolean => {
  const name = nameOf(`http://${host}`)
  if (name === undefined || name === '') return false
  return numbers.test(name) || local.test(name) || (publicUrl !== undefined && name === nameOf(publicUrl))
}
