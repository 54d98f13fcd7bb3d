// What to mind beside an answer, and where the maker’s own figure stands.

export const cautions = {
  'maker-first':
    "The maker's own figure and procedure come first; this works out what to dial for a figure you already have.",
  'critical-joint':
    'Wheels, brakes, steering, seat belts, lifting, pressure, aircraft: a qualified person and the maker’s procedure decide.',
  'one-hand':
    'Pull by the grip only: a second hand at the head changes the torque as soon as an adapter reaches ahead or back.',
  'points-back':
    'The adapter points back toward the hand by {reach}: the setting is HIGHER than the torque. Make sure of the direction.',
  'far-back':
    'It reaches back over more than half the lever: small slips of length or hand change the torque a lot. Use another way if there is one.',
  'direction-assumed':
    'Where no angle was given, straight ahead is assumed. If an adapter stands at an angle, say so: it changes the result.',
  'keep-square':
    'The adapter stands to the side: pull square to the handle, or the torque changes with the direction of the pull.',
  'already-corrected':
    "If the maker's figure is tied to a special tool or a stated lever length, or the wrench was told the adapter's length, it is corrected already: do not correct it twice.",
  'side-load': 'A tilted head pushes the socket sideways: hold it square, and straighten the handle if there is room.',
  'lower-still': 'Friction and side load take more, about {loss} in all at a steep bend: the low end is no floor.',
  'no-corrected-setting': 'No corrected setting can be given for a swivel: where in its turn it stands is not known.',
  'square-too-weak': 'The weakest square of the stack is {drive} in, tested to {rating}: a larger drive is needed.',
  'no-impact': 'Under a slow pull only: an impact tool loses torque in every bar.',
  'support-the-bar': 'Keep the bar in line and hold its head: a bar that leans tips the socket.',
  'which-ratio': 'Which ratio is marked? A torque ratio holds the losses already; a turns (gear) ratio does not.',
  'reaction-arm':
    'The reaction arm pushes back with the whole output: set it against something that holds, and keep hands clear.',
  'run-on-while-turning':
    'Read the run-on torque while the nut turns, before it seats; the maker says how much is allowed, and when to replace it.',
  'run-on-through-adapter': 'A run-on torque that was read through an adapter is converted first, like the rest.',
  'past-strength': 'Where friction is low this torque passes the proof load or the yield of the bolt.',
  'from-snug':
    'From snug: the parts lie close, before the turn is counted. Where snug is not sure, the turn is not either.',
  'yield-not-checked': 'No class was given, so it was not checked whether this passes yield.',
  'no-pipe': "A pipe on the handle moves the hand past the grip and voids what the wrench's maker promises.",
  'run-on-large':
    'The run-on torque ({extra}) is more than the torque itself: look at both units; a nut that runs so hard is spoilt.',
  'friction-wide':
    'Between the sources, friction of this state spans more than two to one: at this torque the bolt may be far looser than its share. Ask the maker, or measure torque and clamp force on this joint.',
  'own-factor-holds-seat':
    'A nut factor of your own holds the seat that it was measured on: the seat told here changes nothing in it.',
  'class-of-other-system': 'This class is of the other system than the size: look at the mark on the head again.',
  'pivot-unusual': 'A wrench of this kind trips at {low} to {high} as a rule: look at the pivot again.',
  'floating-grip':
    'If the grip of this beam wrench rocks on a pin, the pull is at the pin wherever the hand is, and nothing of this applies.',
  'hard-pull': 'Nobody pulls {pull} steadily: use a longer lever or a multiplier.',
  'points-missing': 'Not the whole scale was checked: the standard wants {shares} % of the largest setting, rising.',
  'beyond-range': 'The setting {setting} is outside the range of the wrench ({limit}).',
  'end-beyond-range':
    'Part of what is asked needs a setting outside the range of the wrench: {setting}, where it ends at {limit}. Stay inside its range.',
  'factor-twelve':
    'Was another unit meant? {got} asks for a setting outside the range of the wrench, {meant} would be inside.',
  'factor-ten':
    'Has the decimal mark slipped? {got} asks for a setting outside the range of the wrench, {meant} would be inside.',
  'lever-unusual':
    'A lever of {lever} is outside what hand wrenches have ({low} to {high}): look at the number and at its unit again.',
  'adapter-longer':
    'The adapter ({adapter}) is longer than the wrench itself ({lever}): look at both numbers and their units again.',
  'below-a-fifth': 'Below a fifth of the scale ({fifth}) nothing is promised: use a smaller wrench.',
  'click-once':
    'Pull slowly and steadily, and stop at the click: a jerk, or pulling again and on past it, adds torque (common practice).',
  'which-fitting':
    'This takes the lever as measured to the centre of the head that the wrench was calibrated with. If it was measured with the other head on, say so.',
  'steady-pull': 'Pull toward you, feet set, ready for the fastener to give way.',
  'which-condition':
    "Find out whether the maker's figure is for dry or for lubricated threads: that decides whether anything may be changed.",
  'estimate-only':
    'Friction figures are estimates from tables; they scatter from bolt to bolt and from source to source.',
  'k-unlikely':
    'No joint is known with such a nut factor (they lie between about 0.05 and 0.6): look at the units, the size and the readings again.',
  galling: 'Stainless on stainless seizes: tighten slowly, with a lubricant made for it.',
  'yield-fastener':
    'Never for fasteners tightened to yield or by torque and angle: use the maker’s procedure as it stands.',
  'one-joint':
    'This nut factor belongs to this thread, seat, finish and lubricant, and to fresh parts; re-used bolts differ.',
  'gauge-too-coarse':
    'The scale ({gauge}) is too coarse to judge a wrench of ±4 %: it should be no worse than {quarter}.',
  'gauge-unknown': "The scale's own tolerance is not given and not in the doubt: check it against a known weight.",
  'own-weight':
    "With the drive axis level the wrench's own weight counts too: give wrench-mass, balance-point, lie and pull-direction.",
  'not-accredited': 'A check in the shop is not an accredited calibration.',
  'gauge-runs-out': 'The scale ends at {limit}: pull at {distance} from the drive or farther out.',
  'gauge-quarter': 'The scale should be no worse than {quarter}, a quarter of the limit.',
  'out-of-limit': 'Do not use this wrench where the torque matters until it has been adjusted and checked again.',
  'limit-assumed': "The limit of ±{limit} was taken, not told: give the maker's tolerance, or iso-type and iso-class.",
  'reference-unknown':
    'How good the reference is was not told: it should be no worse than {quarter}, a quarter of the limit.',
  'reference-too-coarse':
    'The reference ({gauge}) is too coarse for this limit: it should be no worse than {quarter}, a quarter of it.',
  'few-readings': 'Fewer than 5 readings at a point: the standard asks for 5, and more show more.',
  'alike-no-resolution':
    'All readings of {set} are alike: the resolution hides how they scatter, and the answer is surer than it should be. Give resolution.',
  'alike-resolution': 'All readings of {set} are alike: their scatter is taken from the resolution.',
  'mean-near-zero': 'The mean of A is not clear of 0, so that a percentage of it says little: compare other readings.',
  'independent-readings':
    'This holds for readings that do not lean on each other: take A and B in mixed order, on fresh joints; a nut that is tight already shows its breakaway.',
  'tolerance-of-scale':
    'The tolerance of {wrench} is {tolerance} of full scale, so below its highest mark it may be off by more than the tolerance taken here. Tell tolerance as a share of this setting.',
  'wrench-not-to-be-used': '{wrench} is set aside or retired in the register: take another wrench.',
  'failed-on': 'The last check of {wrench}, on {date}, found it outside its limit.',
  'check-before-use': 'Check {wrench} before it is used where the torque matters: on {date} {what}.',
  'never-checked': 'No check of {wrench} is in the register.',
  'due-since': 'The check of {wrench} has been due since {date}.',
  'last-check':
    'At the last check of {wrench}, on {date}, it was {deviation} at {setting}. It is told here, not taken into the answer.',
  'check-due': 'Until it has been checked, do not use this wrench where the torque matters.',
  'event-before-check': 'What happened before the last check is covered by that check.',
  'wound-up-briefly': 'Less than a month wound up changes little; months near full scale can take well over a tenth.',
  'store-low': 'Store it at its lowest mark, not below.',
  'uses-not-counted': 'Uses were not told: they may run out before the months do.',
  'tolerance-is-not-all': 'This is the wrench alone: hand, lengths and friction come on top.',
  'unit-on-wrench':
    'Read the unit off the wrench itself before you dial: N·m, lbf·ft and lbf·in stand side by side on many.',
} as const

export const pointers = {
  'multiplier-plate': 'Ratio and limit: the plate or certificate of the multiplier.',
  'torque-figure':
    "Torque figure: the maker's workshop manual for this very fastener, with the state of threads and the tool it is given for.",
  'adapter-rating': "The adapter's own rating: its maker; it limits the torque at the fastener, not the setting.",
  'wrench-manual': 'Lever length, range and tolerance: the manual or the calibration certificate of the wrench.',
  'lubricant-maker': "The lubricant maker's data sheet: nut factor or friction for this finish.",
  'calibration-lab': 'A certificate: an accredited calibration laboratory (ISO 6789).',
} as const
