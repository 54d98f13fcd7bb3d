// What is said of checks: a scale, a reference, tolerances, two sets of readings, the next day.

import { deviation } from './deviation.ts'

export const sayChecks = {
  'happened.dropped': 'it was dropped',
  'happened.overloaded': 'it was overloaded',
  'happened.repaired': 'it was repaired',
  'happened.adjusted': 'it was adjusted',
  'happened.wound-up': 'it was found left wound up',
  'happened.returned': 'it came back, from where nobody here knows what it went through',
  'happened.found': 'it was found again, and nobody here knows what it went through',
  'deviation.low': deviation.low,
  'deviation.high': deviation.high,
  'deviation.right': deviation.right,
  'scale-check.torque': 'The pull gives {torque} at the drive.',
  'scale-check.within':
    'Set to {setting} the wrench gave {torque}: deviation {deviation}, within the doubt of this check ({low} to {high}).',
  'scale-check.too-wide':
    'It cannot be told: the readings lie so far apart that the doubt is ±{band} of {torque}. Look for the slip, and pull five times.',
  'scale-check.low-by-scale':
    'As far as the scale is right: set to {setting} the wrench gave only {torque} and delivers LOW, deviation {deviation}.',
  'scale-check.high-by-scale':
    'As far as the scale is right: set to {setting} the wrench gave {torque} and delivers HIGH, deviation {deviation}.',
  'scale-check.low': 'Set to {setting} the wrench gave only {torque}: it delivers LOW, deviation {deviation}.',
  'scale-check.high': 'Set to {setting} the wrench gave {torque}: it delivers HIGH, deviation {deviation}.',
  'scale-check.step': 'Torque of the pull',
  'scale-check.step-mean': 'Torque of the mean pull',
  'scale-check.deviation':
    'Deviation: what the wrench says against the reference (negative: it delivers more than it says)',
  'scale-check.doubt': 'Doubt of the torque at 95 % (half-width)',
  'scale-plan.headline':
    'At {setting}, {distance} from the drive, every reading of the scale must lie between {low} and {high}.',
  'scale-plan.point': 'Force at {setting}, and the window of every reading',
  'tolerance-band.band': 'Set to {setting} the wrench may deliver {low} to {high}.',
  'tolerance-band.inside': 'Yes: set to {setting} the wrench delivers {low} to {high}, inside what is asked.',
  'tolerance-band.partly-outside':
    'Not surely: set to {setting} the wrench may deliver {low} to {high}, partly outside what is asked.',
  'tolerance-band.outside': 'No: set to {setting} the wrench delivers {low} to {high}, outside what is asked.',
  'tolerance-band.beyond':
    'Do not set this wrench so: {setting} lies above its highest mark, {most}. By its tolerance alone that would be {low} to {high}.',
  'tolerance-band.of-reading': 'Tolerance of the reading (half-width)',
  'tolerance-band.of-full-scale': 'Tolerance of full scale (half-width)',
  'tolerance-band.share': 'That is, of this setting',
  'wrench.tolerance-besides': 'The tolerance of the wrench, {tolerance} where nothing better is known, comes on top',
  'wrench-check.pass':
    'Pass: every reading is within ±{limit}; the worst is off by {deviation}, at {setting}, where {way}.',
  'wrench-check.pass-in-doubt':
    'Pass in doubt: every reading is within ±{limit}, but the worst by less than the reference may be off; it is off by {deviation}, at {setting}, where {way}.',
  'wrench-check.fail-in-doubt':
    'Fail in doubt: a reading is outside ±{limit}, but by less than the reference may be off; the worst is off by {deviation}, at {setting}, where {way}.',
  'wrench-check.fail': 'Fail: outside ±{limit}; the worst reading is off by {deviation}, at {setting}, where {way}.',
  'wrench-check.low': 'it delivers LOW',
  'wrench-check.high': 'it delivers HIGH',
  'wrench-check.right': 'it delivers what it says',
  'wrench-check.limit-maker': "The limit, the maker's own",
  'wrench-check.limit-class': "The standard's limit for class {class} of {type} tools, by the largest torque",
  'wrench-check.limit-most': "The standard's limit by the largest torque of the wrench",
  'wrench-check.limit-highest': "The standard's limit by the highest point, as if that were all the wrench can do",
  'wrench-check.guard': 'Every reading within this is a pass beyond the doubt of the reference',
  'wrench-check.point': 'At {setting}: deviation of the mean, and where every reading of the reference must lie',
  'wrench-check.worst': 'The worst reading of all, which decides',
  'compare.higher': 'B is {size} higher than A ({interval})',
  'compare.lower': 'B is {size} lower than A ({interval})',
  'compare.same': 'the means of B and A are the same ({interval})',
  'compare.interval': '{low} to {high} at {confidence}',
  'compare.no-interval': 'no ends can be given: the mean of A is not clear of 0',
  'compare.seen-too-small-to-matter': 'Seen, too small to matter: {what}, inside ±{margin}.',
  'compare.no-difference-that-matters': 'No difference that matters: {what}, inside ±{margin}.',
  'compare.a-difference-that-matters': 'A difference that matters: {what}, more than {margin}.',
  'compare.seen-not-decided-whether-it-matters':
    'Seen, not decided whether it matters: {what}, against a margin of ±{margin}.',
  'compare.not-decided': 'Not decided: {what}, against a margin of ±{margin}.',
  'compare.mean-a': 'Mean of A, from {n} readings',
  'compare.mean-b': 'Mean of B, from {n} readings',
  'compare.spread-a': 'Spread of A (standard deviation, not below what the resolution hides)',
  'compare.spread-b': 'Spread of B (standard deviation, not below what the resolution hides)',
  'compare.variances': 'Ratio of the variances, B over A',
  'compare.difference': 'Difference of the means, B less A, with both ends of its interval',
  'compare.relative': 'The same in % of A, with both ends: the mean of A is not exact either, and that is in them',
  'compare.upper-bound': 'The most by which B may pass A and {margin} (one side): below 0, B stays inside above',
  'compare.lower-bound': 'The least by which B may pass A less {margin} (one side): above 0, B stays inside below',
  'next-check.months': 'Due on {date}: then the months since the last check ({months}) run out.',
  'next-check.uses': 'Due now: {uses} uses since the last check, and {allowed} are allowed.',
  'next-check.event': 'Due since {date}: {event}, and no check outlives that.',
  'next-check.months-out': 'Days from the last check until the months run out, on {date}',
  'next-check.uses-left': 'Uses left (0 or below: due)',
  'next-check.event-after': 'Days from the last check to {date}, when {event}',
  'event.dropped': 'it was dropped',
  'event.overloaded': 'it was overloaded',
  'event.repaired': 'it was repaired',
  'event.modified': 'it was modified',
  'event.wound-up': 'it had been left wound up',
} as const
