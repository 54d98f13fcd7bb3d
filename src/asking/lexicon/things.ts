// What people call the things on the bench: adapters, bars, wrenches, scales, joints. Phrases are folded, singular, parted by |.

export const things = {
  crowfoot:
    'crow|crowfoot|crow foot|crows foot|crowsfoot|crowfeet|crow feet|crowsfeet|claw foot|clawfoot|crow foot wrench|crowfoot wrench|crow foot extension|crowfoot adapter|crowfoot spanner|crowfoot attachment',
  spanner:
    'spanner|ring spanner|open ended spanner|open end spanner|combination spanner|box end wrench|box end|box wrench|open end wrench|open ended wrench|combination wrench|hook spanner|pin spanner|c spanner|flare nut wrench|line wrench',
  adapter:
    'sticks out|stick out|the tool has|tool has|tool measures|from the square hole|middle of the jaws|centre of the jaws|center of the jaws|reaches out|protrudes|adapter|adaptor|a =|e =|le =|lx =|torque adapter|torque adaptor|offset adapter|offset adaptor|offset tab|offset link|offset wrench|dog bone|dogbone|special tool|special wrench|special spanner|service tool|factory tool|factory spanner|extension tool|extension wrench|extension spanner|peg tool|tool arm|arm of the tool|square hole|base nut wrench|hook spanner with a square hole|spanner adapter|extension plate|offset|offset head|attachment|torque arm|offset extension',
  extension: 'extension|extender|ext|extention|extension piece|extensions piece|extn',
  bar: 'extension bar|vertical extension|drive extension|socket extension|impact extension|ratchet extension|extension rod|long socket extension|deep socket|straight extension',
  wrench:
    'wrench|torque wrench|click wrench|beam wrench|dial wrench|click type|clicker|click torque wrench|tw|ratchet|micrometer wrench|torque spanner|split beam|lw|wrench length|length of the wrench|wrench arm',
  'lever-arm':
    'l =|lw =|lever arm|lever|moment arm|effective length|lever length|drive to grip|drive to hand grip|drive to handle|grip to drive|handle to drive|centre to grip|center to grip|drive to the grip|drive to middle of the grip|grip centre|grip center|middle of the grip|middle of the handle|centre of the handle|center of the handle|centre of the grip|center of the grip|square to grip|head to grip|grip to the drive|grip to original centre|grip to original center|l1',
  arm: 'arm|arm length',
  scales: 'scale|scales|on a scale|on the scale|scale said',
  handle: 'handle|grip|hand grip|handgrip',
  overall:
    'overall|end to end|tip to tip|total length|full length|overall length|from end to end|total|tip to toe|end of the handle|end of handle|butt of the handle|whole length',
  hand: 'my hand|hand|hold it|hold|holding|held|grab|grabbing|gripping|gripped|choke up|choked up|choking up|palm|pulling at|pull at|pulled at|hand is|two hands|both hands|one hand|hand position|hand placement|hold the wrench|hold it at|held it at|where i hold|hands',
  'from-drive':
    'from the drive|from drive|from the square|from square drive|from the square drive|from the head|from head|from the centre of the drive|from the center of the drive|from the socket|from the nut|from the pivot|from the ratchet|from drive centre|from drive center|to the centre of the socket|to the center of the socket|to the drive|from the ratchet head|out from the drive|out from the square',
  pipe: 'pipe|cheater|cheater bar|cheater pipe|snipe|handle extension|handle extender|length of pipe|tube|jack handle|piece of pipe|extension handle|scaffold tube|bit of pipe|longer handle|breaker bar on the handle|pipe on handle|pipe on the handle|pipe over the handle',
  drive:
    'drive|dr|square drive|drv|inch drive|drive size|drive socket|drive ratchet|drive clicker|drive torque wrench|drive wrench|sq drive',
  socket:
    'socket|head|hex|jaw|jaw size|af|across flats|hex head|bolt head|deep socket size|opening|size nut|allen|allen key|hex key|spline|six point|twelve point',
  bolt: 'bolt|stud|screw|cap screw|dia|diameter|thread|keel bolt|head bolt|bolt size|thread size|capscrew|fastener|hex bolt|wheel bolt|wheel stud|lug stud',
  nut: 'nut|lug nut|lugnut|wheel nut|axle nut|lug|hub nut|castle nut|lock nut|locknut|locking nut|nyloc|nylock|steering nut|pinion nut',
  fitting:
    'end fitting|interchangeable head|changeable head|insert head|head insert|insert tool|open end insert|ring insert|insert|fitting|plug in head|weld on fitting|weld on end fitting|weld on|swap head|swapped the head|swapped the ratchet head|different head|longer head|shorter head|exchange head|exchangeable head|push in head|changed the head|other head|ratchet insert|drop in head|used head|new head|weld on head|open end head|ring head|end piece',
  multiplier:
    'multiplier|torque multiplier|torque multiplyer|multiplyer|planetary|gear drive|gearbox multiplier|reduction gear|geared head|torque mult|nut runner|multiplication',
  swivel:
    'swivel|swivel socket|u joint|ujoint|u j|universal joint|universal|wobbler|wobble socket|wobble extension|wobble ext|uni joint|unijoint|bendy joint|flex adapter|flex socket|knuckle joint|cardan|cardan joint|wobble|wobbly extension|swivel joint|uj|swivel adapter|impact swivel|flexible joint|wobble bar|wobble drive',
  'flex-head':
    'flex head|flexhead|flexi head|flexy head|flexible head|hinged head|pivoting head|tilting head|flex head wrench|flex ratchet|flexible ratchet|hinge|flexhead wrench|swivel head|flex head ratchet|locking flex head|articulated head|swivelling head|pivot head|indexable head',
  'weigh-scale':
    'luggage scale|fish scale|fishing scale|bathroom scale|weigher|luggage weigher|spring balance|spring scale|crane scale|hanging scale|scale at the end|digital scale|hook scale|pull scale|force gauge|kitchen scale|scale reading|postal scale|newton scale|force gage|dynamometer|scale hooked|scale pulls|scale shows|scale showed|scale said|scale says|scale read|scale reads|scale on the handle|what should the scale read|what should the scale show|what should the scale say|what must the scale show|hanging weight|suitcase scale|kg scale',
  weight:
    'weight|bucket|dumbbell|dumb bell|hang|hung|hanging|hangs|water jug|jug|kettlebell|barbell plate|gym plate|sandbag|suspend|suspended|weights|load hung',
  hook: 'hook|rope|strap|string|cord|loop|tape mark|hook point|chain',
  tester:
    'digital adapter|electronic adapter|digital torque adapter|electronic torque adapter|tester|torque tester|checker|torque checker|analyser|analyzer|transducer|calibrator|bench tester|torque gauge|test rig|calibration rig|test bench|torque rig|electronic tester|digital tester|torque meter|reference|calibration lab|cal lab|cal cert|as found|as left|torque cell|static tester',
  clamp:
    'clamp|clamp load|clamping force|clamp force|preload|pre load|preloaded|bolt load|bolt tension|tension|axial load|tension in the bolt|clamping load|squeeze|bolt stretch|clamping|load washer|load cell|load in the bolt|axial force|bolt force|strain gauge|clamping pressure|pretension|pretensioned',
  strength:
    'proof|proof load|yield|yield strength|proof stress|tensile|yield point|max torque for|highest torque|strength',
  washer: 'washer|washers under|flat washer|hardened washer|spring washer|split washer',
  friction: 'friction|coefficient of friction|friction coefficient|mu|µ|mue|friction coeff|thread friction',
  'k-factor':
    'k|k factor|nut factor|torque coefficient|friction factor|k value|kfactor|k coefficient|tightening factor|torque factor',
  prevailing:
    'prevailing|prevailing torque|nut runs at|locknut runs at|nut turns at|run on torque|run on|running torque|drag torque|locking torque|turning torque|free running torque|run down torque|rundown torque|self locking|running drag|drag|rundown drag',
  pivot: 'pivot|pivot point|pivot pin|trip point',
} as const
