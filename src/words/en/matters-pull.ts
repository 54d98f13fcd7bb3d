// Does it matter: the pull, what reaches the fastener, and the tool itself. A verdict, what to do, why, and how much for each topic.

export const mattersPull = {
  'matter.clicked-twice.verdict':
    'It depends on how: a slow, deliberate second click mostly adds little; a jerked or repeated pull, or one that runs on past the click, adds torque.',
  'matter.clicked-twice.what-to-do':
    'Click once, slowly, and mark what is done. A later pull shows when the nut breaks away, not how tight it was made.',
  'matter.clicked-twice.mechanism':
    'A nut at rest needs more to start than to go on, so at the same slow click it mostly stays put. A jerk brings momentum with it, and past the click nothing limits the pull but the hand.',
  'matter.clicked-twice.size': 'No formula gives it: little where the nut stayed put, more where it was seen to turn.',
  'matter.hand-position.verdict':
    'It depends on the wrench: one that senses at its drive does not care, a click wrench does a little, a beam without a floating grip does more, and with an adapter on it counts in full.',
  'matter.hand-position.what-to-do': 'Pull with one hand on the mark or the middle of the grip, square to the handle.',
  'matter.hand-position.mechanism':
    'A click wrench trips on a pivot behind its drive, and a beam bends behind it, so a hand closer in delivers more and one farther out less. An adapter adds to the arm of the hand but not to what the wrench feels.',
  'matter.hand-position.size':
    'T/S = (L − p)/L · (H + X)/(H − p), where p is 0 for a wrench that senses at its drive and usually {low} to {high} of L for a click wrench, {beamlow} to {beamhigh} for a bending beam without a floating grip.',
  'matter.jerked.verdict': 'Yes, it matters: a jerked pull runs past the setting before anybody can stop.',
  'matter.jerked.what-to-do':
    'Bring on the last fifth of the torque steadily, in half a second to four seconds, and stop at the click.',
  'matter.jerked.mechanism':
    'The click takes a moment, the hand takes longer, and arm and handle carry on by their own momentum.',
  'matter.jerked.size': 'No formula gives it; up to {more} more than the setting is told of.',
  'matter.pipe-on-the-handle.verdict':
    'Yes, it matters: a pipe moves the hand past the grip; that voids what the maker of the wrench promises, and can break it.',
  'matter.pipe-on-the-handle.what-to-do':
    'Use a longer wrench that is made for the torque, or a torque multiplier: where the pull is too hard, the wrench is too small.',
  'matter.pipe-on-the-handle.mechanism':
    'The pull gets easier while the torque stays nearly the same: a click wrench delivers a little low, and with an adapter on the torque changes with the whole new arm.',
  'matter.pipe-on-the-handle.size':
    'Without an adapter T/S = (L − p)/L · H/(H − p), never below (L − p)/L: no more than about {high} low on a click wrench and {beam} on a bending beam without a floating grip, nothing on one that senses at its drive.',
  'matter.adapter-square.verdict':
    'No, it does not matter: with the adapter square to the wrench (90°) the setting is the torque itself, whatever its length.',
  'matter.adapter-square.what-to-do':
    'Make it really square, pull square to the handle with one hand on the grip, and dial the torque itself. Any other angle wants its own setting.',
  'matter.adapter-square.mechanism':
    'Square to the handle it adds nothing along the wrench: E cos 90° is 0. The nut is farther from the hand, but the pull is not square to that line.',
  'matter.adapter-square.size':
    'T/S = (L + E cos θ)/L, which is 1 at 90°. A pull out of square by δ changes it by ± tan δ · E/L: at 5°, with an adapter of a fifth of the lever, 1.75 %.',
  'matter.adapter-straight.verdict':
    'Yes, it matters: straight ahead an adapter adds to the lever and the fastener gets more than the setting; straight back it gets less.',
  'matter.adapter-straight.what-to-do':
    'Measure lever and adapter from centre to centre and dial S = T L/(L + E), with E counted negative where it points back; or turn the adapter square and dial the torque itself.',
  'matter.adapter-straight.mechanism':
    'The hand pulls the fastener on lever and adapter together, L + E, while the wrench feels its own L only.',
  'matter.adapter-straight.size': 'T/S = (L + E)/L, so E/L more than dialled: 50 on 400 is 12.5 %.',
  'matter.bars.verdict':
    'No, it does not matter: an extension bar straight below the drive, held in line, takes nothing from a slow pull.',
  'matter.bars.what-to-do':
    'Support the drive with the other hand, keep the bar in line and as short as will reach, and pull slowly. The formula for a crowfoot is not for this.',
  'matter.bars.mechanism':
    'It lies on the axis, so it adds no lever; it winds up like a spring and passes the whole torque on. Leaning, sagging and hammering do the harm.',
  'matter.bars.size':
    'T = S. The bar winds up by θ = T l/(G J), which spoils only an angle that is read at the handle.',
  'matter.changed-head.verdict':
    'It depends on where its centre lies: only a head that holds the fastener nearer or farther than the calibrated one changes the torque.',
  'matter.changed-head.what-to-do':
    'Measure both heads to their centres. Where they agree dial the torque; where they differ dial S = T L/(L + Δ).',
  'matter.changed-head.mechanism':
    'The wrench was set with the lever to the centre of its own head; another length of head makes another lever.',
  'matter.changed-head.size':
    'T/S = (L + Δ)/L, with Δ the used head less the calibrated one: 30 shorter on 360 is 8.33 % less.',
  'matter.chained-spanner.verdict':
    'It depends on its direction: straight ahead its whole length counts, square (90°) none of it, and straight back it takes away.',
  'matter.chained-spanner.what-to-do':
    'Measure from the centre of the drive to the centre of the fastener, take the angle from the wrench itself, and dial what comes out. Keep the joint flat and the pull square.',
  'matter.chained-spanner.mechanism':
    'A spanner that is hooked to the wrench is an adapter: what counts is how far it reaches along the wrench. The size of the nut has no part in it.',
  'matter.chained-spanner.size': 'T/S = (L + E cos θ)/L; several links add up, Σ E cos θ.',
  'matter.flex-head.verdict':
    'It depends on the tilt and on where the wrench senses: a few degrees are nothing, a steep tilt can deliver low.',
  'matter.flex-head.what-to-do':
    'Keep the handle in the plane in which the fastener turns and the socket square on it; where it must tilt, tilt it little.',
  'matter.flex-head.mechanism':
    'A tilted handle has a shorter arm about the fastener. A wrench that senses ahead of the hinge only wants a harder pull; one that trips behind it clicks at the same pull, and the torque falls.',
  'matter.flex-head.size':
    'Between S and S r/L, r = h + (L − h) cos φ: with the hinge at the drive no more than 3.41 % low at 15°.',
  'matter.size-adapters.verdict':
    'No, it does not matter: in line a size adapter changes no torque; but the smallest square limits what the whole stack can carry.',
  'matter.size-adapters.what-to-do':
    'Stay below the rating of the weakest part, push every joint home and hold the stack in line.',
  'matter.size-adapters.mechanism':
    'It lies on the axis and adds no lever. How much a square can carry goes with the third power of its width.',
  'matter.size-adapters.size': 'T = S. From 1/2 to 3/8 in the square keeps (3/4)³ of its strength, 42 %.',
  'matter.swivel.verdict':
    'It depends on the bend: two engine manuals allow up to 15° uncorrected; steeper, the torque swings and is lost, and no setting mends it.',
  'matter.swivel.what-to-do':
    'Keep it as straight as it will go. Where it must bend more, find another way in: no corrected setting is offered.',
  'matter.swivel.mechanism':
    'A bent universal joint does not pass the torque on evenly: twice in a turn it gives more and less, and friction and side load take some besides.',
  'matter.swivel.size':
    'Between cos β and 1/cos β of the setting without friction, about ±3.5 % at 15°, and lower still with it.',
  'matter.digital-or-click.verdict':
    'No, it does not matter: with the same tolerance either kind tightens alike; the last check, the range and a steady pull count for more.',
  'matter.digital-or-click.what-to-do':
    'Take the one that has your setting well inside its range, whose check is in date, and that you can read where you stand.',
  'matter.digital-or-click.mechanism':
    'Both are held to limits of 4 or 6 %. They differ otherwise: the hand’s place moves a click wrench, an empty battery stops the other, and one that was told an adapter’s length has corrected for it already.',
  'matter.tool.size':
    'S (1 ± l) for either. Friction spreads the clamp force much further even with a wrench that is right: by ±{low} to ±{high}, say two lists.',
  'matter.price.verdict':
    'No, it does not matter: what counts is the tolerance that it holds when checked; a cheap wrench that was checked beats a dear one that was not.',
  'matter.price.what-to-do':
    'Compare tolerance, range and whether a certificate comes with it; check it when it is new, and then like any other.',
  'matter.price.mechanism':
    'Money buys finish, spare parts, finer marks and often steadiness over the years; it does not keep a spring from settling, nor save a wrench that was dropped.',
} as const
