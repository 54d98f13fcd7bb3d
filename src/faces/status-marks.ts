// A shape for each status of a wrench, the same at every door; said in words beside it, never by colour alone.
import type { Status } from '../register/status-rules.ts'

export const marks: Readonly<Record<Status, string>> = {
  'in-service': '●',
  'check-due': '◐',
  'check-before-use': '▲',
  'out-of-limit': '✕',
  'set-aside': '○',
  retired: '–',
}
