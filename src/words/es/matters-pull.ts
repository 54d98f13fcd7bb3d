// Does it matter: the pull, what reaches the fastener, and the tool itself. A verdict, what to do, why, and how much for each topic.

export const mattersPull = {
  'matter.clicked-twice.verdict':
    'Depende de cómo: un segundo clic lento y deliberado añade por lo general poco; un tirón brusco o repetido, o uno que sigue más allá del clic, añade par.',
  'matter.clicked-twice.what-to-do':
    'Un clic, despacio, y marcar lo que está hecho. Un tirón posterior muestra cuándo arranca la tuerca, no cuánto se apretó.',
  'matter.clicked-twice.mechanism':
    'Una tuerca parada necesita más para arrancar que para seguir, así que con el mismo clic lento casi siempre se queda quieta. Un tirón brusco trae inercia, y pasado el clic solo la mano limita el tirón.',
  'matter.clicked-twice.size':
    'Ninguna fórmula lo da: poco donde la tuerca se quedó quieta, más donde se la vio girar.',
  'matter.hand-position.verdict':
    'Depende de la llave: a una que mide en su cuadrado le da igual, a una de clic le importa un poco, a una de viga sin empuñadura flotante más, y con un adaptador puesto cuenta del todo.',
  'matter.hand-position.what-to-do':
    'Tirar con una mano en la marca o en el centro de la empuñadura, perpendicular al mango.',
  'matter.hand-position.mechanism':
    'Una llave de clic dispara en un pivote detrás de su cuadrado, y una viga se dobla detrás de él, así que una mano más adentro da más y una más afuera da menos. Un adaptador alarga el brazo de la mano, pero no lo que la llave nota.',
  'matter.hand-position.size':
    'T/S = (L − p)/L · (H + X)/(H − p), donde p es 0 para una llave que mide en su cuadrado y por lo general de {low} a {high} de L para una llave de clic, de {beamlow} a {beamhigh} para una de viga flexible sin empuñadura flotante.',
  'matter.jerked.verdict': 'Sí, importa: un tirón brusco pasa del valor de ajuste antes de que nadie pueda parar.',
  'matter.jerked.what-to-do':
    'Aplicar el último quinto del par de forma continua, en medio segundo a cuatro segundos, y parar en el clic.',
  'matter.jerked.mechanism':
    'El clic tarda un instante, la mano tarda más, y el brazo y el mango siguen por su propia inercia.',
  'matter.jerked.size': 'Ninguna fórmula lo da; se cuenta de hasta {more} más que el valor de ajuste.',
  'matter.pipe-on-the-handle.verdict':
    'Sí, importa: un tubo lleva la mano más allá de la empuñadura; eso anula lo que garantiza el fabricante de la llave, y puede romperla.',
  'matter.pipe-on-the-handle.what-to-do':
    'Usar una llave más larga hecha para ese par, o un multiplicador de par: donde el tirón es demasiado duro, la llave es demasiado pequeña.',
  'matter.pipe-on-the-handle.mechanism':
    'El tirón se hace más fácil mientras el par queda casi igual: una llave de clic da un poco de menos, y con un adaptador puesto el par cambia con todo el brazo nuevo.',
  'matter.pipe-on-the-handle.size':
    'Sin adaptador T/S = (L − p)/L · H/(H − p), nunca por debajo de (L − p)/L: no más de unos {high} de menos en una llave de clic y {beam} en una de viga flexible sin empuñadura flotante, nada en una que mide en su cuadrado.',
  'matter.adapter-square.verdict':
    'No, no importa: con el adaptador perpendicular a la llave (90°) el valor de ajuste es el propio par, sea cual sea la longitud del adaptador.',
  'matter.adapter-square.what-to-do':
    'Ponerlo de verdad perpendicular, tirar perpendicular al mango con una mano en la empuñadura, y ajustar al propio par. Cualquier otro ángulo necesita su propio valor de ajuste.',
  'matter.adapter-square.mechanism':
    'Perpendicular al mango no añade nada a lo largo de la llave: E cos 90° es 0. La tuerca está más lejos de la mano, pero el tirón no es perpendicular a esa línea.',
  'matter.adapter-square.size':
    'T/S = (L + E cos θ)/L, que es 1 a 90°. Un tirón desviado δ de la perpendicular lo cambia en ± tan δ · E/L: a 5°, con un adaptador de un quinto de la palanca, 1,75 %.',
  'matter.adapter-straight.verdict':
    'Sí, importa: recto hacia delante, un adaptador se suma a la palanca y el tornillo recibe más que el valor de ajuste; recto hacia atrás recibe menos.',
  'matter.adapter-straight.what-to-do':
    'Medir palanca y adaptador de centro a centro y ajustar a S = T L/(L + E), con E negativo donde apunta hacia atrás; o girar el adaptador hasta que quede perpendicular y ajustar al propio par.',
  'matter.adapter-straight.mechanism':
    'La mano tira del tornillo con palanca y adaptador juntos, L + E, mientras la llave nota solo su propia L.',
  'matter.adapter-straight.size': 'T/S = (L + E)/L, o sea E/L más de lo ajustado: 50 sobre 400 es 12,5 %.',
  'matter.bars.verdict':
    'No, no importa: una extensión recta bajo el cuadrado, mantenida en línea, no quita nada a un tirón lento.',
  'matter.bars.what-to-do':
    'Sostener el cuadrado con la otra mano, mantener la extensión en línea y tan corta como alcance, y tirar despacio. La fórmula de la pata de gallo no es para esto.',
  'matter.bars.mechanism':
    'Está sobre el eje, así que no añade palanca; se torsiona como un muelle y transmite todo el par. El daño lo hacen inclinarla, dejarla caer por su peso y golpear.',
  'matter.bars.size':
    'T = S. La extensión se torsiona θ = T l/(G J), lo que solo falsea un ángulo que se lee en el mango.',
  'matter.changed-head.verdict':
    'Depende de dónde está su centro: solo cambia el par un cabezal que sujeta el tornillo más cerca o más lejos que el calibrado.',
  'matter.changed-head.what-to-do':
    'Medir los dos cabezales hasta su centro. Donde coinciden, ajustar al par; donde difieren, ajustar a S = T L/(L + Δ).',
  'matter.changed-head.mechanism':
    'La llave se reguló con la palanca hasta el centro de su propio cabezal; otra longitud de cabezal hace otra palanca.',
  'matter.changed-head.size':
    'T/S = (L + Δ)/L, con Δ el cabezal usado menos el calibrado: 30 más corto sobre 360 es 8,33 % menos.',
  'matter.chained-spanner.verdict':
    'Depende de su dirección: recta hacia delante cuenta toda su longitud, perpendicular (90°) nada de ella, y recta hacia atrás resta.',
  'matter.chained-spanner.what-to-do':
    'Medir del centro del cuadrado al centro del tornillo, tomar el ángulo desde la propia llave, y ajustar a lo que salga. Mantener la junta plana y el tirón perpendicular.',
  'matter.chained-spanner.mechanism':
    'Una llave fija enganchada a la llave es un adaptador: lo que cuenta es cuánto alcanza a lo largo de la llave. El tamaño de la tuerca no interviene.',
  'matter.chained-spanner.size': 'T/S = (L + E cos θ)/L; varios eslabones se suman, Σ E cos θ.',
  'matter.flex-head.verdict':
    'Depende de la inclinación y de dónde mide la llave: unos pocos grados no son nada, una inclinación fuerte puede dar de menos.',
  'matter.flex-head.what-to-do':
    'Mantener el mango en el plano en que gira el tornillo y el vaso perpendicular sobre él; donde tenga que inclinarse, inclinarlo poco.',
  'matter.flex-head.mechanism':
    'Un mango inclinado tiene un brazo más corto respecto al tornillo. Una llave que mide por delante de la articulación solo pide un tirón más fuerte; una que dispara por detrás hace clic con el mismo tirón, y el par baja.',
  'matter.flex-head.size':
    'Entre S y S r/L, r = h + (L − h) cos φ: con la articulación en el cuadrado, no más de 3,41 % de menos a 15°.',
  'matter.size-adapters.verdict':
    'No, no importa: en línea, un adaptador de medida no cambia el par; pero el cuadrado más pequeño limita lo que aguanta todo el conjunto.',
  'matter.size-adapters.what-to-do':
    'Quedarse por debajo de la capacidad de la pieza más débil, encajar a fondo cada unión y mantener el conjunto en línea.',
  'matter.size-adapters.mechanism':
    'Está sobre el eje y no añade palanca. Lo que aguanta un cuadrado va con la tercera potencia de su ancho.',
  'matter.size-adapters.size': 'T = S. De 1/2 a 3/8 in, el cuadrado conserva (3/4)³ de su resistencia, el 42 %.',
  'matter.swivel.verdict':
    'Depende del ángulo: dos manuales de motores permiten hasta 15° sin corrección; con más, el par oscila y se pierde, y ningún valor de ajuste lo arregla.',
  'matter.swivel.what-to-do':
    'Mantenerlo tan recto como se pueda. Donde tenga que doblarse más, buscar otro acceso: no se ofrece ningún valor de ajuste corregido.',
  'matter.swivel.mechanism':
    'Un cardán en ángulo no transmite el par de forma uniforme: dos veces por vuelta da más y menos, y la fricción y la carga lateral quitan algo además.',
  'matter.swivel.size':
    'Entre cos β y 1/cos β del valor de ajuste sin fricción, aproximadamente ±3,5 % a 15°, y más bajo todavía con ella.',
  'matter.digital-or-click.verdict':
    'No, no importa: con la misma tolerancia, las dos aprietan igual; cuentan más la última comprobación, el rango y un tirón continuo.',
  'matter.digital-or-click.what-to-do':
    'Tomar la que tenga su valor de ajuste bien dentro de su rango, cuya comprobación esté al día, y que se pueda leer desde donde se trabaja.',
  'matter.digital-or-click.mechanism':
    'A las dos se les exigen límites de 4 o 6 %. Difieren en otras cosas: el sitio de la mano influye en una llave de clic, una batería vacía detiene a la otra, y una a la que se le introdujo la longitud de un adaptador ya lo ha corregido.',
  'matter.tool.size':
    'S (1 ± l) para cualquiera de las dos. La fricción dispersa la precarga mucho más, incluso con una llave que está bien: de ±{low} a ±{high}, según dos listas.',
  'matter.price.verdict':
    'No, no importa: cuenta la tolerancia que mantiene cuando se comprueba; una llave barata comprobada es mejor que una cara sin comprobar.',
  'matter.price.what-to-do':
    'Comparar tolerancia, rango y si trae certificado; comprobarla cuando es nueva, y después como cualquier otra.',
  'matter.price.mechanism':
    'El dinero compra acabado, repuestos, trazos más finos y a menudo estabilidad con los años; no impide que un muelle ceda, ni salva una llave que se cayó.',
} as const
