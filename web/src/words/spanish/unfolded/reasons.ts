/** Why a finding says what it says, where that is no sentence of the finding itself. */
export const reasons: Record<string, string> = {
  // Checks of placing, one after the other.
  '{n#}. {title!check} (hold point): {required!required}. {state!state}.':
    '{n}. {title} (punto de espera): {required}. {state}.',
  '{n#}. {title!check} (check): {required!required}. {state!state}.':
    '{n}. {title} (verificación): {required}. {state}.',
  'Check from {fields_}.': 'Verificación según {fields}.',
  'Hold point from {fields_}.': 'Punto de espera según {fields}.',
  'Opened: {note!photoOrNote}': 'Abierta: {note}',
  'Closed: {note!photoOrNote}': 'Cerrada: {note}',
  'Disposition: {note!photoOrNote}': 'Decisión: {note}',

  // Whether methods apply.
  '{method!method}, {case}: applies; it asks for {size!requiredSize}.':
    '{method}, {case}: vale; pide {size}.',
  '{method!method}, {case}: applies, but could not be computed.':
    '{method}, {case}: vale, pero no se pudo calcular.',
  '{method!method}, {case}: applies, but could not be computed. {where}: {why!}':
    '{method}, {case}: vale, pero no se pudo calcular. {where}: {why}',
  '{method!method}, {case}: does not apply.': '{method}, {case}: no vale.',
  '{method!method}, {case}: outside its published range ({limits;methodLimit}); it asks for {size!requiredSize}.':
    '{method}, {case}: fuera de su rango publicado ({limits}); pide {size}.',
  '{method!method} could not be computed: {why!}': 'No se pudo calcular {method}: {why}',
  '{method!method} does not apply: {why!}': '{method} no vale: {why}',
  'Shown, but it does not govern: {why!methodChoice}.': 'Se muestra, pero no rige: {why}.',
  'Shown for comparison, it does not govern: {why!methodChoice}.':
    'Se muestra para comparar, no rige: {why}.',
  'Choose {inputs} for the zone to let it govern.':
    'Elija {inputs} en la zona para que pueda regir.',
  'The curve is for rock just below stilling basins.':
    'La curva es para roca justo aguas abajo de cuencos amortiguadores.',
  'The method asks for a mass; {class} states sizes as {meaning!sizeMeaning}: a stone of that mass, {formula_}.':
    'El método pide una masa; {class} indica tamaños como {meaning}: una piedra de esa masa, {formula}.',
  "{class} states sizes as {meaning!sizeMeaning}; the formula's size is used as it stands, without conversion, as the manual that pairs them does (the careful side: the sphere of the same mass is larger).":
    '{class} indica tamaños como {meaning}; el tamaño de la fórmula se usa tal cual, sin conversión, como hace el manual que los empareja (del lado prudente: la esfera de la misma masa es mayor).',

  // Classes of a family.
  '{family_}: {class} (nominal D50 {size#}), margin {margin#}.':
    '{family}: {class} (D50 nominal {size}), holgura {margin}.',
  'It is the smallest of its family.': 'Es la menor de su familia.',
  '{class} fails by {method!method}, which asks for {size!requiredSize} where the class has {has#}.':
    '{class} no alcanza según {method}, que pide {size} cuando la clase tiene {has}.',
  'Next smaller: {class} fails by {method!method}, which asks for {size!requiredSize} where the class has {has#}.':
    'La siguiente menor: {class} no alcanza según {method}, que pide {size} cuando la clase tiene {has}.',
  '{family_}: no class holds.': '{family}: ninguna clase resiste.',
  '{class} does not state its smallest D90: for the velocity its smallest D{p#} stands in, which is smoother and so on the safe side; for the level the largest D90 it allows.':
    '{class} no indica su D90 mínimo: para la velocidad lo reemplaza su D{p} mínimo, más liso y por eso del lado seguro; para el nivel, el D90 máximo que admite.',
  'D{p#} has an upper limit only.': 'El D{p} tiene solo límite superior.',
  'The start of this row was also seen in the reprint named with Class I.':
    'El comienzo de esta fila se vio también en la reimpresión que se nombra en la clase I.',

  // Measured rock by each method.
  '{method!method}: {outcome!outcome}, margin {margin#}, {confidence!share} confidence that it holds.':
    '{method}: {outcome}, holgura {margin}, {confidence} de confianza en que resiste.',
  '{method!method}: margin {margin#}, {confidence!share} confidence that it holds.':
    '{method}: holgura {margin}, {confidence} de confianza en que resiste.',
  'Shown only: the zone stands outside its published range.':
    'Solo se muestra: la zona está fuera de su rango publicado.',
  'Shown for comparison: some of its inputs are defaults, not known of the zone.':
    'Se muestra para comparar: algunos de sus datos son valores por omisión, no conocidos de la zona.',
  'Shown only: another method was chosen to govern.':
    'Solo se muestra: se eligió que rija otro método.',
  'Shown only: it has no weight.': 'Solo se muestra: no tiene peso.',
  'The {n#} tests of specific gravity scatter; the confidence and the limits of the margin take in how little sure their mean is.':
    'Los {n} ensayos de densidad relativa se dispersan; la confianza y los límites de la holgura incluyen lo poco segura que es su media.',
  'Were all the rock as light as the lightest ({least#}), the margin would be {margin#}.':
    'Si toda la roca fuera tan liviana como la más liviana ({least}), la holgura sería {margin}.',
  'Remedy {n#} of {all#}: {rank!rank}.': 'Medida {n} de {all}: {rank}.',
  'Branch and bound went through every choice: none serves more zones, or as many for less.':
    'La búsqueda recorrió todas las opciones: ninguna sirve a más zonas, ni a tantas por menos.',
  'Not every lot has a price: the choice takes the least rock.':
    'No todo lote tiene precio: se elige lo que lleva menos roca.',
  'A lot goes only where it is shown to hold at the stated risks, one lot to a zone.':
    'Un lote va solo adonde se demuestra que resiste con los riesgos indicados, un lote por zona.',

  // Filters and filled rock.
  '{upper} on {lower}: {outcome!outcome}.': '{upper} sobre {lower}: {outcome}.',
  'Its finest D15, {size#}, lies outside the narrowed band, which begins at {from#}: no fault where one gradation is delivered throughout.':
    'Su D15 más fino, {size}, cae fuera de la banda estrechada, que empieza en {from}: no es falta donde se entrega siempre una misma granulometría.',
  'Only a soil of which less than {share#} is smaller than {size#} could lie below this rock without a filter.':
    'Bajo esta roca solo podría estar sin filtro un suelo del que menos del {share} sea menor que {size}.',
  'Where the rock is filled the fill is the filter; what is said here holds where it is bare.':
    'Donde la roca está rellena, el relleno es el filtro; lo que se dice aquí vale donde está desnuda.',
  'Whether the mix keeps the ground below is not known: the zone states no soil.':
    'No se sabe si la mezcla retiene el terreno de abajo: la zona no indica el suelo.',
  'The conductivity stands outside the range of its formula (D10 of 0.1 to 3 mm): measure it.':
    'La conductividad está fuera del rango de su fórmula (D10 de 0.1 a 3 mm): mídala.',
  'Criteria of internal stability disagree: {some} call it stable, {others} unstable.':
    'Los criterios de estabilidad interna no concuerdan: {some} la llaman estable, {others} inestable.',
  '{layer}: Criteria of internal stability disagree: {some} call it stable, {others} unstable.':
    '{layer}: los criterios de estabilidad interna no concuerdan: {some} la llaman estable, {others} inestable.',
  'Burenkova: d90/d60 {ratio#}, stable from {from#} to {to#}.':
    'Burenkova: d90/d60 {ratio}, estable de {from} a {to}.',
  'Istomina: uniformity {value#}, safe below {safe#}, unstable above {most#}.':
    'Istomina: uniformidad {value}, segura por debajo de {safe}, inestable por encima de {most}.',
  'Kenney–Lau: least H/F {value#} at {share#} smaller, limit {limit#}.':
    'Kenney–Lau: H/F mínimo {value} con {share} que pasa, límite {limit}.',
  'Kezdi: largest D15c/d85f {value#} at {share#} smaller, limit {limit#}.':
    'Kezdi: D15c/d85f máximo {value} con {share} que pasa, límite {limit}.',
  'Chang–Zhang: {share#} of fines, no gap, margin {margin#}.':
    'Chang–Zhang: {share} de finos, sin salto, holgura {margin}.',
  'Chang–Zhang: {share#} of fines, gap ratio {ratio#}, margin {margin#}':
    'Chang–Zhang: {share} de finos, relación de salto {ratio}, holgura {margin}',
  'Chang–Zhang: The published limits for this share of fines were not seen.':
    'Chang–Zhang: no se vieron los límites publicados para esta proporción de finos.',
  'The class does not limit the stones below its smallest stated size: the rock is taken to end at half of that, which leaves the widest gap to the fill. Smaller stones among it make the mix hold its fill the better.':
    'La clase no limita las piedras por debajo de su menor tamaño indicado: se supone que la roca termina en la mitad de él, lo que deja el mayor salto hasta el relleno. Piedras más chicas hacen que la mezcla retenga mejor su relleno.',
  '{fill}: its curve ends at {size#} with {share#} smaller.':
    '{fill}: su curva termina en {size} con {share} que pasa.',
  'Wash it over the No. 200 sieve, test what passes by hydrometer, and add those sizes ({pointer}).':
    'Lávelo sobre el tamiz No. 200, ensaye lo que pasa con hidrómetro y agregue esos tamaños ({pointer}).',

  // Kinds of rock, covers.
  '{rule!rockRule} (common practice, no source)': '{rule} (práctica común, sin fuente)',
  'A biodegradable blanket over rock is held by wedge stakes cut from 2×4 timber (common practice, no source).':
    'Una manta biodegradable sobre roca se sujeta con estacas en cuña cortadas de madera de 2×4 (práctica común, sin fuente).',
  'Types of the table that suit this slope, time and shear: {types}.':
    'Tipos de la tabla que sirven para este talud, tiempo y esfuerzo cortante: {types}.',

  // Quantities, submittals, supply.
  '{item!billItem}: {cost_} ({priced!priceItem}: {price_}).': '{item}: {cost} ({priced}: {price}).',
  'Prices: {from_}.': 'Precios: {from}.',
  'The finished surface of the rock is taken to lie on the surveyed ground, so layer and bedding are dug in by their thickness.':
    'Se supone que la superficie terminada de la roca queda en el terreno levantado, así que la capa y su apoyo se excavan en su espesor.',
  'The zone is taken as lined like its one section over its whole length.':
    'Se supone la zona revestida en todo su largo como en su única sección.',
  'NCHRP Report {n#}: {limit!testLimit}. Handed in: {value_}; it keeps this.':
    'NCHRP Report {n}: {limit}. Presentado: {value}; se cumple.',
  'NCHRP Report {n#}: {limit!testLimit}. Handed in: {value_}; it does not keep this.':
    'NCHRP Report {n}: {limit}. Presentado: {value}; no se cumple.',
  'NCHRP Report {n#}: {limit!testLimit}. No result speaks of this.':
    'NCHRP Report {n}: {limit}. Ningún resultado habla de esto.',
  '{submittal}: {test!rockTest}: {outcome!outcome}.': '{submittal}: {test}: {outcome}.',
  '{limit!limit}: {outcome!outcome}; at {size#} the certificate has {share#} smaller.':
    '{limit}: {outcome}; en {size} el certificado tiene {share} que pasa.',
  'A lot is accepted in full from {share#} within limits (published plans, from memory); what less means is for the contract to say.':
    'Un lote se acepta entero desde el {share} dentro de límites (planes publicados, de memoria); qué significa menos lo dice el contrato.',
  'Test: largest distance between both curves, exact with ties; a difference is called one at a chance below {share#}.':
    'Prueba: mayor distancia entre ambas curvas, exacta con empates; se la llama diferencia con una probabilidad menor que {share}.',
  'The mix is taken with the voids that were stated for the rock specified: weigh those of the other rock.':
    'La mezcla se toma con los vacíos indicados para la roca especificada: pese los de la otra roca.',
  'Uncertainty as stated: {text_}': 'Incertidumbre según se indica: {text}',
  'Sizes are intermediate axes of stones. Dp is the size of which p % of the sample is equal or smaller; the reprint does not say whether by mass or by number. Percents are taken by mass: the usual check, a count of 100 stones on a grid, estimates percents by mass.':
    'Los tamaños son ejes intermedios de piedras. Dp es el tamaño que el p % de la muestra iguala o no alcanza; la reimpresión no dice si en masa o en número. Los porcentajes se toman en masa: la verificación usual, un conteo de 100 piedras en cuadrícula, estima porcentajes en masa.',
};

export const sizeMeaning: Record<string, string> = {
  'intermediate axis': 'eje intermedio',
  sphere: 'esfera',
  sieve: 'tamiz',
};

/** Why a method is shown and does not govern. */
export const methodChoice: Record<string, string> = {
  'it was made for channels in their own coarse material, and its two published forms differ':
    'se hizo para cauces en su propio material grueso, y sus dos formas publicadas difieren',
  'the factor to be reached and the angle at which the water runs on the slope are not known of the zone; 1.5, as in the examples of HDS-6, and level flow stand in for them':
    'de la zona no se conocen el factor por alcanzar ni el ángulo con que corre el agua sobre el talud; los reemplazan 1.5, como en los ejemplos de HDS-6, y un flujo horizontal',
  'the stability factor of this older method stands for bends, debris, ice, waves and the quality of the data, which a zone does not tell; by default it is the upper end of the range for the bend':
    'el factor de estabilidad de este método más antiguo abarca curvas, arrastres, hielo, olas y la calidad de los datos, que una zona no dice; por omisión es el extremo superior del rango para la curva',
  "the turbulence intensity is not known of the zone; the table's value for its place stands in for it":
    'de la zona no se conoce la intensidad de turbulencia; la reemplaza el valor de la tabla para su lugar',
  "turbulence, kind of protection and velocity profile are not known of the zone; the table's values for a bend or a straight reach, continuous rock and a profile not fully developed stand in for them":
    'de la zona no se conocen la turbulencia, el tipo de protección ni el perfil de velocidades; los reemplazan los valores de la tabla para una curva o un tramo recto, roca continua y un perfil no del todo desarrollado',
  'whether the water runs at the face or along it, which decides by the sixth power of twice the velocity, is only guessed from the side of the bend':
    'si el agua corre contra la cara o a lo largo de ella, que decide por la sexta potencia del doble de la velocidad, solo se adivina por el lado de la curva',
};

/** How good a remedy is. */
export const rank: Record<string, string> = {
  'it may serve, more must be measured; of several such the one that disturbs the work least comes first':
    'puede servir, hay que medir más; de varias así va primero la que menos altera la obra',
  'it is for the designer to decide; of several such the one that disturbs the work least comes first':
    'lo decide el proyectista; de varias así va primero la que menos altera la obra',
};

/** What has a price. */
export const priceItem: Record<string, string> = {
  rock: 'roca',
  placing: 'colocación',
  bedding: 'capa de apoyo',
  excavation: 'excavación',
  topsoil: 'suelo vegetal',
  blanket: 'manta',
  stakes: 'estacas',
  fill: 'relleno',
  geotextile: 'geotextil',
  seed: 'semilla',
};

/** Rules of the trade for the kind of rock. */
export const rockRule: Record<string, string> = {
  'Nothing grows under a deck, so no roots would hold soil in the voids':
    'Bajo un tablero no crece nada, así que ninguna raíz sujetaría suelo en los vacíos',
  'People walk on it, and open voids catch a foot':
    'Se camina sobre ella, y en los vacíos abiertos se traba un pie',
  'Bare rock is usual under a bridge deck': 'Bajo el tablero de un puente lo usual es roca desnuda',
  'Waves draw water through the voids and take the fill with it':
    'Las olas mueven agua por los vacíos y se llevan el relleno',
  'Water runs here all year and plants cannot hold: soil in the voids would wash out':
    'Aquí corre agua todo el año y las plantas no sujetan: el suelo de los vacíos se lavaría',
  'The frequent flow would take soil before plants hold it':
    'El caudal frecuente se llevaría el suelo antes de que lo sujeten las plantas',
  'Void-filled rock goes up to the bankfull or active-channel level, soil-filled above it':
    'La roca de vacíos rellenos llega hasta el nivel de cauce lleno o activo; por encima, rellena de suelo',
  'On a small, local place bare rock on bedding is simpler than mixing a fill, and serves':
    'En un lugar chico y puntual, la roca desnuda sobre capa de apoyo es más simple que mezclar un relleno, y sirve',
  'Nothing grows here, so soil in the voids would not be held by roots':
    'Aquí no crece nada, así que las raíces no sujetarían el suelo de los vacíos',
  'No flood of the design reaches here and plants can grow':
    'Hasta aquí no llega ninguna crecida del diseño y pueden crecer plantas',
  'Water comes here rarely, and between floods plants can grow and hold':
    'Aquí el agua llega rara vez, y entre crecidas las plantas pueden crecer y sujetar',
  'Growing is poor: choose soil and seed with one who knows the plants':
    'Aquí se crece mal: elija suelo y semilla con quien conozca las plantas',
};

/** What was put down when a problem was opened, decided or closed. */
export const photoOrNote: Record<string, string> = {
  'photo {photo}.': 'foto {photo}.',
  '{note_}': '{note}',
};
