/** The walk along placed work: what each check asks, how it is measured. */

/** What is asked. */
export const required: Record<string, string> = {
  '{what!required}: at least {length#}': '{what}: al menos {length}',
  '{what!required}: at most {length#}': '{what}: a lo sumo {length}',
  '{what!required}: {length#}': '{what}: {length}',
  'Trimmed to the lines drawn, firm, without roots, soft places, clods and stones that stand out':
    'Perfilada según las líneas dibujadas, firme, sin raíces, partes blandas, terrones ni piedras que sobresalgan',
  'The trench of the toe reaches its depth below the bed':
    'La zanja del pie alcanza su profundidad bajo el lecho',
  'The section of rock stored at the toe is as drawn':
    'La sección de la roca acumulada en el pie es la dibujada',
  'The thickened toe has its thickness': 'El pie engrosado tiene su espesor',
  'The trench at the top of the slope reaches its depth':
    'La zanja en lo alto del talud alcanza su profundidad',
  'A sieve analysis of what is delivered fits {layer}':
    'Un análisis por tamices de lo que llega corresponde a {layer}',
  'Spread evenly, not mixed with the ground, to its thickness':
    'Extendida pareja, sin mezclarse con el terreno, con su espesor',
  'The label of every roll names the fabric of the design':
    'La etiqueta de cada rollo nombra el geotextil del diseño',
  'The label of every roll names the fabric of the design, strength Class {class} or stronger':
    'La etiqueta de cada rollo nombra el geotextil del diseño, de resistencia Clase {class} o mayor',
  'Laid loose on the ground along the flow, upstream over downstream, keyed at toe and top, pinned so that it does not move (common practice, no source); laps between sheets':
    'Tendido flojo sobre el terreno a lo largo del flujo, el de aguas arriba sobre el de aguas abajo, empotrado en el pie y arriba, con grapas para que no se mueva (práctica común, sin fuente); traslapes entre paños',
  'The bucket is twice as wide as the largest stone or wider; a smaller one picks up single large stones, or only small ones':
    'El cucharón tiene al menos el doble del ancho de la piedra más grande; uno más chico toma piedras grandes sueltas, o solo chicas',
  'Rock is set down, not tipped down the slope; dropped from a small height only':
    'La roca se asienta, no se vuelca talud abajo; se suelta solo desde poca altura',
  'Rock is set down, not tipped down the slope; dropped from a small height only, never onto bare fabric':
    'La roca se asienta, no se vuelca talud abajo; se suelta solo desde poca altura, nunca sobre geotextil descubierto',
  'Large and small come together in every bucket; the pile was turned no oftener than needed, since each handling sorts and breaks stones; single oversize stones and flat ones are laid aside':
    'En cada cucharón vienen juntas grandes y chicas; el acopio no se revolvió más de lo necesario, pues cada manejo separa tamaños y rompe piedras; las piedras demasiado grandes y las planas se apartan',
  'Loads of every material by the recipe of the mix, which is not stated yet':
    'Viajes de cada material según la receta de la mezcla, que aún no se indica',
  'Loads of equal volume: {parts*}': 'Viajes de igual volumen: {parts}',
  '{n#} of {material}': '{n} de {material}',
  'Voids are full to the bottom, stones touch one another, no pocket of fill alone':
    'Los vacíos están llenos hasta el fondo, las piedras se tocan y no hay bolsas solo de relleno',
  'The mean thickness, by its lower bound, is that of the layer; nowhere less than the survey allows':
    'El espesor medio, por su cota inferior, es el de la capa; en ningún lugar menos de lo que admite el levantamiento',
  'Even, stones keyed into one another, no large gap, none that stands out':
    'Pareja, piedras trabadas entre sí, sin huecos grandes y sin ninguna que sobresalga',
  'Spread over filled rock, loose enough for roots, to its thickness':
    'Extendido sobre la roca rellena, suelto para las raíces, con su espesor',
  'The seed of the design is sown before the blanket, raked in, not washed off':
    'La semilla del diseño se siembra antes de la manta, rastrillada, sin que se lave',
  'The upper edge of the blanket lies in a trench of its depth':
    'El borde superior de la manta está en una zanja de su profundidad',
  'The lower edge lies in a trench that does not cut into the rock':
    'El borde inferior está en una zanja que no corta la roca',
  'In touch with the soil, not stretched, upstream over downstream; laps at the sides':
    'En contacto con el suelo, sin estirar, la de aguas arriba sobre la de aguas abajo; traslapes laterales',
  'Laps at the ends of rolls, upper over lower':
    'Traslapes en los extremos de los rollos, el de arriba sobre el de abajo',
  'Stakes reach through the topsoil into the soil of the filled rock':
    'Las estacas atraviesan el suelo vegetal hasta el suelo de la roca rellena',
  'Driven home, no farther apart than drawn':
    'Hincadas del todo, no más separadas que en el dibujo',
};

/** On whose word so much is allowed. */
export const origin: Record<string, string> = {
  'UFGS 02300, trimmed area under the rock within 30 mm (0.1 ft)':
    'UFGS 02300, superficie perfilada bajo la roca dentro de 30 mm (0.1 ft)',
  'USACE, Low Cost Shore Protection guide, sample specification: armour and toe built to at least the line':
    'USACE, guía Low Cost Shore Protection, especificación de muestra: coraza y pie construidos al menos hasta la línea',
  'trade, keys are at least as deep as drawn (common practice)':
    'oficio: los dentellones son al menos tan profundos como en el dibujo (práctica común)',
  'trade, one sieve analysis before placing, and one when the pit changes (common practice)':
    'oficio: un análisis por tamices antes de colocar, y otro cuando cambia el banco (práctica común)',
  'trade, bedding is nowhere thinner than drawn (common practice)':
    'oficio: la capa de apoyo no es en ningún lugar más delgada que en el dibujo (práctica común)',
  'trade, a toe is nowhere thinner than drawn (common practice)':
    'oficio: el pie no es en ningún lugar más delgado que en el dibujo (práctica común)',
  'trade, the stored section is shot before it is paid for (common practice)':
    'oficio: la sección acumulada se levanta antes de pagarla (práctica común)',
  'trade, labels are photographed before the rolls are opened (common practice)':
    'oficio: las etiquetas se fotografían antes de abrir los rollos (práctica común)',
  'trade, bucket of 2 to 3 times the largest stone (common practice)':
    'oficio: cucharón de 2 a 3 veces la piedra más grande (práctica común)',
  'USACE, Low Cost Shore Protection guide, not dropped more than 3 ft, never onto bare fabric':
    'USACE, guía Low Cost Shore Protection: no soltar desde más de 3 ft, nunca sobre geotextil descubierto',
  'FHWA HEC-23, laps of 1 ft placed dry, 3 ft under water':
    'FHWA HEC-23: traslapes de 1 ft en seco, 3 ft bajo el agua',
  'trade, handling sorts rock; a single oversize stone leaves gaps and goes out (common practice)':
    'oficio: el manejo separa los tamaños; una sola piedra demasiado grande deja vacíos y se retira (práctica común)',
  'trade, a tally may be out by one load, or 5 % (common practice)':
    'oficio: la cuenta puede errar por un viaje, o un 5 % (práctica común)',
  'trade, placed rock is opened and looked into (common practice)':
    'oficio: la roca colocada se abre y se mira por dentro (práctica común)',
  "method layer-survey, lower bound of the mean by Student's t (computed)":
    'método del levantamiento de la capa: cota inferior de la media por la t de Student (calculado)',
  '{drawing}, tolerances of the document (stated for this site)':
    '{drawing}, tolerancias del documento (indicadas para esta obra)',
  'tolerances of the document': 'tolerancias del documento',
  'Maryland SHA, Standard Specifications, 312.03.04, finished surface within 3 in of the lines drawn':
    'Maryland SHA, Standard Specifications, 312.03.04: superficie terminada a no más de 3 in de las líneas dibujadas',
  'trade, topsoil is nowhere thinner than drawn (common practice)':
    'oficio: el suelo vegetal no es en ningún lugar más delgado que en el dibujo (práctica común)',
  'trade, labels of the seed are kept (common practice)':
    'oficio: se guardan las etiquetas de la semilla (práctica común)',
  'Installation guideline of a blanket maker, Colorado DRMS record 911390 p. 24, top trench 6 to 9 in wide and deep':
    'Guía de instalación de un fabricante de mantas, Colorado DRMS, registro 911390, p. 24: zanja superior de 6 a 9 in de ancho y profundidad',
  "trade, the trench at the water's edge does not cut the rock (common practice)":
    'oficio: la zanja al borde del agua no corta la roca (práctica común)',
  "trade, 4 to 6 in at the sides; the maker's own pattern stands before it (common practice)":
    'oficio: de 4 a 6 in a los lados; vale antes lo que indica el fabricante (práctica común)',
  "trade, 12 in at the ends; the maker's own pattern stands before it (common practice)":
    'oficio: 12 in en los extremos; vale antes lo que indica el fabricante (práctica común)',
  'trade, a stake holds below the topsoil (common practice)':
    'oficio: una estaca agarra bajo el suelo vegetal (práctica común)',
  "trade, the maker's own pattern stands before densities of the trade (common practice)":
    'oficio: lo que indica el fabricante vale antes que las densidades del oficio (práctica común)',
};

export const placing: Record<string, string> = {
  // What is allowed.
  '{length#} either way ({source!allowedBy})': '{length} en más o en menos ({source})',
  '{length#} less ({source!allowedBy})': '{length} menos ({source})',
  'nowhere less ({source!allowedBy})': 'en ningún lugar menos ({source})',
  'nowhere more ({source!allowedBy})': 'en ningún lugar más ({source})',

  // What it is measured with.
  'rod and level, or a straight edge, square to the slope':
    'mira y nivel, o una regla recta, perpendicular al talud',
  'level on the bottom of the trench against the bed beside it, before rock covers it':
    'nivel en el fondo de la zanja contra el lecho de al lado, antes de cubrirla con roca',
  'section across the stored rock, or loads placed for each length of toe':
    'sección a través de la roca acumulada, o viajes colocados por cada longitud de pie',
  'level on bed and finished rock at the same points':
    'nivel en el lecho y en la roca terminada, en los mismos puntos',
  'tape in the open trench, before rock covers it':
    'cinta en la zanja abierta, antes de cubrirla con roca',
  'sieve analysis of a sample from the pile': 'análisis por tamices de una muestra del acopio',
  'hole dug through the layer and a rule, before rock covers it':
    'hoyo a través de la capa y una regla, antes de cubrirla con roca',
  'label and certificate of each roll; look for tears and sun damage':
    'etiqueta y certificado de cada rollo; busque roturas y daño del sol',
  'tape across each lap, before bedding or rock covers it':
    'cinta a través de cada traslape, antes de cubrirlo con la capa de apoyo o la roca',
  'tape across the cutting edge of each machine that loads or places':
    'cinta sobre el filo del cucharón de cada máquina que carga o coloca',
  'seen from the bucket to the ground while rock is placed':
    'a la vista, del cucharón al suelo, mientras se coloca la roca',
  'look at several buckets from a safe place, from both sides of the pile':
    'mire varios cucharones desde un lugar seguro, de ambos lados del acopio',
  'one mark for every load or bucket of each material':
    'una marca por cada viaje o cucharón de cada material',
  'take out a few stones at several places and look into the layer':
    'saque unas pocas piedras en varios lugares y mire dentro de la capa',
  'bedding and finished surface at the same points, spread over the whole area and farther apart than two stones; or a probe to the bedding':
    'capa de apoyo y superficie terminada en los mismos puntos, repartidos por toda el área y separados más de dos piedras; o una sonda hasta la capa de apoyo',
  'straight edge or level, square to the slope': 'regla recta o nivel, perpendicular al talud',
  'rule or tape at several places': 'regla o cinta en varios lugares',
  'labels of the bags; look before the blanket covers it':
    'etiquetas de las bolsas; mire antes de que lo cubra la manta',
};
