// What of an error goes into the log: what it is, says and where it arose. Whatever else hangs on one (the address of a request with
// its token, the body that was sent, the URL with a password in it) stays out.

export interface LoggedError {
  readonly type: string
  readonly message: string
  readonly code?: string | number
  readonly status?: number
  readonly stack?: string
  readonly cause?: LoggedError
}

const MOST_CAUSES = 4
const LONGEST = 4000

// Passwords in a URL, and the tokens by which an interaction is answered, wherever a library may put them into words.
const blanked = (text: string): string =>
  text
    .replace(/(:\/\/[^\s:/@]*):[^\s/@]*@/g, '$1:…@')
    .replace(/(\/(?:interactions|webhooks)\/\d+)\/[^\s/?]+/g, '$1/…')
    .slice(0, LONGEST)

const codeOf = (code: unknown): { readonly code?: string | number } =>
  typeof code === 'string' || typeof code === 'number' ? { code } : {}

export const errorForLog = (error: unknown, depth = 0): LoggedError => {
  if (!(error instanceof Error)) return { type: typeof error, message: blanked(String(error)) }
  const { name, message, stack, cause, code, status } = error as Error & { code?: unknown; status?: unknown }
  return {
    type: name,
    message: blanked(message),
    ...codeOf(code),
    ...(typeof status === 'number' ? { status } : {}),
    ...(stack === undefined ? {} : { stack: blanked(stack) }),
    ...(cause === undefined || depth >= MOST_CAUSES ? {} : { cause: errorForLog(cause, depth + 1) }),
  }
}
