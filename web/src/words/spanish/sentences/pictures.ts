/** Pictures: their titles, the words in them, and what they show in words. */

export const pictureTitle: Record<string, string> = {
  '{lot} in the band of {class}': '{lot} en la banda de {class}',
  '{look}, stone by stone': '{look}, piedra por piedra',
  'The stones of {class} and of {lot}': 'Las piedras de {class} y de {lot}',
  'Loads of {lot}': 'Viajes de {lot}',
  '{pile} against the reference, {other}': '{pile} frente a la referencia, {other}',
  'Sides of {pile}: {one} against {other}': 'Lados de {pile}: {one} frente a {other}',
  'Load of ticket {ticket} against {pile}': 'Viaje con la boleta {ticket} frente a {pile}',
  'Soil, filter and rock of {zone}': 'Suelo, filtro y roca de {zone}',
  'Typical section of {zone}': 'Sección típica de {zone}',
  'What each method asks for in {zone}': 'Qué pide cada método en {zone}',
  'Where the volume of {mix} goes': 'Adónde va el volumen de {mix}',
  'Key at each end of {zone}': 'Dentellón en cada extremo de {zone}',
  '{zone} from above': '{zone} desde arriba',
  '{line} in plan': '{line} en planta',
  '{reach}: water surface': '{reach}: superficie del agua',
};

export const pictureWord: Record<string, string> = {
  // Sieves.
  'No. {n#}': 'No. {n}',
  '{n#}/{part#}': '{n}/{part}',

  // Axes.
  'Percent smaller by mass': 'Porcentaje que pasa, en masa',
  'Stone size, {unit}': 'Tamaño de piedra, {unit}',
  'Grain size, mm': 'Tamaño de grano, mm',
  'Sieve or size': 'Tamiz o tamaño',
  'Median size, {unit}': 'Tamaño mediano, {unit}',
  'Load, in the order of time': 'Viaje, en orden de llegada',
  'Station, {unit}': 'Progresiva, {unit}',
  'Elevation, {unit}': 'Cota, {unit}',
  'Distance downstream, {unit}': 'Distancia aguas abajo, {unit}',
  'Stones counted': 'Piedras contadas',
  'Accepted, %': 'Se acepta, %',
  'True share on the wrong side, %': 'Proporción real del lado malo, %',
  'Stones on average': 'Piedras en promedio',

  // Gradations.
  'Measured, with {share#} confidence limits': 'Medido, con límites de confianza del {share}',
  'Band of {class}': 'Banda de {class}',
  'The curve must pass at a mark or on the side of its arrow.':
    'La curva debe pasar por una marca o del lado de su flecha.',
  '{method!method}, {case}: {symbol} ≥ {size#}, {outcome!outcome}':
    '{method}, {case}: {symbol} ≥ {size}, {outcome}',
  '{method!method}, {case}: {symbol} ≥ {size#}, {outcome!outcome}, governs':
    '{method}, {case}: {symbol} ≥ {size}, {outcome}, rige',
  '{method!method}, {case}: {symbol} ≥ {size#}, {outcome!outcome}, shown only':
    '{method}, {case}: {symbol} ≥ {size}, {outcome}, solo se muestra',
  '{method!method}, {case}: {symbol} ≥ {size#}, {outcome!outcome}, outside its published range':
    '{method}, {case}: {symbol} ≥ {size}, {outcome}, fuera de su rango publicado',
  '{parts;sectionPart}': '{parts}',
  '{class}: least to largest at that percent': '{class}: del mínimo al máximo a ese porcentaje',
  'size asked for; the bar must begin at or beyond it':
    'tamaño que se pide; la barra debe empezar en él o más allá',
  'outside its published range': 'fuera de su rango publicado',
  '{class}, smallest allowed': '{class}, lo más chico admitido',
  '{class}, largest allowed': '{class}, lo más grande admitido',
  '{lot}, measured': '{lot}, medido',
  'Control points: a filter on the soil lies on the side of the arrow':
    'Puntos de control: un filtro sobre el suelo queda del lado de la flecha',
  'Openings of the geotextile': 'Aberturas del geotextil',

  // Counts and loads.
  'Of these: stones {than!than}': 'De estas: piedras de tamaño {than}',
  'the count so far': 'el conteo hasta ahora',
  'go on counting': 'siga contando',
  'accept on or below; chance that the plan accepts':
    'se acepta en ella o debajo; probabilidad de que el plan acepte',
  'turn away on or above': 'se rechaza en ella o encima',
  'stones on average until the plan ends': 'piedras en promedio hasta que el plan termina',
  'good rock, and rock at the limit': 'roca buena, y roca en el límite',
  'a load': 'un viaje',
  'size to keep': 'tamaño por mantener',
  'moving average and where it stays without a drift': 'media móvil y dónde queda sin deriva',
  'alarm: the supply has drifted': 'alarma: el suministro se ha desviado',
  'ticket {ticket}': 'boleta {ticket}',

  // Sections and plans.
  '{class}, enlarged: stones at size, median {size#}':
    '{class}, ampliado: piedras a escala, mediana {size}',
  '{thickness#} thick': '{thickness} de espesor',
  'thickness {thickness#}': 'espesor {thickness}',
  'true scale': 'escala verdadera',
  'heights drawn {n#} times as large as lengths': 'alturas dibujadas {n} veces las longitudes',
  'flows from left to right; heights drawn {n#} times as large as lengths':
    'corre de izquierda a derecha; alturas dibujadas {n} veces las longitudes',
  'Velocity across a straight reach, {unit}: {case}':
    'Velocidad a través de un tramo recto, {unit}: {case}',
  'Shear on the ground, {unit}: {case}': 'Esfuerzo cortante en el terreno, {unit}: {case}',
  'critical level, {case}': 'nivel crítico, {case}',
  'hydraulic jump': 'resalto hidráulico',
  'lower bank': 'margen más baja',
  'Outer bank of a bend': 'Margen exterior de una curva',
  'radius {length#}': 'radio {length}',
  '{case}, {depth#} deep': '{case}, tirante {depth}',
  bed: 'lecho',
  flow: 'flujo',
  outlet: 'salida',
  level: 'nivel',
  rock: 'roca',
  Zone: 'Zona',
  'The blend': 'La combinación',
  '{material}, scalped': '{material}, sin lo grande',
  'key, {volume#} of its rock': 'dentellón, {volume} de su roca',

  // Mixes.
  'open voids': 'vacíos abiertos',
  fill: 'relleno',
  'As delivered, loose': 'Tal como llega, suelto',
  'In place': 'En obra',
  'The rock alone': 'La roca sola',
  'stones {stones#}, voids {voids#}': 'piedras {stones}, vacíos {voids}',
  'stones {stones#}, fill in its voids {fill#}, voids left open {open#}':
    'piedras {stones}, relleno en sus vacíos {fill}, vacíos abiertos {open}',
};

/** Pictures in words. */
export const pictures: Record<string, string> = {
  'Percent smaller by mass against stone size: the limits of {class}, the measured curve of {lot} with its limits at each size, and the size that each method asks for.':
    'Porcentaje que pasa, en masa, según el tamaño de piedra: los límites de {class}, la curva medida de {lot} con sus límites en cada tamaño, y el tamaño que pide cada método.',
  'Stones drawn to one scale beside a rule: the smallest and the largest that the class allows at three percentages, and the measured ones between.':
    'Piedras dibujadas a una misma escala junto a una regla: las más chicas y las más grandes que la clase admite a tres porcentajes, y las medidas entre ellas.',
  '{wrong#} of {n#} stones are {than!than}, for {limit!limit}.':
    '{wrong} de {n} piedras son de tamaño {than}, para {limit}.',
  'Below the lower line the rock is accepted, above the upper one it is turned away, between them the count goes on; below that, how often the plan accepts rock of each share, and after how many stones on average.':
    'Por debajo de la línea inferior la roca se acepta, por encima de la superior se rechaza, entre ambas el conteo sigue; más abajo, cuán a menudo el plan acepta roca de cada proporción, y tras cuántas piedras en promedio.',
  'One line a method on one axis of stone sizes: the size it asks for, and from the least to the largest that {class} has at the same percent.':
    'Una línea por método sobre un eje de tamaños de piedra: el tamaño que pide, y del mínimo al máximo que {class} tiene al mismo porcentaje.',
  'Median size of {n#} loads in the order of time, from {from#} to {to#}.':
    'Tamaño mediano de {n} viajes en orden de llegada, de {from} a {to}.',
  'Cross-section looking downstream, as it was surveyed; no zone lies on it.':
    'Sección transversal mirando aguas abajo, tal como se levantó; no hay zona en ella.',
  'Cross-section looking downstream with the water level of {case} and the rock layer of {zone} drawn at size.':
    'Sección transversal mirando aguas abajo con el nivel de {case} y la capa de roca de {zone} dibujada a escala.',
  'Cross-section looking downstream with {n#} water levels and the rock layer of {zone} drawn at size.':
    'Sección transversal mirando aguas abajo con {n} niveles de agua y la capa de roca de {zone} dibujada a escala.',
  'Three bars of volume, the bulk volume of the rock being one: the materials loose, the rock alone with its voids, and the mix in place, which takes {ratio#} times the volume of the rock.':
    'Tres barras de volumen, con el volumen aparente de la roca como unidad: los materiales sueltos, la roca sola con sus vacíos, y la mezcla en obra, que ocupa {ratio} veces el volumen de la roca.',
  'Elevation of bed, lower bank and water surface along {reach}, flowing from left to right, for {cases_}.':
    'Cotas del lecho, de la margen más baja y de la superficie del agua a lo largo de {reach}, de izquierda a derecha, para {cases}.',
  'Percent smaller by mass against size: the blend as a bold line, its materials as thin ones, the band as an area.':
    'Porcentaje que pasa, en masa, según el tamaño: la combinación en línea gruesa, sus materiales en líneas finas, la banda como área.',
  'A hydraulic jump is marked.': 'Hay un resalto hidráulico marcado.',
  'There is no hydraulic jump.': 'No hay resalto hidráulico.',
  'Arrows mark the control points between which a filter on the soil must lie.':
    'Las flechas marcan los puntos de control entre los que debe quedar un filtro sobre el suelo.',
  'A line marks the openings of the geotextile.': 'Una línea marca las aberturas del geotextil.',
};
