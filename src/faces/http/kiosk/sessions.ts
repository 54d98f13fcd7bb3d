// Who is signed in at a kiosk: a random id in a cookie, a token in every form, gone after five idle minutes. In memory: a restart
// signs everybody out. The clock and the ids are handed in.

export interface Session {
  readonly id: string
  /** Stands in every form; a page of somebody else's cannot know it. */
  readonly token: string
}

export interface Sessions {
  readonly open: () => Session
  /** The session of a Cookie header, and a sign of life for it. */
  readonly of: (cookie: string | undefined) => Session | undefined
  readonly close: (session: Session) => void
}

export const IDLE_MS = 300_000
const MOST_SESSIONS = 50
const NAME = 'desk'

export const createSessions = (now: () => number, id: () => string): Sessions => {
  const alive = new Map<string, { readonly session: Session; readonly seen: number }>()
  const find = (key: string): Session | undefined => {
    const found = alive.get(key)
    if (!found) return undefined
    alive.delete(key)
    // A clock that was set back says nothing of how long nobody was there.
    const idle = now() - found.seen
    if (idle >= IDLE_MS || idle < 0) return undefined
    alive.set(key, { session: found.session, seen: now() })
    return found.session
  }
  return {
    open: () => {
      const session = { id: id(), token: id() }
      alive.set(session.id, { session, seen: now() })
      // Only a right PIN opens one: the longest idle gives way.
      for (const oldest of alive.keys()) {
        if (alive.size <= MOST_SESSIONS) break
        alive.delete(oldest)
      }
      return session
    },
    of: (cookie) => {
      const [, key] = new RegExp(`(?:^|;\\s*)${NAME}=([\\w-]{1,64})(?:;|$)`).exec(cookie ?? '') ?? []
      return key === undefined ? undefined : find(key)
    },
    close: ({ id: key }) => void alive.delete(key),
  }
}

/** The cookie of a session; without one, the cookie that takes it away. */
export const sessionCookie = (session: Session | undefined, isSecure: boolean): string =>
  [
    `${NAME}=${session?.id ?? ''}`,
    'Path=/',
    'HttpOnly',
    'SameSite=Strict',
    ...(session ? [] : ['Max-Age=0']),
    ...(isSecure ? ['Secure'] : []),
  ].join('; ')
