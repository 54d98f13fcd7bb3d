// The way to a PostgreSQL server: few connections, each bounded in time, so that a lost server is said within two seconds; the
// pool makes new ones when it is back.
import pg from 'pg'

/** Our tables have a schema of their own, so that a database may hold other things. */
export const SCHEMA = 'armlength'

const CONNECT_MS = 2000
/** Waiting for somebody else's writes. */
const LOCK_MS = 1500
/** At the server, and a little later here, should the server be gone. */
const STATEMENT_MS = 1800
const ANSWER_MS = 2000
const MOST_CONNECTIONS = 4
const IDLE_MS = 30_000

const INT8 = 20
const JSON_TEXT = 114

// Places stay far below 2^53; JSON is read by us, as it is in the other store.
const types = {
  getTypeParser: (oid: number, format?: 'text' | 'binary') => {
    if (oid === INT8) return Number
    if (oid === JSON_TEXT) return (text: string): string => text
    return pg.types.getTypeParser(oid, format)
  },
} as pg.CustomTypesConfig

const begin = (client: pg.ClientBase): Promise<unknown> =>
  client.query(`set search_path = ${SCHEMA}; set lock_timeout = ${LOCK_MS}; set statement_timeout = ${STATEMENT_MS}`)

/** `lost` is told of connections that broke while nobody used them; they are replaced when they are needed. */
export const openPool = (url: string, lost: (error: Error) => void): pg.Pool => {
  const pool = new pg.Pool({
    connectionString: url,
    max: MOST_CONNECTIONS,
    connectionTimeoutMillis: CONNECT_MS,
    query_timeout: ANSWER_MS,
    idleTimeoutMillis: IDLE_MS,
    keepAlive: true,
    application_name: 'armlength',
    types,
    onConnect: async (client: pg.ClientBase) => void (await begin(client)),
  })
  pool.on('error', lost)
  return pool
}

/** One connection without a bound on its statements, for migrations: they may have much to move. */
export const openForMigrating = (url: string): pg.Client => {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: CONNECT_MS, types })
  // A connection that breaks also fails the statement that runs on it; without a listener it would end the process.
  client.on('error', () => undefined)
  return client
}
