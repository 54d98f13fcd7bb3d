// What a migration is: a number, what it brings, and its statements in both dialects. Written once, never changed afterwards.

export interface Migration {
  readonly number: number
  readonly brings: string
  readonly sqlite: readonly string[]
  readonly postgres: readonly string[]
}
