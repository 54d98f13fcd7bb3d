// What to mind beside an answer, and where the maker’s own figure stands.

export const cautions = {
  'maker-first':
    'El dato y el procedimiento del fabricante van primero; aquí se calcula a cuánto ajustar para un dato que usted ya tiene.',
  'critical-joint':
    'Ruedas, frenos, dirección, cinturones de seguridad, elevación, presión, aeronaves: deciden una persona cualificada y el procedimiento del fabricante.',
  'one-hand':
    'Tirar solo de la empuñadura: una segunda mano en el cabezal cambia el par en cuanto un adaptador alcanza hacia delante o hacia atrás.',
  'points-back':
    'El adaptador apunta {reach} hacia atrás, hacia la mano: el valor de ajuste es MÁS ALTO que el par. Asegurarse de la dirección.',
  'far-back':
    'Alcanza hacia atrás más de la mitad de la palanca: pequeños errores de longitud o de mano cambian mucho el par. Usar otro modo si lo hay.',
  'direction-assumed':
    'Donde no se dio ángulo, se supone recto hacia delante. Si un adaptador está en ángulo, indicarlo: cambia el resultado.',
  'keep-square':
    'El adaptador está hacia un lado: tirar perpendicular al mango; si no, el par cambia con la dirección del tirón.',
  'already-corrected':
    'Si el dato del fabricante va ligado a una herramienta especial o a una palanca indicada, o si a la llave ya se le introdujo la longitud del adaptador, ya está corregido: no corregirlo dos veces.',
  'side-load':
    'Un cabezal inclinado empuja el vaso hacia un lado: mantenerlo perpendicular, y enderezar el mango si hay sitio.',
  'lower-still':
    'La fricción y la carga lateral quitan más, unos {loss} en total con un ángulo fuerte: el extremo bajo no es un mínimo garantizado.',
  'no-corrected-setting':
    'Para un cardán no se puede dar un valor de ajuste corregido: no se sabe en qué punto de su vuelta está.',
  'square-too-weak':
    'El cuadrado más débil del conjunto es de {drive} in, ensayado hasta {rating}: hace falta un cuadrado mayor.',
  'no-impact': 'Solo con un tirón lento: una llave de impacto pierde par en cada extensión.',
  'support-the-bar': 'Mantener la extensión en línea y sujetar su cabeza: una extensión inclinada ladea el vaso.',
  'which-ratio':
    '¿Qué relación está marcada? Una relación de par ya incluye las pérdidas; una relación de vueltas (de engranajes) no.',
  'reaction-arm':
    'El brazo de reacción empuja hacia atrás con todo el par de salida: apoyarlo contra algo que aguante y mantener las manos lejos.',
  'run-on-while-turning':
    'Leer el par prevaleciente mientras la tuerca gira, antes de que asiente; el fabricante dice cuánto se permite y cuándo hay que cambiarla.',
  'run-on-through-adapter': 'Un par prevaleciente leído a través de un adaptador se convierte primero, como el resto.',
  'past-strength': 'Donde la fricción es baja, este par supera la carga de prueba o el límite elástico del tornillo.',
  'from-snug':
    'Desde el contacto: las piezas quedan bien juntas antes de contar el giro. Si el contacto no es seguro, el giro tampoco.',
  'yield-not-checked': 'No se dio la clase, así que no se comprobó si esto supera el límite elástico.',
  'no-pipe':
    'Un tubo en el mango lleva la mano más allá de la empuñadura y anula lo que garantiza el fabricante de la llave.',
  'run-on-large':
    'El par prevaleciente ({extra}) es mayor que el propio par: mirar las dos unidades; una tuerca que gira tan dura está estropeada.',
  'friction-wide':
    'Entre las fuentes, la fricción de este estado varía en más de dos a uno: con este par el tornillo puede quedar mucho más flojo de lo que dice su porcentaje. Preguntar al fabricante, o medir par y precarga en esta unión.',
  'own-factor-holds-seat':
    'Un factor K propio ya incluye el asiento sobre el que se midió: el asiento indicado aquí no cambia nada en él.',
  'class-of-other-system': 'Esta clase es del otro sistema que el tamaño: mirar de nuevo la marca de la cabeza.',
  'pivot-unusual': 'Una llave de este tipo dispara por lo general a {low} a {high}: revisar el pivote.',
  'floating-grip':
    'Si la empuñadura de esta llave de viga bascula sobre un pasador, el tirón actúa en el pasador esté donde esté la mano, y nada de esto se aplica.',
  'hard-pull': 'Nadie tira {pull} de forma continua: usar una palanca más larga o un multiplicador.',
  'points-missing':
    'No se comprobó toda la escala: la norma pide el {shares} % del valor de ajuste máximo, de menor a mayor.',
  'beyond-range': 'El valor de ajuste {setting} está fuera del rango de la llave ({limit}).',
  'end-beyond-range':
    'Una parte de lo especificado necesita un valor de ajuste fuera del rango de la llave: {setting}, cuando termina en {limit}. Quedarse dentro de su rango.',
  'factor-twelve':
    '¿Se quería decir otra unidad? {got} pide un valor de ajuste fuera del rango de la llave, {meant} quedaría dentro.',
  'factor-ten':
    '¿Se ha corrido la coma? {got} pide un valor de ajuste fuera del rango de la llave, {meant} quedaría dentro.',
  'lever-unusual':
    'Una palanca de {lever} está fuera de lo que tienen las llaves de mano ({low} a {high}): revisar el número y su unidad.',
  'adapter-longer':
    'El adaptador ({adapter}) es más largo que la propia llave ({lever}): revisar los dos números y sus unidades.',
  'below-a-fifth': 'Por debajo de un quinto de la escala ({fifth}) no se garantiza nada: usar una llave más pequeña.',
  'click-once':
    'Tirar despacio y de forma continua, y parar en el clic: un golpe, o tirar otra vez y pasar del clic, añade par (práctica habitual).',
  'which-fitting':
    'Aquí se toma la palanca medida hasta el centro del cabezal con el que se calibró la llave. Si se midió con el otro cabezal puesto, indicarlo.',
  'steady-pull': 'Tirar hacia sí, con los pies firmes, preparado por si el tornillo cede.',
  'which-condition':
    'Averiguar si el dato del fabricante es para rosca seca o lubricada: de eso depende si se puede cambiar algo.',
  'estimate-only':
    'Los valores de fricción son estimaciones de tablas; varían de un tornillo a otro y de una fuente a otra.',
  'k-unlikely':
    'No se conoce ninguna unión con tal factor K (están entre 0,05 y 0,6, aproximadamente): revisar las unidades, el tamaño y las lecturas.',
  galling: 'Inoxidable contra inoxidable se gripa (se agarrota): apretar despacio, con un lubricante hecho para ello.',
  'yield-fastener':
    'Nunca para tornillos apretados hasta el límite elástico o por par y ángulo: usar el procedimiento del fabricante tal como está.',
  'one-joint':
    'Este factor K corresponde a esta rosca, asiento, acabado y lubricante, y a piezas nuevas; los tornillos reutilizados son distintos.',
  'gauge-too-coarse':
    'La báscula ({gauge}) es demasiado basta para juzgar una llave de ±4 %: no debería ser peor que {quarter}.',
  'gauge-unknown':
    'La tolerancia de la propia báscula no se dio y no está en la incertidumbre: comprobar la báscula con un peso conocido.',
  'own-weight':
    'Con el eje del cuadrado horizontal también cuenta el peso propio de la llave: dar wrench-mass (masa), balance-point (punto de equilibrio), lie (posición) y pull-direction (dirección del tirón).',
  'not-accredited': 'Una comprobación en el taller no es una calibración acreditada.',
  'gauge-runs-out': 'La báscula termina en {limit}: tirar a {distance} del cuadrado o más afuera.',
  'gauge-quarter': 'La báscula no debería ser peor que {quarter}, un cuarto del límite.',
  'out-of-limit': 'No usar esta llave donde el par importe hasta que se haya reajustado y comprobado de nuevo.',
  'limit-assumed':
    'El límite de ±{limit} se supuso, no se indicó: dar la tolerancia del fabricante, o iso-type e iso-class.',
  'reference-unknown':
    'No se indicó lo buena que es la referencia: no debería ser peor que {quarter}, un cuarto del límite.',
  'reference-too-coarse':
    'La referencia ({gauge}) es demasiado basta para este límite: no debería ser peor que {quarter}, un cuarto de él.',
  'few-readings': 'Menos de 5 lecturas en un punto: la norma pide 5, y más lecturas muestran más.',
  'alike-no-resolution':
    'Todas las lecturas de {set} son iguales: la resolución oculta cómo varían, y la respuesta es más segura de lo que debería. Dar resolution (resolución).',
  'alike-resolution': 'Todas las lecturas de {set} son iguales: su dispersión se toma de la resolución.',
  'mean-near-zero':
    'La media de A no se distingue de 0, así que un porcentaje de ella dice poco: comparar otras lecturas.',
  'independent-readings':
    'Esto vale para lecturas que no dependen unas de otras: tomar A y B en orden mezclado, en uniones nuevas; una tuerca que ya está apretada muestra su par de arranque.',
  'tolerance-of-scale':
    'La tolerancia de {wrench} es {tolerance} del fondo de escala, así que por debajo del máximo de su escala puede desviarse más que la tolerancia tomada aquí. Indicar tolerance como parte de este valor de ajuste.',
  'wrench-not-to-be-used': '{wrench} figura en el registro como apartada o dada de baja: usar otra llave.',
  'failed-on': 'La última comprobación de {wrench}, el {date}, la encontró fuera de su límite.',
  'check-before-use': 'Comprobar {wrench} antes de usarla donde el par importe. El {date}: {what}.',
  'never-checked': 'En el registro no hay ninguna comprobación de {wrench}.',
  'due-since': 'Desde el {date} toca comprobar {wrench}.',
  'last-check':
    'En la última comprobación de {wrench}, el {date}, estaba {deviation} a {setting}. Aquí se indica, no se incluye en la respuesta.',
  'check-due': 'Hasta que se haya comprobado, no usar esta llave donde el par importe.',
  'event-before-check': 'Lo que pasó antes de la última comprobación queda cubierto por esa comprobación.',
  'wound-up-briefly':
    'Menos de un mes tensada cambia poco; meses cerca del fondo de escala pueden quitar bastante más de un décimo.',
  'store-low': 'Guardarla en el mínimo de su escala, no por debajo.',
  'uses-not-counted': 'No se indicaron los usos: pueden agotarse antes que los meses.',
  'tolerance-is-not-all': 'Esto es solo la llave: la mano, las longitudes y la fricción se suman.',
  'unit-on-wrench':
    'Leer la unidad en la propia llave antes de ajustar: en muchas, N·m, lbf·ft y lbf·in están una al lado de la otra.',
} as const

export const pointers = {
  'multiplier-plate': 'Relación y límite: la placa o el certificado del multiplicador.',
  'torque-figure':
    'Par: el manual de taller del fabricante para justo este tornillo, con el estado de la rosca y la herramienta para los que se da.',
  'adapter-rating':
    'La capacidad del propio adaptador: su fabricante; limita el par en el tornillo, no el valor de ajuste.',
  'wrench-manual': 'Palanca, rango y tolerancia: el manual o el certificado de calibración de la llave.',
  'lubricant-maker': 'La hoja de datos del fabricante del lubricante: factor K o fricción para este acabado.',
  'calibration-lab': 'Un certificado: un laboratorio de calibración acreditado (ISO 6789).',
} as const
