/** Kinds of rock in a zone, and what covers it: topsoil, seed, blanket, stakes. */
export const covers: Record<string, string> = {
  'From {from#} to {to#}, {part!partOfSlope}: {kind!rockKind} rock is usual there.':
    'De {from} a {to}, {part}: allí lo usual es roca {kind}.',
  'The zone states {kind!rockKind} rock.': 'La zona indica roca {kind}.',
  'Nothing to do; the filter under it is judged by this kind.':
    'Nada que hacer; el filtro de abajo se evalúa según este tipo.',
  'The zone states no kind of rock.': 'La zona no indica ningún tipo de enrocado.',
  '{kind!rockKind} rock is usual up to {level#}, {part!partOfSlope}.':
    'Lo usual hasta {level}, {part}, es roca {kind}.',
  '{kind!rockKind} rock is usual there.': 'Allí lo usual es roca {kind}.',
  'State the kinds of the zone: bare, soil-filled or void-filled, and up to where.':
    'Indique los tipos de la zona: desnuda, rellena de suelo o de vacíos rellenos, y hasta dónde.',
  'To decide, give {fields}.': 'Para decidir, indique {fields}.',

  'The cover begins at {level#}.': 'La cubierta comienza en {level}.',
  'The stream always stands at {level#}, below it.':
    'La corriente está siempre en {level}, por debajo.',
  'The stream always stands at {level#}: topsoil and blanket below that are lost.':
    'La corriente está siempre en {level}: el suelo vegetal y la manta por debajo se pierden.',
  'Begin the cover at {level#} or higher.': 'Comience la cubierta en {level} o más arriba.',
  '{case} just reaches the lower edge.': '{case} apenas llega al borde inferior.',
  '{case} stays {height#} below the cover.': '{case} queda {height} por debajo de la cubierta.',
  'At its lower edge {case} stands {depth#} deep and pulls with {shear#}.':
    'En su borde inferior {case} tiene {depth} de tirante y arrastra con {shear}.',
  'From {level#} up it would survive.': 'De {level} hacia arriba resistiría.',
  'Type {type}, {name!blanketType}.': 'Tipo {type}, {name}.',
  'It lasts {months#} months; plants need {need#}.':
    'Dura {months} meses; las plantas necesitan {need}.',
  'It lasts {months#} months; plants need {need#} to hold.':
    'Dura {months} meses; las plantas necesitan {need} para sujetar.',
  'A grid of {spacing#} takes {n#} of them, {density#} for each square yard.':
    'Una cuadrícula de {spacing} lleva {n}, {density} por yarda cuadrada.',
  ' A grid of {spacing#} takes {n#} of them, {density#} for each square yard.':
    'Una cuadrícula de {spacing} lleva {n}, {density} por yarda cuadrada.',
  'The trench at the top stands {back#} behind the crest.':
    'La zanja superior está {back} detrás de la cresta.',
  ' The trench at the top stands {back#} behind the crest.':
    'La zanja superior está {back} detrás de la cresta.',
  "The trench at the water's edge, {depth#} deep, stays in the topsoil and leaves the rock whole.":
    'La zanja al borde del agua, de {depth} de profundidad, queda en el suelo vegetal y deja la roca entera.',
  'The cover is {up#} up the slope and {length#} long: {area#}.':
    'La cubierta tiene {up} talud arriba y {length} de largo: {area}.',
  '{thickness#} of topsoil takes {volume#} in place.':
    '{thickness} de suelo vegetal son {volume} en obra.',
  'The blanket takes {n#} rolls.': 'La manta lleva {n} rollos.',
};

/** Parts of a slope by how often water stands there. */
export const partOfSlope: Record<string, string> = {
  'where water always stands': 'donde siempre hay agua',
  'up to the frequent flow': 'hasta el caudal frecuente',
  'between the frequent flow and the design flood':
    'entre el caudal frecuente y la crecida de diseño',
  'above the design flood': 'por encima de la crecida de diseño',
  'where no flow case says how often water stands':
    'donde ningún caso de caudal dice cuán seguido hay agua',
};

export const rockKind: Record<string, string> = {
  bare: 'desnuda',
  Bare: 'desnuda',
  'soil-filled': 'rellena de suelo',
  'Soil-filled': 'rellena de suelo',
  'void-filled': 'de vacíos rellenos',
  'Void-filled': 'de vacíos rellenos',
};

export const blanketType: Record<string, string> = {
  'double-net blanket or open weave': 'manta de doble red o de tejido abierto',
  'single-net blanket or open weave': 'manta de una red o de tejido abierto',
};
