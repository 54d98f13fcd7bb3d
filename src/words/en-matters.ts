// What does-it-matter says, in English, in the sections of en.ts into which it is put. One verdict, reason, size and advice a topic.

export const matters = {
  say: {
    'matter.calibration.verdict': 'Yes: a wrench drifts with use, and nothing on its outside shows it.',
    'matter.calibration.what-to-do':
      'Have it checked every 12 months or 5000 uses, whichever comes first, and after a drop, an overload or a repair; its maker or your own rule may ask for more. A check with a scale tells you in between.',
    'matter.calibration.mechanism':
      'Springs settle, pivots wear and grease goes. Two wrenches that agree, or a tight nut that is pulled again, prove neither of them right.',
    'matter.calibration.size':
      'Within its limit l it delivers S (1 ± l): 96 to 104 of 100 at ±4 %. Out of its limit it can be off by any amount.',
    'matter.dropped.verdict': 'Yes: a drop ends the last check, whatever the sticker says.',
    'matter.dropped.what-to-do':
      'Put it aside. Check it at a fifth, three fifths and all of its highest mark, and use it again only if every reading is within its limit. If it is not, look again at what was tightened with it since.',
    'matter.dropped.mechanism':
      'A blow can shift the spring, the trip or the pointer and bend the head, while the wrench looks and clicks as before.',
    'matter.dropped.size': 'No formula gives it: anything from nothing to far out of the limit, so it is measured.',
    'matter.loosening-with-it.verdict':
      'Yes: do not loosen with a torque wrench; a stuck nut can overload it without a sign.',
    'matter.loosening-with-it.what-to-do':
      'Loosen with a plain bar or a ratchet. If the wrench was used for it, and more so past its highest mark or backwards, check it before it is trusted again.',
    'matter.loosening-with-it.mechanism':
      'A nut can take more to break loose than it was tightened with; many click wrenches do not trip backwards, so nothing tells how hard the pull is.',
    'matter.loosening-with-it.size':
      'No formula gives it: breaking loose takes what rust, locking and rest have made of it. The wrench is overloaded as soon as that passes its highest mark.',
    'matter.stored-wound-up.verdict':
      'It depends on how high and how long: weeks change little, months near the top of the scale can leave a click wrench far low.',
    'matter.stored-wound-up.what-to-do':
      'Wind a click wrench to its lowest mark for storing, not below it. After months wound up, click it a few times at a low setting and check it before it is used.',
    'matter.stored-wound-up.mechanism':
      'The spring of a click wrench settles under load and then pushes less, so the wrench trips early and delivers low.',
    'matter.stored-wound-up.size':
      'No formula gives it: little after weeks; well over a tenth low after months near full scale is known.',
    'matter.under-a-fifth.verdict':
      'Yes: below a fifth of its highest mark the standards promise nothing for a wrench; only its maker may.',
    'matter.under-a-fifth.what-to-do': 'Use a smaller wrench, one that has this setting well inside its range.',
    'matter.under-a-fifth.mechanism':
      'Friction and play inside the wrench stay much the same while the torque gets small, so their share of it grows; a tolerance of full scale grows the same way.',
    'matter.under-a-fifth.size':
      'A tolerance l of full scale is l · most/S at a setting S: 4 % of 250 is a third of 30. A tolerance of the reading is promised from a fifth up only.',
    'matter.anti-seize.verdict':
      'Yes, unless the maker’s figure is for this paste already: at the same click the bolt is as a rule pulled tighter.',
    'matter.anti-seize.what-to-do':
      'Find out which state of the threads the figure is for, and use it as printed for that state. Else ask the maker or measure: a percentage from elsewhere belongs to another paste and another joint. On wheels, makers differ about threads and seat: follow the maker of this vehicle or wheel, and where that says clean and dry, leave it clean and dry.',
    'matter.anti-seize.mechanism':
      'The torque is what the wrench says, with paste or without; less of it goes into friction, so more of it stretches the bolt.',
    'matter.anti-seize.size':
      'F = T/(K d): the clamp force changes by K_from/K_to. Sources give K {drylow} to {dryhigh} dry and {low} to {high} with paste: no one percentage fits them.',
    'matter.oil.verdict':
      'Yes, unless the maker’s figure is for oiled threads already: at the same click the bolt is as a rule pulled tighter.',
    'matter.oil.what-to-do':
      'Find out which state of the threads the figure is for, and use it as printed for that state. Else ask the maker or measure. On wheels, makers differ about threads and seat: follow the maker of this vehicle or wheel, and where that says clean and dry, leave it clean and dry.',
    'matter.oil.mechanism':
      'Oil or grease takes friction from thread and seat; the wrench clicks at the same torque with the bolt stretched further. On the thread alone it does less than on both.',
    'matter.oil.size':
      'F = T/(K d): the clamp force changes by K_from/K_to. Sources give K {drylow} to {dryhigh} dry and {low} to {high} oiled: no one percentage fits them.',
    'matter.re-used-nut.verdict':
      'It depends on the nut: a plain one in good order may serve again, a locking one loses its grip, and some are made for one use.',
    'matter.re-used-nut.what-to-do':
      'Fit new ones where the maker says so, and always in place of fasteners that were tightened to yield. Else clean them, look for damage, and read the run-on of a locking nut while it turns freely, a turn before it seats: below what its maker asks, it is replaced.',
    'matter.re-used-nut.mechanism':
      'Used threads and seats are smoother or rougher than new ones, so the same torque gives another clamp force; a locking insert wears with every use.',
    'matter.re-used-nut.size':
      'F = T/(K d) with a K that is no longer the new one. A locking nut adds its run-on, final = target + run-on: always in aviation; one army manual adds it only from a third of the target on.',
    'matter.washers.verdict':
      'It depends on what slides: a washer matters where it changes what turns under the nut or the head.',
    'matter.washers.what-to-do':
      'Fit what the maker shows where the maker shows it, none added and none left out, flat and hard enough; see that it does not turn along.',
    'matter.washers.mechanism':
      'Much of the torque goes into friction under whatever turns; a washer changes that surface and its mean radius, or turns itself.',
    'matter.washers.size':
      'T = F [P/2π + μ_t d2/(2 cos 30°) + μ_s r_s]; the last part, under what turns, is {seat} of the torque of an M10 at a friction of 0.12.',
    'matter.wheel-re-torque.verdict':
      'Yes: the faces settle after a wheel was off; when to go round again is for the maker of the vehicle to say.',
    'matter.wheel-re-torque.what-to-do':
      'Follow the manual of the vehicle. Faces clean, wheel cold, threads in the state that the figure is for, in the order of the manual, one slow click each, none loosened first. A nut that moved far is looked into, not just tightened.',
    'matter.wheel-re-torque.mechanism':
      'Paint, dirt and fresh faces bed in over the first drive, and a little settling takes much clamp force from short, stiff studs.',
    'matter.wheel-re-torque.size':
      'No formula gives it, and sources differ: from {first} to {last} after the wheel was off; one also names {minutes} minutes standing.',
    'matter.clicked-twice.verdict':
      'It depends on how: a slow, deliberate second click mostly adds little; a jerked or repeated pull, or one that runs on past the click, adds torque.',
    'matter.clicked-twice.what-to-do':
      'Click once, slowly, and mark what is done. A later pull shows when the nut breaks away, not how tight it was made.',
    'matter.clicked-twice.mechanism':
      'A nut at rest needs more to start than to go on, so at the same slow click it mostly stays put. A jerk brings momentum with it, and past the click nothing limits the pull but the hand.',
    'matter.clicked-twice.size':
      'No formula gives it: little where the nut stayed put, more where it was seen to turn.',
    'matter.hand-position.verdict':
      'It depends on the wrench: one that senses at its drive does not care, a click wrench does a little, a beam without a floating grip does more, and with an adapter on it counts in full.',
    'matter.hand-position.what-to-do':
      'Pull with one hand on the mark or the middle of the grip, square to the handle.',
    'matter.hand-position.mechanism':
      'A click wrench trips on a pivot behind its drive, and a beam bends behind it, so a hand closer in delivers more and one farther out less. An adapter adds to the arm of the hand but not to what the wrench feels.',
    'matter.hand-position.size':
      'T/S = (L − p)/L · (H + X)/(H − p), where p is 0 for a wrench that senses at its drive and usually {low} to {high} of L for a click wrench, {beamlow} to {beamhigh} for a bending beam without a floating grip.',
    'matter.jerked.verdict': 'Yes: a jerked pull runs past the setting before anybody can stop.',
    'matter.jerked.what-to-do':
      'Bring on the last fifth of the torque steadily, in half a second to four seconds, and stop at the click.',
    'matter.jerked.mechanism':
      'The click takes a moment, the hand takes longer, and arm and handle carry on by their own momentum.',
    'matter.jerked.size': 'No formula gives it; up to {more} more than the setting is told of.',
    'matter.pipe-on-the-handle.verdict':
      'Yes: a pipe moves the hand past the grip; that voids what the maker of the wrench promises, and can break it.',
    'matter.pipe-on-the-handle.what-to-do':
      'Use a longer wrench that is made for the torque, or a torque multiplier: where the pull is too hard, the wrench is too small.',
    'matter.pipe-on-the-handle.mechanism':
      'The pull gets easier while the torque stays nearly the same: a click wrench delivers a little low, and with an adapter on the torque changes with the whole new arm.',
    'matter.pipe-on-the-handle.size':
      'Without an adapter T/S = (L − p)/L · H/(H − p), never below (L − p)/L: no more than about {high} low on a click wrench and {beam} on a bending beam without a floating grip, nothing on one that senses at its drive.',
    'matter.adapter-square.verdict':
      'No: with the adapter square to the wrench (90°) the setting is the torque itself, whatever its length.',
    'matter.adapter-square.what-to-do':
      'Make it really square, pull square to the handle with one hand on the grip, and dial the torque itself. Any other angle wants its own setting.',
    'matter.adapter-square.mechanism':
      'Square to the handle it adds nothing along the wrench: E cos 90° is 0. The nut is farther from the hand, but the pull is not square to that line.',
    'matter.adapter-square.size':
      'T/S = (L + E cos θ)/L, which is 1 at 90°. A pull out of square by δ changes it by ± tan δ · E/L: at 5°, with an adapter of a fifth of the lever, 1.75 %.',
    'matter.adapter-straight.verdict':
      'Yes: straight ahead an adapter adds to the lever and the fastener gets more than the setting; straight back it gets less.',
    'matter.adapter-straight.what-to-do':
      'Measure lever and adapter from centre to centre and dial S = T L/(L + E), with E counted negative where it points back; or turn the adapter square and dial the torque itself.',
    'matter.adapter-straight.mechanism':
      'The hand pulls the fastener on lever and adapter together, L + E, while the wrench feels its own L only.',
    'matter.adapter-straight.size': 'T/S = (L + E)/L, so E/L more than dialled: 50 on 400 is 12.5 %.',
    'matter.bars.verdict':
      'No: an extension bar straight below the drive, held in line, takes nothing from a slow pull.',
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
      'No: in line a size adapter changes no torque; but the smallest square limits what the whole stack can carry.',
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
      'No: with the same tolerance either kind tightens alike; the last check, the range and a steady pull count for more.',
    'matter.digital-or-click.what-to-do':
      'Take the one that has your setting well inside its range, whose check is in date, and that you can read where you stand.',
    'matter.digital-or-click.mechanism':
      'Both are held to limits of 4 or 6 %. They differ otherwise: the hand’s place moves a click wrench, an empty battery stops the other, and one that was told an adapter’s length has corrected for it already.',
    'matter.tool.size':
      'S (1 ± l) for either. Friction spreads the clamp force much further even with a wrench that is right: by ±{low} to ±{high}, say two lists.',
    'matter.price.verdict':
      'No: what counts is the tolerance that it holds when checked; a cheap wrench that was checked beats a dear one that was not.',
    'matter.price.what-to-do':
      'Compare tolerance, range and whether a certificate comes with it; check it when it is new, and then like any other.',
    'matter.price.mechanism':
      'Money buys finish, spare parts, finer marks and often steadiness over the years; it does not keep a spring from settling, nor save a wrench that was dropped.',
    'matter.yes': 'yes, it matters',
    'matter.no': 'no, it does not matter',
    'matter.depends': 'it depends',
    'matter.stored-wound-up.depends': 'it depends on how high and how long, and on the kind of wrench',
    'matter.re-used-nut.depends': 'it depends on the nut and on its maker',
    'matter.washers.depends': 'it depends on what slides',
    'matter.clicked-twice.depends': 'it depends on how: slowly, or jerked and on past the click',
    'matter.hand-position.depends': 'it depends on the wrench, and on an adapter',
    'matter.changed-head.depends': 'it depends on where its centre lies',
    'matter.chained-spanner.depends': 'it depends on its direction',
    'matter.flex-head.depends': 'it depends on the tilt and on where the wrench senses',
    'matter.swivel.depends': 'it depends on the bend',
    'matter.nothing': 'No: with these numbers the torque does not change.',
    'matter.too-small':
      'No: it changes the torque by {change}, less than a quarter of the tolerance of the wrench ({tolerance}).',
    'matter.too-small-between':
      'No: it changes the torque by {low} to {high}, less than a quarter of the tolerance of the wrench ({tolerance}).',
    'matter.changes': 'Yes: left as it is, it changes the torque at the fastener by {change}.',
    'matter.changes-between': 'Yes: left as it is, it changes the torque at the fastener by {low} to {high}.',
    'matter.changes-dial':
      'Yes: left as it is, it changes the torque at the fastener by {change}; for {torque} dial {setting}.',
    'matter.perhaps':
      'It depends: it changes the torque by {low} to {high}, at one end less and at the other more than a quarter of the tolerance of the wrench ({tolerance}).',
    'matter.swivel-allowed':
      'It depends whom you ask: bent by {angle} the torque swings by {low} to {high}, lower still with friction; two engine manuals allow that uncorrected.',
    'matter.at-drive':
      'No: a wrench that senses at its drive does not care where it is held, as long as no adapter reaches ahead or back.',
    'matter.no-spring': 'No: this kind of wrench keeps no spring loaded while it is stored.',
    'matter.twist':
      'No: the bar winds up by {twist} and passes the whole torque on; only an angle read at the handle is off by that.',
    'matter.over-rating':
      'Yes: {torque} is {share} of what squares of this size are tested to ({rating}): use a larger drive.',
    'matter.under-rating':
      'No: in line the torque does not change, and {torque} is {share} of what squares of this size are tested to ({rating}).',
    'matter.below-fifth':
      'Yes: {setting} is {share} of the highest mark; below a fifth ({fifth}) the standards promise nothing.',
    'matter.in-range': 'No: {setting} is {share} of the highest mark, not below a fifth ({fifth}).',
    'matter.above-most': 'Yes: {setting} is above the highest mark, {most}: take a larger wrench.',
    'matter.clamp-more': 'Yes: by these nut factors the clamp force changes by {change} at the same click: tighter.',
    'matter.clamp-less': 'Yes: by these nut factors the clamp force changes by {change} at the same click: looser.',
    'matter.clamp-same': 'No: with the same nut factor the clamp force is the same.',
    'matter.torque': 'What the fastener gets with the wrench set so',
    'matter.torque-between': 'What the fastener gets with the wrench set so, from the lowest to the highest',
    'matter.change': 'Change against the setting',
    'matter.hand-factor': 'Torque at the fastener for each unit on the wrench, with the hand off the grip centre',
    'matter.square-doubt': 'What a pull that is not quite square does to it (either way)',
    'matter.tilt':
      'Change of the torque: from a wrench that trips behind the hinge, the hinge taken at the drive, to none where it senses ahead',
    'matter.tilt-pull': 'How much harder the pull gets where the wrench senses ahead of the hinge',
    'matter.swing': 'Swing of the torque in a turn, without friction; the low end',
    'matter.twist-step': 'How far the bar winds up, taken as round steel of the width of its square',
    'matter.rating': 'Share of the test torque of squares of this size; the rating of the part itself wins',
    'matter.share': 'Share of the highest mark',
    'matter.full-scale': 'The tolerance at this setting, if it is one of full scale',
    'matter.tolerance': 'What a wrench within its tolerance may deliver; half-width',
    'matter.jerk': 'From a steady pull to the most that is told of a jerk',
    'matter.clamp': 'Change of the clamp force at the same torque',
    'matter.run-on': 'What the wrench must show, the run-on of the nut added',
    'matter.link.adapter-setting': 'What to dial with this adapter on',
    'matter.link.hand-position': 'What holding it there does, with the doubt',
    'matter.link.pivot-offset': 'Where this wrench trips, from two pulls',
    'matter.link.end-fitting': 'What to dial with the other head',
    'matter.link.pull': 'How hard to pull',
    'matter.link.lubricant': 'What another state of the threads does',
    'matter.link.nut-factor': 'Your own nut factor, from measured runs',
    'matter.link.scale-check': 'Check the wrench with a scale',
    'matter.link.scale-plan': 'Plan the check: which forces to see',
    'matter.link.tolerance-band': 'What the tolerance means at this setting',
    'matter.link.wrench-check': 'Check the wrench against a reference',
    'matter.link.next-check': 'When the next check is due',
    'matter.link.compare': 'Two sets of readings, with it and without it: do they differ',
    'matter.link.prevailing': 'What the wrench must show on a locking nut',
    'matter.link.clamp-force': 'What clamp force a torque gives, by friction',
    'matter.link.multiplier': 'What to put in with a torque multiplier',
    'matter.link.extension-bar': 'How far a bar winds up, and what its squares carry',
    'matter.link.flex-head': 'What a tilted head delivers',
    'matter.link.swivel': 'What a bent swivel delivers',
  },
  cautions: {
    'wheels-again':
      'When to torque wheels again differs by source: from {first} to {last}, one names {minutes} minutes standing. The maker of the vehicle or the wheel decides.',
    'square-assumed':
      'No angle was given: square (90°) is assumed. If the adapter stands otherwise, say so; the other directions are listed.',
    'not-for-loosening': 'A torque wrench is for tightening: loosen with something else.',
    'local-rules':
      'On wheels, lifting gear, pressure and aircraft the law or the rules of the site may ask for more: who may do it, with which tool, and what is written down.',
    'one-way': 'Many click wrenches measure in one direction only: look before you use one on a left-hand thread.',
  },
  questions: { 'does-it-matter': 'Does it matter?' },
  topics: { 'does-it-matter': 'Does it matter? Bars, swivels, oil, a drop, a second click, a cheap wrench' },
  inputs: {
    topic: {
      label: 'Topic',
      ask: 'what it is about, in your own words',
      measure:
        'Or one of: calibration, dropped, loosening-with-it, stored-wound-up, under-a-fifth; anti-seize, oil, re-used-nut, washers, wheel-re-torque; clicked-twice, hand-position, jerked, pipe-on-the-handle; adapter-square, adapter-straight, bars, changed-head, chained-spanner, flex-head, size-adapters, swivel; digital-or-click, price.',
    },
  },
  results: {
    'does-it-matter.verdict': 'Does it matter',
    'what-to-do': 'What to do',
    mechanism: 'Why',
    'size-of-effect': 'How much',
    'rating-share': 'Share of the test torque',
    'share-of-most': 'Share of the highest mark',
    'full-scale-tolerance': 'Tolerance here, if it is of full scale',
  },
  faults: {
    'not-a-topic': {
      allowed: 'words that fit one topic, or its name',
      hint: 'No topic was found in that. Say it in other words, or type one of these: care: {care}; joint: {joint}; pull: {pull}; reach: {reach}; tool: {tool}.',
    },
    'several-topics': {
      allowed: 'one topic at a time',
      hint: 'That fits more than one topic: type {topics}.',
    },
  },
} as const
