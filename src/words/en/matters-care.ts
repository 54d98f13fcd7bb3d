// Does it matter: the care of a wrench, and the joint. A verdict, what to do, why, and how much for each topic.

export const mattersCare = {
  'matter.calibration.verdict': 'Yes, it matters: a wrench drifts with use, and nothing on its outside shows it.',
  'matter.calibration.what-to-do':
    'Have it checked every 12 months or 5000 uses, whichever comes first, and after a drop, an overload or a repair; its maker or your own rule may ask for more. A check with a scale tells you in between.',
  'matter.calibration.mechanism':
    'Springs settle, pivots wear and grease goes. Two wrenches that agree, or a tight nut that is pulled again, prove neither of them right.',
  'matter.calibration.size':
    'Within its limit l it delivers S (1 ± l): 96 to 104 of 100 at ±4 %. Out of its limit it can be off by any amount.',
  'matter.dropped.verdict': 'Yes, it matters: a drop ends the last check, whatever the sticker says.',
  'matter.dropped.what-to-do':
    'Put it aside. Check it at a fifth, three fifths and all of its highest mark, and use it again only if every reading is within its limit. If it is not, look again at what was tightened with it since.',
  'matter.dropped.mechanism':
    'A blow can shift the spring, the trip or the pointer and bend the head, while the wrench looks and clicks as before.',
  'matter.dropped.size': 'No formula gives it: anything from nothing to far out of the limit, so it is measured.',
  'matter.loosening-with-it.verdict':
    'Yes, it matters: do not loosen with a torque wrench; a stuck nut can overload it without a sign.',
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
    'Yes, it matters: below a fifth of its highest mark the standards promise nothing for a wrench; only its maker may.',
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
    'Yes, it matters: the faces settle after a wheel was off; when to go round again is for the maker of the vehicle to say.',
  'matter.wheel-re-torque.what-to-do':
    'Follow the manual of the vehicle. Faces clean, wheel cold, threads in the state that the figure is for, in the order of the manual, one slow click each, none loosened first. A nut that moved far is looked into, not just tightened.',
  'matter.wheel-re-torque.mechanism':
    'Paint, dirt and fresh faces bed in over the first drive, and a little settling takes much clamp force from short, stiff studs.',
  'matter.wheel-re-torque.size':
    'No formula gives it, and sources differ: from {first} to {last} after the wheel was off; one also names {minutes} minutes standing.',
} as const
