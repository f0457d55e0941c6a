/** What findings say of sites unlike the examples: other rock, covers, filters, mixes. */
export const furtherFindings: Record<string, string> = {
  // What could be done about rock.
  'About {n#} more stones would decide {what!undecided}, if the shares stay as they are.':
    'Unas {n} piedras más decidirían {what}, si las proporciones siguen así.',
  'Place it where the design asks for no more than {class}.':
    'Colóquela donde el diseño no pide más que {class}.',
  'The measured rock is shown to hold in {zones}; keep it out of {others}.':
    'Se demuestra que la roca medida resiste en {zones}; no la lleve a {others}.',
  'Stones above {size#} are too large for the class or the layer.':
    'Las piedras mayores que {size} son demasiado grandes para la clase o la capa.',
  'Rock costs {cost_}; no other choice costs less.':
    'La roca cuesta {cost}; ninguna otra opción cuesta menos.',
  'Nothing that holds is left for {zones}.': 'Para {zones} no queda nada que resista.',
  'Order rock for what is left, or count more where the rock is not yet known.':
    'Pida roca para lo que falta, o cuente más donde la roca aún no se conoce.',
  'The search was cut short: a better choice may exist.':
    'La búsqueda se cortó: puede haber una opción mejor.',
  'How much rock {zone} takes is not known; it counts as none.':
    'No se sabe cuánta roca lleva {zone}; cuenta como ninguna.',
  'Count more stones, most of all small ones, before rock is laid on it; or lay what {filter} asks for.':
    'Cuente más piedras, sobre todo chicas, antes de colocar roca encima; o coloque lo que pide {filter}.',
  'The limits of confidence leave the opposite possible.':
    'Los límites de confianza dejan posible lo contrario.',
  'The measured curve is taken as it is, without its limits of confidence.':
    'La curva medida se toma tal cual, sin sus límites de confianza.',
  'Measured rock is judged by every method that has a weight, not by their mean.':
    'La roca medida se evalúa con cada método que tiene peso, no con su media.',
  'Into every {n!loads} of {lot} mix loads: {parts_}.':
    'En cada {n} de {lot} mezcle estos viajes: {parts}.',
  "The other materials are taken from their suppliers' certificates as exact, and all loads as alike in mass; the mixed pile must be measured before it is used.":
    'Los otros materiales se toman de los certificados de sus proveedores como exactos, y todos los viajes con la misma masa; el acopio mezclado debe medirse antes de usarlo.',

  // Kinds of rock.
  'It gives no reason against what is usual.': 'No da razón contra lo usual.',
  'Change it to {kind!rockKind} rock, or state the reason for {other!rockKind} rock.':
    'Cámbiela a roca {kind}, o indique la razón para roca {other}.',
  'Nothing to do; the reason is on record.': 'Nada que hacer; la razón consta.',
  'What is usual there is not known yet.': 'Aún no se sabe qué es lo usual allí.',
  'Grouted rock is rigid, and is not judged here.':
    'La roca con mortero es rígida, y aquí no se evalúa.',
  'Let the engineer responsible design the grout, its drains and its edges.':
    'Que el ingeniero responsable diseñe el mortero, sus drenes y sus bordes.',
  'Soil washes out where water runs constantly or waves work and plants cannot hold.':
    'El suelo se lava donde el agua corre siempre o trabajan las olas y las plantas no sujetan.',
  'Fill the voids with the mix of void-filled rock there, or leave them open.':
    'Llene allí los vacíos con la mezcla de roca de vacíos rellenos, o déjelos abiertos.',
  'State the kinds of rock up to the top of the zone.':
    'Indique los tipos de enrocado hasta lo alto de la zona.',
  'State the kind of the zone: bare, soil-filled or void-filled.':
    'Indique el tipo de la zona: desnuda, rellena de suelo o de vacíos rellenos.',

  // Covers.
  'Leave the rock uncovered, or void-filled, below where the cover survives.':
    'Deje la roca sin cubrir, o de vacíos rellenos, por debajo de donde resiste la cubierta.',
  'Let the designer judge between the careful and the bold figure.':
    'Que el proyectista decida entre la cifra prudente y la audaz.',
  'What grows on it is not stated.': 'No se indica qué crece en ella.',
  'No blanket protects it, and its soil is not stated.':
    'Ninguna manta la protege, y no se indica su suelo.',
  'State soil of the cover, or a blanket.': 'Indique el suelo de la cubierta, o una manta.',
  'No blanket protects it, and the soil alone bears {shear#}.':
    'Ninguna manta la protege, y el suelo solo resiste {shear}.',
  'Lay a blanket, or begin the cover higher.':
    'Ponga una manta, o comience la cubierta más arriba.',
  'The soil alone bears {shear#}.': 'El suelo solo resiste {shear}.',
  'Begin the cover higher, or take another blanket.':
    'Comience la cubierta más arriba, o tome otra manta.',
  'A blanket {type} bears {bed#} by its seed bed and {table#} by the table.':
    'Una manta {type} resiste {bed} por su lecho de siembra y {table} por la tabla.',
  'The table is kept and the seed bed is not: let the designer judge.':
    'La tabla se cumple y el lecho de siembra no: que decida el proyectista.',
  'Take the cover off the bed.': 'Quite la cubierta del lecho.',
  'The stream is perennial: no topsoil goes on its bottom, and blanket only on the banks.':
    'La corriente es permanente: en su fondo no va suelo vegetal, y la manta solo en las márgenes.',
  'Whether the stream is perennial is not known.': 'No se sabe si la corriente es permanente.',
  'Whether topsoil and seed survive is not known: no frequent flow is known at the zone.':
    'No se sabe si resisten el suelo vegetal y la semilla: no se conoce un caudal frecuente en la zona.',
  'A stake of {length#} stands in {depth#} of loose topsoil alone.':
    'Una estaca de {length} está solo en {depth} de suelo vegetal suelto.',
  'Take stakes that reach well into the soil of the filled rock.':
    'Tome estacas que entren bien en el suelo de la roca rellena.',
  'Nothing is stated that holds the blanket.': 'No se indica nada que sujete la manta.',
  "The trench at the water's edge is {depth#} deep under {topsoil#} of topsoil: it cuts into the rock.":
    'La zanja al borde del agua tiene {depth} de profundidad bajo {topsoil} de suelo vegetal: corta la roca.',
  'Keep that trench within the topsoil, or pin the edge under the first row of rock.':
    'Deje esa zanja dentro del suelo vegetal, o sujete el borde bajo la primera fila de roca.',
  'Dig the trench at the top wider or deeper.': 'Haga la zanja superior más ancha o más profunda.',
  'Set it {length#} or more behind the crest.': 'Póngala {length} o más detrás de la cresta.',
  'Take a type for this slope.': 'Tome un tipo para este talud.',
  'Take a type that lasts longer.': 'Tome un tipo que dure más.',
  'Take a stronger type, or begin the cover higher.':
    'Tome un tipo más fuerte, o comience la cubierta más arriba.',
  'Topsoil lies over the rock without a blanket.': 'Hay suelo vegetal sobre la roca sin manta.',
  'Lay a biodegradable blanket over it, or say why none is needed.':
    'Ponga encima una manta biodegradable, o diga por qué no hace falta.',
  'Waves of the {case} run up to {level#}, below it.':
    'Las olas de {case} suben hasta {level}, por debajo.',
  'No waves are stated at the shore.': 'No se indican olas en la orilla.',

  // Filters.
  '{upper} on {lower}: not known.': '{upper} sobre {lower}: no se sabe.',
  'Give its gradation down to 15 % smaller.': 'Indique su granulometría hasta el 15 % que pasa.',
  'Test the soil for dispersion (crumb or pinhole test).':
    'Ensaye la dispersión del suelo (ensayo del terrón o del orificio).',
  'The soil was not tested for dispersion; were it dispersive, D15 could be {size#} at most.':
    'No se ensayó la dispersión del suelo; si fuera dispersivo, D15 podría ser a lo sumo {size}.',
  'It was not tested for dispersion (crumb or pinhole test).':
    'No se ensayó su dispersión (ensayo del terrón o del orificio).',
  'It disperses: clear water carries it through fine cracks.':
    'Se dispersa: el agua clara lo lleva por grietas finas.',
  'Its openings of {size#} are too large.': 'Sus aberturas de {size} son demasiado grandes.',
  'Its permittivity of {value#} is too small.': 'Su permitividad de {value} es demasiado baja.',
  'Its Class {class} is too weak.': 'Su Clase {class} es demasiado débil.',
  'Take a fabric that keeps these values, or granular bedding.':
    'Tome un geotextil que cumpla estos valores, o una capa de apoyo granular.',
  'Have {material} washed, or take another bedding.':
    'Haga lavar {material}, o tome otra capa de apoyo.',
  'The lowest layer: {layer_}.': 'La capa más baja: {layer}.',
  'From the soil up, these serve: {filters_}.': 'Del suelo hacia arriba, sirven: {filters}.',
  'No standard bedding and no material on offer serves with every gradation it allows.':
    'Ninguna capa de apoyo normalizada y ningún material ofrecido sirve con todas las granulometrías que admite.',
  'Ask for a gradation in the band given here, or for a geotextile.':
    'Pida una granulometría en la banda que se da aquí, o un geotextil.',

  // Mixes.
  'Mix in at most {share#} fill by loose volume, or take the proportions proposed beside this.':
    'Mezcle a lo sumo {share} de relleno en volumen suelto, o tome las proporciones que se proponen al lado.',
  'Mix it with the rock before placing, or take a finer fill.':
    'Mézclelo con la roca antes de colocar, o tome un relleno más fino.',
  'Mix in less, or size the rock as if it were not in contact.':
    'Mezcle menos, o dimensione la roca como si no estuviera en contacto.',
  'Mix to these parts, and look into the placed rock: voids full, stones touching, no pockets of fill alone.':
    'Mezcle en estas partes y mire dentro de la roca colocada: vacíos llenos, piedras que se tocan, sin bolsas solo de relleno.',
  'The fill takes {share#} of the voids and forces the rock apart: the mix takes {ratio#} times the volume of its rock, and the stones no longer bear on one another.':
    'El relleno toma {share} de los vacíos y separa la roca: la mezcla ocupa {ratio} veces el volumen de su roca, y las piedras ya no se apoyan unas en otras.',
  'No bedding is needed for the sake of the mix; see that no pocket of open rock is left.':
    'Por la mezcla no hace falta capa de apoyo; vea que no quede ninguna bolsa de roca abierta.',
  'Add the sizes that are missing between rock and fill, or put bedding or a fabric under the layer and cover its face.':
    'Agregue los tamaños que faltan entre la roca y el relleno, o ponga una capa de apoyo o un geotextil bajo la capa y cubra su cara.',
  'The criteria do not agree: judge by what water runs through the layer, and cover it.':
    'Los criterios no concuerdan: decida según el agua que corre por la capa, y cúbrala.',
  'Give the gradations of rock and fill down to their fine ends.':
    'Indique las granulometrías de la roca y del relleno hasta sus extremos finos.',
};

/** What counting more would decide. */
export const undecided: Record<string, string> = {
  'whether it holds in the zone': 'si resiste en la zona',
  'whether it is {class}': 'si es {class}',
};
