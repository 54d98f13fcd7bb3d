// What is said of the way from the hand to the fastener: adapters, heads, swivels, bars, multipliers, pulls, units.

export const sayReach = {
  'adapter.reach':
    'Cuánto alcanzan los adaptadores a lo largo de la llave, por delante del cuadrado (negativo: hacia atrás, hacia la mano)',
  'adapter.effective': 'La palanca con la que la mano tira realmente del tornillo',
  'adapter.factor': 'Par en el tornillo por cada unidad en la llave (algunos manuales imprimen el inverso)',
  'adapter.factor-hand':
    'Par en el tornillo por cada unidad en la llave, con la mano fuera del centro de la empuñadura (algunos manuales imprimen el inverso)',
  'adapter.straight-assumed': 'Con el adaptador recto hacia delante, lo que no se indicó: {answer}',
  'adapter-setting.set': 'Ajustar la llave a {setting}: el tornillo recibe {torque}.',
  'adapter-setting.same': 'Ajustar a {setting}, el propio par: este adaptador no añade nada a la palanca.',
  'adapter-setting.span':
    'Ajustar la llave a {setting} ({low} a {high} para los extremos): el tornillo recibe {torque}, el centro de lo especificado.',
  'adapter-setting.span-part':
    'Ajustar la llave a {setting}: el tornillo recibe {torque}, el centro de lo especificado. Del resto, esta llave solo puede de {from} a {to}.',
  'adapter-setting.open':
    'Ajustar la llave a {setting}, el extremo seguro: con la mano fuera del centro de la empuñadura, el valor de ajuste correcto para {torque} está entre ese y {high}.',
  'adapter-setting.open-span':
    'Ajustar la llave a un valor de {from} a {to}: con la mano fuera del centro de la empuñadura, eso mantiene el tornillo dentro de lo especificado dispare donde dispare la llave.',
  'adapter-setting.open-none':
    'Ningún valor de ajuste queda con seguridad dentro de lo especificado: con la mano fuera del centro de la empuñadura, {torque} puede necesitar {setting} o {high}. Tirar del centro de la empuñadura, o medir dónde dispara la llave.',
  'adapter-setting.part':
    'Esta llave solo puede con una parte de lo especificado: ajustarla a un valor de {from} a {to}. El centro, {torque}, necesitaría {setting}, fuera de su rango.',
  'adapter-setting.beyond':
    'No usar así esta llave: {torque} en el tornillo necesitaría {setting}, fuera de su rango; con el adaptador perpendicular (90°) el valor de ajuste es el propio par.',
  'adapter-setting.beyond-all':
    'No usar así esta llave: {torque} en el tornillo necesitaría {setting}, fuera de su rango. Usar otra llave.',
  'adapter-setting.setting': 'A cuánto ajustar',
  'adapter-setting.pivot-unknown':
    'No se sabe dónde dispara la llave, y fuera del centro de la empuñadura eso importa: el valor de ajuste en los dos extremos de lo habitual',
  'adapter-setting.ends': 'Los valores de ajuste para los dos extremos de lo especificado',
  'adapter-setting.tolerance-alone':
    'Lo que la propia llave puede hacer de ese valor de ajuste, solo por su tolerancia de {tolerance}',
  'adapter-setting.inside': 'La incertidumbre queda dentro de lo especificado; ancho de la banda del 95 %',
  'adapter-setting.not-inside':
    'La incertidumbre NO queda dentro de lo especificado: medir mejor o usar una llave mejor; ancho de la banda del 95 %',
  'adapter-reading.got': 'Con {reading} en la llave, el tornillo recibió {torque} (95 %: {low} a {high}).',
  'adapter-reading.torque': 'Lo que recibió el tornillo',
  'adapter-reading.pivot-unknown':
    'No se sabe dónde dispara la llave, y fuera del centro de la empuñadura eso importa: el par en los dos extremos de lo habitual',
  'doubt.one': 'Incertidumbre al 95 %, sobre todo por: {first}',
  'doubt.two': 'Incertidumbre al 95 %, sobre todo por: {first}; después: {second}',
  'cause.wrench': 'la tolerancia de la llave',
  'cause.lever': 'la longitud de la palanca',
  'cause.adapter': 'la longitud del adaptador',
  'cause.hand': 'dónde se pone la mano',
  'cause.angle': 'el ángulo del adaptador',
  'cause.square': 'un tirón no perpendicular al mango',
  'cause.pivot': 'dónde dispara la llave',
  'hand-position.none': 'El tornillo recibe {torque}: a una llave que mide en el cuadrado le da igual dónde se agarre.',
  'hand-position.at-grip': 'El tornillo recibe {torque}: agarrada donde se calibró, el valor de ajuste es el par.',
  'hand-position.more': 'Ajustada a {setting} y agarrada más adentro, la llave da {torque}: {change} más.',
  'hand-position.less': 'Ajustada a {setting} y agarrada más afuera, la llave da {torque} ({change}).',
  'hand-position.open-more':
    'Ajustada a {setting} y agarrada más adentro, la llave da de {low} a {high} según dónde dispare (95 %), en el centro {torque}: {change} más.',
  'hand-position.open-less':
    'Ajustada a {setting} y agarrada más afuera, la llave da de {low} a {high} según dónde dispare (95 %), en el centro {torque} ({change}).',
  'hand-position.torque': 'Lo que recibe el tornillo',
  'hand-position.change': 'Cambio respecto al valor de ajuste',
  'pivot-offset.found': 'La llave dispara {pivot} por detrás de su cuadrado (95 %: {low} a {high}).',
  'pivot-offset.not-from-zero':
    'El pivote no se puede distinguir de 0: {pivot}, con una incertidumbre de {low} a {high}. Repetir los dos tirones y tomar medias, con la mano cerca de la mitad del mango.',
  'pivot-offset.impossible':
    'Estos dos tirones no encajan en una misma llave: {pivot} no es posible (95 %: {low} a {high}). Repetir los dos tirones.',
  'pivot-offset.ratio': 'Par con la mano desplazada, dividido entre el par con la mano donde se mide la palanca',
  'pivot-offset.pivot': 'Distancia del cuadrado al pivote',
  'pivot-offset.doubt': 'Incertidumbre al 95 % (medio ancho)',
  'end-fitting.set': 'Ajustar la llave a {setting}: el tornillo recibe {torque} con este cabezal.',
  'end-fitting.span':
    'Ajustar la llave a {setting} ({low} a {high} para los extremos): el tornillo recibe {torque} con este cabezal, el centro de lo especificado.',
  'end-fitting.used': 'Palanca con el cabezal que se usa',
  'end-fitting.factor': 'Par en el tornillo por cada unidad en la llave (algunos manuales imprimen el inverso)',
  'end-fitting.setting': 'A cuánto ajustar',
  'which.best': '{wrench}: ajustar a {setting} para {torque} en el tornillo.',
  'which.care': '{wrench}, con cuidado: ajustar a {setting} para {torque} en el tornillo, y leer abajo por qué.',
  'which.none': 'Hoy ninguna llave del taller puede dar {torque}; el porqué figura junto a cada una.',
  'which.empty': 'Todavía no hay ninguna llave en el registro: añadir una, y aquí se elige entre ellas.',
  'which.same': 'Nada alarga la llave: se ajusta al propio par',
  'which.step': 'A cuánto se ajusta {wrench}, según su palanca del registro',
  'which.work-out': 'Calcularlo con {wrench}, con su incertidumbre',
  'pull.pull': 'Tirar con {pull}, perpendicular al mango, a {at} del cuadrado, para {torque}.',
  'pull.step': 'Tirón, perpendicular al mango',
  'convert.is': '{from} = {value}.',
  'convert.span': '{low} a {high}, en el centro {value}.',
  'convert.step': '1 {unit} en {to}, por el número',
  'flex-head.ahead':
    'El tornillo recibe {torque}, lo que dice la llave a {setting}: mide por delante de la articulación; solo aumenta el tirón.',
  'flex-head.behind': 'Ajustada a {setting} e inclinada, la llave da {torque}: dispara por detrás de la articulación.',
  'flex-head.unknown':
    'Con la llave ajustada a {setting} e inclinada, el tornillo recibe de {low} a {high}: depende de si la llave mide por delante de su articulación o por detrás.',
  'flex-head.arm': 'El brazo que deja la inclinación',
  'flex-head.torque-ahead':
    'Si mide por delante de la articulación (la mayoría de las llaves indicadoras y electrónicas): el par es lo que dice',
  'flex-head.torque-behind': 'Si dispara por detrás de la articulación: el mismo tirón con un brazo más corto',
  'flex-head.straight': 'Tirón con el mango recto',
  'swivel.band':
    'Con {setting} en la llave y el cardán en un ángulo de {angle}, el tornillo recibe de {low} a {high}, o menos todavía: ningún valor de ajuste puede compensarlo.',
  'swivel.straight': 'Un cardán sin ángulo transmite {torque}.',
  'swivel.low': 'Lo más bajo en una vuelta, sin fricción',
  'swivel.high': 'Lo más alto en una vuelta, sin fricción',
  'swivel.allowed': 'Dos manuales de motores permiten este ángulo sin corrección',
  'swivel.not-allowed':
    'Más de lo que dos manuales de motores permiten sin corrección: enderezarlo o llegar al tornillo por otro camino',
  'extension-bar.too-thin':
    'No usar esta extensión: {torque} somete a un acero de {diameter} a más tensión que la del ensayo de los cuadrados ({stress}); se doblaría o se rompería.',
  'extension-bar.nothing':
    'La extensión no quita nada: el tornillo recibe {torque} con un tirón lento y recto. Se torsiona {twist}.',
  'extension-bar.too-weak':
    'No usar este conjunto para {torque}: su cuadrado más débil solo está ensayado hasta {rating}.',
  'extension-bar.torque': 'Una extensión en línea gira con el cuadrado: el par que entra es el par que sale',
  'extension-bar.twist': 'Torsión de la extensión, tomada como redonda; falsea los ángulos leídos en el mango',
  'extension-bar.weakest': 'Hasta dónde está ensayado el cuadrado más débil, {drive} in',
  'multiplier.set': 'Meter {input} en el multiplicador para {torque}.',
  'multiplier.lowest':
    'No meter más de {input} para {torque}, según la relación de vueltas: es lo más bajo, con el mejor rendimiento; con más pérdidas pueden hacer falta hasta {high}.',
  'multiplier.torque-ratio': 'Lo que se mete, según la relación de par marcada (incluye las pérdidas)',
  'multiplier.lowest-step': 'Lo que se mete con el mejor rendimiento',
  'multiplier.highest-step': 'Lo que se mete con el peor rendimiento',
  'prevailing.set': 'Apretar hasta que la llave indique {final}: {torque} más el par prevaleciente de {run}.',
  'prevailing.span': 'Apretar hasta que la llave indique de {low} a {high}, en el centro {final}.',
  'prevailing.final': 'Par especificado y par prevaleciente juntos (aviación: siempre)',
  'prevailing.army-adds':
    'Un manual del ejército lo suma solo a partir de un tercio del par especificado: aquí también lo suma',
  'prevailing.army-leaves-out':
    'Un manual del ejército lo suma solo a partir de un tercio del par especificado: aquí no lo suma. Las fuentes difieren; preguntar al fabricante',
  'related.direction': 'Lo mismo con el adaptador a {angle}',
  'related.reading': 'Qué recibe el tornillo cuando la llave indica {setting}',
  'related.setting': 'A cuánto ajustar para {torque}',
  'incomplete.one': 'Falta una cosa: {ask}.',
  'incomplete.several': 'Faltan algunas cosas: {ask}.',
  'refused.one': 'Tal como está, no se puede calcular: {hint}',
  'refused.several': 'Tal como está, no se puede calcular; hay que revisar varios datos. Primero: {hint}',
} as const
