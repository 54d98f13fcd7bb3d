// The direction of an adapter by touching a drawing: the handle to the left, straight ahead to the right, + up, as in the
// figures. Steps of 15 degrees by touch, of 1 by keys.
import { find, type } from './page.ts'
import { wantsLength, withAngle } from './typing.ts'

const STEP = 15
const MIDDLE = 150
const REACH = 110

let field: HTMLInputElement | undefined
let degrees = 0

const draw = (): void => {
  const arm = find<SVGLineElement>('#angle-arm')
  const nut = find<SVGCircleElement>('#angle-nut')
  const told = find('#angle-told')
  const turn = (degrees * Math.PI) / 180
  const [x, y] = [MIDDLE + REACH * Math.cos(turn), MIDDLE - REACH * Math.sin(turn)]
  arm?.setAttribute('x2', x.toFixed(1))
  arm?.setAttribute('y2', y.toFixed(1))
  nut?.setAttribute('cx', x.toFixed(1))
  nut?.setAttribute('cy', y.toFixed(1))
  if (told) told.textContent = `${degrees}°`.replace('-', '−')
}

const set = (next: number): void => {
  degrees = next > 180 ? next - 360 : next < -180 ? next + 360 : next
  draw()
}

/** A direction without a length is no value yet: it stands in the field, and nothing is asked until more is typed. */
const take = (into: HTMLInputElement): void => {
  const text = into.dataset['keys'] === '°' ? String(degrees) : withAngle(into.value, degrees)
  if (wantsLength(text)) into.value = text
  else type(into, text)
}

export const openAngle = (next: HTMLInputElement): void => {
  field = next
  const own =
    next.dataset['keys'] === '°'
      ? Number.parseFloat(next.value)
      : Number.parseFloat(/@\s*(-?\d+)/.exec(next.value)?.[1] ?? '0')
  set(Number.isFinite(own) ? Math.round(own) : 0)
  find<HTMLDialogElement>('#angle')?.showModal()
}

export const watchAngle = (): void => {
  const dialog = find<HTMLDialogElement>('#angle')
  const drawing = find<SVGSVGElement>('#angle-drawing')
  if (!dialog || !drawing) return
  const touch = (event: PointerEvent): void => {
    const box = drawing.getBoundingClientRect()
    const scale = (2 * MIDDLE) / box.width
    const x = (event.clientX - box.left) * scale - MIDDLE
    const y = MIDDLE - (event.clientY - box.top) * scale
    if (Math.hypot(x, y) < 15) return
    set(Math.round((Math.atan2(y, x) * 180) / Math.PI / STEP) * STEP)
  }
  drawing.addEventListener('pointerdown', (event) => {
    drawing.setPointerCapture(event.pointerId)
    touch(event)
  })
  drawing.addEventListener('pointermove', (event) => {
    if (drawing.hasPointerCapture(event.pointerId)) touch(event)
  })
  dialog.addEventListener('click', ({ target }) => {
    const button = (target as HTMLElement).closest('button')
    const by = button?.dataset['by']
    const to = button?.dataset['to']
    if (by !== undefined) set(degrees + Number(by))
    if (to !== undefined) set(Number(to))
    if (button?.dataset['does'] === 'take' && field) {
      take(field)
      dialog.close()
      field.focus()
    }
    if (button?.dataset['does'] === 'leave') dialog.close()
  })
  for (const opener of document.querySelectorAll<HTMLButtonElement>('button[data-opens-angle]')) {
    opener.hidden = false
    opener.addEventListener('click', () => {
      const target = find<HTMLInputElement>(`#${CSS.escape(opener.dataset['opensAngle'] ?? '')}`)
      if (target) openAngle(target)
    })
  }
}
