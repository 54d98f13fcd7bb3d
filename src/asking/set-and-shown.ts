// Of the torques of a check, which was set on the wrench and which a reference showed. Taken the wrong way round, a wrench that
// delivers too little is told to deliver too much: so where the words do not tell, nothing is taken.
import type { CueTag } from './cues.ts'
import type { Piece } from './pieces.ts'
import type { Placed, Scene } from './scene.ts'
import type { Torque } from './torques.ts'

const word = (piece: Piece | undefined): string => (piece?.kind === 'word' ? piece.text : '')

const little = new Set([
  'only',
  'just',
  'about',
  'around',
  'at',
  'me',
  'us',
  'up',
  'in',
  'out',
  'to',
  'a',
  'an',
  'the',
  'of',
  'is',
  'was',
  'as',
])
const showing = new Set(
  'got gave get gives give read reads reading readings showed shows show shown peaked saw sees measured measures came comes delivered delivers says said indicated indicates registered result tested actual'.split(
    ' ',
  ),
)
const told = new Set('read reads reading peaked peaks showed shows show says said indicated indicates'.split(' '))
const setting = new Set(
  'set sets setting dialled dialed dial nominal target point adjusted check checks checked checking test testing'.split(
    ' ',
  ),
)
const measured = new Set(['measured', 'read', 'shown', 'actual', 'delivered'])
const clicking = new Set('click clicks clicked trips tripped pops popped released releases'.split(' '))
const ofWrench = new Set('wrench dial clicker spanner pointer scale micrometer handle tool'.split(' '))
const between = new Set(
  'at when with while for on the a an my its it is was i we you wrench clicker set to of setting and dialled dialed'.split(
    ' ',
  ),
)
const joining = new Set(['at', 'when', 'with', 'while', 'for'])

const LONGEST = 5

/** What stands right before: the place of the first piece that says something. */
const before = (scene: Scene, { at }: Placed): number => {
  let here = at - 1
  for (let away = 0; away < LONGEST; away++, here--) {
    const piece = scene.pieces[here]
    const isNothing = piece?.kind === 'word' ? little.has(piece.text) : piece?.kind === 'mark' && piece.text === ':'
    if (!isNothing) break
  }
  return here
}

const endsWith = (scene: Scene, at: number, tag: CueTag): boolean =>
  scene.cuesBefore(at + 1).some((cue) => cue.tag === tag)

/** `wrench said 60`: its own scale, not what a reference showed; what it gives or delivers is shown by a reference. */
const isOwn = (scene: Scene, verb: number): boolean =>
  told.has(word(scene.pieces[verb])) &&
  [1, 2].some((back) => ofWrench.has(word(scene.pieces[verb - back])) && !endsWith(scene, verb - 1, 'tester'))

/** `58 Nm at a 60 Nm setting`, `97 Nm with the wrench set at 100 Nm`: from the one straight to the other. */
const leadsTo = (scene: Scene, one: Placed, other: Placed): boolean => {
  const way = scene.pieces.slice(one.at + 1, other.at)
  const isShort = way.length > 0 && way.length <= 7
  return (
    isShort &&
    way.every((piece) =>
      piece.kind === 'word' ? between.has(piece.text) : piece.kind === 'mark' && piece.text === '@',
    ) &&
    way.some(
      (piece) => (piece.kind === 'word' && joining.has(piece.text)) || (piece.kind === 'mark' && piece.text === '@'),
    )
  )
}

/** `57 Nm on the tester`. */
const isOnTester = (scene: Scene, { at }: Placed): boolean => {
  if (!['on', 'by', 'from', 'at'].includes(word(scene.pieces[at + 1]))) return false
  return [2, 3].some((ahead) => scene.cuesAt(at + ahead).some(({ tag }) => tag === 'tester'))
}

/** Above 0 what was set, below 0 what was shown. */
const weight = (scene: Scene, one: Torque, all: readonly Torque[]): number => {
  if (all.some((other) => other !== one && leadsTo(scene, other, one))) return 4
  const here = before(scene, one)
  const text = word(scene.pieces[here])
  let sum = 0
  if (endsWith(scene, here, 'tester')) sum -= 2
  else if (setting.has(text)) sum += 3
  else if (showing.has(text)) sum += isOwn(scene, here) ? 3 : -2
  else if (clicking.has(text)) sum += 1
  else if (ofWrench.has(text)) sum += 2
  else if (word(scene.pieces[one.at - 1]) === 'at') sum += 1
  const behind = word(scene.pieces[one.at + 1])
  if (setting.has(behind)) sum += 2
  if (measured.has(behind)) sum -= 2
  if (isOnTester(scene, one)) sum -= 2
  return all.some((other) => other !== one && leadsTo(scene, one, other)) ? sum - 4 : sum
}

const weighed = (scene: Scene, torques: readonly Torque[]) =>
  torques
    .map((torque) => ({ torque, weight: weight(scene, torque, torques) }))
    .sort((one, other) => other.weight - one.weight)

/** Whether a row of torques is what was set, and another one behind or before it what was shown at each. */
export const isRowSet = (scene: Scene, row: readonly Torque[]): boolean => {
  const [first, last] = [row[0], row.at(-1)]
  if (!first || !last) return false
  const [mark, verb] = [scene.pieces[last.at + 1], word(scene.pieces[last.at + 1])]
  const leads = before(scene, first)
  return (
    (mark?.kind === 'mark' && mark.text === ':') ||
    showing.has(verb) ||
    setting.has(word(scene.pieces[leads])) ||
    (word(scene.pieces[first.at - 1]) === 'at' && !endsWith(scene, leads, 'tester'))
  )
}

/** What was set, where one of them plainly was. */
export const settingOf = (scene: Scene, torques: readonly Torque[]): Torque | undefined => {
  const [first, second] = weighed(scene, torques)
  return first && (!second || first.weight > second.weight) ? first.torque : undefined
}

/** No tester shows more or less beside a wrench that clicks. */
const ALIKE = 0.3

/** Two torques near each other, the one set and the other shown, each in so many words. */
export const isSetAndShown = (scene: Scene, torques: readonly Torque[]): boolean => {
  const [set, shown, ...more] = weighed(
    scene,
    torques.filter(({ role }) => role !== 'range'),
  )
  if (!set || !shown || more.length > 0 || set.torque.unit !== shown.torque.unit) return false
  const isNear = Math.abs(shown.torque.measure.value / set.torque.measure.value - 1) < ALIKE
  return isNear && set.weight >= 2 && shown.weight <= -2
}
