// Words that say what a number is for, or what is asked. Phrases are folded, singular, parted by |.

export const roleWords = {
  wanted:
    't =|want|wanted|wants|need|needs|needed|calls for|call for|called for|required|requires|require|target|should get|supposed to|actual on the nut|on the nut|at the nut|at the bolt|at the fastener|on the bolt|on the fastener|torque to|has to be|must be|must get|needs to be|going for|aiming for|looking for|to be torqued to|fastener wants|nut wants|bolt wants|to reach|to achieve|out at the end|torqued to spec|desired|asks for|need to hit|to hit|has to get|needs to see|needs to get|supposed to get|required torque|wanted torque|target torque|actual',
  sourced:
    'spec|specs|specd|specified|specification|book says|book figure|book|book value|book torque|manual|manual says|instruction|sheet says|recommended|torque figure|figure|final figure|factory|oem|final|final torque|specifies|spec says|factory figure|given as|quoted',
  dialled:
    'put|input|put in|putting in|says|said|set to|set at|set on|dialled to|dialed to|dialled at|dialed at|dialled in|dialed in|dial on|dial at|dial was on|clicked at|clicks at|click at|clicked|clicks|reads|reading|read|shows|showed|showing|shown|wrench on|wrench at|wrench set|setting of|set my wrench to|set the wrench to|set mine to|set mine at|pulled|i used|used|torqued to|torqued it to|torqued them to|tightened to|tighten to|tighten them to|tighten it to|torque it to|torque them to|tightened them to|done at|did them at|stopped at|indicated|wrench says|wrench said|wrench reads|wrench read|wrench showed|wrench shows|scale said|was on|was set|went to|dialled|dialed|at the dial|dial read|dial reads|dial says|gauge says|pointer at|pointer on|on the wrench|on the dial|on the scale|i torqued|torqued|wrench clicked|pull at|pulls at|clicked off at|popped at|pops at|popped|tripped at|trips at|its set to|i set|i dial|i dialled|i dialed|ran them at|i went to|i went',
  'at-setting': 'at a setting of|setting|test point|check point|checkpoint|cal point|nominal',
  range:
    'range|of the range|goes up to|goes to|go up to|only goes to|wrench goes|wrench runs|wrench covers|clicker goes|goes from|runs from|go to|up to|max|maximum|full scale|fs|minimum|min|starts at|lowest mark|highest mark|tops out|capacity|rated to|rated|fullscale|bottom of the scale|top of the scale|lowest setting|smallest mark|stops at|ends at|runs out at|maxes out at|scale ends|mine starts',
  claimed:
    'formula says|which says|it says|which gives|gives|comes out at|comes to|works out|answer|i make that|i make it|makes|so i get|equals|calculated|i calculated|result|i came up with|would be|would you use|reckon|reckons|that says|i got',
  about: 'actually be torqued at|really be|may be|could be',
  longer: 'longer|longer than|further|further out|farther|more',
  shorter: 'shorter|shorter than|closer|closer in|less',
  usual: 'normal|usual|instead of|not the|not my|rather than|marked|original|standard|stock',
  jaws: 'jaw|jaws|size|sized|sizes',
  turn: 'turn|turned|turning|rotate|rotated|rotation|another|further turn|of turn|of rotation|angle stage|stage|torque angle|torque to yield|tty|degree turn|extra|plus|past|more turn|snug',
  deviation: 'low|high|off|out|error|deviation|reads low|reads high|reading low|reading high|over|under|deviates',
  tolerance:
    'accuracy|accurate|accurate to|tolerance|tolerances|within|good for|good to|spec limit|limit|class accuracy|wrench tolerance|plus minus|rated at|certified|uncertainty|precision',
  'of-scale':
    'of full scale|full scale|of fs|fs|f s|fullscale|of range|of max|of maximum|of the full scale|full scale deflection|fsd',
  'of-reading': 'of reading|of the reading|of indicated|of value|reading or|of setting',
  reduce:
    'same clamp|same preload|same tension|same clamping force|same clamp load|off|less|reduce|reduced|reduction|lower|lowered|decrease|decreased|derate|derated|drop|dropped by|take off|cut|cut back|knock off|back off|minus|subtract|of the dry|of dry|of the spec|of spec|of the figure|of book|rule of thumb|of the book|of the normal|of normal|percent of',
  loss: 'loss|losses|lost|lose|loses|add|efficiency|efficient|eff|additional|friction loss',
  snug: 'snug',
  vertical:
    'vertical|vertically|bar down|between wrench and crowfoot|between the wrench and the crowfoot|straight up|going down|straight down|down to|twist|twisting|twists|twisty|absorb|absorbs|absorbed|between the wrench and the socket|between socket and wrench|between wrench and socket|under the drive|below the drive|sag|winds up|wind up like|flexes|torsion|deep',
  backwards:
    'work backwards|work backward|working backwards|work it backwards|calculate backwards|reverse|in reverse|the reverse',
  'which-end':
    'which end|where should i start|where in the range|where in that range|low end|high end|go for the middle|in the middle|middle of the range|which number|upper end|lower end|top or bottom|high or low|somewhere in between|split the difference|what do i aim for|what should i aim for|where do i aim',
  lowest:
    'lowest 20|bottom 20|lower 20|first 20|least accurate|bottom of the range|bottom of its range|low end of the scale|lowest part of the range|bottom fifth|lower end of the scale|bottom end|lowest part|bottom part|lower part of the range|bottom of the scale|first fifth',
  'own-weight': 'weighs|weigh|weight of the wrench|wrench weight|its weight|own weight|mass of the wrench',
  formula: 'formula|formulae|equation|calculation|calculate',
  care: 'store|storing|storage|stored|garage|freezing|temperature|humidity|winter|accuracy|lubricate it|battery|exercise it|maintenance|maintain',
  worry: 'dropped|fell|fallen',
} as const

export const intentWords = {
  'ask-setting':
    'what do i set|what to set|do i set|what should i set|should i set|what do i dial|what to dial|do i dial|dial in|wrench setting|what setting|set my wrench|set the wrench|what should i dial|what reading|what should the wrench|what should the scale|what must i set|what would i set|set it to|set it at|set it|should the wrench be set|wrench be set|what would the setting|what will the setting|which setting|what is the setting|whats the setting|what goes on the wrench|what do i put|set the clicker|how do i set|correct setting|what number do i|what do i torque it|what is the wrench setting|what is my setting|which do i dial|click at what|set mine|what do i need to set|what should it be set|where do i set|new setting|adjusted setting|corrected setting|what do i set it|adjust the setting|what setting do i|setting for|set on the wrench|on the wrench then|need on the wrench|what to put on the wrench|what do i crank|what should i torque it|do i recalculate|need to recalculate|recalculate|compensate|correct for it|how do i correct|correction factor|what do i wind',
  'ask-got':
    'forgot to correct|how far off is the bolt|did i|have i|did i over torque|did i over tighten|too tight|what torque is it|without the adapter|without the tool|plain socket|normal socket|ordinary socket|taken into account|already allows|already corrected|already allowed for|includes the special tool|includes the tool|includes the adapter|allowed for|accounts for|with the tool on|with it on|comes out|come out|came out|out of it|get out|did the nut get|nut get|bolt get|fastener get|nut got|bolt got|nut gets|bolt gets|fastener gets|fastener got|actually applied|torque applied|applied torque|actual torque|real torque|true torque|really on|did i put|really getting|really get|get back to|end up with|ended up with|what torque did|is the nut really|is really on|actually on the nut|actually get|actually got|what did i get|what did i actually|what did i really|torque on the nut|torque at the nut|torque on the bolt|torque at the bolt|torque at bolt|torque at the fastener|torque on the fastener|how much did|how tight did|nut see|nut sees|nut really|what did it get|over torqued|overtorqued|overtorque|undertorqued|under torqued|did it get|what was the torque|actually applied torque|got on the nut|delivered|deliver|actually torqued',
  'ask-matter':
    'reading change|torque change|setting change|value change|change the reading|readings change|any good|good enough|am i safe|the same as|does it matter|does that matter|matter|matters|does it change|does this change|does that change|does the setting change|change anything|change the torque|change the setting|changes the torque|affect|affects|effect|influence|make a difference|makes a difference|any difference|a difference|is it ok|is it okay|is that ok|is it fine|ok to|okay to|is that right|is that so|is this right|is this true|is it true|true|is that true|right|still right|still valid|still ok|still good|still accurate|still come out right|come out right|need to|do i need|have to|do i have to|do we have to|must i|should i|bad idea|screw up|mess up|how bad|throw off|throws off|same as|the same|nonsense|myth|correct|a problem|anything wrong|safe|worry|can i|can you|lower or higher|higher or lower|will it|will my|would it|really|how come|how can|why|is he right|toast|what happens|good or bad|reliable|trust|ruin|hurt|false|does a|do i still|wrong',
  'ask-spec':
    'chart|that the row|right row|reading the chart|table says|torque sequence|torque procedure|torque order|torque spec|torque specs|torque specification|spec for|specs for|what is the spec|whats the spec|torque for|torque value|torque values|torque figure for|torque figures|torque setting for|how tight|what torque for|whats the torque|what is the torque|what are the torque|the torque for|torque on the|torque of the|whats the number|what number should|number i should|anyone know|anybody know|does anyone|torque settings for|spec please|specs please|need the torque|looking for the torque|find the torque|know the torque|right torque for|correct torque for|recommended torque for|how many ft lb|how many newton|how many nm|how much torque|what do you torque|what are the spec|torque table|torque chart|no torque for|no spec|confirm|tightening torque|torque numbers|torque number|book torque for|what does the manual say|what is right|what torque should|what torque do|torques for|lost the manual|what should i torque|ft lbs for|nm for|torque please',
  'ask-which':
    'which wrench|which torque wrench|which one of the wrenches|what wrench|what torque wrench|which wrench can|wrench from the rack|wrench to use|wrench to grab|wrench should i use|wrench should i grab|wrench should i take|wrench do i need|wrench do i use|wrench do i take|have a wrench that|got a wrench that|have we a wrench|do we have a wrench|have we got a wrench|any wrench that|any of the wrenches',
  convert:
    'the same as|how many nm|how many newton|how many ft lb|convert|conversion|what is that in|in newton metre|same as|equal|equals|translate|how many|in nm|in ft lb|in lbf ft|into|equivalent|converts|converted|whats that in|what is it in|what in|works out in|to nm|to ft lb|change to|expressed in|= in|go from',
  compare:
    'back to back|click at the same|clicks at the same|same point|against the shop|against each other|side by side|wrenches disagree|disagree|dont agree|do not agree|who is lying|which one is wrong|which is wrong|which is correct|which one is correct|which wrench|which is right|which one is right|which is out|which one is out|compare|comparing|compared|different reading|different readings|versus|vs|against each other|agree|which do i trust|which one do i trust|which one to believe|which one is off',
  pair: 'two wrenches|two torque wrenches|both wrenches|old wrench|new wrench|other wrench|second wrench|my two torque wrenches|my other wrench|both of them',
  batch: 'batch|sample|samples|set a|set b|group a|group b|before and after|before|after',
  check:
    'check|checking|checked|test|testing|calibrate|calibrating|verify|how far off|how far out|accurate|is it accurate|off by|is it off|home check|pass|fail|pass or fail|toast|in spec|out of spec|within spec',
  interval:
    'how often|interval|due|next check|when is it due|recalibrate|recalibration|calibration due|calibration|calibrated|calibration sticker|out of calibration|out of cal|sticker|cert|certificate|expire|expires|expired|how long does a calibration|how long is|last check|last checked|last calibrated|annual|every year|yearly|last me how long',
  reach: 'reach|get at|cant reach|no room|in the way|blocked|tight spot|inconvenient|no socket fits|only reach',
} as const

export const outWords = {
  repair:
    'drive on|ok to drive|safe to drive|safe to ride|ok to ride|go fly|limp home|drive home|drive it|still drive|keep driving|snapped|snapped off|sheared|broke off|broken off|extract|extractor|easy out|stripped|cross threaded|helicoil|heli coil|drill out|drilled out|rusted|seized|stuck|wont come off|will not come off|get the stud out|rounded|rounded off|remove|removal|leak|leaking|seeping|weeping|noise|squeak|wobbles|vibration|rattle|knock|damaged|damaged thread|which brand|buy|best wrench|recommend a|where can i get|where to buy|how do i replace|replace the|diagnose|whats wrong with|penetrating oil|spin it by hand|cracked|warped|misfire|wiring|sensor|timing|firing order|which way does|what am i looking at|wrong nuts|wont thread|will not thread|would not thread|not thread|hardware|jack|jacks|down on its wheels|weather|joke|recipe|poem|hello|hi|hey|thanks|thank you|good morning|who are you|weld|welding|price of|how much is|for sale',
  vehicle:
    'keel bolt|head bolt|wheel bolt|wheel stud|lug stud|axle nut|wheel nut|hub nut|lug nut|lug|hatch|quad|atv|outboard motor|lawnmower|chainsaw|forklift|carb|rocker|bed bolts|main cap|big end|con rod|rod bolt|oil change|oil seeping|oil drain plug|oil cooler|oil pressure|hatchback|sedan|pickup|minivan|truck|motorcycle|motorbike|scooter|tractor|boat|camper|aircraft|airplane|plane|car|van|bike|bicycle|engine|caliper|caliper bracket|head bolts|crank pulley|drain plug|spark plug|plug|steering stem|swingarm|swing arm|axle|hub|keel|lug nuts|cylinder head|main bearing|rod bolts|flywheel|cam|camshaft|subframe|control arm|ball joint|strut|mower|outboard|prop|propeller|gearbox|transmission|diff|pinion|wheel bearing|stem|crank|pedal|seatpost|handlebar|cassette|bottom bracket|valve cover|intake manifold|exhaust manifold|water pump|oil pan|sump|oil filter|brake disc|rotor|caliper bolts|diesel|sway bar|suspension|bracket|cover|trailer|wheel|wheels|rim|rims|alloys',
} as const
