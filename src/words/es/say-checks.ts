// What is said of checks: a scale, a reference, tolerances, two sets of readings, the next day.

import { deviation } from './deviation.ts'

export const sayChecks = {
  'happened.dropped': 'se cayó',
  'happened.overloaded': 'se sobrecargó',
  'happened.repaired': 'se reparó',
  'happened.adjusted': 'se ajustó',
  'happened.wound-up': 'se quedó cargada',
  'happened.returned': 'volvió, y nadie aquí sabe por lo que pasó',
  'happened.found': 'se encontró, y nadie aquí sabe por lo que pasó',
  'deviation.low': deviation.low,
  'deviation.high': deviation.high,
  'deviation.right': deviation.right,
  'scale-check.torque': 'El tirón da {torque} en el cuadrado.',
  'scale-check.within':
    'Ajustada a {setting}, la llave dio {torque}: desviación {deviation}, dentro de la incertidumbre de esta comprobación ({low} a {high}).',
  'scale-check.too-wide':
    'No se puede decir: las lecturas están tan separadas que la incertidumbre es ±{band} de {torque}. Buscar el error y tirar cinco veces.',
  'scale-check.low-by-scale':
    'Hasta donde la báscula es correcta: ajustada a {setting}, la llave dio solo {torque} y da DE MENOS, desviación {deviation}.',
  'scale-check.high-by-scale':
    'Hasta donde la báscula es correcta: ajustada a {setting}, la llave dio {torque} y da DE MÁS, desviación {deviation}.',
  'scale-check.low': 'Ajustada a {setting}, la llave dio solo {torque}: da DE MENOS, desviación {deviation}.',
  'scale-check.high': 'Ajustada a {setting}, la llave dio {torque}: da DE MÁS, desviación {deviation}.',
  'scale-check.step': 'Par del tirón',
  'scale-check.step-mean': 'Par del tirón medio',
  'scale-check.deviation': 'Desviación: lo que dice la llave frente a la referencia (negativa: da más de lo que dice)',
  'scale-check.doubt': 'Incertidumbre del par al 95 % (medio ancho)',
  'scale-plan.headline':
    'A {setting}, a {distance} del cuadrado, cada lectura de la báscula debe quedar entre {low} y {high}.',
  'scale-plan.point': 'Fuerza a {setting}, y el margen en que debe quedar cada lectura',
  'tolerance-band.band': 'Ajustada a {setting}, la llave puede dar de {low} a {high}.',
  'tolerance-band.inside': 'Sí: ajustada a {setting}, la llave da de {low} a {high}, dentro de lo especificado.',
  'tolerance-band.partly-outside':
    'No es seguro: ajustada a {setting}, la llave puede dar de {low} a {high}, en parte fuera de lo especificado.',
  'tolerance-band.outside': 'No: ajustada a {setting}, la llave da de {low} a {high}, fuera de lo especificado.',
  'tolerance-band.beyond':
    'No ajustar así esta llave: {setting} está por encima del máximo de su escala, {most}. Solo por su tolerancia, eso sería de {low} a {high}.',
  'tolerance-band.of-reading': 'Tolerancia de la lectura (medio ancho)',
  'tolerance-band.of-full-scale': 'Tolerancia del fondo de escala (medio ancho)',
  'tolerance-band.share': 'Es decir, de este valor de ajuste',
  'wrench.tolerance-besides': 'La tolerancia de la llave, {tolerance} si no se conoce nada mejor, se suma a esto',
  'wrench-check.pass':
    'Conforme: todas las lecturas están dentro de ±{limit}; la peor se desvía {deviation}, a {setting}, donde {way}.',
  'wrench-check.pass-in-doubt':
    'Conforme, en duda: todas las lecturas están dentro de ±{limit}, pero la peor por menos de lo que puede desviarse la referencia; se desvía {deviation}, a {setting}, donde {way}.',
  'wrench-check.fail-in-doubt':
    'No conforme, en duda: hay una lectura fuera de ±{limit}, pero por menos de lo que puede desviarse la referencia; la peor se desvía {deviation}, a {setting}, donde {way}.',
  'wrench-check.fail':
    'No conforme: fuera de ±{limit}; la peor lectura se desvía {deviation}, a {setting}, donde {way}.',
  'wrench-check.low': 'la llave da DE MENOS',
  'wrench-check.high': 'la llave da DE MÁS',
  'wrench-check.right': 'la llave da lo que dice',
  'wrench-check.limit-maker': 'El límite, el del propio fabricante',
  'wrench-check.limit-class': 'El límite de la norma para la clase {class}, tipo {type}, según el par máximo',
  'wrench-check.limit-most': 'El límite de la norma según el par máximo de la llave',
  'wrench-check.limit-highest':
    'El límite de la norma según el punto más alto, como si fuera todo lo que la llave puede dar',
  'wrench-check.guard':
    'Si todas las lecturas están dentro de esto, es conforme más allá de la incertidumbre de la referencia',
  'wrench-check.point': 'A {setting}: desviación de la media, y dónde debe quedar cada lectura de la referencia',
  'wrench-check.worst': 'La peor lectura de todas, que es la que decide',
  'compare.higher': 'B es {size} más alto que A ({interval})',
  'compare.lower': 'B es {size} más bajo que A ({interval})',
  'compare.same': 'las medias de B y A son iguales ({interval})',
  'compare.interval': '{low} a {high} al {confidence}',
  'compare.no-interval': 'no se pueden dar extremos: la media de A no se distingue de 0',
  'compare.seen-too-small-to-matter':
    'Se aprecia una diferencia, demasiado pequeña para importar: {what}, dentro de ±{margin}.',
  'compare.no-difference-that-matters': 'Ninguna diferencia que importe: {what}, dentro de ±{margin}.',
  'compare.a-difference-that-matters': 'Una diferencia que importa: {what}, más de {margin}.',
  'compare.seen-not-decided-whether-it-matters':
    'Se aprecia una diferencia, sin decidir si importa: {what}, frente a un umbral de ±{margin}.',
  'compare.not-decided': 'Sin decidir: {what}, frente a un umbral de ±{margin}.',
  'compare.mean-a': 'Media de A, de {n} lecturas',
  'compare.mean-b': 'Media de B, de {n} lecturas',
  'compare.spread-a': 'Dispersión de A (desviación típica, no menor que lo que oculta la resolución)',
  'compare.spread-b': 'Dispersión de B (desviación típica, no menor que lo que oculta la resolución)',
  'compare.variances': 'Cociente de las varianzas, B entre A',
  'compare.difference': 'Diferencia de las medias, B menos A, con los dos extremos de su intervalo',
  'compare.relative':
    'Lo mismo en % de A, con los dos extremos: la media de A tampoco es exacta, y eso está incluido en ellos',
  'compare.upper-bound':
    'Lo máximo en que B puede superar a A más {margin} (un lado): por debajo de 0, B queda dentro por arriba',
  'compare.lower-bound':
    'Lo mínimo en que B puede superar a A menos {margin} (un lado): por encima de 0, B queda dentro por abajo',
  'next-check.months': 'Toca el {date}: ese día se cumplen los meses desde la última comprobación ({months}).',
  'next-check.uses': 'Toca ya: {uses} usos desde la última comprobación, y se permiten {allowed}.',
  'next-check.event': 'Toca desde el {date}: {event}, y ninguna comprobación sigue valiendo tras eso.',
  'next-check.months-out': 'Días desde la última comprobación hasta que se cumplen los meses, el {date}',
  'next-check.uses-left': 'Usos que quedan (0 o menos: toca)',
  'next-check.event-after': 'Días desde la última comprobación hasta el {date}, cuando {event}',
  'event.dropped': 'se cayó',
  'event.overloaded': 'se sobrecargó',
  'event.repaired': 'se reparó',
  'event.modified': 'se modificó',
  'event.wound-up': 'se había dejado tensada',
} as const
