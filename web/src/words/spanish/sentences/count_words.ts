/** Words that stand in what is said of counts, each in a place of its own. */

/** How stones were taken. */
export const way: Record<string, string> = {
  'stone count on a grid': 'conteo de piedras en cuadrícula',
  'count of all stones along a line': 'conteo de todas las piedras de una línea',
  'count of all stones on a face': 'conteo de todas las piedras de una cara',
  'count of all stones of a load': 'conteo de todas las piedras de un viaje',
  'weighed sample': 'muestra pesada',
  'mass ranges': 'intervalos de masa',
  'outlines on {n#} photo': 'contornos en {n} foto',
  'outlines on {n#} photos': 'contornos en {n} fotos',
  'taps on {n#} photo': 'toques en {n} foto',
  'taps on {n#} photos': 'toques en {n} fotos',
  '{n#} looks together': '{n} observaciones juntas',
};

/** A size of the lot, with its limits. */
export const size: Record<string, string> = {
  'D{p#} {size#}': 'D{p} {size}',
  'D{p#} {size#} ({low#} to {high#})': 'D{p} {size} (de {low} a {high})',
  'D{p#} {size#}, indicative': 'D{p} {size}, indicativo',
  'D{p#} {size#}, indicative ({low#} to {high#})': 'D{p} {size}, indicativo (de {low} a {high})',
  '{p#} is smaller than {size#}, and no size below that is told apart':
    'el {p} es menor que {size}, y por debajo no se distinguen tamaños',
};

/** What a count comes to at a limit. */
export const decision: Record<string, string> = {
  'accept with at most {n#}': 'se acepta con {n} o menos',
  'too few to accept': 'muy pocas para aceptar',
  'turn away with {n#} or more': 'se rechaza con {n} o más',
  'too few to turn away': 'muy pocas para rechazar',
  accept: 'se acepta',
  'turn away': 'se rechaza',
  'go on': 'siga',
};

/** Shares and confidences. */
export const share: Record<string, string> = {
  'more than {share#}': 'más de {share}',
  'less than {share#}': 'menos de {share}',
};

/** Risks that a verdict is passed at. */
export const risk: Record<string, string> = {
  "an owner's risk of {p#} (rock that breaks a limit is accepted)":
    'un riesgo del dueño de {p} (se acepta roca que no cumple un límite)',
  "an owner's risk of {p#} (rock that breaks a limit is accepted; not stated, from the confidence)":
    'un riesgo del dueño de {p} (se acepta roca que no cumple un límite; no indicado, según la confianza)',
  "a producer's risk of {p#} (rock that keeps every limit is turned away)":
    'un riesgo del productor de {p} (se rechaza roca que cumple todos los límites)',
  "a producer's risk of {p#} (rock that keeps every limit is turned away; not stated, from the confidence)":
    'un riesgo del productor de {p} (se rechaza roca que cumple todos los límites; no indicado, según la confianza)',
};
