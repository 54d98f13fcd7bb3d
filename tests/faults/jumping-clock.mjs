// Loaded before the program: its clock jumps where it is told to by a signal, a year ahead, a year back behind today, and right again.
const YEAR = 365 * 86_400_000
const jumps = [YEAR, -YEAR, 0]
let shift = 0
const RealDate = Date
const now = () => RealDate.now() + shift
globalThis.Date = class extends RealDate {
  constructor(...parts) {
    if (parts.length === 0) super(now())
    else super(...parts)
  }
  static now() {
    return now()
  }
}
process.on('SIGWINCH', () => {
  shift = jumps.shift() ?? 0
  process.stderr.write(`the clock shows ${new Date().toISOString()}\n`)
})
