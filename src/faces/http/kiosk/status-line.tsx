// The status of a wrench in words and by a mark of its own, never by colour alone.
import type { ListedRow } from '../../../register/fleet.ts'
import { hangs } from '../../../register/status-rules.ts'
import { marks } from '../../status-marks.ts'
import type { PageParts } from './shell.tsx'

export const StatusLine = ({ row, language: { words } }: { row: ListedRow; language: PageParts['language'] }) => {
  const { status, reasons, due } = row.status
  // Of one that is gone nobody needs to know when its check would be due.
  const told = hangs(status) ? reasons : reasons.slice(0, 1)
  const inDoubt = status === 'in-service' && reasons.some(({ code }) => code === 'passed-in-doubt')
  return (
    <p class={`status ${status}`}>
      <span aria-hidden="true">{marks[status]}</span> <strong>{words.register.statuses[status]}</strong>{' '}
      {told.map(({ code, date }) => `${date}: ${words.register.reasons[code]}`).join(' ')}
      {inDoubt && ` ${words.register.inDoubt}`}
      {due && (status === 'in-service' || status === 'check-due') && ` ${words.register.due}: ${due.on}.`}
    </p>
  )
}
