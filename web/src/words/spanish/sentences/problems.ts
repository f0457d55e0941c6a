/** What is wrong with what was typed, and what is allowed: quantities, fields, names. */
export const problems: Record<string, string> = {
  'Allowed: {allowed!}.': 'Se admite: {allowed}.',
  '{where!where}: {what!} Allowed: {allowed!}.': '{where}: {what} Se admite: {allowed}.',

  // Quantities.
  'A quantity is missing here.': 'Aquí falta una cantidad.',
  '“{text_}” has no unit.': '«{text}» no tiene unidad.',
  '“{text_}” does not start with a number.': '«{text}» no empieza con un número.',
  '“{text_}” is not a unit known here.': '«{text}» no es una unidad conocida aquí.',
  '“{text_}” has a decimal comma; write a point, as in 0.45.':
    '«{text}» tiene coma decimal; escriba un punto, como en 0.45.',
  '“{text_}” has a comma that may separate thousands or decimals; write 1234 or 1.234.':
    '«{text}» tiene una coma que puede separar miles o decimales; escriba 1234 o 1.234.',
  '“{text_}” has a gap inside its number; write 1234 without a space.':
    '«{text}» tiene un espacio dentro del número; escriba 1234 sin espacio.',
  '“{text_}” has a fraction; write a decimal, as in 0.5 in.':
    '«{text}» tiene una fracción; escriba un decimal, como en 0.5 in.',
  '“{text_}” does not say which figure is vertical; write 1V:2.5H.':
    '«{text}» no dice qué cifra es la vertical; escriba 1V:2.5H.',
  '“{text_}” has two numbers; write one number with one unit.':
    '«{text}» tiene dos números; escriba un número con una unidad.',
  '“{text_}” has a unit in other letters than it is written: use {unit_}.':
    '«{text}» tiene una unidad en otras letras: use {unit}.',
  '“{text_}” is not a finite number.': '«{text}» no es un número finito.',
  '“{text_}” is too large a number.': '«{text}» es un número demasiado grande.',
  '“{text_}” is too small a number.': '«{text}» es un número demasiado pequeño.',
  '“{text_}” is {is!aKind}; {wanted!aKind} is wanted here.':
    '«{text}» es {is}; aquí se pide {wanted}.',
  '“{text_}” is a slope; {wanted!aKind} is wanted here.':
    '«{text}» es una pendiente; aquí se pide {wanted}.',
  '“{text_}” has a negative side, or two that are zero.':
    '«{text}» tiene un lado negativo, o los dos en cero.',
  '“{text_}” is vertical: no finite slope.': '«{text}» es vertical: no hay pendiente finita.',
  '“{text_}” is too long for a quantity.': '«{text}» es demasiado largo para una cantidad.',
  '“{text_}” is not written in UTF-8.': '«{text}» no está escrito en UTF-8.',
  'This is in {unit_}, the first is in {first_}.':
    'Esto está en {unit}, lo primero está en {first}.',
  '64 of: digits, a to f': '64 de estos: cifras, letras de la a a la f',
  '{"axes": […]} or {"bins": […]}': '{"axes": […]} o {"bins": […]}',
  '{ "subgrade": { "result": "pass" } }': '{ "subgrade": { "result": "pass" } }',
  'one unit throughout': 'una sola unidad en todo',
  '{units*unitWord}': '{units}',
  '{words*quotedWord}': '{words}',
  '{words*disposition}': '{words}',

  // Fields.
  'The field "{field}" is missing.': 'Falta el campo «{field}».',
  'The field "{field}" is not known here.': 'El campo «{field}» no se conoce aquí.',
  'The field "{field}" stands twice in one object.': 'El campo «{field}» está dos veces.',
  'each field once': 'cada campo una vez',
  'An object with named fields belongs here.': 'Aquí va un objeto con campos.',
  'A list belongs here.': 'Aquí va una lista.',
  'A text belongs here.': 'Aquí va un texto.',
  'a text': 'un texto',
  'a text that is not empty': 'un texto que no esté vacío',
  'A whole number belongs here.': 'Aquí va un número entero.',
  'a whole number from {from#} to {to#}': 'un número entero de {from} a {to}',
  'A {kind!kind} is written as a text with its unit.':
    'Se escribe como texto con su unidad: {kind}.',
  'a text such as "12 ft"; units: {units}': 'un texto como "12 ft"; unidades: {units}',
  'This word is not known here.': 'Esta palabra no se conoce aquí.',
  'This is more than zero.': 'Esto es más que cero.',
  'This is never less than zero.': 'Esto nunca es menos que cero.',
  'more than 0': 'más de 0',
  '0 or more': '0 o más',
  'more than 0, at most {most#}': 'más de 0, a lo sumo {most}',
  'more than 0, at most 1000 km': 'más de 0, a lo sumo 1000 km',
  'above {least#} and below {most#}': 'más de {least} y menos de {most}',
  'above 0 and up to {most#}': 'más de 0 y hasta {most}',
  '{from#} to {to#}': 'de {from} a {to}',
  'This is not a time in UTC.': 'Esto no es una hora en UTC.',
  'a time such as "{when@}"': 'una hora como "{when}"',
  'a time from {when@} on': 'una hora a partir de {when}',
  'This is not a JSON pointer.': 'Esto no es un puntero JSON.',
  'a pointer such as "{pointer}"': 'un puntero como "{pointer}"',
  '"{pointer}" is not there.': '«{pointer}» no está.',
  'the pointer of something that exists': 'el puntero de algo que existe',
  '"{pointer}" lies inside something that does not exist.':
    '«{pointer}» está dentro de algo que no existe.',
  'the pointer of an item, or of a field of an item that exists':
    'el puntero de un elemento, o de un campo de un elemento que existe',

  // Names.
  'No {thing!thing} is called "{id_}".': 'No hay {thing} de nombre «{id}».',
  'there is no {thing!thing} yet': 'todavía no hay {thing}',
  'there is none yet': 'todavía no hay',
  'an id that `proofstone classes` lists, or one of the document':
    'un id de los que lista `proofstone classes`, o uno del documento',
  'an id that `proofstone classes` lists, or one of the site':
    'un id de los que lista `proofstone classes`, o uno de la obra',
  'an id that `proofstone classes` lists': 'un id de los que lista `proofstone classes`',
  '{zone} names no mix.': '{zone} no nombra ninguna mezcla.',
  'a zone that names a mix': 'una zona que nombre una mezcla',
  'No submittal of {source} has been handed in.':
    'No se ha entregado ninguna presentación de {source}.',
  'a submittal that names this source': 'una presentación que nombre esta procedencia',

  // What a method lacks.
  '{key} ({symbol}) is neither known from the zone nor stated for this method: {meaning!meaning}.':
    'El dato {key} ({symbol}) no se conoce de la zona ni se indica para este método: {meaning}.',
  '{key} is neither known from the zone nor stated for this method: {meaning!meaning}.':
    'El dato {key} no se conoce de la zona ni se indica para este método: {meaning}.',
  'a {kind!kind} in {units}': '{kind}, en {units}',
};

/** Kinds of quantities. */
export const kind: Record<string, string> = {
  length: 'longitud',
  area: 'área',
  volume: 'volumen',
  velocity: 'velocidad',
  discharge: 'caudal',
  'unit discharge': 'caudal por unidad de ancho',
  acceleration: 'aceleración',
  stress: 'esfuerzo',
  density: 'densidad',
  'unit weight': 'peso unitario',
  mass: 'masa',
  angle: 'ángulo',
  slope: 'pendiente',
  duration: 'duración',
  rate: 'tasa',
  number: 'número',
};

export const aKind: Record<string, string> = {
  'a length': 'una longitud',
  'an area': 'un área',
  'a volume': 'un volumen',
  'a velocity': 'una velocidad',
  'a discharge': 'un caudal',
  'a unit discharge': 'un caudal por unidad de ancho',
  'an acceleration': 'una aceleración',
  'a stress': 'un esfuerzo',
  'a density': 'una densidad',
  'a unit weight': 'un peso unitario',
  'a mass': 'una masa',
  'an angle': 'un ángulo',
  'a slope': 'una pendiente',
  'a duration': 'una duración',
  'a rate': 'una tasa',
  'a number': 'un número',
  '{one!aKind} or {other!aKind}': '{one} o {other}',
};

/** What may be named in a site. */
export const thing: Record<string, string> = {
  lot: 'lote',
  zone: 'zona',
  class: 'clase',
  source: 'procedencia',
  soil: 'suelo',
  material: 'material',
  'material or bedding': 'material o capa de apoyo',
  mix: 'mezcla',
  recipe: 'receta',
  section: 'sección',
  reach: 'tramo',
  'flow case': 'caso de caudal',
  load: 'viaje',
  method: 'método',
  'sizing method': 'método de tamaño',
};

/** Units, where they are listed. */
export const unitWord: Record<string, string> = {
  'no unit': 'sin unidad',
  '%': '%',
  ...Object.fromEntries(
    ['ft', 'in', 'yd', 'US survey ft', 'm', 'mm', 'cm', 'mi', 'km', 'lb', 'ton', 'kg', 't']
      .concat([
        'ft³/s',
        'm³/s',
        'ft/s',
        'm/s',
        'mph',
        'km/h',
        'ft/ft',
        'm/m',
        '1V:2.5H',
        's',
        'min',
      ])
      .concat(['h', '°', 'rad', 'lb/ft³', 'kg/m³', 'lb/ft²', 'N/m²', 'Pa', 'MPa', 'psi'])
      .map((unit) => [unit, unit]),
  ),
};

/** Where a problem stands, in words of the engine; ids stay. */
export const where: Record<string, string> = {
  'photo {n#}': 'foto {n}',
  photos: 'fotos',
  largest: 'la piedra más grande',
  check: 'verificación',
  'bin {n#}': 'intervalo {n}',
  'group {n#}': 'grupo {n}',
  'stone {n#}': 'piedra {n}',
  '{pointer}': '{pointer}',
};

/** Words to choose from, as the document has them. */
export const quotedWord: Record<string, string> = { '"{word!documentWord}"': '«{word}»' };
