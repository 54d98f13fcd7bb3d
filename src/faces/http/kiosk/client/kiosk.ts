// The script of the kiosk's pages. Every page works without it; with it the answer follows each key, and a screen that is
// shared looks after itself. It asks nothing but the shop's own server.
import { watchAngle } from './angle.ts'
import { watchAnswerLine } from './answer-line.ts'
import { watchDays } from './days.ts'
import { watchIdle } from './idle.ts'
import { watchKeypad } from './keypad.ts'
import { watchLine } from './line.ts'
import { watchLive } from './live.ts'
import { offerRecent } from './recent.ts'
import { resumeCheck } from './resume.ts'
import { watchScreen } from './screen.ts'

const line = watchLine()
watchLive(line)
watchKeypad()
watchAnswerLine()
watchAngle()
offerRecent()
watchIdle()
watchDays()
watchScreen()
resumeCheck()
document.documentElement.classList.add('with-script')
