// What is said of the way from the hand to the fastener: adapters, heads, swivels, bars, multipliers, pulls, units.

export const sayReach = {
  'adapter.reach': 'How far the adapters reach along the wrench, ahead of the drive (negative: back toward the hand)',
  'adapter.effective': 'The lever on which the hand really pulls the fastener',
  'adapter.factor': 'Torque at the fastener for each unit on the wrench (some manuals print the inverse)',
  'adapter.factor-hand':
    'Torque at the fastener for each unit on the wrench, with the hand off the grip centre (some manuals print the inverse)',
  'adapter.straight-assumed': 'With the adapter straight ahead, which was not told: {answer}',
  'adapter-setting.set': 'Set {setting} on the wrench: the fastener gets {torque}.',
  'adapter-setting.same': 'Set {setting}, the torque itself: this adapter adds nothing to the lever.',
  'adapter-setting.span':
    'Set {setting} on the wrench ({low} to {high} for the ends): the fastener gets {torque}, the middle of what is asked.',
  'adapter-setting.span-part':
    'Set {setting} on the wrench: the fastener gets {torque}, the middle of what is asked. Of the rest this wrench does only {from} to {to}.',
  'adapter-setting.open':
    'Set {setting} on the wrench, the safe end: with the hand off the grip centre the right setting for {torque} lies between that and {high}.',
  'adapter-setting.open-span':
    'Set {from} to {to} on the wrench: with the hand off the grip centre, that keeps the fastener inside what is asked wherever the wrench trips.',
  'adapter-setting.open-none':
    'No setting is sure to stay inside what is asked: with the hand off the grip centre {torque} may need {setting} or {high}. Pull by the grip centre, or measure where the wrench trips.',
  'adapter-setting.part':
    'This wrench can do only part of what is asked: set {from} to {to} on it. The middle, {torque}, would need {setting}, outside its range.',
  'adapter-setting.beyond':
    'Do not use this wrench so: {torque} at the fastener would need {setting}, outside its range; with the adapter square (90°) the setting is the torque itself.',
  'adapter-setting.beyond-all':
    'Do not use this wrench so: {torque} at the fastener would need {setting}, outside its range. Use another wrench.',
  'adapter-setting.setting': 'What to dial',
  'adapter-setting.pivot-unknown':
    'Where the wrench trips is not known, and off the grip centre that matters: the setting at both ends of what is usual',
  'adapter-setting.ends': 'The settings for both ends of what is asked',
  'adapter-setting.tolerance-alone':
    'What the wrench itself may make of that setting by its tolerance of {tolerance} alone',
  'adapter-setting.inside': 'The doubt stays inside what is asked; width of the 95 % band',
  'adapter-setting.not-inside':
    'The doubt does NOT stay inside what is asked: measure better or use a better wrench; width of the 95 % band',
  'adapter-reading.got': 'With {reading} on the wrench the fastener got {torque} (95 %: {low} to {high}).',
  'adapter-reading.torque': 'What the fastener got',
  'adapter-reading.pivot-unknown':
    'Where the wrench trips is not known, and off the grip centre that matters: the torque at both ends of what is usual',
  'doubt.one': 'Doubt at 95 %, mostly from {first}',
  'doubt.two': 'Doubt at 95 %, mostly from {first}, then {second}',
  'cause.wrench': 'the tolerance of the wrench',
  'cause.lever': 'the length of the lever',
  'cause.adapter': 'the length of the adapter',
  'cause.hand': 'where the hand goes',
  'cause.angle': 'the angle of the adapter',
  'cause.square': 'a pull that is not square to the handle',
  'cause.pivot': 'where the wrench trips',
  'hand-position.none': 'The fastener gets {torque}: a wrench that senses at the drive does not care where it is held.',
  'hand-position.at-grip': 'The fastener gets {torque}: held where it was calibrated, the setting is the torque.',
  'hand-position.more': 'Set to {setting} and held closer in, the wrench gives {torque}: {change} more.',
  'hand-position.less': 'Set to {setting} and held farther out, the wrench gives {torque} ({change}).',
  'hand-position.open-more':
    'Set to {setting} and held closer in, the wrench gives {low} to {high} by where it trips (95 %), in the middle {torque}: {change} more.',
  'hand-position.open-less':
    'Set to {setting} and held farther out, the wrench gives {low} to {high} by where it trips (95 %), in the middle {torque} ({change}).',
  'hand-position.torque': 'What the fastener gets',
  'hand-position.change': 'Change against the setting',
  'pivot-offset.found': 'The wrench trips {pivot} behind its drive (95 %: {low} to {high}).',
  'pivot-offset.not-from-zero':
    'The pivot cannot be told from 0: {pivot}, with a doubt from {low} to {high}. Repeat both pulls and take means, the hand near the middle of the handle.',
  'pivot-offset.impossible':
    'These two pulls do not fit one wrench: {pivot} is not possible (95 %: {low} to {high}). Repeat both pulls.',
  'pivot-offset.ratio': 'Torque with the hand moved, over torque with the hand at the lever',
  'pivot-offset.pivot': 'Distance from the drive to the pivot',
  'pivot-offset.doubt': 'Doubt at 95 % (half-width)',
  'end-fitting.set': 'Set {setting} on the wrench: the fastener gets {torque} through this head.',
  'end-fitting.span':
    'Set {setting} on the wrench ({low} to {high} for the ends): the fastener gets {torque} through this head, the middle of what is asked.',
  'end-fitting.used': 'Lever with the head that is used',
  'end-fitting.factor': 'Torque at the fastener for each unit on the wrench (some manuals print the inverse)',
  'end-fitting.setting': 'What to dial',
  'which.best': '{wrench}: set {setting} for {torque} at the fastener.',
  'which.care': '{wrench}, with care: set {setting} for {torque} at the fastener, and read why below.',
  'which.none': 'No wrench of the shop can do {torque} today; why stands beside each.',
  'which.empty': 'No wrench is in the register yet: add one, and this chooses among them.',
  'which.same': 'Nothing lengthens the wrench: it is set to the torque itself',
  'which.step': 'What {wrench} is set to, by its lever in the register',
  'which.work-out': 'Work it out with {wrench}, with its doubt',
  'pull.pull': 'Pull {pull}, square to the handle, {at} from the drive for {torque}.',
  'pull.step': 'Pull, square to the handle',
  'convert.is': '{from} is {value}.',
  'convert.span': '{low} to {high}, in the middle {value}.',
  'convert.step': 'One {unit} in {to}, times the number',
  'flex-head.ahead':
    'The fastener gets {torque}, what the wrench says at {setting}: it senses ahead of the hinge; only the pull grows.',
  'flex-head.behind': 'Set to {setting} and tilted, the wrench gives {torque}: it trips behind the hinge.',
  'flex-head.unknown':
    'Set to {setting} and tilted, the fastener gets {low} to {high}: which depends on whether the wrench senses ahead of its hinge or behind it.',
  'flex-head.arm': 'The arm that the tilt leaves',
  'flex-head.torque-ahead':
    'Sensing ahead of the hinge (most indicating and electronic wrenches): the torque is what it says',
  'flex-head.torque-behind': 'Tripping behind the hinge: the same pull on a shorter arm',
  'flex-head.straight': 'Pull with the handle straight',
  'swivel.band':
    'With {setting} on the wrench and {angle} of bend the fastener gets {low} to {high}, or lower still: no setting can make up for that.',
  'swivel.straight': 'A swivel that is not bent passes on {torque}.',
  'swivel.low': 'The lowest in a turn, without friction',
  'swivel.high': 'The highest in a turn, without friction',
  'swivel.allowed': 'Two engine manuals allow this bend without a correction',
  'swivel.not-allowed':
    'Past what two engine manuals allow without a correction: straighten it, or reach the fastener another way',
  'extension-bar.too-thin':
    'Do not use this bar: {torque} strains {diameter} of steel past what drive squares are tested to ({stress}); it would bend or break.',
  'extension-bar.nothing':
    'The bar takes nothing away: the fastener gets {torque} under a slow, straight pull. It twists by {twist}.',
  'extension-bar.too-weak': 'Do not use this stack for {torque}: its weakest square is tested to {rating}.',
  'extension-bar.torque': 'A bar in line turns with the drive: torque in is torque out',
  'extension-bar.twist': 'Twist of the bar, taken as round; it spoils angles read at the handle',
  'extension-bar.weakest': 'What the weakest square, {drive} in, is tested to',
  'multiplier.set': 'Put {input} into the multiplier for {torque}.',
  'multiplier.lowest':
    'Put in no more than {input} for {torque} by the turns ratio: the lowest, at the best efficiency; with more losses it may take up to {high}.',
  'multiplier.torque-ratio': 'What goes in, by the torque ratio as marked (losses are in it)',
  'multiplier.lowest-step': 'What goes in at the best efficiency',
  'multiplier.highest-step': 'What goes in at the poorest efficiency',
  'prevailing.set': 'Tighten until the wrench shows {final}: {torque} and the run-on torque of {run}.',
  'prevailing.span': 'Tighten until the wrench shows {low} to {high}, in the middle {final}.',
  'prevailing.final': 'Asked torque and run-on torque together (aviation: always)',
  'prevailing.army-adds': 'One army manual adds it only from a third of the asked torque on: here it does too',
  'prevailing.army-leaves-out':
    'One army manual adds it only from a third of the asked torque on: here it leaves it out. The sources differ; ask the maker',
  'related.direction': 'The same with the adapter at {angle}',
  'related.reading': 'What the fastener gets when the wrench shows {setting}',
  'related.setting': 'What to dial for {torque}',
  'incomplete.one': 'One thing is missing: {ask}.',
  'incomplete.several': 'Some things are missing: {ask}.',
  'refused.one': 'That cannot be worked out as it stands: {hint}',
  'refused.several': 'That cannot be worked out as it stands; several inputs need another look. First: {hint}',
} as const
