/** Limits of a gradation, limit by limit, and how surely they are kept. */

/** As a class states them. */
export const limit: Record<string, string> = {
  'D{p#} at least {size#}': 'D{p} de al menos {size}',
  'D{p#} at most {size#}': 'D{p} de a lo sumo {size}',
  'W{p#} at least {mass#}': 'W{p} de al menos {mass}',
  'W{p#} at most {mass#}': 'W{p} de a lo sumo {mass}',
  'largest stone at least {size#}': 'piedra más grande de al menos {size}',
  'largest stone at most {size#}': 'piedra más grande de a lo sumo {size}',
  'at least {p#} smaller than {size#}': 'al menos {p} menor que {size}',
  'at most {p#} smaller than {size#}': 'a lo sumo {p} menor que {size}',
  'at least {p#} larger than {size#}': 'al menos {p} mayor que {size}',
  'at most {p#} larger than {size#}': 'a lo sumo {p} mayor que {size}',
  '{limit!limit} by mass': '{limit} en masa',
  '{limit!limit} by count': '{limit} en número',
};

/** On which side of a size. */
export const than: Record<string, string> = {
  'smaller than {size#}': 'menor que {size}',
  'larger than {size#}': 'mayor que {size}',
};

export const bound: Record<string, string> = { 'at most': 'a lo sumo', 'at least': 'al menos' };

/** Stones of which end. */
export const end: Record<string, string> = { largest: 'grandes', smallest: 'chicas' };

/** How surely a limit is kept. */
export const sure: Record<string, string> = {
  'Kept with {confidence#} confidence.': 'Se cumple con {confidence} de confianza.',
  'Not kept, with {confidence#} confidence.': 'No se cumple, con {confidence} de confianza.',
  'Confidence that it is kept {confidence#}, asked {asked#}.':
    'Confianza en que se cumple: {confidence}; se pide {asked}.',
};

/** How each limit was tried. */
export const tried: Record<string, string> = {
  '{limit!limit}: {outcome!outcome}. {why!}': '{limit}: {outcome}. {why}',
  '{share#} is smaller than {size#}, {most!bound} {asked#} asked.':
    'El {share} es menor que {size}; se pide {most} {asked}.',
  '{share#} is smaller than {size#}, {most!bound} {asked#} asked. {sure!sure}':
    'El {share} es menor que {size}; se pide {most} {asked}. {sure}',
  '{size#} lies within the open smallest bin: between 0 and {share#} is smaller.':
    '{size} cae en el intervalo abierto de los más chicos: es menor entre 0 y {share}.',
  'A stone larger than {size#} was measured.': 'Se midió una piedra mayor que {size}.',
  'A stone smaller than {size#} was measured.': 'Se midió una piedra menor que {size}.',
  'A stone of at least {size#} was measured.': 'Se midió una piedra de al menos {size}.',
  'The limit of {size#} lies within a bin that holds stones: measure the {which!end} stones one by one.':
    'El límite de {size} cae en un intervalo que contiene piedras: mida una por una las piedras más {which}.',
  '{size#} lies within the largest bin: measure the largest stones one by one.':
    '{size} cae en el intervalo de las más grandes: mida una por una las piedras más grandes.',
  'No stone {than!than} is among those measured. A sample cannot show that there is none in the lot; that such stones make up at most {share#} of it is shown with {confidence#} confidence, asked {asked#}.':
    'Entre las medidas no hay ninguna piedra {than}. Una muestra no puede demostrar que no haya ninguna en el lote; que sean a lo sumo el {share} de él se demuestra con {confidence} de confianza; se pide {asked}.',
  "No stone of at least {size#} is among those measured; such stones make up less than {share#} of the lot. Whether it matters is the designer's decision.":
    'Entre las medidas no hay ninguna piedra de al menos {size}; tales piedras son menos del {share} del lote. Si eso importa lo decide el proyectista.',
  'No stone of at least {size#} is among those measured so far.':
    'Entre las medidas hasta ahora no hay ninguna piedra de al menos {size}.',
  'Holds of itself.': 'Se cumple por sí solo.',
  'A photo does not tell the smallest stones: they lie hidden between the others.':
    'Una foto no muestra las piedras más chicas: están ocultas entre las demás.',
  'A photo does not tell the largest stone of a lot: measure the largest one with a tape, or tap its ends.':
    'Una foto no dice cuál es la piedra más grande de un lote: mídala con cinta, o toque sus extremos.',
};
