// The status of a wrench in words and by a mark of its own, never by colour alone.
import type { ListedRow } from '../../../register/fleet.ts'
import { marks } from '../../status-marks.ts'
import type { PageParts } from './shell.tsx'

export const StatusLine = ({ row, language: { words } }: { row: ListedRow; language: PageParts['language'] }) => {
  const { status, reasons, due } = row.status
  return (
    <p class={`status ${status}`}>
      <span aria-hidden="true">{marks[status]}</span> <strong>{words.register.statuses[status]}</strong>{' '}
      {reasons.map(({ code, date }) => `${words.register.reasons[code]} (${date})`).join(' ')}
      {due && (status === 'in-service' || status === 'check-due') && ` ${words.register.due}: ${due.on}.`}
    </p>
  )
}
