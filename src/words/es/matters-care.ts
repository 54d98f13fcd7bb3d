// Does it matter: the care of a wrench, and the joint. A verdict, what to do, why, and how much for each topic.

export const mattersCare = {
  'matter.calibration.verdict': 'Sí, importa: una llave varía con el uso, y por fuera no se le nota nada.',
  'matter.calibration.what-to-do':
    'Hacerla comprobar cada 12 meses o 5000 usos, lo que llegue antes, y después de una caída, una sobrecarga o una reparación; su fabricante o su propia regla pueden pedir más. Entretanto, una comprobación con báscula le da una idea.',
  'matter.calibration.mechanism':
    'Los muelles ceden, los pivotes se desgastan y la grasa se pierde. Dos llaves que coinciden, o una tuerca apretada de la que se tira otra vez, no demuestran que ninguna esté bien.',
  'matter.calibration.size':
    'Dentro de su límite l da S (1 ± l): de 96 a 104 con un valor de ajuste de 100 y ±4 %. Fuera de su límite puede desviarse en cualquier cantidad.',
  'matter.dropped.verdict': 'Sí, importa: una caída anula la última comprobación, diga lo que diga la pegatina.',
  'matter.dropped.what-to-do':
    'Apartarla. Comprobarla a un quinto, a tres quintos y al máximo de su escala, y volver a usarla solo si todas las lecturas están dentro de su límite. Si no, revisar lo que se apretó con ella desde entonces.',
  'matter.dropped.mechanism':
    'Un golpe puede mover el muelle, el disparo o la aguja y doblar el cabezal, mientras la llave se ve y hace clic como antes.',
  'matter.dropped.size': 'Ninguna fórmula lo da: desde nada hasta muy fuera del límite, por eso se mide.',
  'matter.loosening-with-it.verdict':
    'Sí, importa: no aflojar con una llave dinamométrica; una tuerca agarrotada puede sobrecargarla sin que se note.',
  'matter.loosening-with-it.what-to-do':
    'Aflojar con un mango de fuerza o una carraca (matraca). Si se usó la llave para ello, y más aún si pasó del máximo de su escala o fue hacia atrás, comprobarla antes de volver a fiarse de ella.',
  'matter.loosening-with-it.mechanism':
    'Una tuerca puede necesitar más para soltarse que lo que se usó para apretarla; muchas llaves de clic no disparan hacia atrás, así que nada indica con qué fuerza se tira.',
  'matter.loosening-with-it.size':
    'Ninguna fórmula lo da: soltarla exige lo que el óxido, el bloqueo y el reposo hayan hecho de ella. La llave se sobrecarga en cuanto eso supera el máximo de su escala.',
  'matter.stored-wound-up.verdict':
    'Depende de a qué valor y cuánto tiempo: semanas cambian poco, meses cerca del tope de la escala pueden hacer que una llave de clic dé mucho de menos.',
  'matter.stored-wound-up.what-to-do':
    'Para guardarla, aflojar una llave de clic hasta el mínimo de su escala, no por debajo. Después de meses tensada, hacerle dar unos clics a un valor de ajuste bajo y comprobarla antes de usarla.',
  'matter.stored-wound-up.mechanism':
    'El muelle de una llave de clic cede bajo carga y luego empuja menos, así que la llave dispara antes y da de menos.',
  'matter.stored-wound-up.size':
    'Ninguna fórmula lo da: poco tras semanas; se conocen casos de bastante más de un décimo de menos tras meses cerca del fondo de escala.',
  'matter.under-a-fifth.verdict':
    'Sí, importa: por debajo de un quinto del máximo de su escala, las normas no garantizan nada de una llave; solo su fabricante puede hacerlo.',
  'matter.under-a-fifth.what-to-do':
    'Usar una llave más pequeña, que tenga este valor de ajuste bien dentro de su rango.',
  'matter.under-a-fifth.mechanism':
    'La fricción y el juego dentro de la llave quedan más o menos igual mientras el par se hace pequeño, así que su parte en él crece; una tolerancia del fondo de escala crece del mismo modo.',
  'matter.under-a-fifth.size':
    'Una tolerancia l del fondo de escala es l · máximo de la escala/S a un valor de ajuste S: el 4 % de 250 es un tercio de 30. Una tolerancia de la lectura se garantiza solo a partir de un quinto.',
  'matter.anti-seize.verdict':
    'Sí, salvo que el dato del fabricante ya sea para esta pasta: con el mismo clic el tornillo queda, por lo general, más tensado.',
  'matter.anti-seize.what-to-do':
    'Averiguar para qué estado de la rosca es el dato, y usarlo tal como está impreso para ese estado. Si no, preguntar al fabricante o medir: un porcentaje de otro sitio corresponde a otra pasta y a otra unión. En ruedas, los fabricantes difieren sobre rosca y asiento: seguir al fabricante de este vehículo o de esta rueda, y donde diga limpio y seco, dejarlo limpio y seco.',
  'matter.anti-seize.mechanism':
    'El par es el que dice la llave, con pasta o sin ella; menos de él se va en fricción, así que más de él estira el tornillo.',
  'matter.anti-seize.size':
    'F = T/(K d): la precarga cambia según K_from/K_to (antes/después). Las fuentes dan K de {drylow} a {dryhigh} en seco y de {low} a {high} con pasta: ningún porcentaje único les sirve.',
  'matter.oil.verdict':
    'Sí, salvo que el dato del fabricante ya sea para rosca aceitada: con el mismo clic el tornillo queda, por lo general, más tensado.',
  'matter.oil.what-to-do':
    'Averiguar para qué estado de la rosca es el dato, y usarlo tal como está impreso para ese estado. Si no, preguntar al fabricante o medir. En ruedas, los fabricantes difieren sobre rosca y asiento: seguir al fabricante de este vehículo o de esta rueda, y donde diga limpio y seco, dejarlo limpio y seco.',
  'matter.oil.mechanism':
    'El aceite o la grasa quita fricción a la rosca y al asiento; la llave hace clic al mismo par con el tornillo más estirado. Solo en la rosca hace menos que en ambos.',
  'matter.oil.size':
    'F = T/(K d): la precarga cambia según K_from/K_to (antes/después). Las fuentes dan K de {drylow} a {dryhigh} en seco y de {low} a {high} con aceite: ningún porcentaje único les sirve.',
  'matter.re-used-nut.verdict':
    'Depende de la tuerca: una normal en buen estado puede servir otra vez, una autoblocante pierde su agarre, y algunas son para un solo uso.',
  'matter.re-used-nut.what-to-do':
    'Poner nuevas donde lo diga el fabricante, y siempre en lugar de tornillos que se apretaron hasta el límite elástico. Si no, limpiarlas, buscar daños y leer el par prevaleciente de una tuerca autoblocante mientras gira libre, una vuelta antes de que asiente: por debajo de lo que pide su fabricante, se cambia.',
  'matter.re-used-nut.mechanism':
    'Las roscas y los asientos usados son más lisos o más ásperos que los nuevos, así que el mismo par da otra precarga; un inserto de bloqueo se desgasta con cada uso.',
  'matter.re-used-nut.size':
    'F = T/(K d) con un K que ya no es el de una pieza nueva. Una tuerca autoblocante suma su par prevaleciente, final = objetivo + par prevaleciente: en aviación siempre; un manual del ejército lo suma solo a partir de un tercio del objetivo.',
  'matter.washers.verdict':
    'Depende de qué desliza: una arandela importa donde cambia lo que gira bajo la tuerca o la cabeza.',
  'matter.washers.what-to-do':
    'Poner lo que muestra el fabricante donde lo muestra, sin añadir ni quitar ninguna, plana y lo bastante dura; vigilar que no gire también.',
  'matter.washers.mechanism':
    'Mucho del par se va en fricción bajo lo que gira; una arandela cambia esa superficie y su radio medio, o gira ella misma.',
  'matter.washers.size':
    'T = F [P/2π + μ_t d2/(2 cos 30°) + μ_s r_s]; la última parte, bajo lo que gira, es {seat} del par de un M10 con una fricción de 0,12.',
  'matter.wheel-re-torque.verdict':
    'Sí, importa: las superficies se asientan después de quitar y poner una rueda; cuándo repasar el apriete lo dice el fabricante del vehículo.',
  'matter.wheel-re-torque.what-to-do':
    'Seguir el manual del vehículo. Superficies limpias, rueda fría, roscas en el estado para el que es el dato, en el orden del manual, un clic lento cada una, sin aflojar antes ninguna. Si una tuerca giró mucho, se busca la causa, no basta con apretarla.',
  'matter.wheel-re-torque.mechanism':
    'La pintura, la suciedad y las superficies nuevas se asientan en el primer trayecto, y un pequeño asentamiento quita mucha precarga a espárragos cortos y rígidos.',
  'matter.wheel-re-torque.size':
    'Ninguna fórmula lo da, y las fuentes difieren: de {first} a {last} después de montar la rueda; una nombra también {minutes} minutos de reposo.',
} as const
