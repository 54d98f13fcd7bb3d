// Does it matter: the care of a wrench, and the joint. A verdict, what to do, why, and how much for each topic.

export const mattersCare = {
  'matter.calibration.verdict': 'Oui, cela compte : une clé dérive à l’usage, et rien ne le montre de l’extérieur.',
  'matter.calibration.what-to-do':
    'La faire contrôler tous les 12 mois ou toutes les 5000 utilisations, selon ce qui arrive d’abord, et après une chute, une surcharge ou une réparation ; son fabricant ou votre propre règle peut demander plus. Entre-temps, un contrôle au peson renseigne.',
  'matter.calibration.mechanism':
    'Les ressorts se tassent, les pivots s’usent et la graisse s’en va. Deux clés qui sont d’accord, ou un écrou serré que l’on tire de nouveau, ne prouvent ni l’un ni l’autre qu’une clé est juste.',
  'matter.calibration.size':
    'Dans sa limite l, elle donne S (1 ± l) : 96 à 104 pour 100 à ±4 %. Hors de sa limite, elle peut s’écarter de n’importe combien.',
  'matter.dropped.verdict': 'Oui, cela compte : une chute met fin au dernier contrôle, quoi que dise l’étiquette.',
  'matter.dropped.what-to-do':
    'La mettre de côté. La contrôler à un cinquième, à trois cinquièmes et à la totalité de sa graduation la plus haute, et ne la réutiliser que si chaque lecture est dans sa limite. Sinon, revoir ce qui a été serré avec elle depuis.',
  'matter.dropped.mechanism':
    'Un choc peut déplacer le ressort, le déclencheur ou l’aiguille et tordre la tête, alors que la clé a le même aspect et le même déclic qu’avant.',
  'matter.dropped.size': 'Aucune formule ne le donne : de rien à loin hors de la limite, donc on le mesure.',
  'matter.loosening-with-it.verdict':
    'Oui, cela compte : ne pas desserrer avec une clé dynamométrique ; un écrou bloqué peut la surcharger sans aucun signe.',
  'matter.loosening-with-it.what-to-do':
    'Desserrer avec une simple barre ou un cliquet. Si la clé a servi à cela, et plus encore au-delà de sa graduation la plus haute ou à l’envers, la contrôler avant de s’y fier de nouveau.',
  'matter.loosening-with-it.mechanism':
    'Un écrou peut demander plus pour se décoller que pour être serré ; beaucoup de clés à déclic ne déclenchent pas à l’envers, si bien que rien ne dit à quel point on tire fort.',
  'matter.loosening-with-it.size':
    'Aucune formule ne le donne : le décollage demande ce que la rouille, le freinage et le repos en ont fait. La clé est surchargée dès que cela dépasse sa graduation la plus haute.',
  'matter.stored-wound-up.verdict':
    'Cela dépend du réglage et de la durée : des semaines changent peu, des mois près du haut de l’échelle peuvent faire qu’une clé à déclic donne bien moins qu’indiqué.',
  'matter.stored-wound-up.what-to-do':
    'Pour la ranger, détendre une clé à déclic jusqu’à sa graduation la plus basse, pas au-dessous. Après des mois tendue, la faire déclencher quelques fois à un réglage bas et la contrôler avant de l’utiliser.',
  'matter.stored-wound-up.mechanism':
    'Le ressort d’une clé à déclic se tasse sous charge et pousse ensuite moins : la clé déclenche trop tôt et donne moins qu’indiqué.',
  'matter.stored-wound-up.size':
    'Aucune formule ne le donne : peu après des semaines ; bien plus d’un dixième en moins après des mois près de la pleine échelle, cela s’est vu.',
  'matter.under-a-fifth.verdict':
    'Oui, cela compte : au-dessous d’un cinquième de sa graduation la plus haute, les normes ne garantissent rien pour une clé ; seul son fabricant le peut.',
  'matter.under-a-fifth.what-to-do':
    'Prendre une clé plus petite, une qui a ce réglage bien à l’intérieur de sa plage.',
  'matter.under-a-fifth.mechanism':
    'Le frottement et le jeu dans la clé restent à peu près les mêmes alors que le couple devient petit, donc leur part grandit ; une tolérance de la pleine échelle grandit de la même façon.',
  'matter.under-a-fifth.size':
    'Une tolérance l de la pleine échelle est l · most/S à un réglage S (most : la graduation la plus haute) : 4 % de 250 font un tiers de 30. Une tolérance de la lecture n’est garantie qu’à partir d’un cinquième.',
  'matter.anti-seize.verdict':
    'Oui, sauf si la valeur du constructeur vaut déjà pour cette pâte : au même déclic, la vis est en règle générale serrée plus fort.',
  'matter.anti-seize.what-to-do':
    'Chercher pour quel état du filetage vaut la valeur, et l’utiliser telle qu’imprimée pour cet état. Sinon, demander au constructeur ou mesurer : un pourcentage trouvé ailleurs appartient à une autre pâte et à un autre assemblage. Sur les roues, les constructeurs diffèrent sur le filetage et l’appui : suivre le constructeur de ce véhicule ou de cette roue, et là où il dit propre et sec, laisser propre et sec.',
  'matter.anti-seize.mechanism':
    'Le couple est celui que dit la clé, avec ou sans pâte ; une part plus petite va dans le frottement, donc une part plus grande allonge la vis.',
  'matter.anti-seize.size':
    'F = T/(K d) : la force de serrage change de K_from/K_to. Les sources donnent K {drylow} à {dryhigh} à sec et {low} à {high} avec pâte : aucun pourcentage unique ne leur convient.',
  'matter.oil.verdict':
    'Oui, sauf si la valeur du constructeur vaut déjà pour un filetage huilé : au même déclic, la vis est en règle générale serrée plus fort.',
  'matter.oil.what-to-do':
    'Chercher pour quel état du filetage vaut la valeur, et l’utiliser telle qu’imprimée pour cet état. Sinon, demander au constructeur ou mesurer. Sur les roues, les constructeurs diffèrent sur le filetage et l’appui : suivre le constructeur de ce véhicule ou de cette roue, et là où il dit propre et sec, laisser propre et sec.',
  'matter.oil.mechanism':
    'L’huile ou la graisse enlève du frottement au filetage et à l’appui ; la clé fait son déclic au même couple avec une vis plus allongée. Sur le filetage seul, elle fait moins que sur les deux.',
  'matter.oil.size':
    'F = T/(K d) : la force de serrage change de K_from/K_to. Les sources donnent K {drylow} à {dryhigh} à sec et {low} à {high} huilé : aucun pourcentage unique ne leur convient.',
  'matter.re-used-nut.verdict':
    'Cela dépend de l’écrou : un écrou simple en bon état peut resservir, un écrou autofreiné perd son freinage, et certains sont faits pour un seul emploi.',
  'matter.re-used-nut.what-to-do':
    'Monter des neufs là où le constructeur le dit, et toujours à la place de fixations serrées à la limite d’élasticité. Sinon, les nettoyer, chercher des dégâts, et lire le couple d’autofreinage d’un écrou autofreiné pendant qu’il tourne librement, un tour avant qu’il vienne en appui : au-dessous de ce que demande son fabricant, il est remplacé.',
  'matter.re-used-nut.mechanism':
    'Un filetage et un appui usagés sont plus lisses ou plus rugueux que neufs, donc le même couple donne une autre force de serrage ; une bague de freinage s’use à chaque emploi.',
  'matter.re-used-nut.size':
    'F = T/(K d) avec un K qui n’est plus celui du neuf. Un écrou autofreiné ajoute son couple d’autofreinage, final = visé + autofreinage : toujours en aéronautique ; un manuel d’armée ne l’ajoute qu’à partir d’un tiers du couple visé.',
  'matter.washers.verdict':
    'Cela dépend de ce qui glisse : une rondelle compte là où elle change ce qui tourne sous l’écrou ou sous la tête.',
  'matter.washers.what-to-do':
    'Monter ce que le constructeur montre là où il le montre, ni une de plus ni une de moins, plates et assez dures ; veiller à ce que la rondelle ne tourne pas avec.',
  'matter.washers.mechanism':
    'Une grande part du couple va dans le frottement sous ce qui tourne ; une rondelle change cette surface et son rayon moyen, ou tourne elle-même.',
  'matter.washers.size':
    'T = F [P/2π + μ_t d2/(2 cos 30°) + μ_s r_s] ; la dernière partie, sous ce qui tourne, fait {seat} du couple d’une M10 à un frottement de 0,12.',
  'matter.wheel-re-torque.verdict':
    'Oui, cela compte : les faces se tassent après une dépose de roue ; quand refaire le tour, c’est au constructeur du véhicule de le dire.',
  'matter.wheel-re-torque.what-to-do':
    'Suivre le manuel du véhicule. Faces propres, roue froide, filetage dans l’état pour lequel vaut la valeur, dans l’ordre du manuel, un déclic lent chacun, aucun desserré d’abord. Un écrou qui a beaucoup tourné s’examine, il ne suffit pas de le serrer.',
  'matter.wheel-re-torque.mechanism':
    'La peinture, la saleté et les faces neuves se tassent pendant le premier trajet, et un peu de tassement enlève beaucoup de force de serrage à des goujons courts et raides.',
  'matter.wheel-re-torque.size':
    'Aucune formule ne le donne, et les sources diffèrent : de {first} à {last} après la dépose de la roue ; une indique aussi {minutes} minutes à l’arrêt.',
} as const
