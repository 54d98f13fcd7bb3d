// States of threads, and which way an adapter points. Phrases are folded, singular, parted by |; the name is what an input takes.
import type { Condition } from '../../tables/conditions.ts'

/** Lubricants that are named, by the condition that they are. */
export const states: Readonly<Record<Condition, string>> = {
  dry: 'dry|dry thread|dry threads|clean and dry|unlubricated|not lubricated|no lube|no lubricant|no oil|without lube|without oil|without lubricant|bone dry',
  oiled: 'oil|oiled|lightly oiled|engine oil|motor oil|machine oil|light oil|oily|drop of oil|oil on|oil the',
  greased: 'grease|greased|grease on|lithium grease|wheel bearing grease',
  'anti-seize':
    'anti seize|antiseize|anti sieze|antisieze|anti size|anti seized|anti seizing|copper grease|copper paste|copper slip|copperslip|copper|nickel paste|copper based|nickel anti seize|copper anti seize|never seize|aluminium paste|ceramic paste|copper compound|anti seize compound|assembly paste',
  moly: 'moly|mos2|moly grease|moly paste|moly lube|molybdenum|molybdenum disulfide|molybdenum disulphide|assembly lube',
  wax: 'wax|waxed',
  zinc: 'zinc|zinc plated|galvanised|galvanized|zinc coated|yellow zinc|zinc plate|zinc plating|electro plated',
  'zinc-oiled': 'zinc oiled|zinc and oil|zinc plated oiled|zinc plated and oiled|oiled zinc',
  cadmium: 'cadmium|cad plated|cadmium plated|cad plate|cad',
  'phosphate-oiled': 'phosphate|phosphated|phosphate and oil|phosphate oiled',
  'black-oxide': 'black oxide|black finish|blackened',
  'stainless-dry': 'dry stainless|stainless dry',
  'thread-locker': 'thread locker|threadlocker|thread lock|threadlock|thread locking compound|locking compound',
}

export const generalLubricants =
  'lube|lubed|lubricated|lubricant|lubrication|lubricate|lubing|wet|wet thread|wet or dry|dry or wet|slippery|greasy'

/** Directions from straight ahead of the wrench; words that only hint at a bend have no angle. */
export const bends: ReadonlyArray<readonly [number | undefined, string]> = [
  [
    0,
    'straight|in line|inline|straight out|straight ahead|straight on|in a straight line|straight line|dead straight|dead ahead|in one line|all in line|straight in line|out front|straight off the end|lengthen|lengthens|lengthened|pointing forward|points forward|forward|forwards|points away|away from me|away from my hand|away from the handle|pointing away|straight forward|sticking out front|extends the wrench|in line with the wrench|in line with the handle',
  ],
  [
    90,
    'right angle|at right angles|perpendicular|square to the wrench|square to the handle|at right angle|square on|crossways|crosswise|square to it|side on|at 90|ninety degrees',
  ],
  [
    180,
    'reduces the length|makes wrench shorter|reduce the length|reduces the effective length|makes it shorter|makes the wrench shorter|makes the lever shorter|points back|pointing back|point back|backward|backwards|reversed|toward my hand|towards my hand|toward me|towards me|toward the handle|towards the handle|back toward|back towards|bent back|turned back|facing back|faces back|folded back|shorten|shortens|shortened|rotated backwards|rotated back|toward the hand|towards the hand|toward the grip|towards the grip|back at me|doubled back|bent double|swung back|flipped back|straight back|directly back|straight backward|straight backwards|rearward|rearwards|back along the handle|back over the handle|back under the handle|folded straight back|pointing to my hand|pointing at my hand|points to my hand|points at my hand|pointing to the handle|pointing at the handle|points to the handle|points at the handle|facing the handle|facing my hand|facing the grip|points at the grip|pointing at the grip|over the handle|over the grip|underneath the handle|under the handle|underneath the grip',
  ],
  [
    undefined,
    'half a right angle|half right angle|quarter turn|quarter of a turn|eighth turn|eighth of a turn|half a turn|pi|l shaped|l shape|round the corner|around the corner|bent|angled|at an angle|an angle|dog leg|dogleg|cranked|sideways|to the side|off to one side|off to the side|some angle|some sort of angle|unknown angle|angle unknown|angle not known|funny angle|some kind of angle|off axis|off centre|off center|sticking out sideways|skewed|slanted|diagonal|kinked|odd angle|weird angle|bit of an angle|slight angle|not straight|not in line|crooked|curved|halfway between|half way between|cocked|obtuse|of the way back|oblique|in a t|to the right|to the left|on the right|on the left|off to the right|off to the left|out the side|out to the side|out of the side|to one side|flipped around|flipped round|aimed at me|at my belly|at my chest|at my stomach|rear of the|front of the|an l with|a t with|inward|inwards|wrong way round|wrong way around|back to front|turned around|turned round|facing me|pointing at me|pointing to me|points at me|points to me|straight angle|pointing up|pointing down|pointing upward|pointing downward|points up|points down|straight up from the wrench|straight down from the wrench',
  ],
]
