// What the script shows when a field is touched: the keypad, the drawing on which the direction of an adapter is touched, and the
// line that leads to an answer below the edge of the screen. Hidden, and of no use, without it.
import { styleFor, type Words } from '../../../words/index.ts'

// Point and comma are both read; the key bears the mark of the reader's own language.
const digitsFor = (decimal: '.' | ','): readonly string[] => [...'789456123', decimal, '0']

export const Keypad = ({ words: { kiosk }, words }: { words: Words }) => (
  <section id="keypad" hidden aria-label={kiosk.keypad}>
    <div class="pad-told">
      <p>
        <span id="keypad-label" /> <output id="keypad-echo" /> <span id="keypad-read" aria-hidden="true" />
      </p>
      <p id="keypad-headline" aria-hidden="true" data-length={kiosk.nowLength} />
    </div>
    <div class="pad">
      <div class="digits">
        {digitsFor(styleFor(words).decimal).map((digit) => (
          <button type="button" class="digit" key={digit} data-types={digit}>
            {digit}
          </button>
        ))}
        <button type="button" data-does="back" aria-label={kiosk.erase}>
          ⌫
        </button>
      </div>
      <div id="keypad-units" />
      <div id="keypad-marks">
        <button type="button" id="keypad-angle" data-does="angle">
          {kiosk.byAngle}
        </button>
      </div>
      <div class="does">
        <button type="button" data-does="clear">
          {kiosk.clear}
        </button>
        <button type="button" data-does="close">
          {kiosk.close}
        </button>
        <button type="button" data-does="next" class="strong">
          {kiosk.next}
        </button>
      </div>
    </div>
    <div id="keypad-fractions" />
    <details id="keypad-no-unit">
      <summary>?</summary>
      <p>{kiosk.noUnit}</p>
    </details>
  </section>
)

/** Stands at the lower edge while the answer is below it and no keys are open. */
export const AnswerLine = () => (
  <a id="to-answer" href="#answer" hidden>
    ▾
  </a>
)

const STEPS = [-15, -1, 1, 15] as const
// None where the handle lies.
const WAYS = [0, 45, 90, 135, -45, -90, -135] as const

export const AngleDialog = ({ words: { kiosk } }: { words: Words }) => (
  <dialog id="angle" aria-labelledby="angle-title">
    <h2 id="angle-title">{kiosk.angleTitle}</h2>
    <p>{kiosk.angleHelp}</p>
    <div class="angle">
      <svg id="angle-drawing" viewBox="0 0 300 300" role="img" aria-label={kiosk.angleTitle}>
        <circle cx="150" cy="150" r="110" class="ring" />
        {WAYS.map((way) => {
          const turn = (way * Math.PI) / 180
          return (
            <text
              key={way}
              x={(150 + 134 * Math.cos(turn)).toFixed(0)}
              y={(156 - 134 * Math.sin(turn)).toFixed(0)}
              text-anchor="middle"
            >
              {`${way}°`.replace('-', '−')}
            </text>
          )
        })}
        <rect x="4" y="136" width="140" height="28" rx="12" class="handle" />
        <path d="M24 130V72M10 92L24 66L38 92" class="pulled" />
        <line id="angle-arm" x1="150" y1="150" x2="260" y2="150" class="arm" />
        <circle cx="150" cy="150" r="16" class="drive" />
        <circle id="angle-nut" cx="260" cy="150" r="18" class="nut" />
      </svg>
      <div>
        <p class="echo" id="angle-told" role="status">
          0°
        </p>
        <div class="steps">
          {STEPS.map((by) => (
            <button type="button" key={by} data-by={by}>
              {by > 0 ? `+${by}°` : `−${-by}°`}
            </button>
          ))}
        </div>
        <div class="steps">
          <button type="button" data-to="0">
            {kiosk.straight}
          </button>
          <button type="button" data-to="90">
            {kiosk.square}
          </button>
          <button type="button" data-to="180">
            {kiosk.back}
          </button>
        </div>
        <div class="actions">
          <button type="button" data-does="take" class="strong">
            {kiosk.take}
          </button>
          <button type="button" data-does="leave">
            {kiosk.leave}
          </button>
        </div>
      </div>
    </div>
  </dialog>
)
